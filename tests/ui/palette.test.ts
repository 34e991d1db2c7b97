import { describe, expect, it } from 'vitest';
import { mismatch, ranked } from '#ui/palette/rank';
import { createTypedAhead } from '#ui/palette/typed-ahead';

const action = (id: string, label: string, isPossible = true) => ({ id, label, isPossible });
const ACTIONS = [
  action('align-left', 'Align left edges'),
  action('rotate-left', 'Rotate 90° to the left'),
  action('lock', 'Lock or unlock'),
  action('unlock-all', 'Unlock all but pictures'),
  action('show', 'Stahlplatte über der Fuge zeigen'),
  action('delete', 'Delete', false)
];
const ids = (wanted: string, recent: readonly string[] = []) =>
  ranked(ACTIONS, wanted, recent).map(({ id }) => id);

describe('what is meant by a few letters', () => {
  it('is found by words in any order', () => {
    expect(ids('left align')).toEqual(['align-left']);
    expect(ids('left')).toEqual(['align-left', 'rotate-left']);
  });

  it('comes first where the name or a word begins with them', () => {
    expect(ids('lock')).toEqual(['lock', 'unlock-all']);
    expect(ids('unlock')[0]).toBe('unlock-all');
  });

  it('is rather a whole word than the beginning of a longer one', () => {
    const labels = ['90° nach links drehen', 'Mit einem Link teilen'];
    const found = ranked(
      labels.map((label) => action(label, label)),
      'link',
      []
    );
    expect(found.map(({ label }) => label)).toEqual([...labels].reverse());
  });

  it('needs no accents, no capitals and not every letter', () => {
    expect(ids('UBER')).toEqual(['show']);
    expect(ids('rotlft')).toEqual(['rotate-left']);
    expect(ids('zzz')).toEqual([]);
  });

  it('is what was used last where names say nothing', () => {
    expect(ids('', ['unlock-all', 'rotate-left']).slice(0, 3)).toEqual([
      'unlock-all',
      'rotate-left',
      'align-left'
    ]);
    expect(ids('', ['delete']).at(-1)).toBe('delete');
  });

  it('is nothing when one of the words is not there', () => {
    expect(mismatch('Align left edges', 'left banana')).toBeNull();
  });
});

describe('what is typed before the field is there', () => {
  const key = (name: string, held: Partial<KeyboardEvent> = {}) =>
    ({ key: name, ctrlKey: false, metaKey: false, altKey: false, ...held }) as KeyboardEvent;

  it('reaches it, letter by letter and with its end, once', () => {
    const ahead = createTypedAhead();
    for (const letter of ['u', 'n', 'x', 'Backspace', 'd', 'o', ' ', 'Enter'])
      expect(ahead.hear(key(letter))).toBe(true);
    expect(ahead.take()).toEqual({ text: 'undo ', isDone: true });
    expect(ahead.take()).toEqual({ text: '', isDone: false });
  });

  it('keys that write nothing are not for it', () => {
    const ahead = createTypedAhead();
    expect(ahead.hear(key('z', { ctrlKey: true }))).toBe(false);
    expect(ahead.hear(key('Escape'))).toBe(false);
    expect(ahead.hear(key('Shift'))).toBe(false);
    expect(ahead.take().text).toBe('');
  });
});

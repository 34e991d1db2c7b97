import { expect, test } from 'vitest';
import { createEditor } from '#editor/create-editor';
import { demoSite } from '#plan/demo';
import type { Bench } from '#ui/bench';
import { Listed } from '#ui/outline/listed.svelte.ts';

function outline() {
  const editor = createEditor(demoSite());
  const bench = {
    get state() {
      return editor.state;
    },
    assessment: { loops: [{ id: editor.state.site.loops[0]!.id, inductance_H: 1.2e-4 }] }
  } as unknown as Bench;
  return { editor, listed: new Listed(bench) };
}

test('what is committed and selected is in the list at once', () => {
  const { editor, listed } = outline();
  const [item] = listed.items;
  expect(listed.isSelected(item!)).toBe(false);
  editor.select([item!.ref]);
  expect(listed.isSelected(item!)).toBe(true);
  const { length } = listed.items;
  editor.commit({ label: 'Vehicles', site: { ...editor.state.site, probes: [] } });
  expect(listed.items.length).toBeLessThan(length);
});

test('a loop reads as its label does, also while a hand is at work, and says what holds it', () => {
  const { editor, listed } = outline();
  const { id } = editor.state.site.loops[0]!;
  const text = () => listed.textOf(listed.items.find(({ ref }) => ref.kind === 'loop' && ref.id === id)!);
  expect(text()).toMatch(/; L\s120\.0\sµH/);
  expect(text()).not.toMatch(/locked/i);
  editor.setTool('vehicle');
  const hand = { pointer: 'mouse', button: 0, shift: false, alt: false, control: false } as const;
  editor.pointer({ ...hand, type: 'down', x: 9, y: 9 });
  expect(editor.state.busy).toBe(true);
  expect(text()).toMatch(/; L\s120\.0\sµH/);
  editor.cancel();
  const loops = editor.state.site.loops.map((loop) => ({ ...loop, locked: true }));
  editor.commit({ label: 'Lock', site: { ...editor.state.site, loops } });
  expect(text()).toMatch(/locked/i);
});

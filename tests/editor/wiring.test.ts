/** Commands that wire loops and draw ways, and the hand on a drawn way. */
import { describe, expect, it } from 'vitest';
import type { Site } from '#plan/schema';
import type { Editor } from '#editor/types';
import { wayHandles } from '#editor/ways';
import { openEditor, withoutSnap } from './hand';
import { siteWith, square } from './sites';

const marks = [
  { id: 'm1', kind: 'pull-box', points: [[6, 1]] },
  { id: 'm2', kind: 'cabinet', points: [[6, 7]] }
];

/** Four loops of 2 × 2 m in a square, 4 m apart. */
const four = () => siteWith({ shapes: [square(0, 0), square(-4, 0), square(-4, -4), square(0, -4)], marks });

function opened(site: Site = four()) {
  const made = openEditor(site);
  withoutSnap(made.editor);
  return made;
}

const select = (editor: Editor, ...ids: string[]): void => {
  editor.select(ids.map((id) => ({ kind: 'loop', id })));
};
const wiring = (editor: Editor) =>
  editor.state.site.circuits.map(({ strings }) =>
    strings
      .map((string) => string.map(({ loop, reversed }) => (reversed ? `-${loop}` : loop)).join('+'))
      .join('|')
  );
const tail = (editor: Editor) => (editor.state.draft ?? editor.state.site).loops[0]!.tail;
const leadIn = (editor: Editor) => (editor.state.draft ?? editor.state.site).circuits[0]!.leadIn;

describe('wiring by keys', () => {
  it('puts four loops into two equal strings with one key, and takes it back with one undo', () => {
    const { editor, hand } = opened();
    select(editor, 'L1', 'L2', 'L3', 'L4');
    hand.key('x');
    expect(wiring(editor)).toEqual(['L1+L2|L3+L4']);
    editor.undo();
    expect(wiring(editor)).toEqual(['L1', 'L2', 'L3', 'L4']);
  });

  it('wires in series and in parallel, takes apart and reverses', () => {
    const { editor, hand } = opened();
    select(editor, 'L1', 'L2');
    hand.key('w');
    expect(wiring(editor)).toEqual(['L1+L2', 'L3', 'L4']);
    hand.key('W', { shift: true });
    expect(wiring(editor)).toEqual(['L1|L2', 'L3', 'L4']);
    select(editor, 'L2');
    hand.key('i');
    expect(wiring(editor)).toEqual(['L1|-L2', 'L3', 'L4']);
    hand.key('X', { shift: true });
    expect(wiring(editor)).toEqual(['L1', 'L3', 'L4', '-L2']);
  });

  it('offers nothing that would change nothing', () => {
    const { editor } = opened();
    select(editor, 'L1');
    for (const id of ['join-in-series', 'join-in-parallel', 'join-series-parallel', 'split-circuit'])
      expect(editor.run(id), id).toBe(false);
    select(editor, 'L1', 'L2', 'L3');
    expect(editor.run('join-series-parallel')).toBe(false);
    editor.select([]);
    expect(editor.run('reverse-winding')).toBe(false);
    expect(editor.run('lead-out')).toBe(false);
  });
});

describe('leading out', () => {
  function led() {
    const made = opened();
    select(made.editor, 'L1');
    made.hand.key('u');
    made.hand.key('U', { shift: true });
    return made;
  }

  it('draws the tail and the lead-in, once', () => {
    const { editor } = led();
    // From the corner (1, 1) 5 m to the box and a metre of slack; 6 m to the cabinet and two of slack.
    expect(tail(editor)).toEqual({ length: 6, route: { to: 'm1', via: [], allowance: 1 } });
    expect(leadIn(editor).length).toBe(8);
    expect(editor.run('lead-out')).toBe(false);
    expect(editor.run('lead-in')).toBe(false);
  });

  it('lets the lengths follow a loop under the hand, and undo them exactly', () => {
    const { editor, hand } = led();
    const { site } = editor.state;
    hand.hold([-1, 0.5], [-2, 0.5], [-3, 0.5]);
    expect(tail(editor).length).toBe(8);
    expect(editor.state.site).toBe(site);
    hand.send('up', [-3, 0.5]);
    expect(editor.state.site.loops[0]?.tail.length).toBe(8);
    editor.undo();
    expect(editor.state.site).toBe(site);
  });

  it('lets them follow the pull box too, both of them', () => {
    const { editor, hand } = led();
    editor.select([]);
    hand.drag([6, 1], [8, 1]);
    expect(tail(editor).length).toBe(8);
    expect(leadIn(editor).length).toBeCloseTo(Math.hypot(2, 6) + 2, 6);
  });

  it('bends where the middle is dragged, straightens where the bend is dragged onto an end', () => {
    const { editor, hand } = led();
    const [middle] = wayHandles(editor.state.site, 'L1', editor.state.viewport);
    expect(middle).toMatchObject({ kind: 'between', at: [3.5, 1] });
    hand.drag([3.5, 1], [6, -4]);
    expect(tail(editor).route?.via).toEqual([[6, -4]]);
    // The corner (1, −1) is nearest to the bend now: 5.831 m there, 5 m on, 1 m of slack.
    expect(tail(editor).length).toBeCloseTo(Math.hypot(5, 3) + 5 + 1, 6);
    expect(editor.state.undoLabel).toBe('Reroute tail');
    hand.drag([6, -4], [6, -2]);
    expect(tail(editor).route?.via).toEqual([[6, -2]]);
    hand.drag([6, -2], [6.1, 0.95]);
    expect(tail(editor).route?.via).toEqual([]);
    expect(tail(editor).length).toBe(6);
  });

  it('bends the lead-in of the selected loop’s circuit in the same way', () => {
    const { editor, hand } = led();
    hand.drag([6, 4], [9, 4]);
    expect(leadIn(editor).route?.via).toEqual([[9, 4]]);
    expect(leadIn(editor).length).toBeCloseTo(2 * Math.hypot(3, 3) + 2, 6);
  });

  it('forgets a drag that is escaped', () => {
    const { editor, hand } = led();
    const { site } = editor.state;
    hand.hold([3.5, 1], [6, -4]);
    expect(tail(editor).route?.via).toHaveLength(1);
    hand.key('Escape');
    expect(editor.state).toMatchObject({ site, draft: null });
  });

  it('keeps a typed length when the pull box is deleted', () => {
    const { editor, hand } = led();
    editor.select([{ kind: 'mark', id: 'm1' }]);
    hand.key('Delete');
    expect(tail(editor)).toEqual({ length: 6 });
    expect(leadIn(editor)).toEqual({ cable: 'pair-14', length: 8 });
  });

  it('leads a duplicate to the same pull box, and a copy in another document nowhere', () => {
    const { editor, hand } = led();
    hand.key('d', { control: true });
    expect(editor.state.site.loops.at(-1)?.tail.route?.to).toBe('m1');
    hand.key('c', { control: true });
    editor.open(siteWith({ marks: [{ id: 'm1', kind: 'pull-box', points: [[2, 2]] }] })); // prettier-ignore
    hand.key('v', { control: true });
    expect(editor.state.site.loops.at(-1)?.tail).not.toHaveProperty('route');
  });
});

describe('pull boxes and cabinets', () => {
  it.each([
    ['j', 'pull-box', 'Place pull box'],
    ['k', 'cabinet', 'Place cabinet']
  ])('with %s a %s follows the pointer and is put down where it is released', (key, kind, label) => {
    const { editor, hand } = opened(siteWith({}));
    hand.key(key);
    hand.hover([1, 1]);
    expect(editor.state.draft?.marks).toMatchObject([{ kind, points: [[1, 1]] }]); // prettier-ignore
    hand.drag([2, 1], [3, 2]);
    expect(editor.state.site.marks).toMatchObject([{ kind, points: [[3, 2]] }]); // prettier-ignore
    expect(editor.state).toMatchObject({ tool: 'select', undoLabel: label, draft: null });
  });

  it('come without a pointer too, not on top of each other', () => {
    const { editor, hand } = opened(siteWith({}));
    hand.key('J', { shift: true });
    hand.key('J', { shift: true });
    hand.key('K', { shift: true });
    expect(editor.state.site.marks.map(({ kind, points }) => [kind, points[0]])).toEqual([
      ['pull-box', [0, 0]],
      ['pull-box', [1, 0]],
      ['cabinet', [2, 0]]
    ]);
  });
});

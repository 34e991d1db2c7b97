import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { normalAngle } from '#plan/geometry/points';
import type { Point, Shape } from '#plan/schema';
import { speakWhole } from '#i18n/whole';
import { selectionHandles } from '#editor/handles';
import type { Editor, ToolName } from '#editor/types';
import { openEditor, withoutSnap, type Hand } from './hand';
import { siteWith, square } from './sites';

/** Milliseconds, for machines that are busy with other tests at the same time. */
const PATIENCE = 60_000;
/** Documents keep lengths to a tenth of a micrometre. */
const TENTH_MICROMETRE = 1.01e-7;

const shapeOf = (editor: Editor, id = 'L1'): Shape =>
  (editor.state.draft ?? editor.state.site).loops.find((loop) => loop.id === id)!.shape;

function type(hand: Hand, ...keys: string[]): void {
  for (const each of keys) {
    if (each.length > 1 && /^[A-Z][a-z]/.test(each)) hand.key(each);
    else for (const key of each) hand.key(key);
  }
}

function drawing(tool: ToolName, site?: Parameters<typeof siteWith>[0]) {
  const opened = openEditor(site && siteWith(site));
  withoutSnap(opened.editor);
  opened.editor.setTool(tool);
  return opened;
}

const texts = (editor: Editor) => editor.state.entry?.fields.map(({ text }) => text);

describe('a size typed while a loop is drawn', () => {
  it('opens with the first digit after the press, and every character arrives', () => {
    const { editor, hand } = drawing('rectangle');
    hand.hold([0, 0]);
    type(hand, '180 cm');
    expect(texts(editor)).toEqual(['180 cm', null, null]);
    expect(editor.state.entry?.active).toBe(0);
    expect(editor.state.tool).toBe('rectangle');
    expect(shapeOf(editor)).toMatchObject({ width: 1.8 });
  });

  it('takes a bare 180 as 180 of the unit that is shown', () => {
    const { editor, hand } = drawing('rectangle');
    hand.hold([0, 0], [1, 1]);
    type(hand, '180');
    expect(shapeOf(editor)).toMatchObject({ width: 180, length: 1 });
  });

  it('goes on to the next size with Tab and back with Shift, and Enter draws', () => {
    const { editor, hand } = drawing('rectangle');
    hand.hold([1, 1], [2, 3]);
    type(hand, '1.8', 'Tab', '2.4');
    hand.key('Tab', { shift: true });
    expect(editor.state.entry?.active).toBe(0);
    type(hand, 'Enter');
    expect(editor.state).toMatchObject({
      tool: 'select',
      busy: false,
      entry: null,
      undoLabel: 'Draw rectangle'
    });
    expect(shapeOf(editor)).toMatchObject({ centre: [1.9, 2.2], width: 1.8, length: 2.4, rotation: 0 });
    hand.send('up', [5, 5]);
    expect(editor.state.site.loops).toHaveLength(1);
  });

  it('comes round with Tab and Shift from either end', () => {
    const { editor, hand } = drawing('rectangle');
    hand.hold([1, 1], [2, 3]);
    type(hand, '1');
    hand.key('Tab', { shift: true });
    expect(editor.state.entry?.active).toBe(2);
    hand.key('Tab');
    expect(editor.state.entry?.active).toBe(0);
  });

  it('takes a sign that some keyboards have under Control and Alt together', () => {
    const { editor, hand } = drawing('rectangle');
    hand.hold([1, 1]);
    hand.key('@', { control: true });
    expect(editor.state.entry?.place).toBeNull();
    hand.key('@', { control: true, alt: true });
    expect(editor.state.entry?.place?.text).toBe('@');
  });

  it('keeps what is typed while the pointer moves the rest', () => {
    const { editor, hand } = drawing('quadrupole');
    hand.hold([0, 0], [1, 1]);
    type(hand, '1.5');
    hand.send('move', [-3, 2.5]);
    expect(shapeOf(editor)).toMatchObject({ width: 1.5, length: 2.5, centre: [-0.75, 1.25] });
    hand.send('up', [-3, 2.5]);
    expect(shapeOf(editor)).toMatchObject({ width: 1.5, length: 2.5 });
  });

  it('turns by a typed angle about the corner that it began at', () => {
    const { editor, hand } = drawing('rectangle');
    hand.hold([0, 0], [1, 1]);
    type(hand, '2', 'Tab', '1', 'Tab', '90', 'Enter');
    expect(shapeOf(editor)).toMatchObject({ width: 2, length: 1, rotation: 90, centre: [0.5, 1] });
    // To the other side of the turned width, where the pointer is.
    editor.undo();
    editor.setTool('rectangle');
    hand.hold([0, 0], [-1, 1]);
    type(hand, '2', 'Tab', '1', 'Tab', '90', 'Enter');
    expect(shapeOf(editor)).toMatchObject({ rotation: 90, centre: [-0.5, 1] });
  });

  it('works from click to click as well', () => {
    const { editor, hand } = drawing('circle');
    hand.click([1, 2]);
    hand.hover([4, 4]);
    type(hand, "6'", 'Enter');
    expect(shapeOf(editor)).toMatchObject({ centre: [1, 2], diameter: 1.8288 });
  });

  it('takes the opposite corner as a place from the first', () => {
    const { editor, hand } = drawing('rectangle');
    hand.hold([1, 1]);
    type(hand, '@-3,2', 'Enter');
    expect(shapeOf(editor)).toMatchObject({ width: 3, length: 2, centre: [-0.5, 2] });
  });

  it(
    'is exact whatever the pointer does before, between and after',
    () => {
      const place = fc.tuple(
        fc.double({ min: -9, max: 9, noNaN: true }),
        fc.double({ min: -7, max: 7, noNaN: true })
      );
      const tenths = fc.integer({ min: 500, max: 90_000 });
      fc.assert(
        fc.property(
          place,
          place,
          place,
          tenths,
          tenths,
          fc.integer({ min: 0, max: 359 }),
          (from, on, off, w, l, angle) => {
            const { editor, hand } = drawing('rectangle');
            hand.hold(from, on);
            type(hand, `${w / 10} mm`, 'Tab');
            hand.send('move', off);
            type(hand, `${l / 10} mm`, 'Tab', String(angle));
            hand.send('move', on);
            hand.key('Enter');
            const shape = shapeOf(editor) as Extract<Shape, { kind: 'rectangle' }>;
            expect(Math.abs(shape.width - w / 10_000)).toBeLessThan(TENTH_MICROMETRE);
            expect(Math.abs(shape.length - l / 10_000)).toBeLessThan(TENTH_MICROMETRE);
            expect(Math.abs(normalAngle(shape.rotation - angle))).toBeLessThan(1e-6);
          }
        ),
        { numRuns: 100 }
      );
    },
    PATIENCE
  );
});

describe('what cannot be taken', () => {
  it('is said and does not draw, until it is put right', () => {
    const { editor, hand } = drawing('rectangle');
    hand.hold([0, 0], [2, 2]);
    type(hand, '1.8q', 'Enter');
    expect(editor.state.busy).toBe(true);
    expect(editor.state.site.loops).toHaveLength(0);
    expect(editor.state.entry).toMatchObject({ isRefused: true });
    expect(editor.state.entry?.fields[0]?.problem).toContain('q');
    type(hand, 'Backspace');
    expect(editor.state.entry).toMatchObject({ isRefused: false });
    type(hand, 'Enter');
    expect(shapeOf(editor)).toMatchObject({ width: 1.8, length: 2 });
  });

  it('includes sizes that no site holds', () => {
    const { editor, hand } = drawing('circle');
    hand.hold([0, 0], [1, 0]);
    type(hand, '501', 'Enter');
    expect(editor.state.site.loops).toHaveLength(0);
    expect(editor.state.entry?.fields[0]?.problem).toContain('500');
  });

  it('reads a comma between two lengths as such, but where it is the decimal sign', () => {
    const { editor, hand } = drawing('lane');
    hand.click([0, 0]);
    type(hand, '@1.5,2');
    expect(editor.state.entry?.place?.offset).toEqual([1.5, 2]);
    type(hand, 'Escape', 'Escape');
    speakWhole('de');
    try {
      hand.click([0, 0]);
      type(hand, '@1,5');
      expect(editor.state.entry?.place?.offset).toBeNull();
      type(hand, ';2');
      expect(editor.state.entry?.place?.offset).toEqual([1.5, 2]);
    } finally {
      speakWhole('en');
    }
  });
});

describe('Escape', () => {
  it('gives the field back first, then drops the gesture, and the document is the very same', () => {
    const { editor, hand } = drawing('rectangle', { shapes: [square(5, 5)] });
    const { site } = editor.state;
    const text = JSON.stringify(site);
    hand.hold([0, 0], [2, 1]);
    type(hand, '3', 'Escape');
    expect(editor.state).toMatchObject({ busy: true, tool: 'rectangle' });
    expect(texts(editor)).toEqual([null, null, null]);
    expect(shapeOf(editor, 'L2')).toMatchObject({ width: 2, length: 1 });
    type(hand, 'Escape');
    expect(editor.state).toMatchObject({
      busy: false,
      entry: null,
      draft: null,
      revision: 0,
      undoLabel: null
    });
    expect(editor.state.site).toBe(site);
    expect(JSON.stringify(site)).toBe(text);
  });

  it(
    'leaves the same document after anything that was typed',
    () => {
      const key = fc.constantFrom(...'0123456789.,-@<;\'"m cft', 'Tab', 'Backspace', 'ArrowUp', 'ArrowDown');
      const tool = fc.constantFrom<ToolName>(
        'rectangle',
        'diagonal',
        'circle',
        'lane',
        'polygon',
        'gate',
        'kerb',
        'steel'
      );
      fc.assert(
        fc.property(tool, fc.array(key, { maxLength: 14 }), (name, keys) => {
          const { editor, hand } = drawing(name, { shapes: [square(5, 5)] });
          const { site } = editor.state;
          const text = JSON.stringify(site);
          hand.hold([0, 0], [1.2, 0.7]);
          type(hand, ...keys);
          hand.key('Escape');
          hand.key('Escape');
          expect(editor.state.site).toBe(site);
          expect(JSON.stringify(site)).toBe(text);
          expect(editor.state).toMatchObject({ busy: false, draft: null, entry: null, revision: 0 });
        }),
        { numRuns: 150 }
      );
    },
    PATIENCE
  );

  it('is not what undo does to typing: the text goes, the gesture stays', () => {
    const { editor, hand } = drawing('rectangle');
    hand.hold([0, 0], [2, 1]);
    type(hand, '34');
    hand.key('z', { control: true });
    expect(editor.state.busy).toBe(true);
    expect(texts(editor)).toEqual([null, null, null]);
  });
});

describe('keys while a size is open', () => {
  it('never run a command', () => {
    const { editor, hand } = drawing('rectangle');
    editor.setSnap({ ...editor.state.snap, showGrid: true });
    hand.hold([0, 0], [2, 1]);
    const { viewport, snap } = editor.state;
    type(hand, '1', ...'-+0gGovrlTk?'.split(''), 'Delete', 'Home', 'PageDown', 'ArrowLeft');
    expect(editor.state).toMatchObject({ tool: 'rectangle', viewport, snap, busy: true });
    expect(editor.state.site.loops).toHaveLength(0);
  });

  it('step the size up and down', () => {
    const { editor, hand } = drawing('circle');
    hand.hold([0, 0], [1, 0]);
    type(hand, '2', 'ArrowUp');
    expect(shapeOf(editor)).toMatchObject({ diameter: 2.05 });
    hand.key('ArrowDown', { shift: true });
    expect(shapeOf(editor)).toMatchObject({ diameter: 1.55 });
  });
});

describe('points of a chain', () => {
  it('are put by length and angle, and Enter with nothing typed ends', () => {
    const { editor, hand } = drawing('lane');
    hand.click([0, 0]);
    type(hand, '5', 'Tab', '90', 'Enter');
    expect(texts(editor)).toEqual([null, null]);
    type(hand, '@2<0', 'Enter', 'Enter');
    expect(editor.state.tool).toBe('select');
    const points = editor.state.site.lanes[0]?.centreline ?? [];
    expect(points).toHaveLength(3);
    [[0, 0], [0, 5], [2, 5]].forEach(([x, y], index) => {
      expect(points[index]?.[0]).toBeCloseTo(x!, 9);
      expect(points[index]?.[1]).toBeCloseTo(y!, 9);
    }); // prettier-ignore
  });

  it('never run backwards from a typed angle', () => {
    const { editor, hand } = drawing('path');
    hand.click([1, 1]);
    hand.hover([-4, 2]);
    type(hand, 'Tab', 'Tab', '0');
    expect(editor.state.entry?.fields[1]).toMatchObject({ id: 'angle', typed: 0 });
    expect(editor.state.entry?.fields[0]?.value).toBeCloseTo(0, 9);
  });

  it('go as far as was typed in the direction of the pointer', () => {
    const { editor, hand } = drawing('path');
    hand.click([1, 1]);
    hand.hover([4, 5]);
    type(hand, '10', 'Enter', 'Enter');
    expect(editor.state.site.paths[0]?.points[1]?.[0]).toBeCloseTo(7, 9);
    expect(editor.state.site.paths[0]?.points[1]?.[1]).toBeCloseTo(9, 9);
  });

  it('put no second point for an Enter after a typed one', () => {
    const { editor, hand } = drawing('kerb');
    hand.click([0, 0]);
    hand.hover([1, 0]);
    type(hand, '4', 'Enter', 'Enter');
    expect(editor.state.site.marks[0]?.points).toEqual([[0, 0], [4, 0]]); // prettier-ignore
  });
});

describe('a change typed while it is made', () => {
  const selected = (shape: Partial<Shape> = square(0, 0)) => {
    const opened = openEditor(siteWith({ shapes: [shape] }));
    withoutSnap(opened.editor);
    opened.editor.select([{ kind: 'loop', id: 'L1' }]);
    return opened;
  };
  const handleAt = (editor: Editor, id: string): Point => {
    const { site, selection, viewport } = editor.state;
    return selectionHandles(site, selection, viewport).find((handle) => handle.id === id)!.at;
  };

  it('moves by exactly that much, straight from the press', () => {
    const { editor, hand } = selected();
    hand.hold([0, 0]);
    type(hand, '-0.35', 'Tab', '4 ft', 'Enter');
    expect(shapeOf(editor)).toMatchObject({ centre: [-0.35, 1.2192] });
    expect(editor.state.undoLabel).toBe('Move loop');
  });

  it('moves by a length and a direction', () => {
    const { editor, hand } = selected();
    hand.hold([0, 0], [1, 1]);
    type(hand, '@2<180', 'Enter');
    expect(shapeOf(editor)).toMatchObject({ centre: [-2, 0] });
  });

  it('resizes by the corner with the opposite one in its place, and by the side only along itself', () => {
    const { editor, hand } = selected({ ...square(0, 0), rotation: 30 });
    const before = handleAt(editor, 'sw');
    hand.hold(handleAt(editor, 'ne'), [3, 1]);
    type(hand, '2.5', 'Tab', '1.25', 'Enter');
    expect(shapeOf(editor)).toMatchObject({ width: 2.5, length: 1.25, rotation: 30 });
    expect(
      Math.hypot(handleAt(editor, 'sw')[0] - before[0], handleAt(editor, 'sw')[1] - before[1])
    ).toBeLessThan(1e-6);
    hand.hold(handleAt(editor, 'e'), [3, 1]);
    expect(editor.state.entry?.fields.map(({ id }) => id)).toEqual(['width']);
    type(hand, '3', 'Enter');
    expect(shapeOf(editor)).toMatchObject({ width: 3, length: 1.25 });
  });

  it('resizes a circle by its diameter', () => {
    const { editor, hand } = selected({ kind: 'circle', centre: [0, 0], diameter: 2 });
    hand.hold(handleAt(editor, 'e'), [2, 0]);
    type(hand, '1.1', 'Enter');
    expect(shapeOf(editor)).toMatchObject({ diameter: 1.1, centre: [-0.45, 0] });
  });

  it('turns to the angle', () => {
    const { editor, hand } = selected();
    hand.hold(handleAt(editor, 'rotate'), [1, 1]);
    type(hand, '22.5', 'Enter');
    expect(shapeOf(editor)).toMatchObject({ rotation: 22.5, centre: [0, 0] });
  });
});

describe('the fields for a finger', () => {
  it('do what the keys do', () => {
    const { editor, hand } = drawing('rectangle');
    hand.send('down', [0, 0], {}, 'touch');
    hand.send('up', [0, 0], {}, 'touch');
    expect(editor.state.entry).toMatchObject({ by: 'touch', active: null });
    editor.enter('width', '1,8 m');
    editor.enter('length', 'nonsense');
    expect(editor.commitEntry()).toBe(false);
    editor.enter('length', null);
    editor.enter('length', '2');
    expect(editor.commitEntry()).toBe(true);
    expect(shapeOf(editor)).toMatchObject({ width: 1.8, length: 2 });
    expect(editor.commitEntry()).toBe(false);
  });
});

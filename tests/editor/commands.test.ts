import { t } from '#i18n/message';
import { describe, expect, it } from 'vitest';
import type { Point } from '#plan/schema';
import { centreOf } from '#plan/shapes/index';
import { commandForKey, commands } from '#editor/commands/index';
import { keyText } from '#editor/commands/key';
import type { Editor, KeyInput } from '#editor/types';
import { handOf, openEditor } from './hand';
import { siteWith, square } from './sites';

const input = (key: string, held: Partial<KeyInput> = {}): KeyInput => ({
  shift: false,
  alt: false,
  control: false,
  ...held,
  key
});
const centres = (editor: Editor): readonly Point[] =>
  editor.state.site.loops.map(({ shape }) => {
    const [x, y] = centreOf(shape);
    return [Number(x.toFixed(6)), Number(y.toFixed(6))];
  });

describe('keys', () => {
  it('belong to one command each', () => {
    const keys = commands.flatMap((command) => command.keys);
    expect(keys.filter((key, index) => keys.indexOf(key) !== index)).toEqual([]);
  });

  it('are written as a press is read, so that every one can be pressed', () => {
    for (const command of commands)
      for (const key of command.keys) {
        const parts = key.split('+').filter((part) => part !== '');
        const name = key.endsWith('+') ? '+' : parts.at(-1)!;
        const press = input(name.length === 1 ? name.toLowerCase() : name, {
          control: key.includes('Control+'),
          shift: key.includes('Shift+'),
          alt: key.includes('Alt+')
        });
        expect(commandForKey(press)?.id).toBe(command.id);
      }
  });

  it('belong to commands with ids and labels of their own', () => {
    const ids = commands.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    const labels = commands.map(({ id }) => t(`command.${id}`));
    expect(new Set(labels).size).toBe(labels.length);
  });

  it('do not depend on capital letters, nor on shift where a sign needs it', () => {
    expect(keyText(input('Z', { control: true, shift: true }))).toBe('Control+Shift+Z');
    expect(keyText(input('z', { control: true }))).toBe('Control+Z');
    expect(keyText(input('+', { shift: true }))).toBe('+');
    expect(commandForKey(input('r', { control: true }))).toBeNull();
  });

  it('choose every tool', () => {
    const { editor, hand } = openEditor();
    for (const key of ['r', 'q', 'd', 'c', 'p', 'l', 's', 'a', 'm', 'h', 'v']) hand.key(key);
    const chosen = [...'rqdcplsamhv'].map((key) => {
      hand.key(key);
      return editor.state.tool;
    });
    expect(new Set(chosen).size).toBe(11);
    expect(chosen.at(-1)).toBe('select');
  });
});

describe('nudging', () => {
  it('moves by a centimetre, ten with shift, and is one step for presses in a row', () => {
    const { editor, hand } = openEditor(siteWith({ shapes: [square(0, 0), square(5, 0)] }));
    hand.click([0, 0]);
    hand.key('ArrowRight');
    hand.key('ArrowRight');
    hand.key('ArrowUp', { shift: true });
    expect(centres(editor)).toEqual([[0.02, 0.1], [5, 0]]); // prettier-ignore
    editor.undo();
    expect(centres(editor)[0]).toEqual([0, 0]);
    editor.redo();
    expect(centres(editor)[0]).toEqual([0.02, 0.1]);
  });

  it('begins a new step after another selection or an undo', () => {
    const { editor, hand } = openEditor(siteWith({ shapes: [square(0, 0), square(5, 0)] }));
    hand.click([0, 0]);
    hand.key('ArrowRight');
    hand.click([5, 0]);
    hand.click([0, 0]);
    hand.key('ArrowRight');
    editor.undo();
    expect(centres(editor)[0]).toEqual([0.01, 0]);
    editor.undo();
    expect(centres(editor)[0]).toEqual([0, 0]);
  });

  it('moves by half an inch on an imperial drawing', () => {
    const { editor, hand } = openEditor(siteWith({ shapes: [square(0, 0)], units: 'imperial' }));
    hand.key('a', { control: true });
    hand.key('ArrowLeft');
    expect(centres(editor)[0]).toEqual([-0.0127, 0]);
  });
});

describe('copies', () => {
  it('lie beside the original, and repeat the distance that the hand gave them', () => {
    const { editor, hand } = openEditor(siteWith({ shapes: [square(0, 0)] }));
    hand.click([0, 0]);
    hand.key('d', { control: true });
    expect(centres(editor)).toEqual([[0, 0], [3, 0]]); // prettier-ignore
    hand.drag([3, 0], [0, 4]);
    hand.key('d', { control: true });
    hand.key('d', { control: true });
    expect(centres(editor)).toEqual([[0, 0], [0, 4], [0, 8], [0, 12]]); // prettier-ignore
    expect(editor.state.site.loops.map(({ id }) => id)).toEqual(['L1', 'L2', 'L3', 'L4']);
  });

  it('take their wiring along on channels of their own', () => {
    const { editor, hand } = openEditor(siteWith({ shapes: [square(0, 0), square(5, 0)] }));
    hand.key('a', { control: true });
    editor.run('join-in-series');
    hand.key('a', { control: true });
    hand.key('d', { control: true });
    const { circuits } = editor.state.site;
    expect(circuits.map(({ strings }) => strings.map((string) => string.map(({ loop }) => loop)))).toEqual([
      [['L1', 'L2']],
      [['L3', 'L4']]
    ]);
    const places = circuits.map(({ channel }) => `${channel?.unit} ${channel?.number}`);
    expect(new Set(places).size).toBe(2);
  });

  it('come where the pointer is, or beside the origin and never on one another', () => {
    const { editor, hand } = openEditor(siteWith({ shapes: [square(0, 0)] }));
    hand.click([0, 0]);
    hand.key('c', { control: true });
    hand.hover([4, -2]);
    hand.key('v', { control: true });
    hand.send('leave', [4, -2]);
    hand.key('v', { control: true });
    hand.key('v', { control: true });
    hand.key('V', { control: true, shift: true });
    expect(centres(editor)).toEqual([[0, 0], [4, -2], [3, 0], [6, 0], [0, 0]]); // prettier-ignore
  });

  it('outlive the original that was cut', () => {
    const { editor, hand } = openEditor(siteWith({ shapes: [square(0, 0)] }));
    hand.click([0, 0]);
    hand.key('x', { control: true });
    expect(editor.state.site).toMatchObject({ loops: [], circuits: [] });
    hand.key('V', { control: true, shift: true });
    expect(centres(editor)).toEqual([[0, 0]]);
    expect(editor.state.site.circuits).toHaveLength(1);
  });

  it('are nothing while nothing was copied', () => {
    const { editor, hand } = openEditor(siteWith({ shapes: [square(0, 0)] }));
    hand.key('v', { control: true });
    hand.key('d', { control: true });
    expect(editor.state.revision).toBe(0);
  });
});

describe('wiring', () => {
  it('joins the circuits of the selected loops and splits them again', () => {
    const { editor } = openEditor(siteWith({ shapes: [square(0, 0), square(5, 0), square(-5, 0)] }));
    expect(editor.run('join-in-series')).toBe(false);
    editor.run('select-all');
    expect(editor.run('join-in-series')).toBe(true);
    expect(editor.state.site.circuits).toMatchObject([
      { id: 'C1', strings: [[{ loop: 'L1' }, { loop: 'L2' }, { loop: 'L3' }]] }
    ]);
    expect(editor.run('split-circuit')).toBe(true);
    expect(editor.state.site.circuits.map(({ strings }) => strings.flat().map(({ loop }) => loop))).toEqual([
      ['L1'],
      ['L2'],
      ['L3']
    ]);
    expect(editor.run('split-circuit')).toBe(false);
  });
});

describe('without a pointer', () => {
  it('inserts every shape in the middle of the view, beside what is there', () => {
    const { editor, hand } = openEditor();
    for (const key of ['R', 'Q', 'D', 'C', 'P']) hand.key(key, { shift: true });
    expect(editor.state.site.loops.map(({ shape }) => shape.kind)).toEqual([
      'rectangle',
      'quadrupole',
      'diagonal',
      'circle',
      'polygon'
    ]);
    expect(new Set(centres(editor).map(String)).size).toBe(5);
    expect(editor.state.selection).toEqual([{ kind: 'loop', id: 'L5' }]);
  });

  it('inserts on the middle of the lane in sight', () => {
    const lanes = [{ id: 'lane1', centreline: [[0.7, -9], [0.7, 9]], width: 3 }]; // prettier-ignore
    const { editor } = openEditor(siteWith({ lanes }));
    editor.run('insert-rectangle');
    expect(centres(editor)).toEqual([[0.7, 0]]);
  });
});

describe('the view', () => {
  it('zooms about its middle, fits all and fits the selection', () => {
    const { editor, hand } = openEditor(siteWith({ shapes: [square(30, 40), square(-30, 40)] }));
    hand.key('+');
    expect(editor.state.viewport).toMatchObject({ centre: [0, 0], scale: 62.5 });
    hand.key('-');
    expect(editor.state.viewport.scale).toBeCloseTo(50, 9);
    hand.key('f');
    expect(editor.state.viewport.centre).toEqual([0, 40]);
    editor.select([{ kind: 'loop', id: 'L1' }]);
    hand.key('F', { shift: true });
    expect(editor.state.viewport.centre).toEqual([30, 40]);
  });

  it('shows a piece of road when there is nothing to fit', () => {
    const { editor, hand } = openEditor();
    editor.pan(500, 500);
    hand.key('Home');
    expect(editor.state.viewport.centre).toEqual([0, 0]);
  });

  it('has three switches for grid and snapping', () => {
    const { editor, hand } = openEditor();
    hand.key('g');
    expect(editor.state.snap).toMatchObject({ showGrid: false, grid: true, objects: true });
    hand.key('G', { shift: true });
    expect(editor.state.snap).toMatchObject({ showGrid: false, grid: false, objects: true });
    hand.key('o');
    expect(editor.state.snap).toMatchObject({ showGrid: false, grid: false, objects: false });
  });
});

describe('a command that does not apply', () => {
  it('does nothing and says so', () => {
    const { editor } = openEditor();
    for (const id of [
      'undo',
      'redo',
      'delete',
      'copy',
      'nudge-left',
      'rotate-left',
      'fit-selection',
      'cancel',
      'no-such-command'
    ])
      expect(editor.run(id)).toBe(false);
    expect(editor.state.revision).toBe(0);
  });

  it('leaves a gesture in hand alone', () => {
    const { editor } = openEditor(siteWith({ shapes: [square(0, 0)] }));
    const hand = handOf(editor);
    hand.hold([0, 0], [1, 1]);
    expect(hand.key('Delete')).toBe(false);
    expect(editor.state.draft).not.toBeNull();
  });
});

import { describe, expect, it } from 'vitest';
import type { Shape } from '#plan/schema';
import type { Drawing, LineDrawing, TextDrawing } from '#scenes/drawing';
import { furnitureScene, scaleText } from '#scenes/furniture';
import { gridScene, gridSteps } from '#scenes/grid';
import { helpScene } from '#scenes/help';
import { callText, labelsScene } from '#scenes/labels';
import { laneLinesScene, surfaceScene } from '#scenes/lanes';
import { loopsScene, tintOf } from '#scenes/loops';
import { marksScene } from '#scenes/marks';
import { wrapped } from '#scenes/writing';
import { selectionScene } from '#scenes/selection';
import { vehiclesScene } from '#scenes/vehicles';
import { LIGHT } from '#scenes/theme';
import { handOf } from '../editor/hand';
import { siteWith, square } from '../editor/sites';
import { editorOf, frameOf } from './frames';

const lines = (drawings: readonly Drawing[]) =>
  drawings.filter((each): each is LineDrawing => each.kind === 'line');
const texts = (drawings: readonly Drawing[]) =>
  drawings.filter((each): each is TextDrawing => each.kind === 'text').map(({ text }) => text);
const ofColour = (drawings: readonly Drawing[], colour: string) =>
  lines(drawings).filter(({ stroke }) => stroke?.colour === colour);
const view = editorOf(siteWith({})).state.viewport;

const cutsOf = (shape: Partial<Shape>, scale = 50) => {
  const editor = editorOf(siteWith({ shapes: [shape] }), scale);
  return ofColour(loopsScene(editor.state.site, new Map(), editor.state.viewport, LIGHT), LIGHT.sawCut);
};

describe('the grid', () => {
  it.each([
    [5, 'metric', 5, 50],
    [50, 'metric', 0.5, 5],
    [500, 'metric', 0.05, 0.5],
    [50, 'imperial', 0.3048, 1.524]
  ] as const)('has round steps at %d pixels a metre, %s', (scale, units, fine, coarse) => {
    const steps = gridSteps(scale, units);
    expect(steps.fine).toBeCloseTo(fine, 9);
    expect(steps.coarse).toBeCloseTo(coarse, 9);
  });

  it('draws a line at every step and the coarse ones apart', () => {
    const drawn = gridScene(view, 'metric', LIGHT);
    // 20 by 16 metres at half a metre: 41 and 33 lines, of which 5 and 3 at five metres.
    expect(drawn).toHaveLength(74);
    expect(ofColour(drawn, LIGHT.gridCoarse)).toHaveLength(8);
  });

  it('gives up when lines would be too dense, and never draws thousands', () => {
    expect(gridScene({ ...view, scale: 0.05 }, 'metric', LIGHT)).toEqual([]);
    for (let scale = 0.1; scale < 5_000; scale *= 1.3)
      expect(gridScene({ ...view, scale }, 'metric', LIGHT).length).toBeLessThan(250);
  });
});

describe('lanes', () => {
  const lane = (id: string, x: number) => ({ id, centreline: [[x, -9], [x, 9]], width: 3 }); // prettier-ignore

  it('have a surface from edge to edge', () => {
    const site = siteWith({ lanes: [lane('lane1', 0)] });
    const [surface] = lines(surfaceScene(site.lanes, view, LIGHT));
    expect(surface?.fill).toBe(LIGHT.asphalt);
    expect(surface?.points).toEqual([[425, 850], [425, -50], [575, -50], [575, 850]]); // prettier-ignore
  });

  it('are parted by dashes where they adjoin', () => {
    const site = siteWith({ lanes: [lane('lane1', 0), lane('lane2', 3), lane('lane3', 8)] });
    const edges = ofColour(laneLinesScene(site.lanes, view, LIGHT), LIGHT.roadLine).filter(
      ({ closed }) => !closed
    );
    // The line between two lanes is drawn once.
    expect(edges).toHaveLength(5);
    expect(edges.filter(({ stroke }) => stroke?.dash).map(({ points }) => points[0]?.[0])).toEqual([575]);
  });

  it('carry an arrow in the direction of travel', () => {
    const up = siteWith({ lanes: [lane('lane1', 0)] });
    const down = siteWith({ lanes: [{ id: 'lane1', centreline: [[0, 9], [0, -9]], width: 3 }] }); // prettier-ignore
    const tipOf = (site: typeof up) => {
      const arrow = lines(laneLinesScene(site.lanes, view, LIGHT)).find(({ fill }) => fill === LIGHT.paint)!;
      return { tip: arrow.points[3]![1], tail: arrow.points[0]![1] };
    };
    expect(tipOf(up).tip).toBeLessThan(tipOf(up).tail);
    expect(tipOf(down).tip).toBeGreaterThan(tipOf(down).tail);
  });

  it('are left out where they are out of sight', () => {
    const site = siteWith({ lanes: [lane('lane1', 500)] });
    expect(surfaceScene(site.lanes, view, LIGHT)).toEqual([]);
    expect(laneLinesScene(site.lanes, view, LIGHT)).toEqual([]);
  });
});

describe('loops', () => {
  it('are saw cuts of their true width, but never thinner than can be seen', () => {
    expect(cutsOf(square(0, 0), 1_000)[0]?.stroke?.width).toBeCloseTo(8, 9);
    expect(cutsOf(square(0, 0), 20)[0]?.stroke?.width).toBe(1.5);
  });

  it('go round by all corners, cut or not', () => {
    const [plain] = cutsOf(square(0, 0));
    expect(plain).toMatchObject({ closed: true, points: [[450, 450], [550, 450], [550, 350], [450, 350]] }); // prettier-ignore
    const [cut] = cutsOf({ ...square(0, 0), cornerCut: 0.3 });
    expect(cut?.points).toHaveLength(8);
  });

  it.each(['quadrupole', 'diagonal'] as const)(
    'share the middle slot of a %s, drawn once and wider',
    (kind) => {
      const cuts = cutsOf({ kind, centre: [0, 0], width: 2, length: 4 });
      const [wide, ...others] = cuts.filter(({ stroke }) => stroke!.width > 2);
      expect(others).toEqual([]);
      const middle = kind === 'quadrupole' ? [[500, 500], [500, 300]] : [[450, 500], [550, 300]]; // prettier-ignore
      expect(wide?.points).toEqual(middle);
      const halves = cuts.filter(({ stroke }) => stroke!.width < 2);
      expect(halves.map(({ closed }) => closed)).toEqual([false, false]);
      for (const { points } of halves)
        expect([points[0], points.at(-1)].map(String).sort()).toEqual(middle.map(String).sort());
    }
  );

  it('turn against each other in the two halves of a quadrupole, and back when reversed', () => {
    const site = siteWith({ shapes: [{ kind: 'quadrupole', centre: [0, 0], width: 2, length: 4 }] });
    const arrowsOf = (reversed: boolean) => {
      const circuits = site.circuits.map((circuit) => ({
        ...circuit,
        strings: [[{ loop: 'L1', reversed }]]
      }));
      const drawn = loopsScene({ ...site, circuits }, new Map(), view, LIGHT);
      // The tip of each arrow less the middle of its wings: up is negative on the screen.
      return lines(drawn)
        .filter(({ fill }) => fill === LIGHT.sawCut)
        .map(({ points: [tip, left, right] }) => Math.sign(tip![1] - (left![1] + right![1]) / 2));
    };
    const [left, right] = arrowsOf(false);
    expect(left).toBe(1);
    expect(right).toBe(1);
    expect(arrowsOf(true)).toEqual([-1, -1]);
  });

  it('run their tail to the nearest pull box, if there is one', () => {
    const boxes = [[6, 6], [9, 9]].map(([x, y], index) => ({ id: `m${index}`, kind: 'pull-box', points: [[x, y]] })); // prettier-ignore
    const site = siteWith({ shapes: [square(0, 0)], marks: boxes });
    const tails = ofColour(loopsScene(site, new Map(), view, LIGHT), LIGHT.tail);
    expect(tails.map(({ points }) => points)).toEqual([[[550, 350], [800, 100]]]); // prettier-ignore
    expect(ofColour(loopsScene({ ...site, marks: [] }, new Map(), view, LIGHT), LIGHT.tail)).toEqual([]);
  });

  it('are tinted the more the nearer they are to a call, and differently at the call', () => {
    expect(tintOf(undefined, LIGHT)).toBeNull();
    expect(tintOf({ ratio: 0.001 }, LIGHT)).toBeNull();
    expect(tintOf({ ratio: 0.5 }, LIGHT)).toBe('rgba(42, 87, 135, 0.150)');
    expect(tintOf({ ratio: 0.99 }, LIGHT)).not.toBe(tintOf({ ratio: 0.5 }, LIGHT));
    expect(tintOf({ ratio: 1 }, LIGHT)).toBe(LIGHT.callFill);
  });
});

describe('labels', () => {
  const site = siteWith({ shapes: [square(0, 0, 6)] });

  it('say name, turns, the live figure, the call in words and the finding by a sign', () => {
    const frame = frameOf(editorOf(site), {
      figures: new Map([['L1', '76.9 µH']]),
      calls: new Map([['L1', { ratio: 2.34 }]]),
      severities: new Map([['L1', 'problem']])
    });
    expect(texts(labelsScene(frame))).toEqual(['▲ Loop 1', '3 turns · 76.9 µH · call 2.3×']);
    expect(callText({ ratio: 0.414 })).toBe('0.41×');
    expect(callText({ ratio: 12.7 })).toBe('call 13×');
  });

  it('stand in the loop where they fit, beside it where they do not, and nowhere on a speck', () => {
    const at = (scale: number) =>
      labelsScene(frameOf(editorOf(site, scale))).filter(
        (each): each is TextDrawing => each.kind === 'text'
      )[0]?.at[0];
    expect(at(50)).toBe(500);
    expect(at(8)).toBeGreaterThan(524);
    expect(at(2)).toBeUndefined();
  });

  it('can be switched off', () => {
    expect(labelsScene(frameOf(editorOf(site), { showsLabels: false }))).toEqual([]);
  });
});

describe('marks and vehicles', () => {
  it('draw a stop line 30 cm wide and name what is only a point', () => {
    const marks = [
      { id: 'm1', kind: 'stop-line', points: [[-2, 0], [2, 0]] }, // prettier-ignore
      { id: 'm2', kind: 'pull-box', points: [[3, 3]] }
    ];
    const drawn = marksScene(siteWith({ marks }).marks, view, 'metric', LIGHT);
    const ys = lines(drawn)[0]!.points.map(([, y]) => y);
    expect(Math.max(...ys) - Math.min(...ys)).toBeCloseTo(15, 9);
    expect(texts(drawn)).toEqual(['Pull box']);
    expect(wrapped('Loops keep 0.6 m and more from the cover.', 20)).toEqual([
      'Loops keep 0.6 m and',
      'more from the cover.'
    ]);
  });

  it('draw a body of the true size that looks along its heading', () => {
    const site = siteWith({ probes: [{ vehicle: 'car', at: [0, 0], heading: 0 }] });
    const [body] = lines(vehiclesScene(site, view, LIGHT));
    const xs = body!.points.map(([x]) => x);
    const ys = body!.points.map(([, y]) => y);
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(4.4 * 50, 6);
    expect(Math.max(...ys) - Math.min(...ys)).toBeCloseTo(1.8 * 50, 6);
    const chevron = lines(vehiclesScene(site, view, LIGHT)).at(-1)!;
    expect(chevron.points[1]![0]).toBeGreaterThan(chevron.points[0]![0]);
  });

  it('draw the wheels of a bicycle as lines along it', () => {
    const site = siteWith({ probes: [{ vehicle: 'bicycle', at: [0, 0], heading: 90 }] });
    const wheels = lines(vehiclesScene(site, view, LIGHT)).filter(({ stroke }) => stroke?.width === 4);
    expect(wheels.length).toBeGreaterThanOrEqual(2);
    for (const { points } of wheels) expect(points[0]![0]).toBeCloseTo(points[1]![0], 6);
  });
});

describe('selection and help', () => {
  it('shows handles of ten pixels or more while nothing is in hand', () => {
    const editor = editorOf(siteWith({ shapes: [square(0, 0)] }));
    editor.select([{ kind: 'loop', id: 'L1' }]);
    const handles = lines(selectionScene(frameOf(editor))).filter(({ fill }) => fill === LIGHT.paper);
    expect(handles).toHaveLength(8);
    for (const { points } of handles) expect(points[1]![0] - points[0]![0]).toBeGreaterThanOrEqual(10);
    handOf(editor).hold([0, 0], [1, 1]);
    expect(lines(selectionScene(frameOf(editor))).filter(({ fill }) => fill === LIGHT.paper)).toEqual([]);
  });

  it('outlines what is under the pointer thinner than what is selected', () => {
    const editor = editorOf(siteWith({ shapes: [square(0, 0), square(5, 0)] }));
    editor.select([{ kind: 'loop', id: 'L1' }]);
    handOf(editor).hover([5, 0]);
    const widths = lines(selectionScene(frameOf(editor)))
      .filter(({ points, fill }) => points.length === 4 && fill === undefined)
      .map(({ stroke }) => stroke!.width);
    expect(widths).toEqual([1.5, 2.5]);
  });

  it('draws a box that takes what it touches with a broken line', () => {
    const editor = editorOf(siteWith({}));
    const hand = handOf(editor);
    const dashOf = () => lines(helpScene(frameOf(editor)))[0]!.stroke!.dash;
    hand.hold([0, 0], [2, 2]);
    expect(dashOf()).toBeUndefined();
    hand.send('move', [-2, 2]);
    expect(dashOf()).toEqual([6, 4]);
  });

  it('writes distances on guides and turns the text at the right margin inwards', () => {
    const editor = editorOf(siteWith({}));
    editor.setTool('measure');
    handOf(editor).hold([5, 0], [9.5, 0]);
    const drawn = helpScene(frameOf(editor));
    expect(texts(drawn)).toEqual(['4.50 m', '4.50 m']);
    expect(drawn.filter((each): each is TextDrawing => each.kind === 'text')[1]?.align).toBe('right');
  });
});

describe('the sheet', () => {
  it('carries a scale bar of a round length', () => {
    expect(scaleText(0.05, 'metric')).toBe('5 cm');
    expect(scaleText(50, 'metric')).toBe('50 m');
    expect(scaleText(0.0762, 'imperial')).toBe('3 in');
    expect(scaleText(15.24, 'imperial')).toBe('50 ft');
    const drawn = furnitureScene(view, 'metric', LIGHT);
    expect(texts(drawn)).toEqual(['0', '5 m', 'N']);
    const bar = lines(drawn)[0]!;
    expect(bar.points[1]![0] - bar.points[0]![0]).toBeCloseTo(250, 9);
  });

  it('has a shorter bar on a narrow plan, where the buttons would lie over it', () => {
    const drawn = furnitureScene({ ...view, width: 600 }, 'metric', LIGHT);
    expect(texts(drawn)).toEqual(['0', '1 m', 'N']);
    const bar = lines(drawn)[0]!;
    expect(bar.points[1]![0] - bar.points[0]![0]).toBeLessThanOrEqual(200);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { newLines } from '#plan/edits/index';
import { emptySite } from '#plan/read';
import type { Lines, Loop, Mark, Point, Site } from '#plan/schema';
import { outlineOf } from '#plan/shapes/index';
import type { Drawing, LineDrawing, TextDrawing } from '#scenes/drawing';
import { boxOfPlan, planLayers, planOnPaper, type PaperFrame } from '#scenes/paper';
import { widthOf } from '#scenes/paper-type';
import { clippedArea, clippedLine, clippedWay } from '#scenes/paper-clip';
import { bigSite } from '../support/big-site';

const frame: PaperFrame = { left: 12, top: 30, width: 180, height: 220, scale: 100, centre: [0, 0] };
const PARTS = { labels: true, vehicles: false };

const square = (id: string, centre: Point, side = 2): Loop => ({
  ...bigSite(1).loops[0]!,
  id,
  name: id,
  tail: { length: 0 },
  shape: { kind: 'rectangle', centre, width: side, length: side, rotation: 0, cornerCut: 0 }
});
const siteOf = (...loops: readonly Loop[]): Site => ({ ...emptySite(), loops });

const pointsOf = (drawing: Drawing): readonly Point[] => {
  if (drawing.kind === 'line') return drawing.points;
  return drawing.kind === 'rings' ? drawing.rings.flat() : 'at' in drawing ? [drawing.at] : [];
};
const texts = (drawings: readonly Drawing[]): TextDrawing[] =>
  drawings.filter((drawing): drawing is TextDrawing => drawing.kind === 'text');
const closed = (drawings: readonly Drawing[]): LineDrawing[] =>
  drawings.filter((drawing): drawing is LineDrawing => drawing.kind === 'line' && drawing.closed === true && !drawing.fill); // prettier-ignore

describe('a plan on paper', () => {
  it('has its scale: millimetres times the scale are metres on the road', () => {
    const scales = fc.constantFrom(50, 75, 100, 125, 150, 200, 250, 300, 400, 500);
    fc.assert(
      fc.property(scales, fc.double({ min: 0.6, max: 8, noNaN: true }), (scale, side) => {
        const [slot] = closed(planOnPaper(siteOf(square('L1', [0, 0], side)), { ...frame, scale }, PARTS));
        const [a, b] = slot!.points as [Point, Point];
        expect((Math.hypot(a[0] - b[0], a[1] - b[1]) * scale) / 1000).toBeCloseTo(side, 9);
      })
    );
  });

  it('puts the middle of the frame where it is told, north at the top', () => {
    const site = siteOf(square('L1', [1_000, 2_000]), square('L2', [1_000, 2_003]));
    const [first, second] = closed(planOnPaper(site, { ...frame, centre: [1_000, 2_000] }, PARTS));
    const middle = ({ points }: LineDrawing): Point => [
      points.reduce((sum, [x]) => sum + x, 0) / points.length,
      points.reduce((sum, [, y]) => sum + y, 0) / points.length
    ];
    expect(middle(first!)[0]).toBeCloseTo(12 + 90, 6);
    expect(middle(first!)[1]).toBeCloseTo(30 + 110, 6);
    expect(middle(second!)[1]).toBeCloseTo(30 + 110 - 30, 6);
  });

  it('ends at its frame, whatever goes beyond it', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 24 }), fc.constantFrom(50, 200), (count, scale) => {
        const site = { ...bigSite(count), probes: [] };
        for (const drawing of planOnPaper(site, { ...frame, scale, centre: [3, 4] }, PARTS))
          for (const [x, y] of pointsOf(drawing)) {
            expect(x).toBeGreaterThanOrEqual(12 - 1e-6);
            expect(x).toBeLessThanOrEqual(192 + 1e-6);
            expect(y).toBeGreaterThanOrEqual(30 - 1e-6);
            expect(y).toBeLessThanOrEqual(250 + 1e-6);
          }
      }),
      { numRuns: 20 }
    );
  });

  it('is the same far away from the origin', () => {
    const near = closed(planOnPaper(siteOf(square('L1', [0, 0])), frame, PARTS));
    const far = closed(planOnPaper(siteOf(square('L1', [19_990, -19_990])), { ...frame, centre: [19_990, -19_990] }, PARTS)); // prettier-ignore
    far[0]!.points.forEach((point, k) => {
      expect(point[0]).toBeCloseTo(near[0]!.points[k]![0], 6);
      expect(point[1]).toBeCloseTo(near[0]!.points[k]![1], 6);
    });
  });

  it('has no hidden thing on it, and no vehicle unless wanted', () => {
    const site: Site = {
      ...siteOf(square('L1', [0, 0]), { ...square('L2', [4, 0]), hidden: true }),
      probes: [{ vehicle: 'car', at: [0, 0], heading: 90 }]
    };
    const without = planOnPaper(site, frame, PARTS);
    expect(texts(without).map(({ text }) => text)).toContain('L1');
    expect(texts(without).map(({ text }) => text)).not.toContain('L2');
    expect(planOnPaper(site, frame, { ...PARTS, vehicles: true }).length).toBeGreaterThan(without.length);
  });

  it('writes name, turns and size beside each loop, no smaller than 2.2 mm', () => {
    const written = texts(planOnPaper(siteOf(square('Exit', [0, 0])), frame, PARTS));
    expect(written.map(({ text }) => text)).toEqual(['Exit', '3 turns', '2.00 m × 2.00 m']);
    for (const { size } of written) expect(size).toBeGreaterThanOrEqual(2.2);
    expect(texts(planOnPaper(siteOf(square('Exit', [0, 0])), frame, { ...PARTS, labels: false }))).toEqual(
      []
    );
  });

  // a warning that ends at the paper's edge says half of what it should
  it('moves a note up from the lower edge, every line of it in its order', () => {
    const words = 'The slab is post-tensioned here: nobody saws before its tendons are found and marked, whatever the drawing says.'; // prettier-ignore
    const note = (y: number): Mark => ({ id: 'n', kind: 'note', points: [[-8, y]], text: words });
    const lines = (y: number) =>
      texts(planOnPaper({ ...siteOf(square('L1', [0, 0])), marks: [note(y)] }, frame, PARTS)).filter(({ text }) => words.includes(text)); // prettier-ignore
    const high = lines(0);
    expect(high.map(({ text }) => text).join(' ')).toBe(words);
    // 0.5 m above the lower edge of what is seen, 5 mm on paper
    const low = lines(-10.5);
    expect(low.map(({ text }) => text)).toEqual(high.map(({ text }) => text));
    const [step, again] = [high, low].map((each) => each[1]!.at[1] - each[0]!.at[1]);
    expect(again).toBeCloseTo(step!, 9);
    for (const { at, size } of low) expect(at[1] + size / 2).toBeLessThanOrEqual(30 + 220 + 1e-9);
    // one that begins where nothing is seen stays away
    expect(lines(-11.5)).toEqual([]);
  });

  it('moves a note in from the edge instead of losing it, and takes the harm out of it', () => {
    const note: Mark = { id: 'm1', kind: 'note', points: [[8.8, 0]], text: '\u202ESealed in May\u0007' };
    const [written] = texts(planOnPaper({ ...emptySite(), marks: [note] }, frame, PARTS));
    expect(written!.text).toBe('Sealed in May');
    expect(written!.at[0]).toBeLessThan(12 + 90 + 88);
  });
});

describe('lines of another drawing on paper', () => {
  const kerb: Lines = { width: 8, height: 4, paths: [[[0, 0], [8, 0]], [[0, 4], [8, 4]]] }; // prettier-ignore
  const laid = newLines(emptySite(), { name: 'Yard', lines: kerb, at: [0, 0], metresPerUnit: 1 });
  const layers = planLayers({ ...siteOf(square('Exit', [0, 0])), underlays: [laid] }, frame, PARTS);

  it('lie beneath everything, where they lie on the plan', () => {
    const [first] = layers;
    expect(first!.name).toBe('underlay');
    const [upper] = first!.drawings;
    // 8 m at 1:100 about the middle of the frame, 2 m further up
    expect(pointsOf(upper!)[0]).toEqual([expect.closeTo(102 - 40, 9), expect.closeTo(140 - 20, 9)]);
    expect(pointsOf(upper!)[1]).toEqual([expect.closeTo(102 + 40, 9), expect.closeTo(140 - 20, 9)]);
  });

  it('are paler than what has to be cut, and can be told from white', () => {
    const strokes = (name: string) =>
      layers
        .find((layer) => layer.name === name)!
        .drawings.flatMap((each) => (each.kind === 'line' && each.stroke ? [each.stroke.colour] : []));
    /** Share of the ink of black, as it comes out on white. */
    const inkOf = (colour: string): number => {
      const [, red, green, blue, alpha = 'ff'] = /^#(..)(..)(..)(..)?$/.exec(colour)!;
      const mean = [red, green, blue].reduce((sum, part) => sum + Number.parseInt(part!, 16) / 765, 0);
      return (1 - mean) * (Number.parseInt(alpha, 16) / 255);
    };
    const cut = Math.max(...strokes('loops').map(inkOf));
    expect(strokes('underlay')).toHaveLength(2);
    for (const colour of strokes('underlay')) {
      expect(inkOf(colour)).toBeLessThan(cut / 2);
      expect(inkOf(colour)).toBeGreaterThan(0.25);
    }
  });
});

describe('names of loops on paper', () => {
  const named = (name: string, centre: Point): Loop => ({ ...square(name, centre), name });
  const NAMES = ['Northbound through lane, advance', 'Northbound left turn, at the line', 'Bus gate', 'W'.repeat(200)]; // prettier-ignore
  const crowd = siteOf(
    ...[0, 1, 2, 3].flatMap((row) =>
      NAMES.map((name, column) => named(`${name} ${row}`, [column * 3.2, row * 3.4]))
    )
  );
  const boxOf = ({ at: [x, y], text, size, ...style }: TextDrawing) => {
    const half = widthOf(text, { size, ...style }) / 2;
    return { left: x - half, right: x + half, top: y - size / 2, bottom: y + size / 2 };
  };

  it.each([100, 200])('never cover one another, at 1:%i', (scale) => {
    const centre = [4.8, 5.1] as const;
    const written = texts(planOnPaper(crowd, { ...frame, scale, centre }, PARTS)).map(boxOf);
    expect(written.length).toBeGreaterThan(3 * 6);
    written.forEach((a, k) => {
      for (const b of written.slice(k + 1)) {
        const across = Math.min(a.right, b.right) - Math.max(a.left, b.left);
        const up = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
        // the quarter of a millimetre that letters keep from the rim of their line
        expect(Math.min(across, up)).toBeLessThan(0.25);
      }
    });
  });

  it('stand on two lines where one would be long, and end where even these would be', () => {
    const site = siteOf(named('Northbound through lane, advance loop of the corridor', [0, 0]));
    const [first, second, third] = texts(planOnPaper(site, frame, PARTS)).map(({ text }) => text);
    expect([first, second]).toEqual(['Northbound through', 'lane, advance loo…']);
    expect(third).toBe('3 turns');
  });
});

describe('a note on paper', () => {
  const noteAt = (at: Point): Mark => ({ id: 'm1', kind: 'note', points: [at], text: 'Sealed in May' });
  const written = (loop: Loop, at: Point) =>
    planLayers({ ...siteOf(loop), marks: [noteAt(at)] }, frame, { labels: false, vehicles: false }).find(
      ({ name }) => name === 'texts'
    )!.drawings;

  it('steps aside from a loop’s cut, with a line to its place', () => {
    // the loop reaches from 92 to 112 mm across and from 130 to 150 mm down; the note would begin at 108 mm
    const [leader, text] = written(square('Exit', [0, 0]), [0.6, 0]);
    expect(text).toMatchObject({ kind: 'text', text: 'Sealed in May' });
    expect((text as TextDrawing).at[0]).toBeGreaterThan(112);
    expect(leader!.kind).toBe('line');
    expect(pointsOf(leader!)[0]).toEqual([expect.closeTo(108, 9), expect.closeTo(140, 9)]);
  });

  it('stays where it is beside a loop, and within one that is large enough', () => {
    for (const [loop, x] of [
      [square('Exit', [0, 0]), 1.4],
      [square('Yard', [0, 0], 8), 0.6]
    ] as const) {
      const drawings = written(loop, [x, 0]);
      expect(drawings).toHaveLength(1);
      expect(pointsOf(drawings[0]!)[0]![0]).toBeCloseTo(102 + 10 * x, 9);
    }
  });

  it('keeps its lines under each other, and a word too long for the paper is cut', () => {
    const note = (text: string): Mark => ({ id: 'm1', kind: 'note', points: [[8.5, 0]], text });
    const lines = texts(planOnPaper({ ...emptySite(), marks: [note('The slot was sealed in the wet and has to be looked at again')] }, frame, PARTS)); // prettier-ignore
    expect(lines.length).toBeGreaterThan(1);
    for (const { at } of lines) expect(at[0]).toBeCloseTo(lines[0]!.at[0], 9);
    const [long] = texts(planOnPaper({ ...emptySite(), marks: [note('W'.repeat(4_000))] }, frame, PARTS));
    expect(long!.text).toMatch(/^W{30,}…$/);
    expect(widthOf(long!.text, long!)).toBeLessThanOrEqual(frame.width);
  });
});

describe('what of a plan has to be on paper', () => {
  it('is every loop, and of a long lane only what lies beside', () => {
    const site = bigSite(8);
    const box = boxOfPlan({
      ...site,
      lanes: site.lanes.map((lane) => ({ ...lane, centreline: [[lane.centreline[0]![0], -3_000], [lane.centreline[0]![0], 3_000]] as Point[] })) // prettier-ignore
    })!;
    for (const [x, y] of site.loops.flatMap(({ shape }) => outlineOf(shape))) {
      expect(x >= box.left && x <= box.right && y >= box.bottom && y <= box.top).toBe(true);
    }
    expect(box.top - box.bottom).toBeLessThan(30);
  });

  it('is nothing of an empty site, and the whole lane where there is nothing else', () => {
    expect(boxOfPlan(emptySite())).toBeNull();
    const lane = { id: 'l', name: '', centreline: [[0, 0], [0, 40]] as Point[], width: 3 }; // prettier-ignore
    expect(boxOfPlan({ ...emptySite(), lanes: [lane] })).toEqual({
      left: -1.5,
      right: 1.5,
      bottom: 0,
      top: 40
    });
  });
});

describe('what is cut off', () => {
  const box = { left: 0, top: 0, right: 10, bottom: 10 };

  it('leaves lines in the box as they are', () => {
    expect(clippedLine([1, 1], [9, 9], box)).toEqual([[1, 1], [9, 9]]); // prettier-ignore
    expect(clippedLine([-5, 5], [15, 5], box)).toEqual([[0, 5], [10, 5]]); // prettier-ignore
    expect(clippedLine([-5, 0], [0, 15], box)).toBeNull();
  });

  it('parts a line that leaves the box and comes back', () => {
    expect(clippedWay([[2, 2], [20, 2], [20, 8], [2, 8]], box)).toEqual([[[2, 2], [10, 2]], [[10, 8], [2, 8]]]); // prettier-ignore
  });

  it('keeps the area that lies in the box, by its size', () => {
    const area = (points: readonly Point[]): number =>
      Math.abs(points.reduce((sum, [x, y], k) => { const [nx, ny] = points[(k + 1) % points.length]!; return sum + x * ny - nx * y; }, 0)) / 2; // prettier-ignore
    const side = fc.double({ min: -5, max: 15, noNaN: true });
    fc.assert(
      fc.property(side, side, side, side, (x0, x1, y0, y1) => {
        const shape: Point[] = [[x0, y0], [x1, y0], [x1, y1], [x0, y1]]; // prettier-ignore
        const common = (a: number, b: number) =>
          Math.max(0, Math.min(10, Math.max(a, b)) - Math.max(0, Math.min(a, b)));
        expect(area(clippedArea(shape, box))).toBeCloseTo(common(x0, x1) * common(y0, y1), 6);
      })
    );
    expect(clippedArea([[20, 20], [30, 20], [30, 30]], box)).toEqual([]); // prettier-ignore
  });
});

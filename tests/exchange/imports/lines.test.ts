import { Colors, DxfWriter, LWPolylineFlags, point2d, point3d, Units } from '@tarikjabiri/dxf';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { dxfOf } from '#exchange/drawings/dxf';
import type { Drawing } from '#exchange/imports/dxf/drawing';
import { linesOf, MOST_POINTS, onLayers } from '#exchange/imports/dxf/lines';
import { unwatched } from '#exchange/job';
import { COUNTS } from '#plan/bounds';
import { addUnderlay, newLines, scaleUnderlay, updateUnderlay } from '#plan/edits/index';
import { readSite, writeSite } from '#plan/read';
import type { Point, Site } from '#plan/schema';
import { isToScale, missingPictures, pixelOnPlan } from '#plan/underlays';
import { writePieces } from '#plan/write';
import { planGeometry } from '#scenes/plan-geometry';
import { drawing, line, read } from './drawings';

const reading = readSite('{"format":"kerfline-site","version":1,"name":"Yard"}');
if (!reading.ok) throw new Error('the empty site');
const empty: Site = reading.site;

const all = (from: Drawing) => onLayers(from, [...from.layers.keys()]);
function fitted(from: Drawing, unit = from.metresPerUnit ?? 1) {
  const fitting = linesOf(all(from), unit);
  if (fitting.kind !== 'fits') throw new Error(fitting.kind);
  return fitting;
}
/** As it would lie by its own coordinates. */
function laid(from: Drawing, unit?: number) {
  const { lines, metresPerUnit, middle } = fitted(from, unit);
  return newLines(empty, { name: 'Yard', lines, at: middle, metresPerUnit });
}
/** Points of all paths on the plan, metres. */
function onPlan(from: Drawing, unit?: number): Point[][] {
  const underlay = laid(from, unit);
  return underlay.lines!.paths.map((path) => path.map((point) => pixelOnPlan(underlay, point)));
}

describe('a drawing under the plan', () => {
  it.each([
    [6, 1],
    [4, 0.001],
    [2, 0.3048],
    [7, 1_000]
  ])('in unit %i lies where it was drawn, to a hundredth of a millimetre', async (units, metres) => {
    const corners = [[12.3456, -4.5], [15.1, 8.25], [-3.3333, 2]] as const; // prettier-ignore
    const [a, b, c] = corners.map(([x, y]) => [x / metres, y / metres] as const) as [Point, Point, Point];
    const things = [line(...a, ...b), line(...b, ...c)];
    const [path] = onPlan(await read(drawing({ things, units })));
    corners.forEach(([x, y], index) => {
      expect(Math.hypot(path![index]![0] - x, path![index]![1] - y)).toBeLessThan(1.5e-5);
    });
  });

  it('that another library wrote comes back within a tenth of a millimetre, bulge and block included', async () => {
    const writer = new DxfWriter();
    writer.setUnits(Units.Meters);
    writer.addLayer('Saw cut', Colors.Red, 'CONTINUOUS');
    writer.setCurrentLayerName('Saw cut');
    const corners: Point[] = [[-0.9, -3.9], [0.9, -3.9], [0.9, -2.1], [-0.9, -2.1]]; // prettier-ignore
    writer.addLWPolyline(corners.map(([x, y]) => ({ point: point2d(x, y) })), { flags: LWPolylineFlags.Closed }); // prettier-ignore
    writer.addCircle(point3d(5, 5), 0.9);
    const block = writer.addBlock('mark');
    block.addLine(point3d(0, 0), point3d(1, 0));
    writer.addInsert(block.name, point3d(10, 10), { rotationAngle: 90 });
    const found = await read(writer.stringify());
    expect(found.metresPerUnit).toBe(1);
    const paths = onPlan(found);
    const [square, circle, mark] = paths;
    [...corners, corners[0]!].forEach(([x, y], index) => {
      expect(Math.hypot(square![index]![0] - x, square![index]![1] - y)).toBeLessThan(1e-4);
    });
    // the chords' middles are what misses a circle most
    circle!.slice(1).forEach(([x, y], index) => {
      const middle = [(x + circle![index]![0]) / 2, (y + circle![index]![1]) / 2] as const;
      expect(Math.abs(Math.hypot(middle[0] - 5, middle[1] - 5) - 0.9)).toBeLessThan(1e-4);
    });
    expect(mark!.at(-1)![0]).toBeCloseTo(10, 4);
    expect(mark!.at(-1)![1]).toBeCloseTo(11, 4);
  });

  it('is to scale, no missing picture, locked, and scaled anew by two points', async () => {
    const underlay = laid(await read(drawing({ things: [line(0, 0, 50_000, 20_000)], units: 4 })));
    const site = addUnderlay(empty, underlay);
    expect(site.underlays).toHaveLength(1);
    expect(underlay).toMatchObject({ locked: true, picture: null, metresPerPixel: 0.001 });
    expect(isToScale(underlay)).toBe(true);
    expect(missingPictures(site)).toEqual([]);
    const doubled = scaleUnderlay(site, underlay.id, { from: [0, 20_000], to: [50_000, 20_000], distance_m: 100 }); // prettier-ignore
    expect(doubled.underlays[0]).toMatchObject({ metresPerPixel: 0.002, scaledBy: { distance_m: 100 } });
    expect(updateUnderlay(doubled, underlay.id, { rotation: 30, opacity: 0.4 }).underlays[0]).toMatchObject({ rotation: 30, opacity: 0.4 }); // prettier-ignore
    const again = readSite(writeSite(doubled));
    expect(again.ok && again.site).toEqual(doubled);
  });

  it('is written once, however often the site is', async () => {
    const things = Array.from({ length: 500 }, (_, at) => line(at, 0, at, 1));
    const site = addUnderlay(empty, laid(await read(drawing({ things, units: 6 }))));
    const long = (from: Site) => writePieces(from).filter((piece) => piece.startsWith('[[['));
    const [first] = long(site);
    expect(JSON.parse(first!)).toHaveLength(500);
    expect(long({ ...site, name: 'Another' })).toEqual([first]);
  });

  it('a single straight line has a height, so that it can be taken hold of', async () => {
    const { lines } = fitted(await read(drawing({ things: [line(0, 0, 10, 0)], units: 6 })));
    expect(lines.height).toBeCloseTo(0.01, 9);
  });

  it('long paths become pieces that meet', async () => {
    const things = Array.from({ length: 5_000 }, (_, at) =>
      line(at, (at % 2) * 10, at + 1, ((at + 1) % 2) * 10)
    );
    const { lines } = fitted(await read(drawing({ things, units: 6 })));
    expect(lines.paths.length).toBe(3);
    expect(lines.paths.every((path) => path.length <= COUNTS.linePoints)).toBe(true);
    expect(lines.paths[1]![0]).toEqual(lines.paths[0]!.at(-1));
    expect(lines.paths.at(-1)!.at(-1)).toEqual([5_000, 10]);
  });

  it('too much, too large and too small are told apart', async () => {
    const many = await read(drawing({ things: Array.from({ length: COUNTS.linePaths + 1 }, (_, at) => line(at, 0, at, 1)) })); // prettier-ignore
    expect(linesOf(all(many), 1)).toMatchObject({ kind: 'tooMany', paths: COUNTS.linePaths + 1 });
    const one = await read(drawing({ things: [line(0, 0, 60, 0)] }));
    expect(linesOf(all(one), 1_000)).toEqual({ kind: 'tooLarge', size: 60_000 });
    expect(linesOf(all(one), 1e-6)).toMatchObject({
      kind: 'tooSmall',
      size: expect.closeTo(6e-5, 9) as number
    });
    expect(linesOf([], 1)).toEqual({ kind: 'empty' });
  });

  it('four of the largest that come in are a file that is read again', () => {
    const perPath = MOST_POINTS / COUNTS.linePaths;
    const paths = Array.from({ length: COUNTS.linePaths }, (_, row) =>
      Array.from({ length: perPath }, (_, column): [number, number] => [column + 0.12345, row + 0.54321])
    );
    const lines = { width: perPath, height: COUNTS.linePaths, paths };
    const full = Array.from({ length: COUNTS.underlays }).reduce<Site>(
      (site) => addUnderlay(site, newLines(site, { name: 'a', lines, at: [0, 0], metresPerUnit: 0.01 })),
      empty
    );
    expect(full.underlays).toHaveLength(COUNTS.underlays);
    const again = readSite(writeSite(full));
    expect(again.ok ? again.site.underlays[3]!.lines!.paths[19_999] : again.problems).toEqual(paths[19_999]);
  }, 30_000);
});

describe('the plan as it is exported', () => {
  it.each([
    ['stop-line-two-lanes', 'metric'],
    ['car-park-counting-pair', 'imperial'],
    ['advance-loops', 'metric']
  ] as const)('%s in %s units comes back within a tenth of a millimetre', async (name, units) => {
    const sample = readSite(readFileSync(`samples/${name}.kerfline.json`, 'utf8'));
    if (!sample.ok) throw new Error(name);
    const things = planGeometry(sample.site);
    const found = await read(await dxfOf(things, units, unwatched()));
    expect(found.metresPerUnit).toBe(units === 'metric' ? 1 : 0.3048);
    const paths = onPlan(found);
    const points = paths.flat();
    let checked = 0;
    for (const { figure } of things) {
      if (figure.kind === 'way')
        for (const [x, y] of figure.points) {
          expect(Math.min(...points.map(([u, v]) => Math.hypot(u - x, v - y)))).toBeLessThan(1e-4);
          checked++;
        }
      if (figure.kind === 'circle') {
        const { at, radius } = figure;
        const miss = ([x, y]: Point) => Math.abs(Math.hypot(x - at[0], y - at[1]) - radius);
        expect(paths.some((path) => path.every((point) => miss(point) < 1e-4))).toBe(true);
        checked++;
      }
    }
    expect(checked).toBeGreaterThan(20);
    // and nothing that the plan does not have
    const texts = things.reduce((sum, { figure }) => sum + (figure.kind === 'text' ? figure.lines.length : 0), 0); // prettier-ignore
    expect(found.leftOut.find(({ what }) => what === 'text')?.count ?? 0).toBe(texts);
  });
});

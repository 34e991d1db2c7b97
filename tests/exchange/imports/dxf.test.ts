import { describe, expect, it } from 'vitest';
import { MOST } from '#exchange/imports/dxf/drawing';
import { readDxf } from '#exchange/imports/dxf/read';
import { unwatched } from '#exchange/job';
import type { Point } from '#plan/schema';
import { drawing, insert, line, pathsOf, read, type Groups } from './drawings';

const bytes = (text: string) => new TextEncoder().encode(text);
const why = (text: string | Uint8Array) =>
  readDxf(typeof text === 'string' ? bytes(text) : text, unwatched()).then(
    () => 'read',
    (problem: unknown) => (problem as { readonly why?: string }).why ?? String(problem)
  );
const expectNear = (found: readonly Point[] | undefined, wanted: readonly Point[]) => {
  expect(found).toHaveLength(wanted.length);
  wanted.forEach(([x, y], index) => {
    expect(found![index]![0]).toBeCloseTo(x, 9);
    expect(found![index]![1]).toBeCloseTo(y, 9);
  });
};
/** The farthest that any point is from a circle. */
const missOf = (points: readonly Point[], [x, y]: Point, radius: number) =>
  Math.max(...points.map((point) => Math.abs(Math.hypot(point[0] - x, point[1] - y) - radius)));
/** The farthest that the middle of any chord is from it. */
const chordMissOf = (points: readonly Point[], centre: Point, radius: number) =>
  missOf(
    points.slice(1).map(([x, y], index) => [(x + points[index]![0]) / 2, (y + points[index]![1]) / 2]),
    centre,
    radius
  );

describe('what is drawn', () => {
  it('lines that go on where the last one ended are one path, others are not', async () => {
    const things = [line(0, 0, 1, 0), line(1, 0, 1, 2), line(5, 5, 6, 6), line(6, 6, 7, 7, 'other')];
    expect(await pathsOf(drawing({ things }))).toEqual([
      [[0, 0], [1, 0], [1, 2]],
      [[5, 5], [6, 6]],
      [[6, 6], [7, 7]]
    ]); // prettier-ignore
  });

  it('a bulge of 1 is half a circle to the right of its chord, and a closed line comes back', async () => {
    const things: Groups[] = [[[0, 'LWPOLYLINE'], [8, '0'], [90, 2], [70, 1], [10, 0], [20, 0], [42, 1], [10, 4], [20, 0]]]; // prettier-ignore
    const [path] = await pathsOf(drawing({ things, units: 6 }));
    expect(path!.at(0)).toEqual([0, 0]);
    expect(path!.at(-1)).toEqual([0, 0]);
    // counter-clockwise from (0, 0) to (4, 0): below the chord
    const arc = path!.slice(0, -1);
    expect(Math.min(...arc.map(([, y]) => y))).toBeCloseTo(-2, 4);
    expect(missOf(arc, [2, 0], 2)).toBeLessThan(1e-9);
    expect(chordMissOf(arc, [2, 0], 2)).toBeLessThan(1e-4);
  });

  it('an old polyline with corners of its own, bulge included', async () => {
    const vertex = (x: number, y: number, bulge: number): Groups => [[0, 'VERTEX'], [8, '0'], [10, x], [20, y], [42, bulge]]; // prettier-ignore
    const things: Groups[] = [[[0, 'POLYLINE'], [8, '0'], [66, 1], [70, 0], ...vertex(0, 0, 0), ...vertex(2, 0, -Math.tan(Math.PI / 8)), ...vertex(3, -1, 0), [0, 'SEQEND']]]; // prettier-ignore
    const [path] = await pathsOf(drawing({ things, units: 6, version: 'AC1009' }));
    // a quarter of a circle, clockwise, about (2, −1)
    expect(path![0]).toEqual([0, 0]);
    expect(missOf(path!.slice(1), [2, -1], 1)).toBeLessThan(1e-9);
    expect(path!.at(-1)).toEqual([3, -1]);
  });

  it('circles, arcs and ellipses keep within a tenth of a millimetre', async () => {
    const things: Groups[] = [
      [[0, 'CIRCLE'], [8, '0'], [10, 1000], [20, 2000], [40, 900]],
      [[0, 'ARC'], [8, '0'], [10, 0], [20, 0], [40, 5000], [50, 350], [51, 10]],
      [[0, 'ELLIPSE'], [8, '0'], [10, 0], [20, 0], [11, 0], [21, 2000], [40, 0.5], [41, 0], [42, Math.PI / 2]]
    ]; // prettier-ignore
    const [circle, arc, ellipse] = await pathsOf(drawing({ things, units: 4 }));
    expect(missOf(circle!, [1000, 2000], 900)).toBeLessThan(1e-6);
    expect(chordMissOf(circle!, [1000, 2000], 900)).toBeLessThan(0.1);
    expect(chordMissOf(arc!, [0, 0], 5000)).toBeLessThan(0.1);
    const end = 5000 * Math.sin(Math.PI / 18);
    expect(arc!.at(0)![1]).toBeCloseTo(-end, 6);
    expect(arc!.at(-1)![1]).toBeCloseTo(end, 6);
    // a quarter from the end of the longer axis to that of the shorter, counter-clockwise
    expectNear([ellipse!.at(0)!, ellipse!.at(-1)!], [[0, 2000], [-1000, 0]]); // prettier-ignore
    for (const [x, y] of ellipse!) expect((x / 1000) ** 2 + (y / 2000) ** 2).toBeCloseTo(1, 9);
  });

  it('a rational spline of second degree is an exact quarter of a circle', async () => {
    // the textbook's: weights 1, √½, 1 on the corners of a square
    const things: Groups[] = [
      [
        [0, 'SPLINE'], [8, '0'], [70, 4], [71, 2],
        ...[0, 0, 0, 1, 1, 1].map((knot) => [40, knot] as const),
        ...[1, Math.SQRT1_2, 1].map((weight) => [41, weight] as const),
        [10, 1], [20, 0], [10, 1], [20, 1], [10, 0], [20, 1]
      ]
    ]; // prettier-ignore
    const [path] = await pathsOf(drawing({ things }));
    expect(path!.length).toBeGreaterThan(10);
    expect(missOf(path!, [0, 0], 1)).toBeLessThan(1e-12);
    expectNear([path!.at(0)!, path!.at(-1)!], [[1, 0], [0, 1]]); // prettier-ignore
  });

  it('what is seen from below is turned over', async () => {
    const things: Groups[] = [[[0, 'ARC'], [8, '0'], [10, 10], [20, 0], [40, 1], [50, 0], [51, 90], [210, 0], [220, 0], [230, -1]]]; // prettier-ignore
    const [path] = await pathsOf(drawing({ things }));
    expectNear([path!.at(0)!, path!.at(-1)!], [[-11, 0], [-10, 1]]); // prettier-ignore
  });
});

describe('blocks', () => {
  const tick = { name: 'tick', base: [1, 1] as const, things: [line(1, 1, 2, 1)] };

  it('are set, turned, scaled and repeated about their base', async () => {
    const things = [insert('tick', 10, 0, [[41, 2], [42, 1], [50, 90], [70, 2], [71, 1], [44, 5]])]; // prettier-ignore
    const [first, second] = await pathsOf(drawing({ things, blocks: [tick] }));
    expectNear(first, [[10, 0], [10, 2]]); // prettier-ignore
    expectNear(second, [[10, 5], [10, 7]]); // prettier-ignore
  });

  it('within blocks: the outer one turns what the inner one has set', async () => {
    const outer = { name: 'outer', things: [insert('tick', 3, 0)] };
    const things = [insert('outer', 0, 0, [[50, 90]])]; // prettier-ignore
    const [path] = await pathsOf(drawing({ things, blocks: [tick, outer] }));
    expectNear(path, [[0, 3], [0, 4]]); // prettier-ignore
  });

  it('leave what they draw on layer 0 to the layer that they are set on', async () => {
    const block = { name: 'b', things: [line(0, 0, 1, 0), line(0, 1, 1, 1, 'own')] };
    const { layers } = await read(drawing({ things: [insert('b', 0, 0, [], 'set')], blocks: [block] }));
    expect(layers.map(({ name }) => name)).toEqual(['set', 'own']);
  });

  it('that hold themselves, and nests that would never end, end', async () => {
    const self = { name: 'self', things: [line(0, 0, 1, 0), insert('self', 1, 0)] };
    const found = await read(drawing({ things: [insert('self', 0, 0)], blocks: [self] }));
    expect(found.paths).toHaveLength(1);
    expect(found.leftOut).toEqual([{ what: 'damaged', count: 1 }]);
    const nest = Array.from({ length: 12 }, (_, index) => ({
      name: `n${index}`,
      things:
        index === 11 ? [line(0, 0, 1, 1)] : Array.from({ length: 10 }, () => insert(`n${index + 1}`, 1, 1))
    }));
    expect(await why(drawing({ things: [insert('n0', 0, 0)], blocks: nest }))).toBe('tooMuch');
    const hollow = nest.map((block, index) => (index === 11 ? { ...block, things: [] } : block));
    expect(await why(drawing({ things: [insert('n0', 0, 0)], blocks: hollow }))).toBe('tooMuch');
    const rows = insert('tick', 0, 0, [[70, 30000], [71, 30000], [44, 1], [45, 1]]); // prettier-ignore
    expect(await why(drawing({ things: [rows], blocks: [tick] }))).toBe('tooMuch');
  });
});

describe('what is said of it', () => {
  it.each([
    [1, 0.0254],
    [2, 0.3048],
    [4, 0.001],
    [5, 0.01],
    [6, 1],
    [21, 1200 / 3937],
    [0, null],
    [99, null]
  ])('unit %i is %s m', async (units, metres) => {
    expect((await read(drawing({ things: [line(0, 0, 1, 1)], units }))).metresPerUnit).toBe(metres);
  });

  it('layers with their lines, those that are off or frozen told apart', async () => {
    const { layers } = await read(
      drawing({
        things: [
          line(0, 0, 1, 1, 'Kerb'),
          line(3, 3, 4, 4, 'Kerb'),
          line(0, 0, 1, 1, 'Off'),
          line(0, 0, 1, 1, 'Cold')
        ],
        layers: [[[2, 'Kerb'], [70, 0], [62, 7]], [[2, 'Off'], [70, 0], [62, -7]], [[2, 'Cold'], [70, 1], [62, 7]]] // prettier-ignore
      })
    );
    expect(layers).toEqual([
      { name: 'Kerb', isHidden: false, paths: 2, points: 4 },
      { name: 'Off', isHidden: true, paths: 1, points: 2 },
      { name: 'Cold', isHidden: true, paths: 1, points: 2 }
    ]);
  });

  it('texts, fills and the rest are counted, and things on a sheet are left there', async () => {
    const things: Groups[] = [
      line(0, 0, 1, 1),
      [[0, 'TEXT'], [8, '0'], [1, '<script>alert(1)</script>'], [10, 0], [20, 0]],
      [[0, 'MTEXT'], [8, '0'], [1, 'a'], [10, 0], [20, 0]],
      [[0, 'HATCH'], [8, '0']],
      [[0, 'ACAD_PROXY_ENTITY'], [8, '0']],
      [...line(0, 0, 5, 5), [67, 1]],
      [[0, 'LWPOLYLINE'], [8, '0'], [10, 0], [20, 0], [10, 1], [20, 1], [210, 1], [220, 0], [230, 0]],
      [[0, 'CIRCLE'], [8, '0'], [10, 'nonsense'], [20, 0], [40, 1]],
      insert('nowhere', 0, 0)
    ]; // prettier-ignore
    const { paths, leftOut } = await read(drawing({ things }));
    expect(paths).toHaveLength(1);
    expect(Object.fromEntries(leftOut.map(({ what, count }) => [what, count]))).toEqual({
      text: 2,
      damaged: 2,
      fill: 1,
      other: 1,
      sheet: 1,
      tilted: 1
    });
  });

  it('names in the letters of older and newer drawings', async () => {
    const named = drawing({ things: [line(0, 0, 1, 1, 'Stra\\U+00DFe'), line(5, 5, 6, 6, 'Gehweg-Ä')] });
    const names = ['Straße', 'Gehweg-Ä'];
    expect((await read(named)).layers.map(({ name }) => name)).toEqual(names);
    const old = Uint8Array.from(named, (letter) => letter.charCodeAt(0));
    expect((await readDxf(old, unwatched())).layers.map(({ name }) => name)).toEqual(names);
  });

  it('line ends of every system', async () => {
    const text = drawing({ things: [line(0, 0, 1, 1)] });
    for (const end of ['\r\n', '\r']) expect(await pathsOf(text.replaceAll('\n', end))).toEqual([[[0, 0], [1, 1]]]); // prettier-ignore
  });
});

describe('what is refused', () => {
  const sound = drawing({ things: Array.from({ length: 40 }, (_, at) => line(at, 0, at, 1)) });

  it.each([
    ['nothing', '', 'none'],
    ['a letter', 'Dear Sir,\nthe loops are cut.\n', 'damaged'],
    ['a page', '<html><body>0\nSECTION</body></html>', 'damaged'],
    ['numbers that are no drawing', '1\n2\n3\n4\n', 'none'],
    ['a picture', '\u0089PNG\r\n\u001a\n\u0000\u0000', 'none'],
    ['the packed kind', 'Someone Binary DXF\r\n\u001a\u0000\u0000', 'binary'],
    ['no exchange format', 'AC1032\u0000\u0000\u0000', 'sealed'],
    ['a drawing without lines', drawing({}), 'empty'],
    ['a section in the middle of things', sound.replace(/ENDSEC(?=\n0\nEOF)/, 'EOF'), 'damaged']
  ])('%s', async (_, text, reason) => {
    expect(await why(text)).toBe(reason);
  });

  it('every drawing that breaks off, wherever', async () => {
    for (let length = 40; length < sound.length - 6; length += 7)
      expect(['cut', 'damaged', 'none']).toContain(await why(sound.slice(0, length)));
  });

  it('noise in the place of anything, with a reason and never with an accident', async () => {
    let seed = 7;
    const random = (below: number) => (seed = (seed * 16807) % 2147483647) % below;
    for (let round = 0; round < 300; round++) {
      const lines = sound.split('\n');
      for (let hits = 1 + random(4); hits > 0; hits--)
        lines[random(lines.length)] = ['', '0', '-1', 'NaN', '1e400', 'ENDSEC', '70', 'BLOCK', '\u0007'][
          random(9)
        ]!;
      expect(await why(lines.join('\n'))).toMatch(/^(read|binary|sealed|none|damaged|cut|empty|tooMuch)$/);
    }
  });

  it('more than fifty megabytes', async () => {
    expect(await why(new Uint8Array(MOST.file + 1))).toBe('tooMuch');
  });

  it('ends when it is told to', async () => {
    const end = new AbortController();
    const big = drawing({ things: Array.from({ length: 40_000 }, (_, at) => line(at, 0, at, 1)) });
    const reading = readDxf(bytes(big), {
      signal: end.signal,
      onShare: () => end.abort(new Error('enough'))
    });
    await expect(reading).rejects.toThrow('enough');
  });
});

/** DXF read back by two libraries, neither of which is the one that writes it. */
import { parseString } from 'dxf';
import DxfParser from 'dxf-parser';
import { describe, expect, test } from 'vitest';
import { planDxf } from '#exchange/files/plan-dxf';
import { Unfit } from '#exchange/files/exported';
import { dxfText } from '#exchange/drawings/dxf-text';
import { unwatched } from '#exchange/job';
import { emptySite } from '#plan/read';
import type { Loop, Point, Shape, Site } from '#plan/schema';
import { pathOf } from '#plan/shapes/index';
import { bigSite } from '../../support/big-site';
import { HOSTILE, siteNamed } from '../../support/hostile-names';
import { sample, SAMPLES } from '../sheet/sites';

const surroundings = { typeface: () => Promise.reject(new Error('no paper is asked for')) };

interface Entity {
  readonly type: string;
  readonly layer: string;
  readonly vertices?: readonly { readonly x: number; readonly y: number }[];
  readonly center?: { readonly x: number; readonly y: number };
  readonly radius?: number;
  readonly shape?: boolean;
  readonly closed?: boolean;
  readonly text?: string;
  readonly string?: string;
  readonly x?: number;
  readonly y?: number;
  readonly r?: number;
}

async function written(site: Site): Promise<string> {
  const assessment = undefined as never;
  const { content } = await planDxf({ site, assessment, file: 'a site' }, surroundings, unwatched());
  if (typeof content !== 'string') throw new Error('DXF is text');
  return content;
}

function parsed(content: string) {
  const file = new DxfParser().parseSync(content);
  if (!file) throw new Error('not read');
  return { header: file.header, layers: Object.keys(file.tables.layer.layers), entities: file.entities as unknown as readonly Entity[] }; // prettier-ignore
}
const other = (content: string) =>
  parseString(content) as unknown as {
    readonly header: Readonly<Record<string, unknown>>;
    readonly entities: readonly Entity[];
    readonly tables: { readonly layers: Readonly<Record<string, unknown>> };
  };

const loopOf = (shape: Shape, id = 'L1', more: Partial<Loop> = {}): Loop => ({
  id,
  name: id,
  turns: 3,
  wire: 'awg14',
  slot: { depth: 0.05, width: 0.008, relativePermittivity: 4 },
  tail: { length: 4 },
  shape,
  ...more
});
const square = (centre: Point, side = 1.8): Shape => ({ kind: 'rectangle', centre, width: side, length: side, rotation: 0, cornerCut: 0 }); // prettier-ignore
const siteOf = (loops: readonly Loop[], more: Partial<Site> = {}): Site => ({ ...emptySite(), loops: [...loops], ...more }); // prettier-ignore

const lengthOf = ({ vertices = [], shape, closed }: Entity): number => {
  const way = shape === true || closed === true ? [...vertices, vertices[0]!] : vertices;
  return way.slice(1).reduce((sum, { x, y }, k) => sum + Math.hypot(x - way[k]!.x, y - way[k]!.y), 0);
};
const cuts = (entities: readonly Entity[]) => entities.filter(({ layer }) => layer === 'SAW-CUT');
/** Edges of everything, as the entities have it. */
function extents(entities: readonly Entity[]): readonly number[] {
  const points = entities.flatMap(({ vertices = [], center, radius = 0 }) => [
    ...vertices.map(({ x, y }) => [x, y] as const),
    ...(center
      ? ([
          [center.x - radius, center.y - radius],
          [center.x + radius, center.y + radius]
        ] as const)
      : [])
  ]);
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
}

describe('in metres and in feet', () => {
  // one international foot is 0.3048 m by definition (1959 agreement); header codes as the format's reference has them
  test.each([
    ['metric', 1.8, 6, 1],
    ['imperial', 1.8 / 0.3048, 2, 0]
  ] as const)('%s: a loop of 1.8 m measures so', async (displayUnits, side, unit, measurement) => {
    const content = await written(siteOf([loopOf(square([10, 20]))], { displayUnits }));
    const { header, entities } = parsed(content);
    expect(header.$INSUNITS).toBe(unit);
    expect(header.$MEASUREMENT).toBe(measurement);
    const [cut] = cuts(entities);
    expect(cut!.type).toBe('LWPOLYLINE');
    expect(cut!.shape).toBe(true);
    const [a, b, c] = cut!.vertices!;
    expect(Math.hypot(b!.x - a!.x, b!.y - a!.y)).toBeCloseTo(side, 5);
    expect(Math.hypot(c!.x - b!.x, c!.y - b!.y)).toBeCloseTo(side, 5);

    const second = other(content);
    expect(second.header['insUnits']).toBe(unit);
    expect(second.header['measurement']).toBe(measurement);
    const [again] = cuts(second.entities);
    expect(again!.closed).toBe(true);
    expect(lengthOf(again!)).toBeCloseTo(4 * side, 5);
  });

  test('a circle is as large in feet', async () => {
    const loops = [loopOf({ kind: 'circle', centre: [3.048, -6.096], diameter: 1.8288 })];
    const content = await written({ ...siteOf(loops), displayUnits: 'imperial' });
    const cut = parsed(content).entities.find(({ type }) => type === 'CIRCLE')!;
    expect(cut.center!.x).toBeCloseTo(10, 6);
    expect(cut.center!.y).toBeCloseTo(-20, 6);
    expect(cut.radius).toBeCloseTo(3, 6);
  });

  test('a circle is a circle of its radius', async () => {
    const content = await written(siteOf([loopOf({ kind: 'circle', centre: [3, -4], diameter: 1.8 })]));
    for (const { entities, radius } of [
      { entities: parsed(content).entities, radius: (cut: Entity) => cut.radius },
      { entities: other(content).entities, radius: (cut: Entity) => cut.r }
    ]) {
      const [cut, ...more] = cuts(entities);
      expect(more).toEqual([]);
      expect(cut!.type).toBe('CIRCLE');
      expect(radius(cut!)).toBeCloseTo(0.9, 6);
    }
    expect(parsed(content).entities[0]!.center).toMatchObject({ x: 3, y: -4 });
  });
});

test('the extents of header and entities are the plan’s', async () => {
  const lane = { id: 'lane1', name: 'In', centreline: [[0, -20], [0, 30]] as Point[], width: 3.5 }; // prettier-ignore
  const site = siteOf([loopOf(square([0, 0]))], {
    lanes: [lane],
    marks: [{ id: 'm1', kind: 'kerb', points: [[4, -10], [4.5, 12]] }] // prettier-ignore
  });
  const expected = [-1.75, -20, 4.5, 30];
  const content = await written(site);
  const { header, entities } = parsed(content);
  const [least, most] = [header.$EXTMIN, header.$EXTMAX] as unknown as { x: number; y: number }[];
  [least!.x, least!.y, most!.x, most!.y].forEach((value, k) => expect(value).toBeCloseTo(expected[k]!, 6));
  extents(entities).forEach((value, k) => expect(value).toBeCloseTo(expected[k]!, 6));
  const second = other(content);
  extents(second.entities).forEach((value, k) => expect(value).toBeCloseTo(expected[k]!, 6));
  expect(second.header['extMax']).toMatchObject({ x: 4.5, y: 30 });
});

describe('a note', () => {
  const words = 'Find the bars before the slab is cut; the gate needs safety devices of its own, and a loop is never the only one of them on this site or on any other that has people near a moving leaf. End of the note.'; // prettier-ignore
  const note = { id: 'n', kind: 'note' as const, points: [[3, 4]] as Point[], text: words }; // prettier-ignore
  const written200 = () => written(siteOf([loopOf(square([0, 0]))], { marks: [note] }));
  const linesIn = (entities: readonly Entity[]) =>
    entities.filter(({ type, layer }) => type === 'TEXT' && layer === 'TEXT').slice(0, -2);

  test('of many words stands in lines as on the plan, none of them lost, in either reader', async () => {
    expect(words.length).toBeGreaterThan(200);
    const content = await written200();
    const first = linesIn(parsed(content).entities);
    expect(first.map(({ text }) => text).join(' ')).toBe(words);
    expect(Math.max(...first.map(({ text }) => text!.length))).toBeLessThanOrEqual(30);
    const second = linesIn(other(content).entities);
    expect(second.map(({ string }) => string).join(' ')).toBe(words);
    // one below the other from the place of the note, 0.18 m high
    second.forEach(({ x, y }, line) => {
      expect(x).toBeCloseTo(3, 6);
      expect(y).toBeCloseTo(4 - line * 1.6 * 0.18, 6);
    });
  });

  test('leaves the extents to the plan', async () => {
    const { header } = parsed(await written200());
    const [least, most] = [header.$EXTMIN, header.$EXTMAX] as unknown as { x: number; y: number }[];
    expect([least!.x, least!.y, most!.x, most!.y]).toEqual([-0.9, -0.9, 3, 4]);
  });
});

test('each kind of thing has a layer of its own name', async () => {
  const marks = [
    { id: 'b', kind: 'pull-box' as const, points: [[3, 0]] as Point[] },
    { id: 'c', kind: 'cabinet' as const, points: [[6, 2]] as Point[] },
    { id: 'k', kind: 'kerb' as const, points: [[2, -3], [2, 3]] as Point[] }, // prettier-ignore
    { id: 'd', kind: 'dimension' as const, points: [[0, 0], [2, 0]] as Point[], offset: 1 } // prettier-ignore
  ];
  const loop = loopOf(square([0, 0]), 'L1', {
    tail: { length: 4, route: { to: 'b', via: [], allowance: 0 } }
  });
  const circuit = {
    id: 'C1',
    name: 'C1',
    strings: [[{ loop: 'L1', reversed: false }]],
    leadIn: { cable: 'pair-14', length: 12, route: { from: 'b', to: 'c', via: [], allowance: 0 } },
    channel: null,
    detect: []
  };
  const steel = { id: 's', kind: 'mat' as const, depth: 0.12, pitch: 0.2, barRadius: 0.006, outline: [[-3, -3], [3, -3], [3, 3]] as Point[] }; // prettier-ignore
  const lane = { id: 'l', name: 'In', centreline: [[0, -5], [0, 5]] as Point[], width: 3.5 }; // prettier-ignore
  const content = await written(
    siteOf([loop], { marks, circuits: [circuit], steel: [steel], lanes: [lane] })
  );
  const expected = ['LANES', 'LANE-CENTRES', 'KERBS-AND-MARKS', 'SAW-CUT', 'HOME-RUN', 'LEAD-IN', 'STEEL', 'CABINET-AND-BOXES', 'DIMENSIONS', 'TEXT']; // prettier-ignore
  const { layers, entities } = parsed(content);
  for (const name of expected) {
    expect(layers).toContain(name);
    expect(Object.keys(other(content).tables.layers)).toContain(name);
    expect(entities.some(({ layer }) => layer === name)).toBe(true);
  }
  expect(entities.every(({ layer }) => layers.includes(layer))).toBe(true);
  const [homeRun] = entities.filter(({ layer }) => layer === 'HOME-RUN');
  expect(homeRun!.vertices!.at(-1)).toMatchObject({ x: 3, y: 0 });
});

test.each(SAMPLES)('%s: cuts measure what is sawn, a shared slot once', async (name) => {
  const site = sample(name);
  const shown = { ...site, displayUnits: 'metric' as const };
  const { entities } = parsed(await written(shown));
  const drawn = cuts(entities).reduce(
    (sum, cut) => sum + (cut.type === 'CIRCLE' ? 2 * Math.PI * cut.radius! : lengthOf(cut)),
    0
  );
  const sawn = site.loops.reduce((sum, { shape }) => sum + pathOf(shape).sawCut, 0);
  expect(drawn).toBeCloseTo(sawn, 3);
});

test('a plan of 200 loops, and one 20 km away', async () => {
  const { entities } = parsed(await written(bigSite(200)));
  expect(new Set(cuts(entities).map(({ type }) => type))).toEqual(new Set(['LWPOLYLINE', 'CIRCLE']));
  expect(entities.filter(({ type, text }) => type === 'TEXT' && /^Loop \d+$/.test(text!))).toHaveLength(200);
  const far = parsed(await written(siteOf([loopOf(square([20_000, -20_000]))])));
  expect(lengthOf(cuts(far.entities)[0]!)).toBeCloseTo(7.2, 5);
  expect(extents(far.entities)[0]).toBeCloseTo(19_999.1, 5);
});

test('of nothing no file is made', async () => {
  await expect(written(emptySite())).rejects.toThrow(Unfit);
});

test('the same plan gives the same file, another time', async () => {
  expect(await written(bigSite(24))).toBe(await written(bigSite(24)));
});

describe('harmful names', () => {
  test.each(HOSTILE)('%j begins no code of its own', async (name) => {
    const [plain, harmed] = [await written(siteNamed('x')), await written(siteNamed(name))];
    const kinds = (content: string) => parsed(content).entities.map(({ type, layer }) => `${type} ${layer}`);
    expect(kinds(harmed)).toEqual(kinds(plain));
    expect(harmed.split('\n').length).toBe(plain.split('\n').length);
    expect(harmed).not.toMatch(/[\u202A-\u202E\u2066-\u2069]/u);
    expect(Math.max(...harmed.split('\n').map((line) => line.length))).toBeLessThan(900);
  });

  test.each([
    ['a\r\n0\nEOF', 'a 0 EOF'],
    // as the format's reference writes the signs that begin codes
    ['50%%d', '50%%%%%%d'],
    ['5 % off', '5 % off'],
    ['a^Jb', 'a^ Jb'],
    ['\\U+0041', '\\U+005CU+0041'],
    ['C:\\lanes', 'C:\\lanes'],
    ['Größe Ω', 'Größe Ω']
  ])('%j is written %j', (text, expected) => {
    expect(dxfText(text)).toBe(expected);
  });
});

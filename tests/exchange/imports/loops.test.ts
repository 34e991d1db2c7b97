import fc from 'fast-check';
import { afterEach, beforeAll, describe, expect, it } from 'vitest';
import { EXAMPLES } from '#exchange/imports/loops/examples';
import { loopsOf, readLoops, withLoops, type ReadLoops } from '#exchange/imports/loops/read';
import { writeLoops } from '#exchange/imports/loops/write';
import { speakLanguage } from '#i18n/load';
import { COUNTS } from '#plan/bounds';
import { readSite } from '#plan/read';
import type { Loop, Site } from '#plan/schema';

const reading = readSite('{"format":"kerfline-site","version":1,"name":"Yard"}');
if (!reading.ok) throw new Error('the empty site');
const empty: Site = reading.site;
const imperial: Site = { ...empty, displayUnits: 'imperial' };

const speak = (language: 'en' | 'de') => speakLanguage(language, ['page', 'views']);
beforeAll(() => speak('en'));
afterEach(() => speak('en'));

function read(text: string, site = empty): ReadLoops {
  const found = readLoops(text, site);
  if (!found.ok) throw new Error(found.why);
  return found.read;
}
const only = (text: string, site = empty): Loop => {
  const { rows } = read(text, site);
  expect(rows.flatMap(({ errors }) => errors)).toEqual([]);
  return loopsOf({ rows, unknown: [], beyond: 0 })[0]!;
};
const errorsOf = (text: string, site = empty) => read(text, site).rows.flatMap(({ errors }) => errors);

/** Tenths of a millimetre: as fine as anybody types. */
const metres = (least: number, most: number) =>
  fc.integer({ min: Math.round(least * 1e4), max: Math.round(most * 1e4) }).map((tenths) => tenths / 1e4);
const point = fc.tuple(metres(-2_000, 2_000), metres(-2_000, 2_000));
const degrees = fc.integer({ min: -36_000, max: 36_000 }).map((hundredths) => hundredths / 100);
const box = { centre: point, width: metres(0.5, 50), length: metres(0.5, 50), rotation: degrees };
const shape = fc.oneof(
  fc.record({ kind: fc.constant('rectangle' as const), ...box, cornerCut: metres(0, 0.2) }),
  fc.record({ kind: fc.constant('quadrupole' as const), ...box }),
  fc.record({ kind: fc.constant('diagonal' as const), ...box }),
  fc.record({ kind: fc.constant('circle' as const), centre: point, diameter: metres(0.5, 20) }),
  fc.record({
    kind: fc.constant('polygon' as const),
    points: point.chain(
      ([x, y]) =>
    fc.tuple(metres(0.5, 9), metres(0.5, 9)).map(([w, h]) => [[x, y], [x + w, y], [x + w / 2, y + h]].map(([a, b]) => [Number(a!.toFixed(5)), Number(b!.toFixed(5))] as [number, number])) // prettier-ignore
    )
  })
);
const name = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 60 }).filter((text) => !text.includes('\r') || /\r\n/.test(text)),
  fc.constantFrom('=HYPERLINK("http://a")', "'=1+1", "''@x", '+49', '-', '<script>alert(1)</script>', '\u202egnp', 'a;b,c\n"d"', ' x ', '\t=2') // prettier-ignore
);
const loops = fc
  .array(
    fc.record({
      name,
      turns: fc.integer({ min: 1, max: 50 }),
      wire: fc.constantFrom('awg12', 'awg14', 'mm2-2.5'),
      slot: fc.record({
        depth: metres(0.005, 1),
        width: metres(0.001, 0.1),
        relativePermittivity: fc.integer({ min: 10, max: 1_000 }).map((tenths) => tenths / 10)
      }),
      tail: fc.record({ length: metres(0, 1_000) }),
      shape
    }),
    { maxLength: 8, minLength: 1 }
  )
  .map((list) => list.map((loop, index): Loop => ({ id: `L${index + 1}`, ...loop })));

describe('what was written is read', () => {
  it.each(['en', 'de'] as const)('equal in every field, whatever the names, in %s', async (language) => {
    await speak(language);
    fc.assert(
      fc.property(loops, fc.constantFrom(empty, imperial), (list, site) => {
        expect(loopsOf(read(writeLoops(list), site))).toEqual(list);
      }),
      { numRuns: 150 }
    );
  });

  it('also where the other language is spoken by then', async () => {
    await speak('de');
    const german = writeLoops(EXAMPLES);
    expect(german).toContain(';1,8;');
    await speak('en');
    expect(loopsOf(read(german))).toEqual(EXAMPLES);
    const english = writeLoops(EXAMPLES);
    await speak('de');
    expect(loopsOf(read(english))).toEqual(EXAMPLES);
  });

  it('the example comes onto an empty site as it is', () => {
    expect(withLoops(empty, loopsOf(read(`\uFEFF${writeLoops(EXAMPLES)}`))).loops).toEqual(EXAMPLES);
  });

  it('nothing that a spreadsheet would run leaves', () => {
    const wild = ['=1+1', '+1', '-1', '@a', '\t=1', "'=1"].map((text, index): Loop => ({ ...EXAMPLES[0]!, id: `L${index}`, name: text })); // prettier-ignore
    for (const field of writeLoops(wild).split(/\r\n/).slice(1, -1))
      expect(field.split(',')[1]).toMatch(/^"?'/);
  });
});

describe('heads and units', () => {
  it('heads in German, with a decimal comma', () => {
    const text = 'Kennung;Form;Mitte x;Mitte y;Breite;Länge;Windungen;Fugentiefe [cm];Anschlussende\r\nS1;Rechteck;-1,5;2,25;1,8;2,4;4;5,5;12\r\n'; // prettier-ignore
    expect(only(text)).toMatchObject({
      id: 'S1',
      turns: 4,
      slot: { depth: 0.055 },
      tail: { length: 12 },
      shape: { kind: 'rectangle', centre: [-1.5, 2.25], width: 1.8, length: 2.4, rotation: 0, cornerCut: 0 }
    });
  });

  it('units in the heads, in the cells, and of the site where there is none', () => {
    expect(only("x (ft),y,width,length (in)\n10,1m,6',72\n").shape).toMatchObject({
      centre: [3.048, 1],
      width: 1.8288,
      length: 1.8288
    });
    expect(only('x,y,diameter\n10,20,6\n', imperial).shape).toEqual({ kind: 'circle', centre: [3.048, 6.096], diameter: 1.8288 }); // prettier-ignore
    expect(only('x,y,width,length,depth\n0,0,1.8,1.8,50\n').slot.depth).toBe(0.05);
  });

  // what the page says of numbers without a unit holds for the corners of a polygon too: 10 ft are 3.048 m
  it('corners of a polygon in the unit of the head, and of the site where there is none', () => {
    const corners = 'polygon,0 0 | 10 0 | 5 10\n';
    const inFeet = { points: [[0, 0], [3.048, 0], [1.524, 3.048]] }; // prettier-ignore
    expect(only(`shape,points\n${corners}`, imperial).shape).toMatchObject(inFeet);
    expect(only(`shape,points (ft)\n${corners}`).shape).toMatchObject(inFeet);
    expect(only(`shape,points\n${corners}`).shape).toMatchObject({ points: [[0, 0], [10, 0], [5, 10]] }); // prettier-ignore
    expect(only(`shape,points (m)\n${corners}`, imperial).shape).toMatchObject({ points: [[0, 0], [10, 0], [5, 10]] }); // prettier-ignore
  });

  it('three decimals are no thousands in a file that says its sign', () => {
    expect(only('x;y;diameter\n1,250;0;1,800\n').shape).toMatchObject({ centre: [1.25, 0], diameter: 1.8 });
  });

  it('the line by which a spreadsheet says its sign between cells', () => {
    expect(only('sep=;\r\nid;x;y;diameter\r\nA;0;0;1,8\r\n').shape).toMatchObject({ diameter: 1.8 });
    expect(errorsOf('sep=;\r\nid;x;y;diameter\r\nA;0;0;\r\n')[0]!.line).toBe(3);
  });

  it('a wire by its name, a shape by either language, the rest as usual', () => {
    const loop = only('shape,x,y,width,wire\nKreis,0,0,2,AWG12\n');
    expect(loop).toMatchObject({
      wire: 'awg12',
      tail: { length: 4 },
      shape: { kind: 'circle', diameter: 2 }
    });
    expect(loop.id).toBe('L1');
  });

  it('columns that mean nothing are named, and so is a unit that nobody knows', () => {
    expect(read('x,y,diameter,colour,width (furlongs)\n0,0,2,red,1\n').unknown).toEqual(['colour', 'width (furlongs)']); // prettier-ignore
  });
});

describe('rows that cannot come in', () => {
  const heads = 'id,shape,x,y,width,length,turns\n';

  it('say their line, column, what is there and what should be, and leave the others alone', () => {
    const found = read(`${heads}\nA,rectangle,0,0,1.8,1.8,3\nB,blob,0,0,1,1,3\n"C\nC",rectangle,0,0,nine,1,99\nD,rectangle,5,5,1.8,1.8,3\n`); // prettier-ignore
    expect(loopsOf(found).map(({ id }) => id)).toEqual(['A', 'D']);
    const [, b, c, d] = found.rows;
    expect(b).toMatchObject({ line: 4, errors: [{ column: 'shape', found: 'blob', expected: "rectangle, quadrupole, diagonal, circle, polygon" }] }); // prettier-ignore
    expect(c!.errors.map(({ line, column, found: text }) => [line, column, text])).toEqual([[5, 'width', 'nine'], [5, 'turns', '99'], [5, 'id', 'C\nC']]); // prettier-ignore
    expect(c!.errors[1]!.expected).toBe('between 1 and 50');
    // the broken field has two lines
    expect(d!.line).toBe(7);
  });

  it.each([
    ['nothing where a size should be', '0,0,,1.8', 'width', 'nothing', /length/],
    ['a size that no slot has', '0,0,900,1.8', 'width', '900', /between 0\.05 m and 500/],
    ['a place beyond every plan', '1e9,0,1,1', 'x', '1e9', /between/]
  ])('%s', (_, cells, column, text, expected) => {
    expect(errorsOf(`x,y,width,length\n${cells}\n`)).toEqual([{ line: 2, column, found: text, expected: expect.stringMatching(expected) as unknown }]); // prettier-ignore
  });

  it('a shape that crosses itself, a corner cut that leaves no side', () => {
    expect(errorsOf('shape,points\npolygon,0 0 | 1 1 | 1 0 | 0 1\n')[0]!.found).toMatch(/crossing/);
    expect(errorsOf('x,y,width,length,corner cut\n0,0,1,1,0.6\n')[0]!.column).toBe('corner cut');
    expect(errorsOf('shape,points\npolygon,0 0 | 1\n')[0]!.column).toBe('points');
  });

  // a site with a corner out there could never be opened again
  it('a corner beyond every plan', () => {
    const [error] = errorsOf('shape,points\npolygon,20001 0 | 20003 0 | 20002 2\n');
    expect(error).toMatchObject({ column: 'points', expected: expect.stringMatching(/^between/) as unknown });
    expect(only('shape,points\npolygon,19997 0 | 20000 0 | 19998 2\n').shape.kind).toBe('polygon');
  });

  // 1,8 by 1,8 would come in as 1 m by 8 m with one turn
  it('more cells than heads: decimal commas between commas are refused, not shifted', () => {
    const found = read(`${heads}A,rectangle,0,-3,1,8,1,8,3\nB,rectangle,0,3,2,1,3,,\n`);
    expect(loopsOf(found).map(({ id }) => id)).toEqual(['B']);
    expect(found.rows[0]!.errors).toEqual([{ line: 2, column: 'turns', found: '1 8 3', expected: expect.stringMatching(/7 columns.*semicolons/) as unknown }]); // prettier-ignore
    expect(only('id;x;y;width;length\nA;0;-3;1,8;1,8\n').shape).toMatchObject({ width: 1.8, length: 1.8 });
  });

  it('a quotation mark that is never closed takes the rows beneath it along, and says so', () => {
    const found = read(`${heads}A,rectangle,0,0,1,1,3\nB,"rectangle,0,4,1,1,3\nC,rectangle,0,8,1,1,3\n`);
    expect(loopsOf(found).map(({ id }) => id)).toEqual(['A']);
    expect(found.rows[1]!.errors).toEqual([{ line: 3, column: 'shape', found: '"', expected: expect.stringMatching(/beneath this line/) as unknown }]); // prettier-ignore
  });

  it('a site that is full', () => {
    const rows = Array.from({ length: COUNTS.loops + 3 }, (_, at) => `${at * 3},0,2`).join('\n');
    const found = read(`x,y,diameter\n${rows}\n`);
    expect(loopsOf(found)).toHaveLength(COUNTS.loops);
    expect(found.rows.at(-1)!.errors[0]!.expected).toContain(String(COUNTS.loops));
  });

  it('noise is refused or read, and nothing else', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 300 }), (noise) => {
        const found = readLoops(`x,y,diameter,name\n${noise}`, empty);
        if (!found.ok) return;
        expect(withLoops(empty, loopsOf(found.read)).loops).toHaveLength(loopsOf(found.read).length);
      }),
      { numRuns: 300 }
    );
  });
});

describe('ids', () => {
  it('that are taken, there or further up, give way and say so', () => {
    const site = withLoops(empty, EXAMPLES);
    const { rows } = read('id,x,y,diameter\nA1,0,50,2\nB,0,60,2\nB,0,70,2\n,0,80,2\n', site);
    expect(rows.map(({ loop, takenId }) => [loop?.id, takenId])).toEqual([['A1-2', 'A1'], ['B', null], ['B-2', 'B'], ['L6', null]]); // prettier-ignore
    expect(withLoops(site, rows.flatMap(({ loop }) => loop ?? [])).loops).toHaveLength(9); // prettier-ignore
  });

  it('that a file does not say are the next ones, and nobody is told that they were taken', () => {
    const site = withLoops(empty, EXAMPLES.slice(0, 1));
    const { rows } = read('id,x,y,diameter\n,0,50,2\n,0,60,2\nL3,0,70,2\n,0,80,2\n', site);
    expect(rows.map(({ loop, takenId }) => [loop?.id, takenId])).toEqual([['L2', null], ['L4', null], ['L3', null], ['L5', null]]); // prettier-ignore
  });
});

describe('files that are refused', () => {
  it.each([
    ['', 'noHeads'],
    ['Dear Sir,\nthe loops are cut\n', 'noHeads'],
    ['x,y,diameter\n', 'noRows'],
    ['x,y,width,Breite\n0,0,1,1\n', 'twice']
  ])('%j', (text, why) => {
    expect(readLoops(text, empty)).toMatchObject({ ok: false, why });
  });
});

/** What a file may state about kept variants: the place, what was found and what was expected. */
import { describe, expect, it } from 'vitest';
import { readSite, writeSite } from '#plan/read';
import { migrate, type Migration } from '#plan/migrations/index';
import { archived } from '../../archive/documents';
import { soundDocument, withValue } from './sound-document';

type Json = Record<string, unknown>;

const DESIGN = ['temperature_C', 'pavement', 'lanes', 'marks', 'loops', 'wires', 'cables', 'circuits', 'units', 'conduits', 'vehicles', 'probes', 'paths', 'traffic', 'steel']; // prettier-ignore

const designOf = (document: Json): Json =>
  Object.fromEntries(Object.entries(document).filter(([key]) => DESIGN.includes(key)));

/** Two variants that hold the document's own design. */
const withVariants = (): Json => ({
  ...soundDocument(),
  variant: 'V1',
  variants: [
    { id: 'V1', name: 'First', design: designOf(soundDocument()) },
    { id: 'V2', design: designOf(soundDocument()) }
  ]
});

const problemsOf = (document: unknown) => {
  const reading = readSite(JSON.stringify(document));
  return reading.ok ? [] : reading.problems;
};

const D = 'variants[1].design';
const rows: readonly (readonly [path: string, value: unknown, found: string, expected: string])[] = [
  ['variant', 'V9', '"V9" (text)', 'the id of a variant in the file'],
  ['variants', {}, 'an object', 'a list of at most 24 entries'],
  ['variants[1].name', 3, '3', 'a text of at most 200 characters'],
  ['variants[1].design', undefined, 'nothing', 'an object'],
  ['variants[1].design', [], 'a list of 0 entries', 'an object'],
  [`${D}.loops[0].turns`, 0, '0', 'a whole number from 1 to 50'],
  [`${D}.loops[0].tail.route`, { to: 'none' }, '"none" (text)', 'the id of a mark in the file'],
  [`${D}.circuits[0].strings[0][0].loop`, 'none', '"none" (text)', 'the id of a loop in the file'],
  [`${D}.circuits[0].detect`, ['none'], '"none" (text)', 'the id of a vehicle in the file or the catalogue'],
  [`${D}.loops[0].shape`, { kind: 'polygon', points: [[0, 0], [2, 2], [2, 0], [0, 2]] }, '', ''] // prettier-ignore
];
/** Where the problem lies, where that is deeper than what was set. */
const DEEPER: Readonly<Record<string, string>> = {
  [`${D}.loops[0].tail.route`]: `${D}.loops[0].tail.route.to`,
  [`${D}.circuits[0].detect`]: `${D}.circuits[0].detect[0]`,
  [`${D}.loops[0].shape`]: `${D}.loops[0].shape.points`
};

describe('a variant that may not be', () => {
  it('stands in a document that is sound without the fault', () => {
    expect(problemsOf(withVariants())).toEqual([]);
  });

  it.each(rows)('%s: %j', (path, value, found, expected) => {
    const problems = problemsOf(withValue(withVariants(), path, value));
    const where = DEEPER[path] ?? path;
    expect(problems.map((each) => each.path)).toContain(where);
    const problem = problems.find((each) => each.path === where)!;
    if (found !== '') expect(problem).toMatchObject({ found, expected });
    expect(problem.message.startsWith(`${where}: `) || problem.message.includes(where)).toBe(true);
  });

  it('has an id of its own, and so have the things in it', () => {
    const twice = withValue(withVariants(), 'variants[1].id', 'V1');
    expect(problemsOf(twice)).toMatchObject([
      {
        path: 'variants[1].id',
        found: '"V1" a second time (first at variants[0])',
        expected: 'an id of its own'
      }
    ]);
    const document = withVariants();
    const loops = (document['variants'] as { design: { loops: { id: string }[] } }[])[0]!.design.loops;
    loops.push(loops[0]!);
    expect(problemsOf(document)).toContainEqual(
      expect.objectContaining({ path: `variants[0].design.loops[${loops.length - 1}].id` })
    );
  });

  it('is one of at most 24', () => {
    const variants = Array.from({ length: 25 }, (_, index) => ({ id: `V${index}`, design: {} }));
    expect(problemsOf({ ...soundDocument(), variants })).toMatchObject([
      { path: 'variants', found: 'a list of 25 entries', expected: 'a list of at most 24 entries' }
    ]);
  });

  it('does not lend its things to the present design, but its circuits to the readings', () => {
    const document = withVariants();
    document['readings'] = [{ circuit: 'elsewhere' }];
    expect(problemsOf(document)).toMatchObject([{ path: 'readings[0].circuit' }]);
    const loops = [{ ...(soundDocument()['loops'] as Json[])[0]!, id: 'other' }];
    const circuits = [
      { id: 'elsewhere', strings: [[{ loop: 'other' }]], leadIn: { cable: 'pair-14', length: 1 } }
    ];
    const lent = { ...document, variant: undefined, variants: [{ id: 'V1', design: { loops, circuits } }] };
    expect(problemsOf(lent)).toEqual([]);
    expect(problemsOf({ ...lent, circuits, readings: [] }).map(({ path }) => path)).toContain(
      'circuits[0].strings[0][0].loop'
    );
  });
});

describe('variants in a file', () => {
  it('keep what this version does not know', () => {
    const document = withVariants();
    Object.assign((document['variants'] as Json[])[0]!, { mood: 'hopeful' });
    Object.assign((document['variants'] as { design: Json }[])[0]!.design, { later: [1, 2] });
    const reading = readSite(JSON.stringify(document));
    if (!reading.ok) throw new Error('refused');
    const written = JSON.parse(writeSite(reading.site)) as { variants: { mood: string; design: Json }[] };
    expect(written.variants[0]).toMatchObject({ mood: 'hopeful', design: { later: [1, 2] } });
    expect(readSite(writeSite(reading.site))).toEqual(reading);
  });

  it('have drawn lengths that follow their own drawing', () => {
    const marks = [{ id: 'box', kind: 'pull-box', points: [[0, 11]] }];
    const loop = (id: string) => ({
      id,
      turns: 3,
      wire: 'awg14',
      slot: { depth: 0.05, width: 0.008 },
      tail: { length: 99, route: { to: 'box', allowance: 0.5 } },
      shape: { kind: 'rectangle', centre: [0, 0], width: 2, length: 2 }
    });
    const document = {
      format: 'kerfline-site',
      version: 1,
      variants: [{ id: 'V1', design: { marks, loops: [loop('L1')] } }]
    };
    const reading = readSite(JSON.stringify(document));
    // from a corner at (±1, 1) to (0, 11), and the allowance: tidied to a millimetre
    const expected = Math.hypot(1, 10) + 0.5;
    expect(reading.ok && reading.site.variants?.[0]?.design.loops[0]?.tail.length).toBeCloseTo(expected, 2);
  });

  it('are absent from a document that never had any, whatever version it comes from', () => {
    for (const name of ['v1-full', 'v1-least'] as const) {
      const reading = readSite(archived(name));
      if (!reading.ok) throw new Error('refused');
      expect(Object.keys(reading.site).filter((key) => key.startsWith('variant'))).toEqual([]);
      expect(writeSite(reading.site)).not.toContain('variant');
    }
  });

  it('are migrated like the drawing itself', () => {
    const chain: readonly Migration[] = [
      { what: 'loops became coils', apply: ({ loops, ...rest }) => ({ ...rest, coils: loops }) }
    ];
    const older = { version: 1, loops: [1], variants: [{ id: 'V1', design: { loops: [2] } }, 'no variant'] };
    expect(migrate(older, 1, chain)).toEqual({
      version: 2,
      coils: [1],
      variants: [{ id: 'V1', design: { coils: [2] } }, 'no variant']
    });
  });
});

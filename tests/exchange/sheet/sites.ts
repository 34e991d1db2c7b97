/** Sites to make sheets of. */
import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { createAssessor } from '#analysis/assess';
import type { ExportSource } from '#exchange/files/exported';
import { SHEET_PARTS } from '#plan/schema/sheet';
import { emptySite, readSite } from '#plan/read';
import type { Circuit, Loop, Point, Shape, SheetLayout, Site } from '#plan/schema';
import { bigSite } from '../../support/big-site';
import { ORIENTATIONS, PAPERS, SCALES } from './papers';

const folder = new URL('../../../samples/', import.meta.url);
export const SAMPLES = readdirSync(folder).filter((name) => name.endsWith('.json'));

export function sample(name: string): Site {
  const reading = readSite(readFileSync(new URL(name, folder), 'utf8'));
  if (!reading.ok) throw new Error(`${name} cannot be read`);
  return reading.site;
}

const assessor = createAssessor();
const known = new WeakMap<Site['loops'], ExportSource['assessment']>();

/** With the figures that come at once; they are kept for sites with the very same loops. */
export function sourceOf(site: Site): ExportSource {
  const assessment = known.get(site.loops) ?? assessor.assess(site, 'prepared');
  known.set(site.loops, assessment);
  return { site, assessment, file: 'site.kerfline.json' };
}

const near = fc.double({ min: -25, max: 25, noNaN: true });
const size = fc.double({ min: 0.5, max: 6, noNaN: true });
const centre = fc.tuple(near, near);

const shape: fc.Arbitrary<Shape> = fc.oneof(
  fc.record({
    kind: fc.constant('rectangle' as const),
    centre,
    width: size,
    length: size,
    rotation: fc.constantFrom(0, 30, 90),
    cornerCut: fc.constantFrom(0, 0.2)
  }),
  fc.record({
    kind: fc.constantFrom('quadrupole' as const, 'diagonal' as const),
    centre,
    width: size,
    length: size,
    rotation: fc.constantFrom(0, 15)
  }),
  fc.record({ kind: fc.constant('circle' as const), centre, diameter: size }),
  centre.map(([x, y]) => ({
    kind: 'polygon' as const,
    points: [[x, y], [x + 2, y], [x + 1.5, y + 2]] as Point[] // prettier-ignore
  }))
);

const slot = fc.record({
  depth: fc.double({ min: 0.02, max: 0.3, noNaN: true }),
  width: fc.double({ min: 0.005, max: 0.03, noNaN: true }),
  relativePermittivity: fc.constant(4)
});

const loops = fc
  .array(fc.record({ shape, slot, turns: fc.integer({ min: 1, max: 6 }), tail: near.map(Math.abs) }), {
    minLength: 1,
    maxLength: 9
  })
  .map((made) =>
    made.map(({ tail, ...rest }, k): Loop => ({
      id: `L${k + 1}`,
      name: `Loop ${k + 1}`,
      wire: 'awg14',
      tail: { length: tail },
      ...rest
    }))
  );

/** Some loops in series, others in parallel. */
const circuitsOf = (made: readonly Loop[], together: number): Circuit[] =>
  Array.from({ length: Math.ceil(made.length / together) }, (_, k): Circuit => {
    const own = made.slice(k * together, (k + 1) * together);
    const entries = own.map(({ id }, at) => ({ loop: id, reversed: at % 2 === 1 }));
    return {
      id: `C${k + 1}`,
      name: `Circuit ${k + 1}`,
      strings: k % 2 === 0 ? [entries] : entries.map((entry) => [entry]),
      leadIn: { cable: 'pair-14', length: 12 + k },
      channel: null,
      detect: []
    };
  });

const units = fc.constantFrom('metric' as const, 'imperial' as const);

export const anySite: fc.Arbitrary<Site> = fc
  .tuple(loops, fc.integer({ min: 1, max: 4 }), units)
  .map(([made, together, displayUnits]) => ({
    ...emptySite(),
    name: 'Quay Road',
    displayUnits,
    loops: made,
    circuits: circuitsOf(made, together)
  }));

export const anyLayout: fc.Arbitrary<SheetLayout> = fc.record({
  paper: fc.constantFrom(...PAPERS),
  orientation: fc.constantFrom(...ORIENTATIONS),
  remarks: fc.constantFrom('', 'Saw at night.\nMind the tree roots.')
});

export const anyScale = fc.constantFrom(...SCALES);
export const ALL_BUT_PLAN = SHEET_PARTS.filter((part) => part !== 'plan');
export const withSheet = (site: Site, sheet: SheetLayout): Site => ({ ...site, sheet });
export { bigSite };

/** What is kept of one mat does not stand for another. */
import { describe, expect, it } from 'vitest';
import { createAssessor } from '#analysis/assess';
import type { Site } from '#plan/schema';
import { relativeError } from '../../physics/support/reference';
import { circuit, loop, QUICK_VEHICLES, siteOf, square, unit } from '../support/sites';

type Outline = readonly (readonly [number, number])[];

const WHOLE: Outline = [[-1.6, -1.6], [1.6, -1.6], [1.6, 1.6], [-1.6, 1.6]]; // prettier-ignore
/** The same box, a quarter of it without bars. */
const BENT: Outline = [[-1.6, -1.6], [1.6, -1.6], [1.6, 1.6], [0, 1.6], [0, 0], [-1.6, 0]]; // prettier-ignore
const BENT_OTHERWISE: Outline = [[-1.6, -1.6], [1.6, -1.6], [1.6, 0], [0, 0], [0, 1.6], [-1.6, 1.6]]; // prettier-ignore

type Json = Readonly<Record<string, unknown>>;

const siteOver = (outline: Outline, over: Json = {}, fields: Json = {}): Site =>
  siteOf({
    // off the middle, so that it matters which quarter is missing
    loops: [loop('L1', square(0.3, 0.2))],
    circuits: [circuit('C1', ['L1'])],
    units: [unit('U1')],
    vehicles: QUICK_VEHICLES,
    steel: [{ id: 's1', kind: 'mat', depth: 0.12, pitch: 0.2, barRadius: 0.005, outline, ...over }],
    ...fields
  });

const SITES = [
  siteOver(WHOLE),
  siteOver(BENT),
  siteOver(BENT_OTHERWISE),
  siteOver(WHOLE, { barRadius: 0.008 }),
  siteOver(WHOLE, { depth: 0.2 }),
  siteOver(WHOLE, { relativePermeability: 300 }),
  siteOver(WHOLE, { resistivity_ohm_m: 6e-7 })
];

describe('mats of one size, one after the other', () => {
  const kept = createAssessor();
  const found = SITES.map((site) => kept.assess(site, 'prepared').circuits[0]!);

  it.each(SITES.map((site, k) => [k, site] as const))('number %d is itself', (k, site) => {
    const fresh = createAssessor().assess(site, 'prepared').circuits[0]!;
    expect(found[k]!.inductance_H).toBe(fresh.inductance_H);
    expect(found[k]!.resistance_ohm).toBe(fresh.resistance_ohm);
  });

  it('all differ', () => {
    expect(new Set(found.map(({ resistance_ohm }) => resistance_ohm)).size).toBe(SITES.length);
  });

  it('a quarter less of it takes less inductance', () => {
    expect(found[1]!.inductance_H).toBeGreaterThan(found[0]!.inductance_H);
    expect(found[2]!.inductance_H).toBeGreaterThan(found[0]!.inductance_H);
  });
});

describe('several loops of a circuit on one mat', () => {
  const LONG: Outline = [[-1.8, -1.6], [1.8, -1.6], [1.8, 8], [-1.8, 8]]; // prettier-ignore
  const read = (order: readonly string[], places: readonly number[]) =>
    createAssessor().assess(
      siteOver(
        LONG,
        {},
        {
          loops: places.map((y, k) => loop(`L${k + 1}`, square(0.1 * k, y))),
          circuits: [circuit('C1', order)]
        }
      ),
      'prepared'
    );

  it('answer alike in any order of the string', () => {
    const [a, b, c] = [
      ['L1', 'L2', 'L3'],
      ['L1', 'L3', 'L2'],
      ['L3', 'L2', 'L1']
    ].map((order) => read(order, [0, 2, 5]).circuits[0]!.inductance_H);
    expect(relativeError(b!, a!)).toBeLessThan(1e-9);
    expect(relativeError(c!, a!)).toBeLessThan(1e-9);
  });

  it('each has its own of what the steel takes', () => {
    const [over, edge, beyond] = read(['L1', 'L2', 'L3'], [2, 8, 20]).loops.map(
      ({ steelInductance_H }) => steelInductance_H
    );
    expect(over!).toBeLessThan(edge!);
    expect(edge!).toBeLessThan(0);
    expect(beyond! + 0).toBe(0);
  });
});

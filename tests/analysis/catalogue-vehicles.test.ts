/** The order in which vehicles answer on an ordinary loop: common practice, and what the classes of NEMA TS 1 say ([M]). */
import { describe, expect, it } from 'vitest';
import { createBodyStore } from '#analysis/electrical/bodies';
import { passesOver } from '#analysis/passing/responses';
import { createSurveyor } from '#analysis/survey';
import { builtInVehicles } from '#plan/catalogue/vehicles';
import { PATIENCE } from '../physics/support/arbitraries';
import { circuit, lane, loop, siteOf, square, unit } from './support/sites';

/** 1.8 × 1.8 m, 3 turns, 30 m of lead-in. */
const site = siteOf({
  loops: [loop('L1', square(0, 0))],
  circuits: [circuit('C1', ['L1'])],
  units: [unit('U1')],
  lanes: [lane('a', 0)]
});
const { solved, loops } = createSurveyor().survey(site).circuits.get('C1')!;
const bodies = createBodyStore();

/** −ΔL/L on the best path across the lane. */
const responses = new Map(
  builtInVehicles.map((vehicle) => {
    const passes = passesOver(vehicle, solved, loops, site, {
      bodyOf: (each) => bodies.get(each),
      remember: (_, make) => make()
    })!;
    return [vehicle.id, -passes.at(-1)!.deltaLOverL];
  })
);
const of = (id: string): number => responses.get(id)!;

describe('vehicles of the catalogue over an ordinary loop', { timeout: PATIENCE }, () => {
  it.each([
    ['car', 'van'],
    ['van', 'lorry'],
    ['lorry', 'lorry-articulated'],
    ['lorry-articulated', 'motorcycle'],
    ['motorcycle', 'motorcycle-small'],
    ['motorcycle-small', 'bicycle'],
    ['bicycle', 'wheel'],
    ['car', 'car-small'],
    ['car', 'suv'],
    ['car-small', 'motorcycle'],
    ['bus', 'lorry']
  ])('a %s answers more than a %s', (stronger, weaker) => {
    expect(of(stronger)).toBeGreaterThan(1.02 * of(weaker));
    expect(of(weaker)).toBeGreaterThan(0);
  });

  it('rims of steel answer a little less than rims of aluminium: their loss takes a part of the current', () => {
    expect(of('bicycle-steel')).toBeLessThan(0.98 * of('bicycle'));
    expect(of('bicycle-steel')).toBeGreaterThan(0.6 * of('bicycle'));
  });

  it('car and motorcycles are near the figures of their classes: 3.2 %, 0.32 % and 0.13 % [M]', () => {
    for (const [id, figure] of [
      ['car', 0.032],
      ['motorcycle', 0.0032],
      ['motorcycle-small', 0.0013]
    ] as const)
      expect(Math.abs(of(id) / figure - 1)).toBeLessThan(0.25);
  });
});

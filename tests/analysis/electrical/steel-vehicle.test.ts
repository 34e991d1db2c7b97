/** A vehicle over a loop over a mat, against plate and bars solved together by an independent method; see the generator. */
import { describe, expect, it } from 'vitest';
import { createBodyStore } from '#analysis/electrical/bodies';
import { changeOf } from '#analysis/electrical/vehicle-effect';
import { createSurveyor } from '#analysis/survey';
import type { Complex } from '#physics/numeric/complex';
import type { Loop, Steel, Vehicle } from '#plan/schema';
import { PATIENCE } from '../../physics/support/arbitraries';
import { referenceOf } from '../../physics/support/reference';
import { channel, circuit, siteOf, unit } from '../support/sites';

interface VehicleCase {
  readonly name: string;
  readonly frequency: number;
  readonly vehicleOverMat_H: readonly [number, number];
  readonly vehicleAlone_H: number;
  readonly at: readonly [number, number];
  readonly heading: number;
  readonly parts: Vehicle['parts'];
  readonly steel: Steel;
  readonly loop: Loop;
}

const { cases, generator } = referenceOf<VehicleCase>('steel-vehicle');
const bodies = createBodyStore();

const solvedFor = ({ loop, steel, frequency }: VehicleCase) => {
  const site = siteOf({
    loops: [loop],
    circuits: [
      circuit('C1', [loop.id], {
        leadIn: { cable: 'pair-14', length: 0 },
        channel: channel('U1', 1, { frequency_Hz: frequency })
      })
    ],
    units: [unit('U1')],
    steel: [steel]
  });
  return createSurveyor().survey(site).circuits.get('C1')!.solved;
};

describe(`a vehicle over a mat (${generator})`, { timeout: PATIENCE }, () => {
  it.each(cases)('$name', (row) => {
    const solved = solvedFor(row);
    const body = bodies.get({ id: row.name, name: '', parts: row.parts });
    const placement = { x: row.at[0], y: row.at[1], heading: row.heading };
    const [re, im] = row.vehicleOverMat_H;
    const fine = changeOf(solved, body, placement)[0]![0] as Complex;
    const quick = changeOf(solved, body, placement, 'coarse')[0]![0] as Complex;
    const isHalf = /half off|one half/.test(row.name);
    const strength = Math.hypot(re, im);
    const alone = Math.abs(row.vehicleAlone_H);
    // of the answer itself, and of what the vehicle would do without the mat
    expect(Math.hypot(fine.re - re, fine.im - im) / strength).toBeLessThan(isHalf ? 0.06 : 0.045);
    expect(Math.hypot(fine.re - re, fine.im - im) / alone).toBeLessThan(isHalf ? 0.04 : 0.012);
    // in the middle of an ordinary mat the error is known and small: the losses' own phase is part of the answer
    if (row.name.startsWith('car centred')) {
      expect(fine.re / re).toBeGreaterThan(0.975);
      expect(fine.re / re).toBeLessThan(0.995);
    }
    expect(Math.hypot(quick.re - re, quick.im - im) / strength).toBeLessThan(0.25);
  });
});

describe('a mat that lies beside the loop', { timeout: PATIENCE }, () => {
  it('leaves the response of a car over both as it is', () => {
    const row = cases[0]!;
    const outline = row.steel.outline.map(([x, y]) => [x, y + 2.6] as const);
    const car = bodies.get({ id: 'car', name: '', parts: row.parts });
    const at = { x: 0, y: 0.6, heading: 90 };
    const beside = changeOf(
      solvedFor({ ...row, steel: { ...row.steel, outline } }),
      car,
      at
    )[0]![0] as Complex;
    const without = changeOf(
      solvedFor({ ...row, steel: { ...row.steel, outline: outline.map(([x, y]) => [x + 20, y] as const) } }),
      car,
      at
    )[0]![0] as number;
    expect(Math.abs(beside.re / without - 1)).toBeLessThan(0.03);
  });
});

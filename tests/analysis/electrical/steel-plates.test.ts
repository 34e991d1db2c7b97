/** Plates at rest over, under and beside a loop, against an independent spectral solution; see the generator. */
import { describe, expect, it } from 'vitest';
import { solveAlone } from '#analysis/electrical/alone';
import { externalInductance } from '#physics/inductance/loop';
import type { Loop, Steel } from '#plan/schema';
import { PATIENCE } from '../../physics/support/arbitraries';
import { referenceOf } from '../../physics/support/reference';
import { drawnWinding } from '../../physics/support/windings';
import { channel, circuit, siteOf, unit } from '../support/sites';

interface PlateCase {
  readonly name: string;
  readonly frequency: number;
  readonly change_H: readonly [number, number];
  readonly steel: Steel;
  readonly loop: Loop;
}

const { cases, generator } = referenceOf<PlateCase>('steel-plates');

const foundFor = ({ loop, steel, frequency }: PlateCase) => {
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
  return solveAlone(site, site.circuits[0]!)!.solved.steelOf(0);
};

describe(`a plate at rest (${generator})`, { timeout: PATIENCE }, () => {
  it.each(cases)('$name, $frequency Hz, permeability $steel.relativePermeability', (row) => {
    const [re, im] = row.change_H;
    const found = foundFor(row);
    const whole = externalInductance(drawnWinding(row.loop));
    // of what the plate does, and of the loop's own inductance
    expect(Math.abs(found.re / re - 1)).toBeLessThan(0.015);
    expect(Math.abs(found.re - re) / whole).toBeLessThan(0.002);
    expect(Math.abs(found.im / im - 1)).toBeLessThan(0.04);
  });
});

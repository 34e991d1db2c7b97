/** The magnetic inductance at the terminals: what is left when every capacitance is nothing is a sum of series parts. */
import { describe, expect, it } from 'vitest';
import { createAssessor } from '#analysis/assess';
import { relativeError } from '../../physics/support/reference';
import { channel, circuit, loop, siteOf, square, unit } from '../support/sites';

const PER_METRE = 7e-7;

describe('the magnetic inductance of a loop behind a lead-in', () => {
  it.each([0, 30, 100, 305, 600])('of %d m is that of the loop and of the metres', (length) => {
    const { loops, circuits } = createAssessor().assess(
      siteOf({
        loops: [loop('L1', square(0, 0), { turns: 4 })],
        cables: [
          {
            id: 'own',
            resistancePerMetre_ohm: 0.02,
            inductancePerMetre_H: PER_METRE,
            capacitancePerMetre_F: 9e-11
          }
        ],
        circuits: [
          circuit('C1', ['L1'], {
            leadIn: { cable: 'own', length },
            channel: channel('U1', 1, { frequency_Hz: 40_000 })
          })
        ],
        units: [unit('U1')]
      }),
      'prepared'
    );
    const wanted = loops[0]!.inductance_H + length * PER_METRE;
    expect(relativeError(circuits[0]!.magneticInductance_H, wanted)).toBeLessThan(1e-9);
  });
});

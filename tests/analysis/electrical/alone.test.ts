/** A circuit by itself is the circuit of the whole drawing. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { solveAlone } from '#analysis/electrical/alone';
import { createSurveyor } from '#analysis/survey';
import { emptySite } from '#plan/read';
import { loops, PATIENCE, SEED } from '../../physics/support/arbitraries';
import { relativeError } from '../../physics/support/reference';
import { circuit, loop, siteOf, square, unit } from '../support/sites';

describe('a circuit solved by itself', { timeout: PATIENCE }, () => {
  it('is what the survey of the drawing says, whatever the loops', () => {
    fc.assert(
      fc.property(fc.array(loops(8), { minLength: 1, maxLength: 3 }), fc.boolean(), (drawn, series) => {
        const named = drawn.map((each, k) => ({ ...each, id: `L${k}` }));
        const members = named.map(({ id }, k) => ({ loop: id, reversed: k === 1 }));
        const site = {
          ...emptySite(),
          loops: named,
          circuits: [
            {
              id: 'C1',
              name: '',
              strings: series ? [members] : members.map((member) => [member]),
              leadIn: { cable: 'pair-14', length: 40 },
              channel: null,
              detect: []
            }
          ]
        };
        const surveyed = createSurveyor().survey(site).circuits.get('C1')!;
        const alone = solveAlone(site, surveyed.circuit)!;
        expect(relativeError(alone.solved.inductance, surveyed.solved.inductance)).toBeLessThan(1e-9);
        expect(relativeError(alone.solved.resistance, surveyed.solved.resistance)).toBeLessThan(1e-9);
        expect(relativeError(alone.resistanceDc, surveyed.readout.resistanceDc_ohm)).toBeLessThan(1e-12);
      }),
      { seed: SEED, numRuns: 25 }
    );
  });

  it('over steel too', () => {
    const site = siteOf({
      loops: [loop('L1', square(0, 0)), loop('L2', square(0, 3))],
      circuits: [circuit('C1', ['L1', 'L2'])],
      units: [unit('U1')],
      steel: [
        {
          id: 's1',
          kind: 'mat',
          depth: 0.2,
          pitch: 0.2,
          barRadius: 0.006,
          outline: [
            [-2, -2],
            [2, -2],
            [2, 6],
            [-2, 6]
          ]
        }
      ]
    });
    const surveyed = createSurveyor().survey(site).circuits.get('C1')!;
    const { solved } = solveAlone(site, surveyed.circuit)!;
    expect(solved.steel).not.toBeNull();
    expect(relativeError(solved.inductance, surveyed.solved.inductance)).toBeLessThan(1e-9);
    expect(relativeError(solved.resistance, surveyed.solved.resistance)).toBeLessThan(1e-9);
  });

  it('is nothing without its loops, or with one that cannot be wound', () => {
    const site = siteOf({
      loops: [loop('L1', square(0, 0))],
      circuits: [circuit('C1', ['L1'])],
      units: [unit('U1')]
    });
    const [drawn] = site.circuits;
    expect(solveAlone({ ...site, loops: [] }, drawn!)).toBeNull();
    const crossed = { ...site.loops[0]!, wire: 'no such wire' };
    expect(solveAlone({ ...site, loops: [crossed] }, drawn!)).toBeNull();
  });
});

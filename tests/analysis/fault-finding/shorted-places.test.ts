/** Which of a loop's turns are bridged decides much of what they take away: every place in the stack has a hypothesis near it. */
import { expect, test } from 'vitest';
import { prepareInSteps } from '#analysis/fault-finding/forward/prepare';
import { finish } from '#analysis/steps';
import { AS_DRAWN, buildCircuit } from '../../support/faulty-network/as-drawn';
import { alternating } from '../../support/faulty-network/figures';
import { buildRoad } from '../../support/faulty-network/network';
import { circuit, loop, siteOf, square } from '../support/sites';

const CONTACT = 0.05;

const placesOf = (turns: number) => {
  const site = siteOf({
    loops: [loop('A', square(0, 0), { turns, slot: { depth: 0.08, width: 0.008 }, tail: { length: 3 } })],
    circuits: [circuit('C1', ['A'])],
    units: [
      {
        ...{ id: 'U1', channels: 2, scansInTurn: true, measuringTime_s: 0.005, settings_F: [1e-7] },
        inductanceRange_H: [2e-5, 2e-3]
      }
    ]
  });
  const sound = buildCircuit(site, site.circuits[0]!, AS_DRAWN, () => 1e9);
  const bridgedAt = (first: number): number => {
    const [only] = sound.loops;
    const bridged = { first, count: 1, resistance: CONTACT };
    const road = buildRoad({ ...sound, loops: [{ ...only!, bridged }] });
    return alternating(road, { at: 'loop', loop: 0 }, 50e3).inductance;
  };
  const prepared = finish(prepareInSteps(site, 'C1'))!;
  const asked = {
    ...({ testPoint: 'loop', loop: 'A', quantity: 'inductance_H' } as const),
    ...{ meterFrequency_Hz: 50e3, temperature_C: null, setting: null, vehicle: null }
  };
  const known = prepared.hypotheses
    .filter(({ kind }) => kind === 'shorted turns')
    .map(({ kind, subject, variant }) => {
      const values = { shortedTurns: 1, resistance_ohm: CONTACT };
      return prepared.predict([{ kind, subject, variant, values }], [asked])[0] as number;
    });
  return { real: Array.from({ length: turns }, (_, first) => bridgedAt(first)), known };
};

test.each([2, 3, 4, 5, 6, 7, 8, 10])('in a stack of %i', (turns) => {
  const { real, known } = placesOf(turns);
  const errors = real.map((henries) => Math.min(...known.map((each) => Math.abs(each / henries - 1))));
  // up to eight turns every place has one of its own, but for what capacitance does
  expect(Math.max(...errors)).toBeLessThan(turns <= 8 ? 0.01 : 0.06);
  // and it matters: the end of the stack is not its middle
  if (turns >= 5) expect(Math.max(...real) / Math.min(...real)).toBeGreaterThan(1.2);
});

/** What a meter shows hangs on the meter: the frequency that it measures at, and what it is called. */
import { expect, test } from 'vitest';
import { createMeans } from '#analysis/means';
import { finish } from '#analysis/steps';
import { walkInSteps } from '#analysis/walk-through/walk';
import type { FieldCheck, Site } from '#plan/schema';
import { soundFigures } from '../../support/faulty-network/sample';
import { channel, circuit, loop, siteOf, square, unit } from '../support/sites';
import { keysOf, next, numberIn } from './support';

/** A long lead-in on a low frequency: what its capacitance adds at 25 kHz is a quarter of what it adds at 50. */
const site: Site = siteOf({
  loops: [
    loop('L1', square(0, 0), { tail: { length: 4 } }),
    loop('L2', square(0, 2.2), { turns: 4, tail: { length: 6 } })
  ],
  units: [unit('U1')],
  circuits: [
    circuit('C1', ['L1', 'L2'], {
      leadIn: { cable: 'pair-14', length: 80 },
      channel: channel('U1', 1, { frequency_Hz: null, frequencySetting: 2 })
    })
  ]
});

const means = createMeans();
type Instruments = NonNullable<FieldCheck['instruments']>;

const stepAfterResistance = (instruments: Instruments, of: Site = site) => {
  const answers = ['occupied:no', 'shown:fault', 'resistance:fits'];
  const inHand = instruments.map(({ id }) => id);
  const wish = { complaint: 'always calling', circuit: 'C1', answers, instruments: inHand } as const;
  return next(finish(walkInSteps({ ...of, fieldCheck: { instruments } }, wish, means))!);
};
const inductanceStep = (instruments: Instruments = []) => {
  const step = stepAfterResistance(instruments);
  expect(step.id).toBe('inductance');
  return step;
};

/** By nodal analysis, turn by turn. */
const readAt = (frequency: number): number =>
  soundFigures(site, site.circuits[0]!, frequency).find(
    ({ testPoint, quantity }) => testPoint === 'cabinet' && quantity === 'inductance_H'
  )!.value;

test('an inductance is told as the meter shows it, not as the unit has it', () => {
  const [usual, slow] = [readAt(50_000), readAt(20_000)];
  expect(usual / slow).toBeGreaterThan(1.1);
  const { facts } = inductanceStep();
  // the network lets every turn have its own capacitance: a few hundredths of what that adds
  expect(numberIn(facts[0]!, 'value') / usual).toBeCloseTo(1, 2);
  expect(numberIn(facts[0]!, 'low')).toBeLessThan(usual);
  expect(numberIn(facts[0]!, 'high')).toBeGreaterThan(usual);
  expect(keysOf(facts)).toContain('loop.meterAt');
  expect(numberIn(facts[1]!, 'frequency')).toBe(50_000);

  const told = inductanceStep([{ id: 'I1', name: 'Slow', accuracies: [], testFrequency_Hz: 20_000 }]).facts;
  expect(numberIn(told[0]!, 'value') / slow).toBeCloseTo(1, 2);
  expect(numberIn(told[1]!, 'frequency')).toBe(20_000);
});

test('a meter without a name is told by its id', () => {
  const accuracies = [{ quantity: 'inductance_H' as const, share: 0.01, floor: 0 }];
  const [fact] = inductanceStep([{ id: 'I7', name: '', accuracies }]).facts;
  expect(fact!.values['meter']).toBe('I7');
});

test('where the lead-in has made a capacitor of the circuit no inductance is asked for', () => {
  const [first] = site.circuits;
  const leadIn = { ...first!.leadIn, length: 300 };
  const long: Site = { ...site, circuits: [{ ...first!, leadIn }] };
  const fast = [{ id: 'I1', name: 'Fast', accuracies: [], testFrequency_Hz: 100_000 }];
  // some 300 µH at the end of 300 m with 25 nF: in tune near 60 kHz
  const { id, ruledOut } = stepAfterResistance(fast, long);
  expect(id).toBe('insulation');
  expect(keysOf(ruledOut)).toEqual(['loop.capacitive']);
});

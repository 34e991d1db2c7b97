/** What a diagnosis makes of what is stated about the meters. */
import { expect, it } from 'vitest';
import type { FieldCheck, Reading } from '#plan/schema';
import { AT_CABINET, AT_UNIT, diagnosed, firstOf, readingsUnder, site } from './support/readings';
import { fault } from './support/prepared';

type Instrument = NonNullable<FieldCheck['instruments']>[number];

const takenWith = (instrument: Instrument, readings: readonly Reading[]) =>
  diagnosed(
    readings.map((each) => ({ ...each, instruments: [instrument.id] })),
    'C1',
    { ...site, fieldCheck: { instruments: [instrument] } }
  );

it('holds what the unit shows against the unit’s own frequency, whatever meter was ticked beside it', () => {
  const slow = { id: 'M1', name: 'Slow', accuracies: [], testFrequency_Hz: 1_000 };
  const quantities = [...AT_UNIT.quantities, 'inductance_H', 'q'] as const;
  const { figures, causes } = takenWith(slow, readingsUnder([], [{ ...AT_UNIT, quantities }]));
  const [first] = causes;
  expect(first!.faults[0]!.kind).toBe('nothing wrong');
  figures.forEach(({ expected, value }, k) => {
    expect(first!.predicted[k]! as number).toBeCloseTo(value!, 9);
    expect(expected!.value! / value!).toBeCloseTo(1, 6);
  });
});

/** As stated where a maker gives a share of the reading alone. */
const tester = (share: number): Instrument => ({
  id: 'M1',
  name: 'Tester',
  accuracies: [
    { quantity: 'insulation_ohm', share, floor: 0 },
    { quantity: 'insulationBetween_ohm', share, floor: 0 }
  ]
});

it.each([0.1, 0.03, 0.01])(
  'claims no short where good insulation was read with a tester of ± %f',
  (share) => {
    const quantities = [...AT_CABINET.quantities, 'insulationBetween_ohm'] as const;
    // 500 MΩ, thousands of millions of deviations from the ohms of a short
    const answer = takenWith(tester(share), readingsUnder([], [{ ...AT_CABINET, quantities }]));
    expect(firstOf(answer)).toBe('nothing wrong');
    expect(answer.fits).toBe(true);
  }
);

it('finds a leak also where the tester is said to leave nothing open, and what to measure next', () => {
  const leak = fault('cut insulation', null, { leakage_ohm: 2.3e5 });
  const once = readingsUnder([leak], [AT_CABINET]);
  for (const readings of [once, [...once, ...once]]) {
    const answer = takenWith(tester(0), readings);
    // both leak to ground, which the cabinet cannot tell apart
    expect(['cut insulation', 'wet splice']).toContain(firstOf(answer));
    expect(answer.fits).toBe(false);
    for (const { information, separates } of answer.next) {
      expect(information).toBeGreaterThan(0);
      for (const { low, high } of separates) expect(high).toBeGreaterThan(low);
    }
    for (const { evidence } of answer.causes)
      for (const { weight } of evidence) expect(Number.isFinite(weight)).toBe(true);
  }
});

it('finds the leak where a tester that states a share alone shows nought', () => {
  const [sound] = readingsUnder([], [AT_CABINET]);
  const answer = takenWith(tester(0.05), [{ ...sound!, insulation_ohm: 0 }]);
  expect(['cut insulation', 'wet splice']).toContain(firstOf(answer));
  expect(answer.fits).toBe(false);
});

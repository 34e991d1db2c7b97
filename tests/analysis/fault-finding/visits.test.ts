import { describe, expect, test } from 'vitest';
import { driftOf } from '#analysis/fault-finding/drift';
import { circuitOfReading, figuresOfReading, placeOfReading, visitsOf } from '#analysis/fault-finding/visits';
import { demoSite } from '#plan/demo';
import type { Reading, Site } from '#plan/schema';

const demo = demoSite();
const [first, second] = demo.circuits;
const withReadings = (...readings: readonly Reading[]): Site => ({ ...demo, readings });
const at = (when: string, rest: Reading = {}): Reading => ({
  circuit: first!.id,
  at: when,
  testPoint: 'cabinet',
  ...rest
});

describe('whose a reading is', () => {
  test('its circuit’s, else its loop’s, else the only one’s', () => {
    expect(circuitOfReading(demo, { circuit: 'C9', loop: 'L1' })).toBe('C9');
    const loop = second!.strings[0]![0]!.loop;
    expect(circuitOfReading(demo, { loop })).toBe(second!.id);
    expect(circuitOfReading(demo, {})).toBeUndefined();
    expect(circuitOfReading({ circuits: [first!] }, {})).toBe(first!.id);
  });

  test('a reading of an old file stands where what it tells can be read', () => {
    const { id: circuit } = first!;
    expect(placeOfReading(demo, { circuit, frequency_Hz: 43e3 })).toEqual({ testPoint: 'unit', loop: null });
    expect(placeOfReading(demo, { circuit, resistanceDc_ohm: 1 })).toEqual({
      testPoint: 'cabinet',
      loop: null
    });
    expect(placeOfReading(demo, { circuit, loop: 'L1', inductance_H: 7e-5 }).testPoint).toBe('loop');
    const only = first!.strings[0]![0]!.loop;
    expect(placeOfReading(demo, { circuit, testPoint: 'loop' })).toEqual({ testPoint: 'loop', loop: only });
  });

  test('an over-range figure is one without a value', () => {
    expect(figuresOfReading({ q: 12, overRange: ['insulation_ohm'] })).toEqual([
      { quantity: 'q', value: 12 },
      { quantity: 'insulation_ohm', value: null }
    ]);
  });
});

test('a visit is a day of one circuit, the newest first; what has no time is one visit, the last', () => {
  const site = withReadings(
    at('2024-05-01T09:00:00+02:00'),
    { circuit: first!.id, q: 3 },
    at('2025-11-26T08:00:00+01:00'),
    at('2024-05-01T23:50:00+02:00'),
    { circuit: second!.id, at: '2025-11-26T08:10:00+01:00' },
    { circuit: first!.id, q: 4 }
  );
  expect(visitsOf(site, first!.id)).toEqual([
    { day: '2025-11-26', readings: [2] },
    { day: '2024-05-01', readings: [3, 0] },
    { day: null, readings: [5, 1] }
  ]);
});

describe('drift', () => {
  const commissioning = at('2020-06-01T10:00:00+02:00', {
    isCommissioning: true,
    inductance_H: 100e-6,
    resistanceDc_ohm: 1,
    temperature_C: 20,
    meterFrequency_Hz: 50_000
  });

  test('is what was read less what was read at commissioning', () => {
    const site = withReadings(commissioning, at('2024-01-01T10:00:00+01:00', { inductance_H: 97e-6 }));
    const drift = driftOf(site, 1, 'inductance_H')!;
    expect(drift).toMatchObject({ since: 0, from: 100e-6, to: 97e-6, isCorrected: false });
    expect(drift.change).toBeCloseTo(-3e-6, 15);
    expect(drift.share).toBeCloseTo(-0.03, 12);
    expect(driftOf(site, 0, 'inductance_H')).toBeNull();
  });

  test('a resistance on a hot day is brought to the temperature of commissioning: 0.393 % a kelvin from 20 °C', () => {
    // annealed copper, IEC 60028: 1 + 0.00393 · 30 = 1.1179 at 50 °C
    const hot = at('2024-08-01T15:00:00+02:00', { resistanceDc_ohm: 1.1179, temperature_C: 50 });
    const drift = driftOf(withReadings(commissioning, hot), 1, 'resistanceDc_ohm')!;
    expect(drift.isCorrected).toBe(true);
    expect(drift.to).toBeCloseTo(1, 6);
  });

  test('nothing is held against what was measured otherwise', () => {
    const other = at('2024-01-01T10:00:00+01:00', { inductance_H: 97e-6, meterFrequency_Hz: 1_000 });
    expect(driftOf(withReadings(commissioning, other), 1, 'inductance_H')).toBeNull();
    const elsewhere = at('2024-01-01T10:00:00+01:00', { inductance_H: 97e-6, testPoint: 'pull-box' });
    expect(driftOf(withReadings(commissioning, elsewhere), 1, 'inductance_H')).toBeNull();
    expect(driftOf(withReadings(commissioning, at('2024-01-01', { q: 3 })), 1, 'q')).toBeNull();
    const stood = at('2020-06-01T10:00:00+02:00', {
      isCommissioning: true,
      deltaLOverL: -0.02,
      vehicle: 'car'
    });
    const by = (vehicle: string) => at('2024-01-01T10:00:00+01:00', { deltaLOverL: -0.01, vehicle });
    expect(driftOf(withReadings(stood, by('motorcycle')), 1, 'deltaLOverL')).toBeNull();
    expect(driftOf(withReadings(stood, by('car')), 1, 'deltaLOverL')?.since).toBe(0);
    const tuned = at('2020-06-01T10:00:00+02:00', {
      isCommissioning: true,
      frequency_Hz: 50_000,
      setting: 1
    });
    const set = (setting: number) => at('2024-01-01T10:00:00+01:00', { frequency_Hz: 41_000, setting });
    expect(driftOf(withReadings(tuned, set(2)), 1, 'frequency_Hz')).toBeNull();
    expect(driftOf(withReadings(tuned, set(1)), 1, 'frequency_Hz')?.since).toBe(0);
  });

  test('a frequency that only the instrument states is one too, but not where the unit itself was read', () => {
    const instruments = [
      { id: 'slow', name: '', accuracies: [], testFrequency_Hz: 20_000 },
      { id: 'fast', name: '', accuracies: [], testFrequency_Hz: 100_000 }
    ];
    const taken = (testPoint: 'cabinet' | 'unit', year: number, id: string, isCommissioning?: true) =>
      at(`${year}-06-01T10:00:00+02:00`, {
        ...{ testPoint, instruments: [id], q: 9 },
        ...(isCommissioning ? { isCommissioning } : {})
      });
    const driftAt = (testPoint: 'cabinet' | 'unit', then: string, now: string) =>
      driftOf(
        {
          ...withReadings(taken(testPoint, 2020, then, true), taken(testPoint, 2024, now)),
          fieldCheck: { instruments }
        },
        1,
        'q'
      );
    expect(driftAt('cabinet', 'slow', 'fast')).toBeNull();
    expect(driftAt('cabinet', 'slow', 'slow')?.since).toBe(0);
    expect(driftAt('unit', 'slow', 'fast')?.since).toBe(0);
  });

  test('counts from the newest commissioning before it, not from one that came later', () => {
    const renewed = { ...commissioning, at: '2023-03-01T10:00:00+01:00', inductance_H: 90e-6 };
    const site = withReadings(
      commissioning,
      renewed,
      at('2022-01-01T10:00:00+01:00', { inductance_H: 99e-6 }),
      at('2024-01-01T10:00:00+01:00', { inductance_H: 91e-6 })
    );
    expect(driftOf(site, 2, 'inductance_H')?.since).toBe(0);
    expect(driftOf(site, 3, 'inductance_H')?.since).toBe(1);
    // later on the very minute of commissioning counts from it too: clocks of tablets have no finer grain
    const again = at('2020-06-01T10:00:00+02:00', { inductance_H: 99e-6 });
    expect(driftOf(withReadings(commissioning, again), 1, 'inductance_H')?.since).toBe(0);
  });
});

import { describe, expect, test } from 'vitest';
import { demoSite } from '#plan/demo';
import {
  addInstrument,
  newInstrumentId,
  removeInstrument,
  stateAccuracy,
  updateInstrument,
  usesOfInstrument
} from '#plan/edits/instruments';
import {
  addReading,
  newReadingId,
  removeReadings,
  updateFieldCheck,
  updateReading,
  withoutReading
} from '#plan/edits/readings';
import { accuracyOf, USUAL_ACCURACY } from '#plan/catalogue/instruments';
import { COUNTS } from '#plan/bounds';
import type { Site } from '#plan/schema';

const demo: Site = { ...demoSite(), readings: [] };
const meter = { id: 'M1', name: 'Bridge', accuracies: [] };

describe('readings', () => {
  test('are added with a free id, changed, and removed by their place', () => {
    expect(newReadingId(demo)).toBe('R1');
    const one = addReading(demo, { id: 'R1', q: 14 });
    const two = addReading(one, { id: newReadingId(one), q: 15 });
    expect(two.readings.map(({ id }) => id)).toEqual(['R1', 'R2']);
    expect(updateReading(two, 1, { q: 16 }).readings[1]).toEqual({ id: 'R2', q: 16 });
    expect(updateReading(two, 1, { q: undefined }).readings[1]).toEqual({ id: 'R2' });
    expect(updateReading(two, 1, { q: 15 })).toBe(two);
    expect(withoutReading(two, 0).readings.map(({ id }) => id)).toEqual(['R2']);
    expect(removeReadings(two, new Set([5]))).toBe(two);
  });

  test('what the document cannot hold changes nothing', () => {
    expect(addReading(demo, { q: -1 })).toBe(demo);
    const one = addReading(demo, { id: 'R1', q: 14 });
    expect(updateReading(one, 0, { q: Number.NaN })).toBe(one);
    expect(updateReading(one, 4, { q: 1 })).toBe(one);
    const full = { ...demo, readings: Array.from({ length: COUNTS.readings }, () => ({ q: 14 })) };
    expect(addReading(full, { q: 15 })).toBe(full);
  });
});

describe('instruments', () => {
  const site = addInstrument(demo, meter);

  test('state what their makers say; without it the usual holds', () => {
    const stated = stateAccuracy(site, 'M1', 'q', { share: 0.03, floor: 0.1 });
    const reading = { instruments: ['M1'] };
    expect(accuracyOf(stated, reading, 'q')).toMatchObject({ share: 0.03, floor: 0.1 });
    expect(accuracyOf(stated, reading, 'inductance_H')).toEqual(USUAL_ACCURACY.inductance_H);
    // taken with another meter, or with one that nobody named
    for (const other of [{ instruments: ['M9'] }, {}])
      expect(accuracyOf(stated, other, 'q')).toEqual(USUAL_ACCURACY.q);
    expect(accuracyOf(stateAccuracy(stated, 'M1', 'q', null), reading, 'q')).toEqual(USUAL_ACCURACY.q);
    const again = stateAccuracy(stated, 'M1', 'q', { share: 0.01, floor: 0 });
    expect(again.fieldCheck!.instruments![0]!.accuracies).toHaveLength(1);
  });

  test('one that readings name stays, another goes without a trace', () => {
    const used = addReading(site, { id: 'R1', q: 14, instruments: ['M1'] });
    expect(usesOfInstrument(used, 'M1')).toBe(1);
    expect(removeInstrument(used, 'M1')).toBe(used);
    expect(removeInstrument(site, 'M1').fieldCheck).toEqual({});
    expect(newInstrumentId(site)).toBe('M2');
  });

  test('what does not fit changes nothing', () => {
    expect(updateInstrument(site, 'M1', { testFrequency_Hz: 3 })).toBe(site);
    expect(updateInstrument(site, 'M9', { name: 'x' })).toBe(site);
    expect(stateAccuracy(site, 'M9', 'q', null)).toBe(site);
    expect(updateFieldCheck(site, { limits: site.fieldCheck?.limits })).toBe(site);
  });
});

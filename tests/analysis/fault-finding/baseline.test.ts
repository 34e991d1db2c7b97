/** Which readings of commissioning day later ones are held against, and whether they are fit for it. */
import { describe, expect, it } from 'vitest';
import { assumptionsOf } from '#analysis/fault-finding/assumptions';
import { baselineOf, baselineReadings } from '#analysis/fault-finding/baseline';
import { measuredFigures } from '#analysis/fault-finding/measured';
import type { Reading, Site } from '#plan/schema';
import { meterOf } from './support/entries';
import { figure, number } from './support/prepared';
import { prepared, site } from './support/readings';

const at = (day: string | null, isCommissioning = false): Reading => ({
  ...{ circuit: 'C1', testPoint: 'cabinet' as const, q: 20 },
  ...(day === null ? {} : { at: day }),
  ...(isCommissioning ? { isCommissioning } : {})
});

describe('commissioning readings', () => {
  const places = (readings: readonly Reading[], ...chosen: readonly number[]) =>
    baselineReadings({ ...site, readings: [...readings] }, 'C1', chosen);

  it('are those of the newest day before the chosen ones, and none later', () => {
    const readings = [
      at('2030-01-01T08:00', true),
      at('2031-01-01T08:00', true),
      at('2031-01-01T09:00', true),
      at('2031-01-01T10:00'),
      at('2032-06-01T08:00'),
      at('2033-01-01T08:00', true)
    ];
    expect([...places(readings, 4)].sort()).toEqual([1, 2]);
    expect(places(readings, 3)).toHaveLength(2);
    // older than every commissioning
    expect(places([at('2029-01-01'), ...readings], 0)).toEqual([]);
    // of several chosen the oldest decides
    expect(places([...readings, at('2030-06-01')], 4, 6)).toEqual([0]);
  });

  it('are none where the chosen ones were taken on commissioning day themselves', () => {
    expect(places([at('2030-01-01', true), at('2031-01-01', true)], 1)).toEqual([]);
  });
});

describe('a baseline', () => {
  const DEVIATION = 10;
  const asked = figure('cabinet', 'resistanceDc_ohm');
  /** Off by so many deviations of a meter beside which tolerances are nothing. */
  const baseline = (deviations: number) =>
    baselineOf(prepared, [
      {
        asked,
        value: number(prepared, [], asked) + deviations * DEVIATION,
        accuracy: meterOf(DEVIATION),
        isBaseline: true
      }
    ]);

  it('is used where it fits the drawing, and refused where it does not', () => {
    expect(baseline(0).baseline).toBe('used');
    expect(baseline(2).baseline).toBe('used');
    expect(baseline(3)).toEqual({ observed: [], baseline: 'refused' });
  });

  it('holds nothing of insulation, which is another every day, nor of what was over the range', () => {
    const accuracy = meterOf(DEVIATION);
    const insulation = { asked: figure('cabinet', 'insulation_ohm'), value: 5e8, accuracy, isBaseline: true };
    expect(baselineOf(prepared, [insulation]).baseline).toBe('none');
    expect(baselineOf(prepared, [{ asked, value: null, accuracy, isBaseline: true }]).baseline).toBe('none');
  });
});

describe('what is taken for granted', () => {
  const keysOf = (reading: Reading, over: Partial<Site> = {}, leftOut = 0): readonly string[] => {
    const given: Site = { ...site, ...over, readings: [{ circuit: 'C1', testPoint: 'cabinet', ...reading }] };
    const figures = measuredFigures(given, 0, []);
    return assumptionsOf({
      ...{ site: given, figures, isCommissioning: false, baseline: 'none', leftOut, repeats: null }
    }).map(({ key }) => key);
  };
  const meter: Pick<Site, 'fieldCheck'> = {
    fieldCheck: {
      instruments: [{ id: 'I1', name: 'Meter', accuracies: [{ quantity: 'q', share: 0.01, floor: 0 }] }]
    }
  };

  it('is a usual meter where none is named that states the figure', () => {
    expect(keysOf({ q: 20 })).toContain('assumed.meters');
    expect(keysOf({ q: 20 }, meter)).toContain('assumed.meters');
    expect(keysOf({ q: 20, instruments: ['I1'] }, meter)).not.toContain('assumed.meters');
    expect(keysOf({ q: 20, inductance_H: 1e-4, instruments: ['I1'] }, meter)).toContain('assumed.meters');
  });

  it('is a frequency for what hangs on one and says none, but not at the unit, which has its own', () => {
    expect(keysOf({ q: 20 })).toContain('assumed.frequency');
    expect(keysOf({ q: 20, meterFrequency_Hz: 1e4 })).not.toContain('assumed.frequency');
    expect(keysOf({ inductance_H: 1e-4, testPoint: 'unit' })).not.toContain('assumed.frequency');
    expect(keysOf({ resistanceDc_ohm: 1 })).not.toContain('assumed.frequency');
  });

  it('is the temperature of the drawing where none was read, and that something was left out', () => {
    expect(keysOf({ q: 20 })).toContain('assumed.temperature');
    expect(keysOf({ q: 20, temperature_C: 5 })).not.toContain('assumed.temperature');
    expect(keysOf({ q: 20 })).not.toContain('assumed.left-out');
    expect(keysOf({ q: 20 }, {}, 1)).toContain('assumed.left-out');
  });

  // WAC 296-46B-300 states its limit for 500 V
  it('is said where the tester had less than what a limit is stated for', () => {
    expect(keysOf({ insulation_ohm: 6e7, insulationVoltage_V: 100 })).toContain('assumed.voltage');
    expect(keysOf({ insulation_ohm: 6e7, insulationVoltage_V: 500 })).not.toContain('assumed.voltage');
    expect(keysOf({ insulation_ohm: 6e7 })).not.toContain('assumed.voltage');
    const without = { fieldCheck: { limits: [] } };
    expect(keysOf({ insulation_ohm: 6e7, insulationVoltage_V: 100 }, without)).not.toContain(
      'assumed.voltage'
    );
  });
});

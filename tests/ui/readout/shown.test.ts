import { describe, expect, it } from 'vitest';
import { keepLast } from '#ui/readout/keep-last';
import { shownLosses } from '#ui/readout/losses';
import { toleranceText } from '#ui/readout/moved-by';
import { rangeText } from '#ui/readout/range-text';
import { emptySite } from '#plan/read';

describe('a range in writing', () => {
  it('names the unit once', () => {
    expect(rangeText(81.2e-6, 86.9e-6, 'inductance', 'metric', { digits: 3 })).toBe('81.2 – 86.9 µH');
  });

  it('measures both ends in one unit, also across a change of unit', () => {
    expect(rangeText(0.96, 1.04, 'resistance', 'metric', { digits: 3 })).toBe('0.960 – 1.04 Ω');
  });

  it('is one value where both ends read alike', () => {
    expect(rangeText(50_000, 50_000.001, 'frequency', 'metric')).toBe('50.00 kHz');
  });
});

describe('what follows an edit after a moment', () => {
  it('is shown as it was until it comes, and said to be old', () => {
    const kept = keepLast<number>();
    expect(kept.take('C1', null, true)).toEqual({ value: null, isOld: true });
    expect(kept.take('C1', 7, false)).toEqual({ value: 7, isOld: false });
    expect(kept.take('C1', null, true)).toEqual({ value: 7, isOld: true });
    expect(kept.take('C2', null, true)).toEqual({ value: null, isOld: true });
    expect(kept.take('C1', 8, true)).toEqual({ value: 8, isOld: false });
  });

  it('is gone when nothing more is to come', () => {
    const kept = keepLast<number>();
    kept.take('C1', 7, false);
    expect(kept.take('C1', null, false).value).toBeNull();
    expect(kept.take('C1', null, true).value).toBeNull();
  });
});

describe('losses by cause', () => {
  it('are shares of the whole, without those that take no part', () => {
    const shown = shownLosses([
      { cause: 'copper', resistance_ohm: 0.3 },
      { cause: 'skin', resistance_ohm: 0.1 },
      { cause: 'steel', resistance_ohm: 0 }
    ]);
    expect(shown.map(({ cause }) => cause)).toEqual(['copper', 'skin']);
    expect(shown.map(({ share }) => share)).toEqual([expect.closeTo(0.75, 12), expect.closeTo(0.25, 12)]);
  });

  it('are none where nothing is lost', () => {
    expect(shownLosses([{ cause: 'copper', resistance_ohm: 0 }])).toEqual([]);
  });
});

describe('a tolerance in words', () => {
  it('carries its size in the units shown; a difference of temperatures is no temperature', () => {
    const metric = emptySite();
    const imperial = { ...metric, displayUnits: 'imperial' as const };
    expect(toleranceText(metric, 'depth')).toBe('slot depth ±10\u00a0mm');
    expect(toleranceText(metric, 'temperature')).toBe('temperature ±15\u00a0°C');
    expect(toleranceText(imperial, 'temperature')).toBe('temperature ±27\u00a0°F');
    expect(toleranceText(imperial, 'leadInLength')).toBe('lead-in length ±6.56\u00a0ft');
    expect(toleranceText({ ...metric, tolerances: { depth_m: 0.004 } }, 'depth')).toBe(
      'slot depth ±4\u00a0mm'
    );
  });
});

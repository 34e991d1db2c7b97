import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { deviationsFrom, judge, meterDeviation, NINETEEN_IN_TWENTY } from '#analysis/fault-finding/judge';
import { USUAL_ACCURACY } from '#plan/catalogue/instruments';
import type { Quantity } from '#plan/schema';

const EXACT = { share: 0, floor: 0 };
const inductance = { value: 100e-6, low: 97e-6, high: 104e-6, limits: [] };

const verdict = (quantity: Quantity, value: number | null, expected: Parameters<typeof judge>[2]) =>
  judge(quantity, value, expected, USUAL_ACCURACY[quantity]).verdict;

describe('how far a figure lies from what is expected', () => {
  test('is the plausible range alone for a meter without error: its ends are 1.96 deviations away', () => {
    expect(deviationsFrom(104e-6, inductance, EXACT)).toBeCloseTo(1.96, 9);
    expect(deviationsFrom(97e-6, inductance, EXACT)).toBeCloseTo(-1.96, 9);
  });

  test('counts a meter and a design as squares', () => {
    // half widths of 3 and 4 are one of 5
    const held = { value: 100, low: 97, high: 103, limits: [] };
    expect(deviationsFrom(105, held, { share: 0, floor: 4 })).toBeCloseTo(NINETEEN_IN_TWENTY, 9);
  });

  test('is a meter’s share of the reading and its floor together, over 1.96', () => {
    expect(meterDeviation(100e-6, { share: 0.02, floor: 1e-6 })).toBeCloseTo(3e-6 / 1.96, 12);
  });

  test('means nothing where nothing is expected', () => {
    expect(deviationsFrom(1, { value: null, low: null, high: null, limits: [] }, EXACT)).toBeNull();
  });
});

describe('verdicts', () => {
  test.each<[number, string]>([
    [100e-6, 'fits'],
    [96e-6, 'fits'],
    [90e-6, 'low'],
    [110e-6, 'high']
  ])('an inductance of %f H, 97 to 104 µH expected and a usual meter: %s', (value, said) => {
    expect(verdict('inductance_H', value, inductance)).toBe(said);
  });

  test('a response is low when the drop is smaller, though the number is larger', () => {
    const drop = { value: -0.02, low: -0.022, high: -0.018, limits: [] };
    expect(verdict('deltaLOverL', -0.01, drop)).toBe('low');
    expect(verdict('deltaLOverL', -0.03, drop)).toBe('high');
  });

  test('a published limit goes before the design, and a limit that holds is enough where no design speaks', () => {
    const limits = [{ id: 'a', least: 50e6, most: null }];
    const held = { value: null, low: null, high: null, limits };
    expect(judge('insulation_ohm', 20e6, held, USUAL_ACCURACY.insulation_ohm)).toEqual({
      verdict: 'beyond a limit',
      deviations: null,
      limit: limits[0],
      meant: null,
      farOff: null
    });
    expect(verdict('insulation_ohm', 200e6, held)).toBe('fits');
    expect(verdict('insulation_ohm', null, held)).toBe('fits');
    expect(verdict('insulation_ohm', 200e6, { ...held, limits: [] })).toBe('no expectation');
    const most = { value: 5.4, low: 5.2, high: 5.6, limits: [{ id: 'b', least: null, most: 5 }] };
    expect(verdict('resistanceDc_ohm', 5.4, most)).toBe('beyond a limit');
  });

  test('over the range is high wherever a figure is expected', () => {
    expect(verdict('resistanceDc_ohm', null, { value: 1, low: 0.9, high: 1.1, limits: [] })).toBe('high');
    expect(verdict('inductance_H', null, null)).toBe('no expectation');
  });

  test.each<[Quantity, number]>([
    ['q', 900],
    ['inductance_H', 0.4],
    ['frequency_Hz', 100],
    ['insulation_ohm', 1e13]
  ])('no loop has %s of %f: in doubt, not refused', (quantity, value) => {
    expect(verdict(quantity, value, null)).toBe('in doubt');
  });
});

describe('what was meant', () => {
  test.each<[Quantity, number, number, number]>([
    ['inductance_H', 0.0985, 100e-6, 98.5e-6],
    ['inductance_H', 98.5e-9, 100e-6, 98.5e-6],
    ['resistanceDc_ohm', 1210, 1.2, 1.21],
    ['frequency_Hz', 43.4e3, 43.3, 43.4],
    ['deltaLOverL', 0.021, -0.02, -0.021],
    ['deltaLOverL', -0.9, -0.009, -0.009]
  ])('%s %f where %f is expected: %f', (quantity, typed, value, meant) => {
    const held = {
      value,
      low: value - Math.abs(value) * 0.05,
      high: value + Math.abs(value) * 0.05,
      limits: []
    };
    const judged = judge(quantity, typed, held, USUAL_ACCURACY[quantity]);
    expect(judged.verdict).toBe('in doubt');
    expect(judged.meant).toBeCloseTo(meant, 12);
  });

  test('nothing is suggested for a figure that fits, nor for one that no prefix brings near', () => {
    expect(judge('inductance_H', 99e-6, inductance, USUAL_ACCURACY.inductance_H).meant).toBeNull();
    expect(judge('inductance_H', 60e-6, inductance, USUAL_ACCURACY.inductance_H).meant).toBeNull();
  });

  test('a true fault is not taken for a slip: a small resistance stays low though the meter’s floor is wide', () => {
    const held = { value: 1.2, low: 1.1, high: 1.3, limits: [] };
    expect(judge('resistanceDc_ohm', 0.5, held, USUAL_ACCURACY.resistanceDc_ohm).verdict).toBe('low');
    // 90 mΩ lies within the floor of a tenth of an ohm around the 0.18 Ω of a single loop; 90 Ω is no slip all the same
    const loop = { value: 0.18, low: 0.17, high: 0.19, limits: [] };
    expect(judge('resistanceDc_ohm', 0.09, loop, USUAL_ACCURACY.resistanceDc_ohm).verdict).toBe('fits');
    expect(judge('resistanceDc_ohm', 90, loop, USUAL_ACCURACY.resistanceDc_ohm).verdict).toBe('high');
  });
});

describe('far out of the circuit’s own range', () => {
  const off = (quantity: Quantity, value: number, expected: Parameters<typeof judge>[2]) =>
    judge(quantity, value, expected, USUAL_ACCURACY[quantity]);
  // long enough that a meter's tenth of an ohm is little beside it
  const copper = { value: 4, low: 3.8, high: 4.2, limits: [] };

  test.each<[number, string | null]>([
    [0.05, 'below'],
    [1.8, 'below'],
    [2, null],
    [4, null],
    [41, null],
    [43, 'above']
  ])('%f Ω where the copper has 3.8 to 4.2 Ω: %s', (value, said) => {
    expect(off('resistanceDc_ohm', value, copper).farOff).toBe(said);
  });

  test.each<[Quantity, number, number, string | null]>([
    ['inductance_H', 100e-6, 8e-6, 'below'],
    ['inductance_H', 100e-6, 12e-6, null],
    ['inductance_H', 100e-6, 1.2e-3, 'above'],
    ['q', 20, 1, null],
    ['q', 20, 70, 'above'],
    ['q', 20, 50, null],
    ['frequency_Hz', 43e3, 2.5e3, null]
  ])('%s of %f, %f read: %s', (quantity, value, typed, said) => {
    expect(off(quantity, typed, { value, low: 0.9 * value, high: 1.1 * value, limits: [] }).farOff).toBe(
      said
    );
  });

  test('is asked about and not refused: the verdict stays low or high, as a short or a bad joint reads so too', () => {
    expect(off('resistanceDc_ohm', 0.3, copper).verdict).toBe('low');
    expect(off('resistanceDc_ohm', 70, copper).verdict).toBe('high');
  });

  test('is nothing that the meter cannot tell from what is expected, that a prefix explains, or that nothing is expected of', () => {
    // a twentieth of an ohm where two tenths are expected lies within the usual meter's tenth and two deviations
    const loop = { value: 0.15, low: 0.14, high: 0.16, limits: [] };
    expect(off('resistanceDc_ohm', 0.06, loop)).toMatchObject({ verdict: 'fits', farOff: null });
    expect(off('resistanceDc_ohm', 4000, copper)).toMatchObject({ verdict: 'in doubt', farOff: null });
    expect(off('resistanceDc_ohm', 70, null).farOff).toBeNull();
  });
});

test('the further out, the more deviations, and the verdict never comes back to fitting', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1.001, max: 3, noNaN: true }),
      fc.double({ min: 1.001, max: 3, noNaN: true }),
      (a, b) => {
        const [near, far] = [Math.min(a, b), Math.max(a, b)].map((factor) =>
          judge('inductance_H', 100e-6 * factor, inductance, USUAL_ACCURACY.inductance_H)
        );
        expect(far!.deviations!).toBeGreaterThanOrEqual(near!.deviations!);
        if (near!.verdict === 'high') expect(far!.verdict).toBe('high');
      }
    ),
    { seed: 8 }
  );
});

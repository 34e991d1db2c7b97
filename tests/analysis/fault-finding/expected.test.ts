import { describe, expect, it } from 'vitest';
import { createAssessor } from '#analysis/assess';
import { createMeans } from '#analysis/means';
import { expectedInSteps } from '#analysis/fault-finding/expected';
import type { ExpectedFigure, MeterConditions } from '#analysis/fault-finding/results';
import { finish } from '#analysis/steps';
import { copperResistivity } from '#physics/wire/round-wire';
import type { Quantity, Site, TestPoint } from '#plan/schema';
import { relativeError } from '../../physics/support/reference';
import { channel, circuit, lane, loop, QUICK_VEHICLES, siteOf, square, unit } from '../support/sites';

const base = {
  loops: [loop('L1', square(0, 0)), loop('L2', square(0, 4), { turns: 4, tail: { length: 8 } })],
  circuits: [
    circuit('C1', ['L1', 'L2'], { channel: channel('U1', 1, { frequency_Hz: null, frequencySetting: 2 }) })
  ],
  units: [unit('U1')],
  lanes: [lane('A', 0)],
  vehicles: QUICK_VEHICLES
};
const site = siteOf(base);

const figuresOf = (of: Site, conditions: MeterConditions = {}): readonly ExpectedFigure[] =>
  finish(expectedInSteps(of, 'C1', conditions))[0]!.figures;

const found = (
  figures: readonly ExpectedFigure[],
  testPoint: TestPoint,
  quantity: Quantity,
  loopId: string | null = null
): ExpectedFigure =>
  figures.find((each) => each.testPoint === testPoint && each.quantity === quantity && each.loop === loopId)!;

const assessed = createAssessor().assess(site, 'complete').circuits[0]!;
const figures = figuresOf(site);

describe('what meters should say', () => {
  it('at the unit is what the assessment says of the terminals, ranges included', () => {
    const { ranges } = assessed;
    const pairs = [
      ['frequency_Hz', assessed.frequency_Hz, ranges!.frequency_Hz],
      ['inductance_H', assessed.inductance_H, ranges!.inductance_H],
      ['q', assessed.q, ranges!.q]
    ] as const;
    for (const [quantity, value, range] of pairs) {
      const { value: expected, low, high, contributions } = found(figures, 'unit', quantity);
      expect(relativeError(expected!, value)).toBeLessThan(1e-6);
      const width = range.high - range.low;
      expect(Math.abs(low! - range.low)).toBeLessThan(1e-3 * width);
      expect(Math.abs(high! - range.high)).toBeLessThan(1e-3 * width);
      expect(contributions[0]!.input).toBe(range.contributions[0]!.input);
    }
  });

  it('at the cabinet is the same direct-current resistance, and the same inductance at the same frequency', () => {
    const dc = found(figures, 'cabinet', 'resistanceDc_ohm');
    expect(relativeError(dc.value!, assessed.resistanceDc_ohm)).toBeLessThan(1e-12);
    expect(relativeError(dc.low!, assessed.ranges!.resistanceDc_ohm.low)).toBeLessThan(1e-9);
    const alike = figuresOf(site, { meterFrequency_Hz: assessed.frequency_Hz });
    for (const quantity of ['inductance_H', 'q'] as const) {
      const there = found(alike, 'cabinet', quantity);
      expect(relativeError(there.value!, assessed[quantity])).toBeLessThan(1e-6);
      expect(there.frequency_Hz).toBe(assessed.frequency_Hz);
    }
  });

  it('of a known vehicle is its strongest response', () => {
    const { value, low, high, vehicle } = found(figures, 'unit', 'deltaLOverL');
    const response = assessed.responses.find((each) => each.vehicle === 'car')!;
    expect(vehicle).toBe('car');
    expect(relativeError(value!, response.best)).toBeLessThan(1e-4);
    expect(low!).toBeLessThan(value!);
    expect(high!).toBeGreaterThan(value!);
  });

  it('of loops in series adds up at the pull box', () => {
    const loops = ['L1', 'L2'].map((id) => found(figures, 'loop', 'resistanceDc_ohm', id).value!);
    const box = found(figures, 'pull-box', 'resistanceDc_ohm').value!;
    expect(box).toBeCloseTo(loops[0]! + loops[1]!, 12);
    expect(box).toBeLessThan(found(figures, 'cabinet', 'resistanceDc_ohm').value!);
  });

  it('of a loop with one turn more in tail and slot is more', () => {
    for (const quantity of ['resistanceDc_ohm', 'inductance_H'] as const)
      expect(found(figures, 'loop', quantity, 'L2').value!).toBeGreaterThan(
        1.2 * found(figures, 'loop', quantity, 'L1').value!
      );
  });

  it('follows a temperature that is read, and knows it better than the site’s tolerance does', () => {
    const hot = found(figuresOf(site, { temperature_C: 45 }), 'cabinet', 'resistanceDc_ohm');
    const there = found(figures, 'cabinet', 'resistanceDc_ohm');
    expect(hot.value! / there.value!).toBeCloseTo(copperResistivity(45) / copperResistivity(20), 9);
    expect(hot.high! - hot.low!).toBeLessThan(0.9 * (there.high! - there.low!));
  });

  it('follows the setting that the unit stands at', () => {
    const other = found(figuresOf(site, { setting: 4 }), 'unit', 'frequency_Hz');
    const drawn = siteOf({
      ...base,
      circuits: [
        circuit('C1', ['L1', 'L2'], {
          channel: channel('U1', 1, { frequency_Hz: null, frequencySetting: 4 })
        })
      ]
    });
    expect(relativeError(other.value!, found(figuresOf(drawn), 'unit', 'frequency_Hz').value!)).toBeLessThan(
      1e-7
    );
  });

  it('of a frequency that was given is that frequency, and moves with the design around it', () => {
    const given = siteOf({ ...base, circuits: [circuit('C1', ['L1', 'L2'])] });
    const { value, low, high } = found(figuresOf(given), 'unit', 'frequency_Hz');
    expect(value!).toBeCloseTo(50_000, 2);
    expect(high! - low!).toBeGreaterThan(100);
  });

  it('says nothing of a circuit that is not there', () => {
    expect(finish(expectedInSteps(site, 'C9'))).toEqual([]);
  });
});

describe('limits', () => {
  const limitsAt = (of: Site, testPoint: TestPoint, quantity: Quantity, conditions: MeterConditions = {}) =>
    found(figuresOf(of, conditions), testPoint, quantity).limits.map(({ id }) => id);

  it('hold for the quantity and the test point that they were published for', () => {
    expect(limitsAt(site, 'cabinet', 'insulation_ohm')).toEqual(['wac-296-46b-300-insulation']);
    expect(limitsAt(site, 'cabinet', 'resistanceDc_ohm')).toEqual(['wsdot-8-20-resistance']);
    expect(limitsAt(site, 'pull-box', 'resistanceDc_ohm')).toEqual([]);
    const insulation = found(figures, 'cabinet', 'insulation_ohm');
    expect([insulation.value, insulation.low, insulation.high]).toEqual([null, null, null]);
  });

  it('on Q hold at their frequency alone', () => {
    expect(limitsAt(site, 'cabinet', 'q')).toEqual(['wsdot-8-20-q']);
    expect(limitsAt(site, 'cabinet', 'q', { meterFrequency_Hz: 20_000 })).toEqual([]);
  });

  it('are those of the document at hand, also where its circuit was computed before', () => {
    const means = createMeans();
    const insulation = (of: Site): readonly string[] =>
      found(finish(expectedInSteps(of, 'C1', {}, means))[0]!.figures, 'cabinet', 'insulation_ohm').limits.map(
        ({ id }) => id
      );
    expect(insulation(site)).toEqual(['wac-296-46b-300-insulation']);
    expect(insulation({ ...site, fieldCheck: { limits: ['california-86-insulation'] } })).toEqual([
      'california-86-insulation'
    ]);
  });

  it('take in what was agreed, and what the unit can work on', () => {
    const agreed = siteOf({ ...base, fieldCheck: { limits: [], insulationLimit_ohm: 2e8 } });
    expect(limitsAt(agreed, 'cabinet', 'insulation_ohm')).toEqual(['own']);
    expect(limitsAt(agreed, 'cabinet', 'q')).toEqual([]);
    expect(found(figures, 'unit', 'inductance_H').limits).toEqual([{ id: 'unit', least: 2e-5, most: 2e-3 }]);
  });
});

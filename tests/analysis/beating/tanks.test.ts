import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createAssessor } from '#analysis/assess';
import { sweepOf, type Deepest } from '#analysis/beating/tank';
import { tankAt, tanksOf } from '#analysis/beating/tanks';
import type { Assessment, Sweep } from '#analysis/results';
import { createSurveyor } from '#analysis/survey';
import type { Site } from '#plan/schema';
import { relativeError } from '../../physics/support/reference';
import { channel, circuit, loop, QUICK_VEHICLES, siteOf, square, unit } from '../support/sites';

type Json = Readonly<Record<string, unknown>>;

const onSetting = (frequencySetting: number, over: Json = {}): Json =>
  channel('U1', 1, { frequency_Hz: null, frequencySetting, ...over });
const one = (over: Json = {}, fields: Json = {}): Site =>
  siteOf({
    loops: [loop('L1', square(0, 0))],
    circuits: [circuit('C1', ['L1'], over)],
    units: [unit('U1')],
    vehicles: QUICK_VEHICLES,
    ...fields
  });
const assess = (site: Site): Assessment => createAssessor().assess(site);

describe('the interval that a channel sweeps', () => {
  it('reaches from the lowest frequency at rest to the highest with the deepest vehicle', () => {
    const [readout] = assess(one({ channel: onSetting(3) })).channels;
    const [row] = assess(one({ channel: onSetting(3) })).circuits;
    const { sweep } = readout!;
    expect(sweep.rest_Hz).toBe(row!.frequency_Hz);
    expect(sweep.cold_Hz).toBe(row!.cold.frequency_Hz);
    expect(sweep.hot_Hz).toBe(row!.hot.frequency_Hz);
    const deepest = Math.min(...row!.responses.map(({ best }) => best));
    expect(sweep.deepest).toBe(deepest);
    expect(row!.responses.find(({ vehicle }) => vehicle === sweep.vehicle)!.best).toBe(deepest);
    expect(sweep.low_Hz).toBe(Math.min(sweep.cold_Hz, sweep.rest_Hz, sweep.hot_Hz));
    const highest = Math.max(sweep.cold_Hz, sweep.rest_Hz, sweep.hot_Hz);
    expect(sweep.high_Hz).toBeCloseTo(highest / Math.sqrt(1 + deepest), 6);
    // a hot loop has more resistance and a little more of its inductance inside the wire
    expect(sweep.hot_Hz).toBeLessThan(sweep.cold_Hz);
  });

  it('of a given frequency moves with the temperature as that of the setting with the same frequency does', () => {
    const tuned = assess(one({ channel: onSetting(3) })).channels[0]!;
    const given = assess(one({ channel: channel('U1', 1, { frequency_Hz: tuned.sweep.rest_Hz }) }))
      .channels[0]!;
    expect(given.setting).toBeNull();
    // the inductance is taken at one frequency there, and at the settled one here
    expect(
      relativeError(given.sweep.hot_Hz - given.sweep.rest_Hz, tuned.sweep.hot_Hz - tuned.sweep.rest_Hz)
    ).toBeLessThan(0.02);
    expect(
      relativeError(given.sweep.cold_Hz - given.sweep.rest_Hz, tuned.sweep.cold_Hz - tuned.sweep.rest_Hz)
    ).toBeLessThan(0.02);
  });

  it('is a point where neither vehicles nor temperatures move it, and always holds the frequency at rest', () => {
    const still = { frequency_Hz: 50_000, inductance_H: 1e-4, q: 20 };
    const point = sweepOf(still, still, still, false, { deltaLOverL: 0, vehicle: null });
    expect([point.low_Hz, point.high_Hz]).toEqual([50_000, 50_000]);
    const figure = fc.double({ min: 0.9, max: 1.1, noNaN: true });
    fc.assert(
      fc.property(
        figure,
        figure,
        fc.double({ min: 0, max: 0.3, noNaN: true }),
        fc.boolean(),
        (c, h, drop, given) => {
          const at = (by: number) => ({ frequency_Hz: 50_000 * by, inductance_H: 1e-4 / by ** 2, q: 20 });
          const sweep = sweepOf(still, at(c), at(h), given, { deltaLOverL: -drop, vehicle: 'car' });
          expect(sweep.low_Hz).toBeLessThanOrEqual(sweep.rest_Hz);
          expect(sweep.high_Hz).toBeGreaterThanOrEqual(sweep.rest_Hz * (1 + drop / 2) * (1 - 1e-12));
          expect(relativeError(sweep.cold_Hz, 50_000 * c)).toBeLessThan(1e-9);
        }
      )
    );
  });
});

describe('the settings of a channel', () => {
  it('are those of its unit, each with the frequency that the circuit has when it is chosen', () => {
    const [readout] = assess(one({ channel: onSetting(2) })).channels;
    expect(readout!.settings.map(({ setting }) => setting)).toEqual([1, 2, 3, 4]);
    for (const { setting, frequency_Hz } of readout!.settings)
      expect(frequency_Hz).toBe(assess(one({ channel: onSetting(setting) })).circuits[0]!.frequency_Hz);
  });

  it('stay what they are under a given frequency, which none of them has', () => {
    const [tuned] = assess(one({ channel: onSetting(2) })).channels;
    const [given] = assess(one({ channel: onSetting(2, { frequency_Hz: 77_000 }) })).channels;
    expect(given!.sweep.rest_Hz).toBe(77_000);
    expect(given!.settings).toEqual(tuned!.settings);
  });

  it('are computed again when the unit, the circuit or the steel changes', () => {
    const assessor = createAssessor();
    const frequencies = (site: Site) =>
      assessor.assess(site).channels[0]!.settings.map(({ frequency_Hz }) => frequency_Hz);
    const mat = {
      id: 's1',
      kind: 'mat',
      depth: 0.12,
      pitch: 0.2,
      barRadius: 0.006,
      outline: [
        [-2, -2],
        [2, -2],
        [2, 2],
        [-2, 2]
      ]
    };
    const sites = [
      one({ channel: onSetting(2) }),
      one(
        { channel: onSetting(2) },
        { units: [unit('U1', { settings_F: [2.2e-7, 1.5e-7, 0.9e-7, 6.8e-8] })] }
      ),
      one({ channel: onSetting(2) }, { loops: [loop('L1', square(0, 0), { turns: 4 })] }),
      one({ channel: onSetting(2) }, { steel: [mat] })
    ];
    const found = sites.map(frequencies);
    expect(new Set(found.map((each) => each[2]))).toHaveLength(4);
    // in any order, what is kept does not leak from one drawing into another
    sites.forEach((site, k) => expect(frequencies(site)).toEqual(found[k]));
    sites.forEach((site, k) =>
      expect(
        createAssessor()
          .assess(site)
          .channels[0]!.settings.map(({ frequency_Hz }) => frequency_Hz)
      ).toEqual(found[k])
    );
  });

  it('say where the circuit would not oscillate', () => {
    // 300 m of lead-in have some 16 Ω and 0.3 mH: with 100 µF the tank would be damped more than critically
    const far = one(
      { channel: onSetting(1), leadIn: { cable: 'pair-14', length: 300 } },
      { units: [unit('U1', { settings_F: [1e-7, 1e-4] })] }
    );
    const [readout] = assess(far).channels;
    expect(readout!.settings[0]!.frequency_Hz).toBeGreaterThan(0);
    expect(readout!.settings[1]!.frequency_Hz).toBeNull();
  });
});

describe('a tank on another setting', () => {
  it('is the tank of the drawing with that setting', () => {
    const surveyor = createSurveyor();
    const still = { deltaLOverL: -0.03, vehicle: 'car' };
    const at = (setting: number) => {
      const survey = surveyor.survey(one({ channel: onSetting(setting) }));
      return { survey, tank: tanksOf(survey, () => still)[0]! };
    };
    const from = at(1);
    for (const setting of [1, 2, 3, 4]) {
      const moved = tankAt(from.tank, setting, from.survey)!;
      const drawn = at(setting).tank;
      const frequencies = ({ rest_Hz, cold_Hz, hot_Hz, low_Hz }: Sweep) => [rest_Hz, cold_Hz, hot_Hz, low_Hz];
      expect(frequencies(moved.sweep)).toEqual(frequencies(drawn.sweep));
      expect(moved.solved.inductance).toBe(drawn.solved.inductance);
      expect(moved.channel).toEqual(drawn.channel);
    }
  });

  it.each([30, 500])(
    'is shifted by vehicles as the drawing with that setting is: %i m of lead-in',
    (length) => {
      const surveyor = createSurveyor();
      const drawing = (setting: number) =>
        one({ channel: onSetting(setting), leadIn: { cable: 'pair-14', length } });
      const shiftAt = (setting: number): Deepest => {
        const { deepest: deltaLOverL, vehicle } = assess(drawing(setting)).channels[0]!.sweep;
        return { deltaLOverL, vehicle };
      };
      const survey = surveyor.survey(drawing(1));
      const from = tanksOf(survey, () => shiftAt(1))[0]!;
      for (const setting of [2, 3, 4]) {
        const moved = tankAt(from, setting, survey)!.sweep.deepest;
        const drawn = shiftAt(setting).deltaLOverL;
        expect(drawn).toBeLessThan(-1e-3);
        expect(Math.abs(moved / drawn - 1)).toBeLessThan(0.002);
      }
    }
  );
});

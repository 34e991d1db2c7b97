/** A frequency that was read gives back the capacitance that made it, and the plan then runs at what was read. */
import { describe, expect, it } from 'vitest';
import { createAssessor } from '#analysis/assess';
import { calibrate, type CalibrationAnswer } from '#analysis/calibration/calibrate';
import { createAnswerer } from '#analysis/questions';
import { finish } from '#analysis/steps';
import {
  calibrateSetting,
  connectCircuit,
  undoCalibration,
  updateChannel,
  updateCircuit,
  updateLoop
} from '#plan/edits/index';
import { tankCapacitance } from '#physics/coupling/beat';
import type { Site } from '#plan/schema';
import { samples } from '../../plan/samples';
import { channel, circuit, loop, siteOf, square, unit } from '../support/sites';

const relative = (found: number, wanted: number): number => Math.abs(found / wanted - 1);
const PRESENT = 1e-7;

const asked = (site: Site, id: string, frequency_Hz: number, present_F = PRESENT): CalibrationAnswer => {
  const answer = calibrate(site, { circuit: id, frequency_Hz, present_F });
  if (!answer) throw new Error(`${id} says nothing at ${frequency_Hz} Hz`);
  return answer;
};

/** Two circuits on one unit, the second on its third setting; tolerances as they are given. */
const yard = (tolerances: object = {}): Site =>
  siteOf({
    loops: [loop('L1', square(0, 0)), loop('L2', square(4, 0), { turns: 4 })],
    circuits: [
      circuit('C1', ['L1'], { channel: channel('U1', 1, { frequency_Hz: null, frequencySetting: 2 }) }),
      circuit('C2', ['L2'], { channel: channel('U1', 2, { frequency_Hz: null, frequencySetting: 3 }) })
    ],
    units: [unit('U1')],
    tolerances
  });

const frequencyOf = (site: Site, id: string): number =>
  createAssessor()
    .assess(site)
    .circuits.find((each) => each.id === id)!.frequency_Hz;

describe('the capacitance of a tank', () => {
  it.each([
    // C = 1/((2πf)²L): 50.3292 kHz on 100 µH is 100 nF, 27.7053 kHz on 150 µH is 220 nF
    [1e-4, 50_329.2, 1e-7],
    [1.5e-4, 27_705.3, 2.2e-7]
  ])('of %f H at %f Hz is %f F without loss', (L, f, wanted) => {
    expect(relative(tankCapacitance(L, f, 1e9), wanted)).toBeLessThan(6e-6);
  });

  it('is less by 1/(4Q²) with loss: 1 % at Q 5', () => {
    expect(tankCapacitance(1e-4, 5e4, 5) / tankCapacitance(1e-4, 5e4, 1e9)).toBeCloseTo(0.995 ** 2, 12);
  });
});

describe('a frequency that was read', () => {
  const cases = samples.flatMap(({ name, site }) =>
    site.circuits
      .filter(({ channel }) => channel?.frequency_Hz === null)
      .map(({ id }) => ({ name, site, id }))
  );

  it('of the samples there are enough', () => {
    expect(cases.length).toBeGreaterThan(10);
  });

  it.each(cases)('$name, $id: gives back the capacitance behind it', ({ site, id }) => {
    const { unit: on, frequencySetting } = site.circuits.find((each) => each.id === id)!.channel!;
    const behind = site.units.find((each) => each.id === on)!.settings_F[frequencySetting - 1]!;
    const answer = asked(site, id, frequencyOf(site, id));
    expect(relative(answer.capacitance_F, behind)).toBeLessThan(1e-9);
    expect(answer.range_F.low).toBeLessThan(behind);
    expect(answer.range_F.high).toBeGreaterThan(behind);
  });

  it('is the frequency of the plan once the setting is calibrated with it', () => {
    const site = yard();
    const present = site.units[0]!.settings_F[1]!;
    const was = frequencyOf(site, 'C1');
    const read = was * 1.03;
    const { capacitance_F, inductance_H, expected_Hz } = asked(site, 'C1', read, present);
    expect(relative(expected_Hz!, was)).toBeLessThan(1e-9);
    const next = calibrateSetting(site, 'U1', 2, {
      circuit: 'C1',
      frequency_Hz: read,
      inductance_H,
      capacitance_F
    });
    expect(relative(frequencyOf(next, 'C1'), read)).toBeLessThan(1e-9);
    expect(frequencyOf(next, 'C2')).toBe(frequencyOf(site, 'C2'));
    expect(frequencyOf(undoCalibration(next, 'U1', 2), 'C1')).toBe(was);
  });

  it('is answered in the worker like any question', () => {
    const site = yard();
    const wish = { circuit: 'C1', frequency_Hz: 44e3, present_F: PRESENT };
    expect(finish(createAnswerer()('calibrate-setting', site, wish))).toEqual(calibrate(site, wish));
  });

  it('may be of any circuit, on a channel or not, with a given frequency or not', () => {
    const site = yard();
    const read = frequencyOf(site, 'C2');
    const off = connectCircuit(site, 'C2', false);
    expect(relative(asked(off, 'C2', read).capacitance_F, 1e-7)).toBeLessThan(1e-9);
    const given = updateChannel(site, 'C2', { frequency_Hz: 30_000 });
    expect(relative(asked(given, 'C2', read).capacitance_F, 1e-7)).toBeLessThan(1e-9);
  });

  it('says nothing of a circuit that is not there, cannot be wound, or looks capacitive at that frequency', () => {
    const wish = { circuit: 'C1', frequency_Hz: 50e3, present_F: PRESENT };
    expect(calibrate(yard(), { ...wish, circuit: 'C9' })).toBeNull();
    const unwound = { ...yard(), loops: yard().loops.map((each) => ({ ...each, wire: 'none' })) };
    expect(calibrate(unwound, wish)).toBeNull();
    // 400 m of pair: about 0.37 mH and 30 nF, which resonate near 50 kHz
    const far = updateCircuit(yard(), 'C1', { leadIn: { cable: 'pair-14', length: 400 } });
    expect(calibrate(far, { ...wish, frequency_Hz: 20e3 })).not.toBeNull();
    expect(calibrate(far, { ...wish, frequency_Hz: 100e3 })).toBeNull();
    const lossy = updateLoop(yard(), 'L1', { addedResistance_ohm: 1_000 });
    expect(calibrate(lossy, wish)).toBeNull();
  });

  it('says nothing where the loss is such that 1/(8Q²) exceeds 1: 40 µH of one turn and its lead-in, 100 Ω', () => {
    const damped = updateLoop(updateLoop(yard(), 'L1', { turns: 1 }), 'L1', { addedResistance_ohm: 100 });
    const wish = { circuit: 'C1', frequency_Hz: 50e3, present_F: PRESENT };
    expect(createAssessor().assess(damped).circuits[0]!.q).toBeLessThan(0.3);
    expect(calibrate(damped, wish)).toBeNull();
  });

  it('expects nothing of a present capacitance on which the circuit would not oscillate', () => {
    // 300 m of lead-in have some 16 Ω and 0.3 mH: with 100 µF the tank would be damped more than critically
    const far = updateCircuit(yard(), 'C1', { leadIn: { cable: 'pair-14', length: 300 } });
    const answer = asked(far, 'C1', 25e3, 1e-4);
    expect(answer.capacitance_F).toBeGreaterThan(0);
    expect(answer.expected_Hz).toBeNull();
    expect(asked(far, 'C1', 25e3, 1e-7).expected_Hz).toBeGreaterThan(20e3);
  });
});

const EXACT = {
  ...{ dimensions_m: 0, depth_m: 0, wirePitch_m: 0, leadInLength_m: 0 },
  ...{ temperature_C: 0, relativePermittivity: 0, vehicleHeight_m: 0 }
};

describe('the range of the capacitance', () => {
  it('is nothing where everything is exact', () => {
    const { capacitance_F, range_F } = asked(yard(EXACT), 'C1', 44e3);
    expect([range_F.low, range_F.high]).toEqual([capacitance_F, capacitance_F]);
  });

  it('with one tolerance is what a lead-in as much longer and shorter gives', () => {
    const site = yard({ ...EXACT, leadInLength_m: 3 });
    const { range_F } = asked(site, 'C1', 44e3);
    const withLeadIn = (length: number): number => {
      const changed = updateCircuit(site, 'C1', { leadIn: { cable: 'pair-14', length } });
      return asked(changed, 'C1', 44e3).capacitance_F;
    };
    const [most, least] = [withLeadIn(27), withLeadIn(33)];
    expect(least).toBeLessThan(most);
    // the range is taken as straight between them
    expect(Math.abs(range_F.low - least)).toBeLessThan(0.02 * (most - least));
    expect(Math.abs(range_F.high - most)).toBeLessThan(0.02 * (most - least));
    expect(range_F.contributions.map(({ input }) => input)).toEqual(['leadInLength']);
  });

  it('is that of the inductance, turned over, within a tenth of its width', () => {
    const site = yard();
    const read = frequencyOf(site, 'C1');
    const { capacitance_F, range_F } = asked(site, 'C1', read);
    const { ranges, inductance_H } = createAssessor()
      .assess(site, 'complete')
      .circuits.find(({ id }) => id === 'C1')!;
    const { low, high } = ranges!.inductance_H;
    const width = (high - low) / inductance_H;
    expect(Math.abs((range_F.high - range_F.low) / capacitance_F - width)).toBeLessThan(0.1 * width);
  });
});

import { describe, expect, it } from 'vitest';
import { demoSite } from '#plan/demo';
import { connectCircuit, updateChannel, updateUnit } from '#plan/edits/index';
import type { Site } from '#plan/schema';
import { candidates, candidateText } from '#ui/units/candidates';
import { calibrationText, circuitsAre, settingText, tunedText, unitGist } from '#ui/units/wording';

const site = demoSite();
const unit = (of: Site = site) => of.units[0]!;

describe('a unit in words', () => {
  it('says how many of its channels are in use and how they run', () => {
    expect(unitGist(site, unit())).toBe('2 of 2 in use, in turn');
    const off = connectCircuit(site, 'C1', false);
    const atOnce = updateUnit(off, 'U1', { scansInTurn: false });
    expect(unitGist(atOnce, unit(atOnce))).toBe('1 of 2 in use, all at once');
    expect(unitGist(off, { ...unit(off), channels: 1 })).toBe('1 of 1 in use, one channel');
  });

  it('states its settings as it does', () => {
    expect(settingText(site, unit(), 3)).toBe('100.0 nF');
    const stated = updateUnit(site, 'U1', { statedInductance_H: 1e-4 });
    // 1/(2π√(100 µH · 100 nF)) = 50.329 kHz
    expect(settingText(site, unit(stated), 3)).toBe('50.33 kHz');
    expect(settingText(site, unit(), 9)).toBe('–');
  });

  it('says of a setting where a circuit would run on it, as far as that is known', () => {
    const known = {
      unit: 'U1',
      settings: [
        { setting: 1, frequency_Hz: 36_030 },
        { setting: 2, frequency_Hz: null }
      ]
    };
    expect(tunedText(site, unit(), 1, known)).toBe('36.03 kHz');
    expect(tunedText(site, unit(), 2, known)).toBe('does not oscillate');
    expect(tunedText(site, unit(), 3, known)).toBe('100.0 nF');
    expect(tunedText(site, unit(), 1, { ...known, unit: 'U2' })).toBe('220.0 nF');
    expect(tunedText(site, unit(), 1, undefined)).toBe('220.0 nF');
  });

  it('names the circuits that keep it', () => {
    expect(circuitsAre(site, ['C1'])).toBe('Left, front is');
    expect(circuitsAre(site, ['C1', 'C3'])).toBe('Left, front and Left, rear are');
  });

  it('tells how a setting was found', () => {
    const calibration = {
      ...{ setting: 2, circuit: 'Left, front', frequency_Hz: 44_100 },
      ...{ inductance_H: 9.16e-5, capacitance_F: 1.42e-7, before_F: 1.5e-7 }
    };
    expect(calibrationText(site, calibration)).toBe(
      '✓ 44.10 kHz read on Left, front (91.60 µH); 150.0 nF before'
    );
  });
});

describe('circuits to measure on', () => {
  const order = (of: Site, setting: number, solved: readonly { id: string }[] = site.circuits): string[] =>
    candidates(of, unit(of), setting, solved).map(({ id }) => id);

  it('begin with those on the setting, then those of the unit', () => {
    expect(order(site, 2)).toEqual(['C1', 'C3', 'C2', 'C4']);
    expect(order(site, 1)).toEqual(['C3', 'C1', 'C2', 'C4']);
  });

  it('take one with a given frequency for one beside the setting', () => {
    const given = updateChannel(site, 'C1', { frequency_Hz: 44e3 });
    const both = updateChannel(given, 'C3', { frequencySetting: 2 });
    expect(order(both, 2).slice(0, 2)).toEqual(['C3', 'C1']);
  });

  it('leave out what cannot be wound, and everything while nothing is known', () => {
    expect(order(site, 2, site.circuits.slice(1))).toEqual(['C3', 'C2', 'C4']);
    expect(order(site, 2, [])).toEqual([]);
  });

  it('say where on the unit they are', () => {
    expect(candidateText(site.circuits[0]!, unit())).toBe('Left, front – channel 1, setting 2');
    expect(candidateText(site.circuits[1]!, unit())).toBe('Right, front');
  });
});

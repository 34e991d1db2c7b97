import { describe, expect, it } from 'vitest';
import { COUNTS } from '#plan/bounds';
import { builtInUnits, usualUnit } from '#plan/catalogue/units';
import {
  addSetting,
  addUnit,
  assignChannel,
  calibrateSetting,
  connectCircuit,
  newUnit,
  removeSetting,
  removeUnit,
  setSetting,
  setSettingFrequency,
  undoCalibration,
  updateChannel,
  updateUnit,
  usesOfSetting,
  usesOfUnit
} from '#plan/edits/index';
import { readSite, writeSite } from '#plan/read';
import type { Site } from '#plan/schema';
import { calibrationOf, statedFrequency } from '#plan/unit-settings';
import { fullSite } from './site';

const isReadable = (site: Site): boolean => readSite(writeSite(site)).ok;
const unitIn = (site: Site, id: string) => site.units.find((unit) => unit.id === id)!;
const settingsIn = (site: Site) => site.circuits.map(({ channel }) => channel?.frequencySetting ?? null);
const placesIn = (site: Site) =>
  site.circuits.map(({ channel }) => channel && `${channel.unit} ${channel.number}`);

const found = (capacitance_F: number) => ({
  circuit: 'Stop line',
  frequency_Hz: 45_000,
  inductance_H: 1e-4,
  capacitance_F
});

describe('units', () => {
  it('begin as any of the catalogue, without what is known of the catalogue alone', () => {
    for (const from of builtInUnits) {
      const site = fullSite();
      const next = addUnit(site, newUnit(site, from, 'Cabinet'));
      expect(unitIn(next, 'U2')).toMatchObject({ name: 'Cabinet', settings_F: from.settings_F });
      expect(unitIn(next, 'U2')).not.toHaveProperty('source');
      expect(isReadable(next)).toBe(true);
    }
  });

  it('begin as another of the site with its capacitances, but the calibration was of that device', () => {
    const site = calibrateSetting(fullSite(), 'U1', 1, found(2.3e-7));
    const copy = newUnit(site, unitIn(site, 'U1'), 'Second');
    expect(copy.settings_F).toEqual([2.3e-7, 1e-7]);
    expect(copy).not.toHaveProperty('calibrations');
  });

  it('keep an id of their own', () => {
    const site = fullSite();
    expect(addUnit(site, { ...newUnit(site, usualUnit, 'two'), id: 'U1' })).toBe(site);
    expect(addUnit(site, { ...newUnit(site, usualUnit, 'two'), inductanceRange_H: [1e-3, 1e-4] })).toBe(site);
    const full = Array.from({ length: COUNTS.units + 3 }).reduce<Site>(
      (result) => addUnit(result, newUnit(result, usualUnit, 'more')),
      site
    );
    expect(full.units).toHaveLength(COUNTS.units);
  });

  it('stay while a circuit is connected', () => {
    const site = fullSite();
    expect(usesOfUnit(site, 'U1')).toEqual(['C1', 'C2']);
    expect(removeUnit(site, 'U1')).toBe(site);
    const off = connectCircuit(connectCircuit(site, 'C1', false), 'C2', false);
    expect(removeUnit(off, 'U1').units).toEqual([]);
    expect(removeUnit(off, 'U7')).toBe(off);
  });

  it('take a stated inductance and give it up', () => {
    const stated = updateUnit(fullSite(), 'U1', { statedInductance_H: 1e-4 });
    // f = 1/(2π√(LC)): 100 µH and 100 nF, 1/(2π·√10·10⁻⁶) = 50.329 kHz
    expect(statedFrequency(unitIn(stated, 'U1'), 2)).toBeCloseTo(50_329.2, 1);
    expect(statedFrequency(unitIn(stated, 'U1'), 3)).toBeUndefined();
    const none = updateUnit(stated, 'U1', { statedInductance_H: undefined });
    expect(unitIn(none, 'U1')).not.toHaveProperty('statedInductance_H');
    expect(statedFrequency(unitIn(none, 'U1'), 2)).toBeUndefined();
    expect(updateUnit(stated, 'U1', { statedInductance_H: 0 })).toBe(stated);
  });
});

describe('settings', () => {
  it('are typed as capacitances', () => {
    const site = fullSite();
    expect(unitIn(setSetting(site, 'U1', 2, 9e-8), 'U1').settings_F).toEqual([2.2e-7, 9e-8]);
    expect(setSetting(site, 'U1', 2, 1e-7)).toBe(site);
    for (const wrong of [0, -1e-7, 1, Number.NaN, Infinity])
      expect(setSetting(site, 'U1', 2, wrong)).toBe(site);
    for (const number of [0, 3, 1.5, -1]) expect(setSetting(site, 'U1', number, 9e-8)).toBe(site);
    expect(setSetting(site, 'U9', 1, 9e-8)).toBe(site);
  });

  it('are typed as frequencies on the stated inductance: 50.3292 kHz on 100 µH is 100 nF', () => {
    const stated = updateUnit(fullSite(), 'U1', { statedInductance_H: 1e-4 });
    const next = setSettingFrequency(stated, 'U1', 1, 50_329.2121);
    expect(unitIn(next, 'U1').settings_F[0]! / 1e-7).toBeCloseTo(1, 7);
    expect(setSettingFrequency(fullSite(), 'U1', 1, 50e3)).toEqual(fullSite());
    for (const wrong of [0, -5e4, Number.NaN, Infinity])
      expect(setSettingFrequency(stated, 'U1', 1, wrong)).toBe(stated);
  });

  it('are added a like step further', () => {
    // 100/220 of 100 nF
    expect(unitIn(addSetting(fullSite(), 'U1'), 'U1').settings_F).toEqual([2.2e-7, 1e-7, 4.5e-8]);
    const full = Array.from({ length: 80 }).reduce<Site>((site) => addSetting(site, 'U1'), fullSite());
    expect(unitIn(full, 'U1').settings_F).toHaveLength(COUNTS.settings);
    expect(isReadable(full)).toBe(true);
    const one = removeSetting(fullSite(), 'U1', 2);
    // two thirds of 220 nF, in two figures
    expect(unitIn(addSetting(one, 'U1'), 'U1').settings_F).toEqual([2.2e-7, 1.5e-7]);
  });

  it('move up when one before them goes, with channels and calibrations', () => {
    let site = addSetting(addSetting(fullSite(), 'U1'), 'U1');
    site = updateChannel(site, 'C1', { frequencySetting: 4 });
    site = updateChannel(site, 'C2', { frequencySetting: 1 });
    site = calibrateSetting(site, 'U1', 3, found(5e-8));
    site = calibrateSetting(site, 'U1', 2, found(1.1e-7));
    const next = removeSetting(site, 'U1', 2);
    expect(settingsIn(next)).toEqual([3, 1]);
    // also a channel on the very next one
    expect(settingsIn(removeSetting(updateChannel(site, 'C1', { frequencySetting: 3 }), 'U1', 2))).toEqual([
      2, 1
    ]);
    expect(unitIn(next, 'U1').settings_F.slice(0, 2)).toEqual([2.2e-7, 5e-8]);
    expect(unitIn(next, 'U1').calibrations).toMatchObject([{ setting: 2, capacitance_F: 5e-8 }]);
    expect(isReadable(next)).toBe(true);
  });

  it('stay while a channel is on them, also one with a given frequency, and one always stays', () => {
    const site = updateChannel(fullSite(), 'C2', { frequencySetting: 2, frequency_Hz: 44e3 });
    expect(usesOfSetting(site, 'U1', 2)).toEqual(['C2']);
    expect(removeSetting(site, 'U1', 2)).toBe(site);
    expect(removeSetting(site, 'U1', 1)).toBe(site);
    expect(removeSetting(site, 'U1', 3)).toBe(site);
    const off = connectCircuit(connectCircuit(site, 'C1', false), 'C2', false);
    const one = removeSetting(off, 'U1', 1);
    expect(removeSetting(one, 'U1', 1)).toBe(one);
  });
});

describe('calibration', () => {
  it('replaces the capacitance and remembers what it was before the first time', () => {
    const once = calibrateSetting(fullSite(), 'U1', 2, found(1.1e-7));
    expect(unitIn(once, 'U1').settings_F).toEqual([2.2e-7, 1.1e-7]);
    expect(calibrationOf(unitIn(once, 'U1'), 2)).toMatchObject({ circuit: 'Stop line', before_F: 1e-7 });
    const twice = calibrateSetting(once, 'U1', 2, found(1.2e-7));
    expect(unitIn(twice, 'U1').calibrations).toHaveLength(1);
    expect(calibrationOf(unitIn(twice, 'U1'), 2)).toMatchObject({ capacitance_F: 1.2e-7, before_F: 1e-7 });
    const undone = undoCalibration(twice, 'U1', 2);
    expect(undone).toEqual(fullSite());
    expect(undoCalibration(undone, 'U1', 2)).toBe(undone);
  });

  it('is forgotten when another capacitance is typed', () => {
    const site = calibrateSetting(
      calibrateSetting(fullSite(), 'U1', 1, found(2.3e-7)),
      'U1',
      2,
      found(1.1e-7)
    );
    const next = setSetting(site, 'U1', 2, 1.3e-7);
    expect(unitIn(next, 'U1').calibrations).toMatchObject([{ setting: 1 }]);
    expect(calibrationOf(unitIn(next, 'U1'), 2)).toBeUndefined();
    expect(setSetting(site, 'U1', 2, 1.1e-7)).toBe(site);
  });

  it('is refused where the document cannot hold it', () => {
    const site = fullSite();
    expect(calibrateSetting(site, 'U1', 3, found(1e-7))).toBe(site);
    expect(calibrateSetting(site, 'U1', 1, found(1))).toBe(site);
    expect(calibrateSetting(site, 'U1', 1, { ...found(1e-7), frequency_Hz: 1 })).toBe(site);
    expect(isReadable(calibrateSetting(site, 'U1', 1, found(1e-7)))).toBe(true);
  });

  it('keeps the unit from losing the setting', () => {
    const off = connectCircuit(connectCircuit(fullSite(), 'C1', false), 'C2', false);
    const site = calibrateSetting(off, 'U1', 2, found(1.1e-7));
    expect(updateUnit(site, 'U1', { settings_F: [1e-7] })).toBe(site);
  });

  it('does not count where the file has another capacitance', () => {
    const unit = unitIn(calibrateSetting(fullSite(), 'U1', 2, found(1.1e-7)), 'U1');
    expect(calibrationOf({ ...unit, settings_F: [2.2e-7, 1e-7] }, 2)).toBeUndefined();
  });
});

describe('channels seen from the unit', () => {
  const twoUnits = (): Site => addUnit(fullSite(), newUnit(fullSite(), builtInUnits[2]!, 'Four'));

  it('take a circuit, which leaves the channel it was on', () => {
    expect(placesIn(assignChannel(twoUnits(), 'U2', 3, 'C1'))).toEqual(['U2 3', 'U1 2']);
  });

  it('exchange two circuits', () => {
    const site = twoUnits();
    expect(placesIn(assignChannel(site, 'U1', 2, 'C1'))).toEqual(['U1 2', 'U1 1']);
    expect(assignChannel(site, 'U1', 1, 'C1')).toBe(site);
  });

  it('let a circuit without a channel push one off', () => {
    const site = connectCircuit(twoUnits(), 'C1', false);
    const next = assignChannel(site, 'U1', 2, 'C1');
    expect(placesIn(next)).toEqual(['U1 2', null]);
    expect(isReadable(next)).toBe(true);
  });

  it('give what comes the setting that fewest use once the other is off', () => {
    let site = connectCircuit(twoUnits(), 'C1', false);
    site = updateChannel(site, 'C2', { frequencySetting: 1 });
    expect(settingsIn(assignChannel(site, 'U1', 2, 'C1'))).toEqual([1, null]);
  });

  it('become free', () => {
    const site = twoUnits();
    expect(placesIn(assignChannel(site, 'U1', 1, null))).toEqual([null, 'U1 2']);
    expect(assignChannel(site, 'U2', 1, null)).toBe(site);
  });

  it('give each circuit a setting that its new unit has', () => {
    // U1 has two settings, U2 eight: what comes gets the one that fewest use, what gives way the last there is
    let site = assignChannel(twoUnits(), 'U2', 1, 'C1');
    site = updateChannel(site, 'C1', { frequencySetting: 7 });
    const next = assignChannel(site, 'U1', 2, 'C1');
    expect(placesIn(next)).toEqual(['U1 2', 'U2 1']);
    expect(settingsIn(next)).toEqual([2, 1]);
    const back = assignChannel(updateChannel(next, 'C2', { frequencySetting: 8 }), 'U2', 1, 'C1');
    expect(placesIn(back)).toEqual(['U2 1', 'U1 2']);
    expect(settingsIn(back)).toEqual([2, 2]);
    expect(isReadable(back)).toBe(true);
  });

  it('refuse what is not there', () => {
    const site = twoUnits();
    for (const number of [0, 3, 1.5, Number.NaN]) expect(assignChannel(site, 'U1', number, 'C1')).toBe(site);
    expect(assignChannel(site, 'U9', 1, 'C1')).toBe(site);
    expect(assignChannel(site, 'U2', 1, 'C9')).toBe(site);
  });
});

import { describe, expect, it } from 'vitest';
import { groupsOf, rowsOf, spanOf } from '#ui/frequencies/rows';
import { channelOf, siteOf, sweepOf } from './sites';

const site = siteOf([
  { circuit: 'A', unit: 'U2', number: 1 },
  { circuit: 'B', unit: 'U1', number: 3 },
  { circuit: 'C', unit: 'U1', number: 2 },
  { circuit: 'D', unit: 'U2', number: 2, frequency_Hz: 71_000 }
]);
const channels = ['A', 'B', 'C', 'D'].map((id) => channelOf(id, 40_000));

describe('rows of channels', () => {
  it('lie unit by unit, by number', () => {
    const rows = rowsOf(site, channels);
    expect(rows.map(({ circuit }) => circuit.id)).toEqual(['C', 'B', 'A', 'D']);
    expect(groupsOf(rows).map(({ unit, at, count }) => [unit.id, at, count])).toEqual([
      ['U1', 0, 2],
      ['U2', 2, 2]
    ]);
  });

  it('leave out circuits that were taken off their channel or out of the site meanwhile', () => {
    const [a, b, c] = site.circuits;
    const later = { ...site, circuits: [a!, { ...b!, channel: null }, c!] };
    expect(rowsOf(later, channels).map(({ circuit }) => circuit.id)).toEqual(['C', 'A']);
    expect(rowsOf(site, channels.slice(1)).map(({ circuit }) => circuit.id)).toEqual(['C', 'B', 'D']);
    expect(groupsOf([])).toEqual([]);
  });

  it('span from the lowest to the highest setting, and beyond for what is given or shifted', () => {
    expect(spanOf(rowsOf(site, channels))).toEqual([39_990, 60_000]);
    const sweeps = rowsOf(site, channels).map(({ readout }) => readout.sweep);
    expect(spanOf(rowsOf(site, channels), true)).toEqual([
      Math.min(...sweeps.map(({ low_Hz }) => low_Hz)),
      Math.max(...sweeps.map(({ high_Hz }) => high_Hz))
    ]);
    const given = channelOf('D', 71_000, { setting: null });
    expect(spanOf(rowsOf(site, [...channels.slice(0, 3), given]))).toEqual([39_990, 71_010 * 1.02]);
    const silent = channelOf('A', 45_000, {
      sweep: sweepOf(45_000),
      settings: [
        { setting: 1, frequency_Hz: 45_000 },
        { setting: 2, frequency_Hz: null }
      ]
    });
    expect(spanOf(rowsOf(site, [silent]))).toEqual([44_990, 45_010 * 1.02]);
  });
});

import { describe, expect, it } from 'vitest';
import type { ChannelReadout } from '#analysis/results';
import { updateChannel } from '#plan/edits/index';
import { channelFigures, settingWords } from '#ui/frequencies/channel-words';
import { pairFigures, pairKey, pairLine } from '#ui/frequencies/pairs';
import { rowsOf } from '#ui/frequencies/rows';
import { beatOf, channelOf, siteOf, sweepOf } from './sites';

const site = siteOf([
  { circuit: 'A', unit: 'U1', setting: 1 },
  { circuit: 'B', unit: 'U2', setting: 2 }
]);
const rowOf = (readout: ChannelReadout, of = site) => rowsOf(of, [readout])[0]!;

describe('a pair in words', () => {
  it('has a key that no ids can make equal to another’s', () => {
    expect(pairKey({ a: 'x y', b: 'z' })).not.toBe(pairKey({ a: 'x', b: 'y z' }));
    expect(pairKey({ a: 'x","y', b: 'z' })).not.toBe(pairKey({ a: 'x', b: 'y","z' }));
  });

  it('says its verdict and its figures in one line', () => {
    expect(pairLine(site, beatOf('A', 'B', 3.4))).toBe(
      'Lane A + Lane B: false calls likely, ×3.4 of the threshold, 250 Hz apart'
    );
  });

  it('says separations in hertz where kilohertz would begin with a nought', () => {
    const apart = (separation_Hz: number) =>
      pairFigures(site, { ...beatOf('A', 'B', 0.5), separation_Hz })[1];
    expect([2.29, 999, 1_000, 21_640].map(apart)).toEqual([
      '2.29 Hz apart',
      '999 Hz apart',
      '1.00 kHz apart',
      '21.6 kHz apart'
    ]);
  });

  it('says that bands overlap instead of a distance of nothing', () => {
    const beat = beatOf('A', 'B', 0.5);
    expect(pairFigures(site, beat)).toEqual([
      'coupling −0.400 %',
      '250 Hz apart',
      'ripple 0.050 %',
      '×0.50 of the threshold'
    ]);
    expect(pairFigures(site, { ...beat, separation_Hz: 0 })[1]).toBe('the bands overlap');
  });
});

describe('a channel in words', () => {
  it('says the setting of the drawing, even while the figures are of the one before', () => {
    const row = rowOf(channelOf('A', 40_000));
    expect(settingWords(site, row)).toBe('setting 1, 40.00 kHz');
    const later = updateChannel(site, 'A', { frequencySetting: 3, pinned: true });
    expect(settingWords(later, rowOf(channelOf('A', 40_000), later))).toBe('setting 3, 60.00 kHz, pinned');
  });

  it('says that a frequency is given', () => {
    const given = updateChannel(site, 'A', { frequency_Hz: 71_500 });
    expect(settingWords(given, rowOf(channelOf('A', 71_500), given))).toBe('given, 71.50 kHz');
  });

  it('says where it runs, in what weather, and which vehicle shifts it', () => {
    expect(channelFigures(site, rowOf(channelOf('A', 40_000)))).toEqual([
      'setting 1, 40.00 kHz',
      'sweeps 39.99 kHz to 40.81 kHz',
      '40.01 kHz cold, 39.99 kHz hot',
      'Car: −ΔL/L 4.00 %'
    ]);
    const still = channelOf('A', 40_000, { sweep: sweepOf(40_000, { vehicle: null, deepest: 0 }) });
    expect(channelFigures(site, rowOf(still)).at(-1)).toBe('no vehicle shifts it');
  });
});

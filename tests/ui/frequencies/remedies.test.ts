import { describe, expect, it } from 'vitest';
import type { Remedy } from '#analysis/results';
import { remedyWords, times } from '#ui/frequencies/remedies';
import { leaving, siteOf } from './sites';

const site = siteOf([
  { circuit: 'A', unit: 'U1' },
  { circuit: 'B', unit: 'U2' },
  { circuit: 'C', unit: 'U2' }
]);
const words = (remedy: Remedy, pair = { a: 'A', b: 'B' }) => remedyWords(site, pair, remedy);

describe('what would clear a pair, in words', () => {
  it.each<[Remedy, string]>([
    [
      { kind: 'setting', circuit: 'B', setting: 3, frequency_Hz: 61_234, ...leaving(0.0413) },
      'setting 3 on Lane B (61.23 kHz): ×0.041'
    ],
    [{ kind: 'distance', circuit: 'B', by_m: 1.2, ...leaving(0.24) }, 'Lane B 1.20 m further away: ×0.24'],
    [{ kind: 'winding', circuit: 'B', loop: 'L2', ...leaving(0.1) }, 'wind Loop 2 the other way: ×0.10'],
    [
      { kind: 'scanning', unit: null, ...leaving(0) },
      'both on one unit that scans in turn: never at the same time'
    ],
    [
      { kind: 'scanning', unit: 'U1', ...leaving(0) },
      'both on Kerb unit, which scans in turn: never at the same time'
    ],
    [
      {
        kind: 'threshold',
        circuits: [{ circuit: 'A', tripThreshold: 0.0021, lost: [] }],
        ...leaving(0.25)
      },
      'threshold 0.21 % on Lane A (still sees all): ×0.25'
    ],
    [
      {
        kind: 'threshold',
        circuits: [
          { circuit: 'A', tripThreshold: 0.0021, lost: ['motorcycle'] },
          { circuit: 'B', tripThreshold: 0.003, lost: ['motorcycle'] }
        ],
        ...leaving(0.2)
      },
      'threshold 0.21 % on Lane A and threshold 0.30 % on Lane B (loses Motorcycle): ×0.20'
    ],
    [
      { kind: 'measuring-time', units: ['U1'], measuringTime_s: 0.02, ...leaving(0.22) },
      'measure for 20 ms: ×0.22'
    ],
    [{ kind: 'conduit', conduits: ['k1'], ...leaving(0.02) }, 'separate conduits: ×0.020']
  ])('%o', (remedy, said) => {
    expect(words(remedy)).toBe(said);
  });

  it('names the unit that both are on already differently', () => {
    const remedy: Remedy = { kind: 'scanning', unit: 'U2', ...leaving(0) };
    expect(words(remedy, { a: 'B', b: 'C' })).toBe('Gate unit scanning in turn: never at the same time');
  });

  it('says with whom else the circuits would then beat more', () => {
    const remedy: Remedy = {
      kind: 'setting',
      circuit: 'B',
      setting: 1,
      frequency_Hz: 40_000,
      ...leaving(0.1, ['C'])
    };
    expect(words(remedy)).toBe('setting 1 on Lane B (40.00 kHz): ×0.10, but more with Lane C');
  });

  it('can be said of things that have gone meanwhile', () => {
    expect(words({ kind: 'winding', circuit: 'X', loop: 'L9', ...leaving(0.5) })).toBe(
      'wind L9 the other way: ×0.50'
    );
  });
});

describe('a ratio', () => {
  it.each([
    [0, '×0'],
    [1.4e-5, '<×0.001'],
    [0.001, '×0.0010'],
    [0.0413, '×0.041'],
    [0.999, '×1.0'],
    [3.44, '×3.4'],
    [27.2, '×27']
  ])('of %d is %s', (ratio, said) => {
    expect(times(ratio)).toBe(said);
  });
});

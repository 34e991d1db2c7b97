/** What a finding says of a pair that beats: pairs made by hand, so that every way out has its words. */
import { describe, expect, it } from 'vitest';
import { createAssessor } from '#analysis/assess';
import { beating } from '#analysis/findings/beating';
import { createContext } from '#analysis/findings/finding';
import type { Beat, BeatSide, Finding, Remedy } from '#analysis/results';
import { rowSite } from '../support/sites';

const site = rowSite(
  [
    [0, 0],
    [4, 0],
    [8, 0]
  ],
  { temperatureRange_C: [20, 20] }
);
const result = createAssessor().assess(site, 'prepared');

const side = (circuit: string, ratio: number, measuringTime_s = 0.005): BeatSide => ({
  circuit,
  ripple: ratio * 0.001,
  tripThreshold: 0.001,
  ratio,
  measuringTime_s
});
const beat = (sides: readonly [BeatSide, BeatSide], over: Partial<Beat> = {}): Beat => {
  const ratio = Math.max(...sides.map((each) => each.ratio));
  return {
    a: 'C1',
    b: 'C2',
    coupling: { loops_H: -1e-8, steel_H: 0, conduits_H: 0 },
    k: -1e-4,
    separation_Hz: 0,
    lockingRange_Hz: 1,
    ripple: ratio * 0.001,
    ratio,
    verdict: ratio > 1 ? 'false calls likely' : 'watch',
    sides,
    remedies: [],
    ...over
  };
};
const findingOf = (pair: Beat): Finding => {
  const [finding] = beating(createContext(site, { ...result, beats: [pair] }));
  if (!finding) throw new Error('nothing is said');
  return finding;
};
const helped = (...remedies: readonly Remedy[]): string =>
  findingOf(beat([side('C1', 2), side('C2', 2)], { remedies })).advice;

const effect = { ratio: 0.1, verdict: 'clear', worstRatio: 0.1, spoils: [] } as const;
const away = (by_m: number, over: Partial<Remedy> = {}): Remedy =>
  ({ kind: 'distance', circuit: 'C2', by_m, ...effect, ...over }) as Remedy;

/** Small separations are told in hertz. */
const heardKilohertz = (advice: string): number => {
  const [, number, unit] = /at least ([\d.]+) (k?Hz) apart/.exec(advice)!;
  return Number(number) / (unit === 'Hz' ? 1_000 : 1);
};

describe('how far apart the frequencies should be', () => {
  const kilohertz = (pair: Beat): number => heardKilohertz(findingOf(pair).advice);

  it('follows each side with its own measuring time', () => {
    // C1: 1/(π·5 ms) = 63.66 Hz, times 4·8 = 2.037 kHz; C2: 1/(π·0.1 s) = 3.183 Hz, times 4·40 = 0.509 kHz
    expect(kilohertz(beat([side('C1', 8), side('C2', 40, 0.1)]))).toBeCloseTo(2.04, 3);
    // a side that is clear already asks for nothing: C1 would at 5 ms ask for 0.013 kHz, C2 for 3.183·4·0.3 = 0.0038 kHz
    expect(kilohertz(beat([side('C1', 0.2), side('C2', 0.3, 0.1)]))).toBeCloseTo(0.0038, 3);
  });

  it('is never within reach of locking, where nothing counts as averaged away', () => {
    const near = { separation_Hz: 900, lockingRange_Hz: 1_000 };
    // unaveraged 2 times the threshold: 63.66 Hz · 8 is 0.509 kHz, within reach
    expect(kilohertz(beat([side('C1', 2), side('C2', 2)], near))).toBeCloseTo(1, 3);
    expect(findingOf(beat([side('C1', 2), side('C2', 2)], near)).message).toContain(
      'at least 900 Hz apart (they may lock nearer than 1.00 kHz)'
    );
    // unaveraged 8 times: 63.66 Hz · 32
    expect(kilohertz(beat([side('C1', 8), side('C2', 8)], near))).toBeCloseTo(2.04, 3);
    expect(
      findingOf(beat([side('C1', 8), side('C2', 8)], { ...near, separation_Hz: 1_001 })).message
    ).not.toContain('lock');
  });

  it('is not said where the usual band of 20 to 100 kHz has no room for it', () => {
    // 63.66 Hz times 4·400 = 102 kHz
    const pair = beat([side('C1', 400), side('C2', 1)]);
    expect(findingOf(pair).advice).toMatch(/^No separation within the usual band is enough\./);
    const open = findingOf({ ...pair, remedies: null }).advice;
    expect(open).not.toContain('kHz');
    expect(open).toContain('Move the loops apart');
    expect(findingOf(beat([side('C1', 300), side('C2', 1)])).advice).toMatch(/at least 76\.4 kHz/);
  });
});

describe('the words', () => {
  it('have no powers of ten', () => {
    const { message } = findingOf(beat([side('C1', 30_480), side('C2', 1)]));
    expect(message).toContain(' 30000 times the trip threshold');
    expect(findingOf(beat([side('C1', 9.96), side('C2', 1)])).message).toContain(' 10 times the trip');
  });

  it('grade the pair: the whole threshold is where calls become likely', () => {
    expect(findingOf(beat([side('C1', 1), side('C2', 0.5)]))).toMatchObject({ severity: 'caution' });
    expect(findingOf(beat([side('C1', 1.01), side('C2', 0.5)]))).toMatchObject({ severity: 'problem' });
  });
});

describe('the ways out', () => {
  it('are those that clear the pair, two at most, in the order given', () => {
    const partly = away(9, { ratio: 0.5, verdict: 'watch' });
    const advice = helped(away(1), away(2), partly, away(3), away(4));
    expect(advice).toContain('Any of these clears it');
    expect([...advice.matchAll(/loops (\d)\.00 m further/g)].map(([, metres]) => metres)).toEqual(['1', '2']);
  });

  it('are what helps where nothing clears it, and are said to be that', () => {
    const advice = helped(away(9, { ratio: 0.5, verdict: 'watch' }));
    expect(advice).toContain(
      'None of these clears it by itself, but they help: the loops 9.00 m further apart: 0.50 times'
    );
    expect(helped()).toContain('No other single change helps');
  });

  it('name whom they would spoil, and what they would lose', () => {
    expect(helped(away(1, { spoils: ['C3'] }))).toContain(', but C3 would beat more');
    expect(helped(away(1))).not.toContain('but');
    const raised = (lost: readonly string[]): string =>
      helped({ kind: 'threshold', circuits: [{ circuit: 'C1', tripThreshold: 0.01, lost }], ...effect });
    expect(raised(['car'])).toContain(
      'a trip threshold of 1.00 % for C1: 0.10 times the threshold, which loses'
    );
    expect(raised([])).not.toContain('loses');
  });

  it.each<[string, Remedy]>([
    ['both on one unit, scanned in turn', { kind: 'scanning', unit: null, ...effect }],
    ['both on U1, scanned in turn', { kind: 'scanning', unit: 'U1', ...effect }],
    ['U1 measuring for 20.0 ms', { kind: 'measuring-time', units: ['U1'], measuringTime_s: 0.02, ...effect }],
    ['L2 wound the other way', { kind: 'winding', circuit: 'C2', loop: 'L2', ...effect }],
    ['a conduit of its own', { kind: 'conduit', conduits: ['D1'], ...effect }],
    [
      'setting 3 (50.00 kHz) for C2',
      { kind: 'setting', circuit: 'C2', setting: 3, frequency_Hz: 50_000, ...effect }
    ]
  ])('say: %s', (words, remedy) => {
    expect(helped(remedy)).toContain(words);
  });
});

/** Every remedy is applied to the drawing and the drawing assessed anew: what was promised must come true. */
import { beforeAll, describe, expect, it } from 'vitest';
import { createAssessor } from '#analysis/assess';
import { withRemedy } from '#analysis/beating/remedies/apply';
import { roundedUp } from '#analysis/beating/remedies/rounding';
import { BEAT_VERDICTS, type Assessment, type Beat, type Remedy, type RemedyKind } from '#analysis/results';
import { updateChannel } from '#plan/edits/index';
import type { Site } from '#plan/schema';
import { moveShape } from '#plan/shapes/index';
import { relativeError } from '../../physics/support/reference';
import { CAR, channel, circuit, loop, siteOf, square, unit } from '../support/sites';

type Json = Readonly<Record<string, unknown>>;

const tuned = (name: string, number: number, frequencySetting: number, over: Json = {}): Json =>
  channel(name, number, { frequency_Hz: null, frequencySetting, ...over });

/** Four lanes side by side, two units that scan and one that does not; the first two circuits share a setting and a conduit. */
const site = siteOf({
  loops: [
    loop('L1', square(0, 0)),
    loop('L2', square(2.5, 0)),
    loop('L3', square(5, 0)),
    loop('L4', square(5, 2.6)),
    loop('L5', square(7.6, 0))
  ],
  circuits: [
    circuit('C1', ['L1'], { channel: tuned('U1', 1, 2), detect: ['car'] }),
    circuit('C2', ['L2'], { channel: tuned('U2', 1, 2), detect: ['car'] }),
    circuit('C3', ['L3', 'L4'], { channel: tuned('U3', 1, 1), detect: ['car'] }),
    circuit('C4', ['L5'], { channel: tuned('U3', 2, 2), detect: ['car'] })
  ],
  units: [
    unit('U1', { channels: 1 }),
    unit('U2', { channels: 2 }),
    unit('U3', { scansInTurn: false, channels: 2, measuringTime_s: 0.0005 })
  ],
  conduits: [{ id: 'D1', circuits: ['C1', 'C2'], length: 10, mutualPerMetre_H: 2e-9 }],
  vehicles: [CAR]
});

const complete = (drawn: Site): Assessment => createAssessor().assess(drawn, 'complete');
let found: Assessment;
beforeAll(() => {
  found = complete(site);
});
const beatIn = ({ beats }: Assessment, a: string, b: string): Beat | undefined =>
  beats.find((beat) => beat.a === a && beat.b === b);
const remedyFor = (a: string, b: string, kind: RemedyKind): Remedy => {
  const remedy = beatIn(found, a, b)!.remedies!.find((each) => each.kind === kind);
  if (!remedy) throw new Error(`no ${kind} for ${a} and ${b}`);
  return remedy;
};

/** The drawing as the remedy would have it. */
const applied = (remedy: Remedy, a: string, b: string): Site => {
  const there = withRemedy(site, { a, b }, remedy);
  if (!there || there === site) throw new Error('nothing was applied');
  return there;
};
const changedBy = (remedy: Remedy, a: string, b: string): readonly string[] => {
  if ('circuit' in remedy) return [remedy.circuit];
  if (remedy.kind === 'threshold') return remedy.circuits.map(({ circuit: id }) => id);
  return remedy.kind === 'conduit' ? [b] : [a, b];
};

describe('a remedy does what it says', () => {
  it.each<[string, string, RemedyKind]>([
    ['C1', 'C2', 'setting'],
    ['C1', 'C2', 'scanning'],
    ['C1', 'C2', 'threshold'],
    ['C1', 'C2', 'distance'],
    ['C2', 'C3', 'setting'],
    ['C2', 'C3', 'measuring-time'],
    ['C2', 'C3', 'threshold'],
    ['C2', 'C4', 'setting'],
    ['C3', 'C4', 'winding'],
    ['C3', 'C4', 'scanning'],
    ['C3', 'C4', 'distance'],
    ['C3', 'C4', 'threshold']
  ])('%s and %s: %s', (a, b, kind) => {
    const remedy = remedyFor(a, b, kind);
    const after = complete(applied(remedy, a, b));
    const beat = beatIn(after, a, b);
    const changed = changedBy(remedy, a, b);
    const worst = Math.max(
      0,
      ...after.beats
        .filter((each) => changed.includes(each.a) || changed.includes(each.b))
        .map(({ ratio }) => ratio)
    );
    expect(remedy.ratio).toBeLessThan(beatIn(found, a, b)!.ratio);
    if (kind === 'scanning') expect(beat).toBeUndefined();
    // a loop that moves, or is wound the other way, answers vehicles otherwise: the sweep is taken as it was
    else
      expect(relativeError(remedy.ratio, beat!.ratio)).toBeLessThan(
        kind === 'distance' || kind === 'winding' ? 0.05 : 0.01
      );
    if (kind !== 'distance' && kind !== 'winding')
      expect(relativeError(remedy.worstRatio, worst)).toBeLessThan(0.01);
    expect(remedy.worstRatio).toBeGreaterThanOrEqual(remedy.ratio);
    if (kind === 'distance' || kind === 'winding') return;
    const worse = after.beats.filter((each) => {
      const before = beatIn(found, each.a, each.b);
      return BEAT_VERDICTS.indexOf(each.verdict) > BEAT_VERDICTS.indexOf(before?.verdict ?? 'clear');
    });
    const others = worse.flatMap((each) => [each.a, each.b]).filter((id) => id !== a && id !== b);
    expect([...remedy.spoils].sort()).toEqual([...new Set(others)].sort());
  });

  it('also where two lead-ins that share a conduit beat', () => {
    const apart = site.loops.map((each) =>
      each.id === 'L2' ? { ...each, shape: moveShape(each.shape, [30, 0]) } : each
    );
    const conduits = site.conduits.map((each) => ({ ...each, length: 80 }));
    const drawn: Site = { ...site, loops: apart, conduits };
    const [remedy] = beatIn(complete(drawn), 'C1', 'C2')!.remedies!.filter(({ kind }) => kind === 'conduit');
    expect(remedy).toMatchObject({ conduits: ['D1'], verdict: 'clear' });
    const apartFrom = withRemedy(drawn, { a: 'C1', b: 'C2' }, remedy!)!;
    expect(apartFrom.conduits).toMatchObject([{ id: 'D1', circuits: ['C1'] }]);
    const after = beatIn(complete(apartFrom), 'C1', 'C2')!;
    expect(relativeError(remedy!.ratio, after.ratio)).toBeLessThan(1e-6);
  });

  it('and the distance is the least, in steps of 5 cm', () => {
    const remedy = remedyFor('C1', 'C2', 'distance');
    if (remedy.kind !== 'distance') throw new Error();
    expect(remedy.verdict).toBe('clear');
    expect(Math.abs(remedy.by_m / 0.05 - Math.round(remedy.by_m / 0.05))).toBeLessThan(1e-9);
    const short = { ...remedy, by_m: remedy.by_m - 0.05 };
    expect(beatIn(complete(applied(short, 'C1', 'C2')), 'C1', 'C2')!.verdict).not.toBe('clear');
  });

  it('and the threshold names the vehicles that it would lose', () => {
    const remedy = remedyFor('C1', 'C2', 'threshold');
    if (remedy.kind !== 'threshold') throw new Error();
    for (const { circuit: id, tripThreshold, lost } of remedy.circuits) {
      const { responses } = found.circuits.find((each) => each.id === id)!;
      // what is missed at 0.1 % already is not lost by more
      const missed = responses.filter(
        ({ wanted, worst }) => wanted && -worst < tripThreshold && -worst >= 0.001
      );
      expect(lost).toEqual(missed.map(({ vehicle }) => vehicle));
    }
    // the coupling is such that no car would be seen above it
    expect(remedy.circuits.flatMap(({ lost }) => lost)).toContain('car');
  });
});

describe('a remedy that the drawing cannot take', () => {
  it('is none where it needs a unit that is not there, and changes nothing where something has gone', () => {
    const effect = { ratio: 0, verdict: 'clear', worstRatio: 0, spoils: [] } as const;
    const pair = { a: 'C1', b: 'C2' };
    expect(withRemedy(site, pair, { kind: 'scanning', unit: null, ...effect })).toBeNull();
    const gone = { circuit: 'C9', ...effect };
    expect(withRemedy(site, pair, { kind: 'winding', loop: 'L9', ...gone })).toBe(site);
    expect(withRemedy(site, pair, { kind: 'distance', by_m: 1, ...gone })).toBe(site);
    expect(withRemedy(site, pair, { kind: 'setting', setting: 1, frequency_Hz: 4e4, ...gone })).toBe(site);
    expect(withRemedy(site, pair, { kind: 'conduit', conduits: ['D9'], ...effect })).toBe(site);
  });
});

describe('what is offered', () => {
  it('is nothing for a clear pair, something for every other, and nothing that does not help', () => {
    expect(found.beats.some(({ verdict }) => verdict === 'clear')).toBe(true);
    for (const { verdict, remedies, ratio } of found.beats) {
      expect(remedies!.length > 0).toBe(verdict !== 'clear');
      for (const remedy of remedies!) expect(remedy.ratio).toBeLessThan(0.9 * ratio);
    }
  });

  it('leaves pinned channels and given frequencies alone', () => {
    const pinned = updateChannel(updateChannel(site, 'C1', { pinned: true }), 'C2', { frequency_Hz: 45_000 });
    const settings = complete(pinned).beats.flatMap(({ remedies }) =>
      remedies!.flatMap((remedy) => (remedy.kind === 'setting' ? [remedy.circuit] : []))
    );
    expect(settings.length).toBeGreaterThan(0);
    expect(settings).not.toContain('C1');
    expect(settings).not.toContain('C2');
  });

  it('begins with what clears the pair without spoiling another', () => {
    for (const { remedies } of found.beats) {
      const clears = remedies!.map(({ verdict }) => verdict === 'clear');
      expect(clears).toEqual([...clears].sort((one, other) => Number(other) - Number(one)));
    }
    const [first] = beatIn(found, 'C1', 'C2')!.remedies!;
    expect(first!.kind).toBe('setting');
    // a threshold that loses the car comes after what costs nothing
    const kinds = beatIn(found, 'C1', 'C2')!.remedies!.map(({ kind }) => kind);
    expect(kinds.indexOf('scanning')).toBeLessThan(kinds.indexOf('threshold'));
  });

  it('follows an edit in steps, and then is what a report would have', () => {
    const assessor = createAssessor();
    assessor.assess(site, 'all');
    const first = assessor.assess(site, 'prepared');
    expect(first.isFollowed).toBe(true);
    expect(beatIn(first, 'C1', 'C2')!.remedies).toBeNull();
    while (assessor.followNext(site));
    const last = assessor.assess(site, 'prepared');
    expect(last.isFollowed).toBe(false);
    expect(last.beats.map(({ remedies }) => remedies)).toEqual(found.beats.map(({ remedies }) => remedies));
    // what another circuit's channel does changes what a remedy spoils
    const other = updateChannel(site, 'C4', { frequencySetting: 4 });
    expect(beatIn(assessor.assess(other, 'prepared'), 'C1', 'C2')!.remedies).toBeNull();
  });
});

describe('figures that a person would set', () => {
  it.each([
    [0.00123, 0.0013],
    [0.0012, 0.0013],
    [0.0999, 0.1],
    [4.01e-3, 4.1e-3],
    [1, 1.1]
  ])('%f is rounded up to %f', (value, wanted) => {
    expect(roundedUp(value)).toBe(wanted);
  });
});

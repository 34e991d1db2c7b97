/** Each kind of remedy where it has a choice to make: drawings in which the wrong choice would show. */
import { describe, expect, it } from 'vitest';
import { verdictOf } from '#analysis/beating/rate';
import { movedApart } from '#analysis/beating/remedies/distance';
import { remediesInSteps } from '#analysis/beating/remedies/index';
import { beatScene, type BeatScene, type RatedPair } from '#analysis/beating/scene';
import type { Remedy, RemedyKind } from '#analysis/results';
import { finish } from '#analysis/steps';
import { createSurveyor } from '#analysis/survey';
import { setReversed, updateChannel, updateUnit } from '#plan/edits/index';
import type { Site } from '#plan/schema';
import { relativeError } from '../../physics/support/reference';
import { channel, circuit, loop, siteOf, square, unit } from '../support/sites';

type Json = Readonly<Record<string, unknown>>;

const surveyor = createSurveyor();
const sceneOf = (site: Site): BeatScene => beatScene(surveyor.survey(site), () => []);
const pairIn = (scene: BeatScene, a: string, b: string): RatedPair | undefined =>
  scene.pairs.find(({ pair }) => pair.a === a && pair.b === b);
const ratioIn = (site: Site, a = 'C1', b = 'C2'): number => pairIn(sceneOf(site), a, b)?.pair.ratio ?? 0;
const remediesFor = (site: Site, a = 'C1', b = 'C2'): readonly Remedy[] => {
  const scene = sceneOf(site);
  const { survey, tanks, responsesOf } = scene;
  return finish(remediesInSteps({ surveyor, survey, tanks, responsesOf, ...pairIn(scene, a, b)! }));
};
const only = <K extends RemedyKind>(remedies: readonly Remedy[], kind: K): Extract<Remedy, { kind: K }>[] =>
  remedies.filter((each): each is Extract<Remedy, { kind: K }> => each.kind === kind);

/** Circuits of a loop each, in a row with half a metre between them, each on a unit of its own; neither day nor season. */
const row = (channels: readonly Json[], units: readonly Json[], fields: Json = {}): Site =>
  siteOf({
    temperatureRange_C: [20, 20],
    loops: channels.map((_, k) => loop(`L${k + 1}`, square(2.3 * k, 0))),
    circuits: channels.map((on, k) => circuit(`C${k + 1}`, [`L${k + 1}`], { channel: on, detect: [] })),
    units,
    ...fields
  });
const given = (name: string, frequency_Hz: number, over: Json = {}): Json =>
  channel(name, 1, { frequency_Hz, ...over });
const tuned = (name: string, frequencySetting: number, over: Json = {}): Json =>
  channel(name, 1, { frequency_Hz: null, frequencySetting, ...over });

describe('a longer measuring time', () => {
  const quick = (name: string): Json => unit(name, { measuringTime_s: 1e-4 });

  it('also counts from where averaging sets in at all: 1/(π·200 Hz) is 1.59 ms, of 0.1 ms nothing is averaged', () => {
    // so far apart that 200 Hz lie out of reach of locking
    const loops = [0, 3.6].map((x, k) => loop(`L${k + 1}`, square(x, 0)));
    const site = row([given('U1', 50_000), given('U2', 50_200)], [quick('U1'), quick('U2')], { loops });
    const [remedy] = only(remediesFor(site), 'measuring-time');
    const needed = (ratioIn(site) * 4) / (Math.PI * 200);
    expect(remedy!.measuringTime_s).toBeGreaterThan(needed);
    // two figures
    expect(remedy!.measuringTime_s).toBeLessThan(1.11 * needed);
    expect(remedy!.verdict).toBe('clear');
    expect(relativeError(remedy!.ratio, (0.25 * needed) / remedy!.measuringTime_s)).toBeLessThan(1e-6);
  });

  it('is asked of the units of those sides alone that are not clear', () => {
    const site = row(
      [given('U1', 50_000), given('U2', 52_000, { tripThreshold: 0.4 })],
      [unit('U1'), unit('U2')]
    );
    expect(only(remediesFor(site), 'measuring-time')).toMatchObject([{ units: ['U1'], verdict: 'clear' }]);
  });

  it('holds for everyone on the unit: what it leaves with a third is judged by the longer time too', () => {
    const site = row(
      [given('U1', 50_000), given('U2', 50_200), channel('U1', 2, { frequency_Hz: 49_000 })],
      [unit('U1', { scansInTurn: false }), unit('U2', { measuringTime_s: 10 })],
      { loops: [0, 4.6, 2.3].map((x, k) => loop(`L${k + 1}`, square(x, 0))) }
    );
    const [remedy] = only(remediesFor(site), 'measuring-time');
    expect(remedy!.units).toEqual(['U1']);
    const { measuringTime_s } = remedy!;
    const there = updateUnit(site, 'U1', { measuringTime_s });
    const left = (['C1', 'C2'] as const).map((id) =>
      Math.max(
        ...sceneOf(there).pairs.flatMap(({ pair }) => (pair.a === id || pair.b === id ? [pair.ratio] : []))
      )
    );
    expect(relativeError(remedy!.worstRatio, Math.max(...left))).toBeLessThan(1e-9);
  });

  it('of more than a second is none', () => {
    // a faint coupling and a fine threshold: 2 Hz lie out of reach of locking
    const fine = { tripThreshold: 5e-6 };
    const loops = [0, 14].map((x, k) => loop(`L${k + 1}`, square(x, 0)));
    const site = (apart: number): Site =>
      row([given('U1', 50_000, fine), given('U2', 50_000 + apart, fine)], [unit('U1'), unit('U2')], {
        loops
      });
    const needed = (4 * ratioIn(site(2))) / (Math.PI * 2);
    expect(needed).toBeGreaterThan(2);
    expect(only(remediesFor(site(2)), 'measuring-time')).toEqual([]);
    expect(only(remediesFor(site(2 * 3 * needed)), 'measuring-time')).toHaveLength(1);
  });
});

describe('one unit that scans both', () => {
  it('may have fewer settings than the one from which a circuit comes', () => {
    const site = row(
      [tuned('U1', 2), tuned('U2', 4)],
      [unit('U1', { channels: 2, settings_F: [2.2e-7, 7e-8] }), unit('U2', { channels: 1 })]
    );
    expect(ratioIn(site)).toBeGreaterThan(0.25);
    expect(only(remediesFor(site), 'scanning')).toMatchObject([{ unit: 'U1', ratio: 0 }]);
  });
});

describe('another setting', () => {
  it('is the one that leaves the smallest worst ratio, with the other neighbours too', () => {
    // on the highest the second would be furthest from the first, but on the third’s frequency
    const site = row(
      [tuned('U1', 1), tuned('U2', 1), tuned('U3', 4)],
      ['U1', 'U2', 'U3'].map((name) => unit(name))
    );
    const remedy = only(remediesFor(site), 'setting').find((each) => each.circuit === 'C2')!;
    const worstOn = (frequencySetting: number): number => {
      const there = updateChannel(site, 'C2', { frequencySetting });
      return Math.max(ratioIn(there, 'C1', 'C2'), ratioIn(there, 'C2', 'C3'));
    };
    const worst = [2, 3, 4].map(worstOn);
    expect(remedy.setting).toBe(worst.indexOf(Math.min(...worst)) + 2);
    expect(remedy.setting).not.toBe(4);
    expect(relativeError(remedy.worstRatio, Math.min(...worst))).toBeLessThan(1e-9);
    const ratios = [2, 3, 4].map((setting) =>
      ratioIn(updateChannel(site, 'C2', { frequencySetting: setting }))
    );
    expect(ratios.indexOf(Math.min(...ratios))).toBe(2);
  });

  it('lies in the usual band of 20 to 100 kHz', () => {
    const settings_F = [1.5e-7, 1.4e-7, 2e-9, 2e-6];
    const site = row(
      [tuned('U1', 1), tuned('U2', 1)],
      [unit('U1', { settings_F }), unit('U2', { settings_F })]
    );
    const [first, ...others] = only(remediesFor(site), 'setting');
    for (const { setting, frequency_Hz } of [first!, ...others]) {
      expect(setting).toBe(2);
      expect(frequency_Hz).toBeGreaterThan(20_000);
      expect(frequency_Hz).toBeLessThan(100_000);
    }
  });
});

describe('another winding sense', () => {
  it('is that of the loop whose turning leaves least', () => {
    const site = siteOf({
      temperatureRange_C: [20, 20],
      loops: [
        loop('L1', square(0, 0)),
        loop('L2', square(2.3, 0)),
        loop('L3', square(2.3, 2.3)),
        loop('L4', square(2.3, -2.8, 1.2))
      ],
      circuits: [
        circuit('C1', ['L1'], { channel: given('U1', 50_000), detect: [] }),
        circuit('C2', ['L2', 'L3', 'L4'], { channel: given('U2', 50_800), detect: [] })
      ],
      units: [unit('U1'), unit('U2')]
    });
    const [remedy] = only(remediesFor(site), 'winding');
    const left = ['L2', 'L3', 'L4'].map((id) => ratioIn(setReversed(site, 'C2', id, true)));
    expect(new Set(left.map((ratio) => ratio.toPrecision(3)))).toHaveLength(3);
    expect(remedy!.loop).toBe(['L2', 'L3', 'L4'][left.indexOf(Math.min(...left))]);
    expect(relativeError(remedy!.ratio, Math.min(...left))).toBeLessThan(1e-9);
    // of the two the one with fewer loops is the one to move
    expect(only(remediesFor(site), 'distance')).toMatchObject([{ circuit: 'C1' }]);
  });
});

describe('a higher threshold', () => {
  const pair = (thresholds: readonly [number, number], gap = 0.5): Site =>
    row(
      thresholds.map((tripThreshold, k) => given(`U${k + 1}`, 50_000, { tripThreshold })),
      [unit('U1'), unit('U2')],
      { loops: [loop('L1', square(0, 0)), loop('L2', square(1.8 + gap, 0))] }
    );

  it('is that of the circuits alone that are not clear', () => {
    const [remedy] = only(remediesFor(pair([0.001, 0.4])), 'threshold');
    expect(remedy!.circuits.map(({ circuit: id }) => id)).toEqual(['C1']);
    expect(remedy!.verdict).toBe('clear');
  });

  it('is none above a half, the most that a drawing may hold', () => {
    // one inside the other: k is far over an eighth
    const site = pair([0.01, 0.01], -1.7);
    expect(ratioIn(site) * 0.01).toBeGreaterThan(0.125);
    expect(only(remediesFor(site), 'threshold')).toEqual([]);
  });
});

describe('more distance', () => {
  it('is where the pair stays clear from there on, not where the coupling of overlapping loops turns its sign', () => {
    const site = row([given('U1', 50_000), given('U2', 53_000)], [unit('U1'), unit('U2')], {
      loops: [loop('L1', square(0, 0)), loop('L2', square(0, 0))]
    });
    const [remedy] = only(remediesFor(site), 'distance');
    const [a, b] = sceneOf(site).tanks;
    const verdictAt = (by: number) => verdictOf(ratioIn(movedApart(b!, a!, by)(site)));
    // two squares of 1.8 m do not couple when one lies about 1.6 m beside the other
    expect([1.5, 1.55, 1.6, 1.65].map(verdictAt)).toContain('clear');
    expect(remedy!.by_m).toBeGreaterThan(1.8);
    for (let by = remedy!.by_m; by < remedy!.by_m + 3; by += 0.15) expect(verdictAt(by)).toBe('clear');
    expect(verdictAt(remedy!.by_m - 0.05)).not.toBe('clear');
  });

  it('is none where a pair is not clear 25 m further either', () => {
    const shared = { conduits: [{ id: 'D1', circuits: ['C1', 'C2'], length: 200, mutualPerMetre_H: 1e-8 }] };
    const site = row([tuned('U1', 1), tuned('U2', 1)], [unit('U1'), unit('U2')], shared);
    expect(only(remediesFor(site), 'distance')).toEqual([]);
  });
});

describe('a conduit of its own', () => {
  it('concerns those conduits alone in which both lie', () => {
    const site = row(
      [given('U1', 50_000), given('U2', 50_000), given('U3', 60_000)],
      ['U1', 'U2', 'U3'].map((name) => unit(name)),
      {
        loops: [0, 12, 24].map((x, k) => loop(`L${k + 1}`, square(x, 0))),
        conduits: [
          { id: 'D1', circuits: ['C1', 'C2'], length: 60 },
          { id: 'D2', circuits: ['C2', 'C3'], length: 60 }
        ]
      }
    );
    expect(only(remediesFor(site), 'conduit')).toMatchObject([{ conduits: ['D1'], verdict: 'clear' }]);
  });
});

describe('the order', () => {
  it('puts what spoils another behind what clears the pair at no cost, however little effort it is', () => {
    // the only other setting of the second is the third’s
    const site = row(
      [tuned('U1', 1, { pinned: true }), tuned('U2', 1), tuned('U3', 2, { pinned: true })],
      ['U1', 'U2', 'U3'].map((name) => unit(name, { settings_F: [2.2e-7, 1e-7] }))
    );
    const remedies = remediesFor(site);
    const at = (kind: RemedyKind): number => remedies.findIndex((each) => each.kind === kind);
    expect(remedies[at('setting')]).toMatchObject({ verdict: 'clear', spoils: ['C3'] });
    expect(remedies[at('scanning')]).toMatchObject({ verdict: 'clear', spoils: [] });
    expect(at('scanning')).toBeLessThan(at('setting'));
  });
});

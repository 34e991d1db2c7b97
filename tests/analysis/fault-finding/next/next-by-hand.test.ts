/** What a further reading would be under each cause, and what it would tell: normal distributions that are known by hand. */
import { describe, expect, it } from 'vitest';
import {
  SOUND_INSULATION,
  type AskedFigure,
  type ConcreteFault,
  type Predicted,
  type Prepared,
  type Spread
} from '#analysis/fault-finding/forward/contract';
import { relativeOf } from '#analysis/fault-finding/inference/covariance';
import { seenUnder, type Seen } from '#analysis/fault-finding/inference/likelihood';
import type { Observed } from '#analysis/fault-finding/inference/observed';
import type { Scene } from '#analysis/fault-finding/inference/scene';
import { nextMeasurements } from '#analysis/fault-finding/next/next';
import type { Entry } from '#analysis/fault-finding/ranked';
import type { NextMeasurement } from '#analysis/fault-finding/results';
import { finish } from '#analysis/steps';
import { READING_QUANTITIES, type Site } from '#plan/schema';
import { entriesOf, meterOf } from '../support/entries';
import { figure } from '../support/prepared';
import { site as drawn } from '../support/readings';

/** Of the reading; no floor. */
const METER = 0.01;
const site: Site = {
  ...drawn,
  fieldCheck: {
    instruments: [
      {
        id: 'I1',
        name: 'Meter',
        accuracies: READING_QUANTITIES.map((quantity) => ({ quantity, share: METER, floor: 0 }))
      }
    ]
  }
};
/** One standard deviation of the temperature moves everything by so much. */
const STRAY = 0.1;

const observedOhms = (value: number): Observed => ({
  asked: figure('cabinet', 'resistanceDc_ohm'),
  value,
  accuracy: meterOf(0.01),
  isBaseline: false
});

const spreadOf = (count: number): Spread => ({
  inputs: ['temperature'],
  derivatives: Array.from({ length: count }, () => [STRAY]),
  model: Array.from({ length: count }, () => 0)
});

const NO_LOOK = seenUnder([], [], spreadOf(0), relativeOf([], new Map()));

interface Given {
  readonly asked: readonly AskedFigure[];
  /** By the first fault's kind, at each value of its unknown. */
  readonly predict: (faults: readonly ConcreteFault[], asked: AskedFigure) => Predicted;
  readonly entries: readonly Entry[];
  readonly observed?: readonly Observed[];
  readonly isRead?: (asked: AskedFigure) => boolean;
}

const nextOf = ({
  asked,
  predict,
  entries,
  observed = [],
  isRead = () => false
}: Given): readonly NextMeasurement[] => {
  const prepared: Pick<Prepared, 'askable' | 'predict' | 'spread'> = {
    askable: asked,
    predict: (faults, wanted) => wanted.map((each) => predict(faults, each)),
    spread: (_, wanted) => spreadOf(wanted.length)
  };
  const scene = { prepared, observed, shares: new Map() } as unknown as Scene;
  return finish(nextMeasurements({ site, scene, entries, instruments: { instruments: ['I1'] }, isRead }));
};

const entropy = (...shares: readonly number[]): number =>
  -shares.reduce((sum, share) => sum + share * Math.log2(share), 0);

const kindOf = ([first]: readonly ConcreteFault[]) => first?.kind ?? 'nothing wrong';

/** Two causes, of which the likelier comes first. */
const two = (looks: readonly Seen[] = [NO_LOOK, NO_LOOK], unmodelled = 0): readonly Entry[] =>
  entriesOf(
    { faults: [{ kind: 'open' }], probability: 0.6, places: [{ look: looks[0]!, unmodelled }] },
    { faults: [{ kind: 'steel near' }], probability: 0.4, places: [{ look: looks[1]! }] }
  );

const PULL_BOX = figure('pull-box', 'resistanceDc_ohm');

describe('what each cause would read', () => {
  const apart = (faults: readonly ConcreteFault[]): number => (kindOf(faults) === 'open' ? 0.8 : 8);
  const rangeOf = (looks: readonly Seen[] | undefined, observed: readonly Observed[], unmodelled = 0) =>
    nextOf({ asked: [PULL_BOX], predict: apart, entries: two(looks, unmodelled), observed })[0]!
      .separates[0]!;
  const looksAt = (read: number) => {
    const observed = [observedOhms(read)];
    const look = seenUnder(
      observed,
      [1],
      spreadOf(1),
      relativeOf(
        observed.map(({ asked }) => ({ asked, isBaseline: false })),
        new Map()
      )
    );
    return { observed, look };
  };

  it('strays by tolerances and meter together', () => {
    const deviation = Math.hypot(STRAY, METER / 1.96);
    const { cause, low, high } = rangeOf(undefined, []);
    expect(cause).toBe(0);
    expect(low).toBeCloseTo(0.8 * Math.exp(-1.96 * deviation), 6);
    expect(high).toBeCloseTo(0.8 * Math.exp(1.96 * deviation), 6);
  });

  it('is known better from what was read already, and moves with it', () => {
    const { observed, look } = looksAt(1.1);
    // of two normal figures that stray together, the one given the other
    const [own, other] = [(0.8 * STRAY) ** 2 + ((0.8 * METER) / 1.96) ** 2, STRAY ** 2 + 0.01 ** 2];
    const common = 0.8 * STRAY * STRAY;
    const mean = 0.8 + (common / other) * (1.1 - 1);
    const deviation = Math.sqrt(own - common ** 2 / other) / mean;
    const { low, high } = rangeOf([look, NO_LOOK], observed);
    expect(low).toBeCloseTo(mean * Math.exp(-1.96 * deviation), 6);
    expect(high).toBeCloseTo(mean * Math.exp(1.96 * deviation), 6);
  });

  it('is not moved by what that cause does not explain', () => {
    // five deviations off
    const { observed, look } = looksAt(1 + 5 * Math.hypot(STRAY, 0.01));
    expect(rangeOf([look, NO_LOOK], observed)).toEqual(rangeOf(undefined, []));
  });

  it('is wider by what no model holds', () => {
    const deviation = Math.hypot(STRAY, METER / 1.96, 0.4);
    expect(rangeOf(undefined, [], 0.4).high).toBeCloseTo(0.8 * Math.exp(1.96 * deviation), 6);
  });

  it('of sound insulation is anything that is sound; where nothing is to be shown it has no range', () => {
    const [only] = nextOf({
      asked: [figure('cabinet', 'insulation_ohm')],
      predict: (faults) => (kindOf(faults) === 'open' ? 'sound' : 'over range'),
      entries: two()
    });
    const [{ cause, low, high } = { cause: -1, low: 0, high: 0 }, ...rest] = only!.separates;
    expect(rest).toEqual([]);
    expect(cause).toBe(0);
    // evenly over a width: one deviation is the width over the square root of twelve
    const width = Math.log(SOUND_INSULATION.high / SOUND_INSULATION.low);
    expect(Math.sqrt(low * high)).toBeCloseTo(Math.sqrt(SOUND_INSULATION.low * SOUND_INSULATION.high), -2);
    expect(Math.log(high / low)).toBeCloseTo((2 * 1.96 * width) / Math.sqrt(12), 6);
  });

  it('of a response is a fall, the deeper one the lower', () => {
    const asked = { ...figure('unit', 'deltaLOverL'), vehicle: 'car' };
    const [only] = nextOf({
      asked: [asked],
      predict: (faults) => (kindOf(faults) === 'open' ? -0.02 : -0.002),
      entries: two()
    });
    const [{ low, high } = { low: 0, high: 0 }] = only!.separates;
    const deviation = Math.hypot(STRAY, METER / 1.96);
    expect(low).toBeCloseTo(-0.02 * Math.exp(1.96 * deviation), 8);
    expect(high).toBeCloseTo(-0.02 * Math.exp(-1.96 * deviation), 8);
  });

  it('leaves out places that hold next to nothing of a cause', () => {
    const entries = entriesOf(
      {
        faults: [{ kind: 'open', unknowns: ['linear'] }],
        probability: 0.6,
        places: [
          { values: [1], spans: [[1, 1]], share: 0.99, look: NO_LOOK },
          { values: [2], spans: [[2, 2]], share: 0.01, look: NO_LOOK }
        ]
      },
      { faults: [{ kind: 'steel near' }], probability: 0.4, places: [{ look: NO_LOOK }] }
    );
    const predict = (faults: readonly ConcreteFault[]): number =>
      kindOf(faults) === 'steel near' ? 8 : faults[0]?.values.turns === 2 ? 80 : 0.8;
    const [only] = nextOf({ asked: [PULL_BOX], predict, entries });
    const { low, high } = only!.separates[0]!;
    expect(low).toBeGreaterThan(0.5);
    expect(high).toBeLessThan(1.2);
  });
});

describe('what a further reading is expected to tell', () => {
  it('is all that is open where the causes read apart, however many places each has', () => {
    const entries = entriesOf(
      {
        faults: [{ kind: 'open' }],
        probability: 0.75,
        places: [{ look: NO_LOOK }, { look: NO_LOOK }, { look: NO_LOOK }]
      },
      { faults: [{ kind: 'steel near' }], probability: 0.25, places: [{ look: NO_LOOK }] }
    );
    const predict = (faults: readonly ConcreteFault[]): number => (kindOf(faults) === 'open' ? 0.1 : 10);
    const [only] = nextOf({ asked: [PULL_BOX], predict, entries });
    expect(only!.information).toBeCloseTo(entropy(0.75, 0.25), 2);
  });

  it('is told of a small doubt too, and not where every cause reads the same', () => {
    const entries = entriesOf(
      { faults: [{ kind: 'open' }], probability: 0.97, places: [{ look: NO_LOOK }] },
      { faults: [{ kind: 'steel near' }], probability: 0.03, places: [{ look: NO_LOOK }] }
    );
    const apart = (faults: readonly ConcreteFault[]): number => (kindOf(faults) === 'open' ? 0.1 : 10);
    const [only] = nextOf({ asked: [PULL_BOX], predict: apart, entries });
    expect(only!.information).toBeCloseTo(entropy(0.97, 0.03), 2);
    expect(nextOf({ asked: [PULL_BOX], predict: () => 1, entries })).toEqual([]);
  });

  it('is a loss of the figure where one of two causes leaves the meter without one nine times in ten', () => {
    const predict = (faults: readonly ConcreteFault[]): Predicted =>
      kindOf(faults) === 'open' ? 'over range' : 1e-4;
    const [only] = nextOf({ asked: [figure('unit', 'frequency_Hz')], predict, entries: two() });
    // as good as always told apart
    expect(only!.information).toBeGreaterThan(0.6 * entropy(0.6, 0.4));
    expect(only!.separates.map(({ cause }) => cause)).toEqual([1]);
  });

  it('comes first where it costs least, of several that tell as much; what was read is not asked again', () => {
    const asked = [
      figure('loop', 'resistanceDc_ohm', { loop: 'L1' }),
      figure('pull-box', 'resistanceDc_ohm'),
      figure('cabinet', 'insulationBetween_ohm'),
      figure('cabinet', 'resistanceDc_ohm'),
      figure('unit', 'frequency_Hz')
    ];
    const predict = (faults: readonly ConcreteFault[]): number => (kindOf(faults) === 'open' ? 1e4 : 1e2);
    const places = (isRead: (asked: AskedFigure) => boolean) =>
      nextOf({ asked, predict, entries: two(), isRead }).map(
        ({ testPoint, quantity }) => `${testPoint} ${quantity}`
      );
    const all = [
      'unit frequency_Hz',
      'cabinet resistanceDc_ohm',
      'pull-box resistanceDc_ohm',
      'loop resistanceDc_ohm',
      'cabinet insulationBetween_ohm'
    ];
    const isOhms = (each: string) => each.endsWith('resistanceDc_ohm');
    expect(places(() => false).filter((each) => each !== 'cabinet insulationBetween_ohm')).toEqual(
      all.slice(0, 4)
    );
    expect(places(({ quantity }) => quantity === 'resistanceDc_ohm')).toEqual(
      all.filter((each) => !isOhms(each))
    );
  });
});

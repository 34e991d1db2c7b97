/** From single causes to what is shown: who is named, what is left of the unknowns, and how places are picked. */
import { describe, expect, it } from 'vitest';
import { placesBeforehand, placesOf } from '#analysis/fault-finding/ranked';
import { entriesOf, suspectOf, type SuspectGiven } from './support/entries';

const estimatesOf = (...given: readonly SuspectGiven[]) => entriesOf(...given)[0]!.faults[0]!.estimates;

describe('a subject', () => {
  const three = (first: number, second: number, third: number) =>
    entriesOf(
      { faults: [{ kind: 'wrong turns', subject: 'L1' }], probability: first },
      { faults: [{ kind: 'wrong turns', subject: 'L2' }], probability: second },
      { faults: [{ kind: 'wrong turns', subject: 'L3' }], probability: third }
    );

  it('is named from three quarters of its kind on', () => {
    expect(three(0.76, 0.2, 0.04).map(({ faults }) => faults[0]!.subject)).toEqual(['L1', 'L2', 'L3']);
    const together = three(0.2, 0.74, 0.06);
    expect(together.map(({ faults }) => faults[0]!.subject)).toEqual([null]);
    expect(together[0]!.probability).toBeCloseTo(1, 12);
  });

  it('is among those that are told from a tenth of the likeliest on, which comes first', () => {
    expect(three(0.3, 0.6, 0.059)[0]!.candidates).toEqual([['L2', 'L1']]);
    expect(three(0.3, 0.6, 0.061)[0]!.candidates).toEqual([['L2', 'L1', 'L3']]);
  });

  it('is that of each of two faults, whichever was found first', () => {
    const [pair, ...rest] = entriesOf(
      {
        faults: [
          { kind: 'wrong turns', subject: 'L1', unknowns: ['whole'] },
          { kind: 'open', subject: 'L2' }
        ],
        probability: 0.2,
        places: [{ spans: [[3, 3]] }]
      },
      {
        faults: [
          { kind: 'open', subject: 'L2' },
          { kind: 'wrong turns', subject: 'L1', unknowns: ['whole'] }
        ],
        probability: 0.3,
        places: [{ spans: [[5, 5]] }]
      }
    );
    expect(rest).toEqual([]);
    expect(pair!.probability).toBeCloseTo(0.5, 12);
    expect(pair!.faults).toEqual([
      { kind: 'open', subject: 'L2', estimates: [] },
      { kind: 'wrong turns', subject: 'L1', estimates: [{ name: 'turns', value: 5, low: 3, high: 5 }] }
    ]);
  });
});

describe('what is left of an unknown', () => {
  it('is its median, and between which values all but a fortieth at either end lies', () => {
    // half of it evenly up to 10, half from there to 30: by plane geometry
    const [estimate] = estimatesOf({
      faults: [{ kind: 'short in lead-in', unknowns: ['linear'] }],
      probability: 1,
      places: [{ spans: [[0, 10]] }, { spans: [[10, 30]] }]
    });
    expect(estimate!.value).toBeCloseTo(10, 6);
    expect(estimate!.low).toBeCloseTo(10 * 0.05, 6);
    expect(estimate!.high).toBeCloseTo(30 - 20 * 0.05, 6);
  });

  it('counts each subject by how likely it is', () => {
    const common = { kind: 'wrong turns', unknowns: ['linear'] } as const;
    const [estimate] = estimatesOf(
      { faults: [{ ...common, subject: 'L1' }], probability: 0.3, places: [{ spans: [[0, 3]] }] },
      { faults: [{ ...common, subject: 'L2' }], probability: 0.2, places: [{ spans: [[3, 4]] }] }
    );
    // five tenths in all: half of them lie within the first 2.5 of 3 tenths
    expect(estimate!.value).toBeCloseTo(2.5, 6);
  });

  it('is the likeliest of whole steps, without those beyond which a fortieth lies', () => {
    const at = (turns: number, share: number) => ({ spans: [[turns, turns]] as const, share });
    const [estimate] = estimatesOf({
      faults: [{ kind: 'wrong turns', unknowns: ['whole'] }],
      probability: 1,
      places: [at(1, 0.02), at(2, 0.1), at(3, 0.5), at(4, 0.36), at(5, 0.02)]
    });
    expect(estimate).toEqual({ name: 'turns', value: 3, low: 2, high: 4 });
  });

  it('is each one’s own where there are several', () => {
    const [first, second] = estimatesOf({
      faults: [{ kind: 'steel near', unknowns: ['linear', 'linear'] }],
      probability: 1,
      places: [
        {
          spans: [
            [1, 3],
            [10, 20]
          ]
        }
      ]
    });
    expect(first!.value).toBeCloseTo(2, 6);
    expect(second!.value).toBeCloseTo(15, 6);
  });
});

describe('places', () => {
  const suspects = [
    suspectOf({ faults: [{ kind: 'open' }], probability: 0.1 }),
    suspectOf({
      faults: [{ kind: 'steel near' }],
      probability: 0.9,
      places: [
        { share: 2 / 9, unmodelled: 0.05 },
        { share: 6 / 9, unmodelled: 0.4 },
        { share: 1 / 9, unmodelled: 0.15 }
      ]
    })
  ];

  it('are the heaviest, their shares adding up to one', () => {
    const places = placesOf({ suspects }, 2);
    expect(places.map(({ share }) => share)).toEqual(
      [0.75, 0.25].map((each) => expect.closeTo(each, 10) as number)
    );
    // each with what is its own
    expect(places.map(({ unmodelled }) => unmodelled)).toEqual([0.4, 0.05]);
    expect(places.map(({ suspect }) => suspect)).toEqual([suspects[1], suspects[1]]);
    expect(placesOf({ suspects }, 9)).toHaveLength(4);
  });

  it('beforehand weigh what they weighed before anything was read, whatever was read since', () => {
    // as likely beforehand; the readings made one of them twenty nats likelier, and it is cut into sixteen pieces
    const even = entriesOf(
      { faults: [{ kind: 'open' }], probability: 0.5, places: [{ logLikelihood: 0 }] },
      {
        faults: [{ kind: 'steel near' }],
        probability: 0.5 * Math.exp(20),
        places: Array.from({ length: 16 }, () => ({ logLikelihood: 20 }))
      }
    );
    const places = placesBeforehand(even);
    const of = (kind: string) =>
      places
        .filter(({ suspect }) => suspect.hypotheses[0]!.kind === kind)
        .reduce((sum, { share }) => sum + share, 0);
    expect(of('open')).toBeCloseTo(0.5, 10);
    expect(of('steel near')).toBeCloseTo(0.5, 10);
    expect(places).toHaveLength(1 + 8);
  });
});

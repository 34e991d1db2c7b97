/** A cause as it is shown: what each figure would be, what is noted beside it, and what to do. */
import { describe, expect, it } from 'vitest';
import { causeOf } from '#analysis/fault-finding/cause';
import type { Predicted } from '#analysis/fault-finding/forward/contract';
import { placesBeforehand, type Entry } from '#analysis/fault-finding/ranked';
import type { RankedCause } from '#analysis/fault-finding/results';
import { entriesOf, placedAt, type SuspectGiven } from './support/entries';
import type { Site } from '#plan/schema';
import { figure } from './support/prepared';
import { site } from './support/readings';

/** The first of these, beside the others; one figure of 10 Ω was read, the second of two. */
const first = (
  given: readonly SuspectGiven[],
  isWanted: (entry: Entry) => boolean = () => true,
  on: Site = site
): RankedCause => {
  const entries = entriesOf(...given);
  const nothingWrong = entries.find(({ faults }) => faults[0]!.kind === 'nothing wrong') ?? entries[0]!;
  const others = entries.filter((each) => each !== nothingWrong);
  const rivals = {
    nothingWrong,
    likeliest: others[0] ?? nothingWrong,
    others: placesBeforehand(others),
    shares: new Map<string, number>()
  };
  const placed = [placedAt(1, figure('cabinet', 'resistanceDc_ohm'), 10, 0.1)];
  return causeOf({ site: on, entries, rivals, placed, figures: 2 }, entries.find(isWanted)!);
};

const none = { faults: [], probability: 0.1, places: [{ predicted: [10] }] };

describe('what a figure would be', () => {
  const under = (...places: readonly (readonly [predicted: Predicted, share: number])[]) =>
    first([
      {
        faults: [{ kind: 'steel near' }],
        probability: 0.9,
        places: places.map(([predicted, share]) => ({ predicted: [predicted], share }))
      },
      none
    ]).predicted;

  it('is the middle on a logarithmic scale of what is left of the unknowns, and nothing of what was not asked', () => {
    expect(under([1, 0.5], [4, 0.5])).toEqual([null, expect.closeTo(2, 10) as number]);
    expect(under([1, 0.75], [16, 0.25])[1]).toBeCloseTo(2, 10);
  });

  it('is the mean of responses, which are negative', () => {
    expect(under([-0.01, 0.5], [-0.03, 0.5])[1]).toBeCloseTo(-0.02, 10);
  });

  it('is a word where most of it is, and nothing where most of it says nothing', () => {
    expect(under(['over range', 0.6], [3, 0.4])[1]).toBe('over range');
    expect(under(['over range', 0.4], [3, 0.6])[1]).toBeCloseTo(3, 10);
    expect(under(['sound', 0.6], [3, 0.4])[1]).toBe('sound');
    expect(under([null, 0.6], [3, 0.4])[1]).toBeNull();
  });
});

describe('what is noted beside a cause', () => {
  const keysOf = ({ evidence }: RankedCause): string[] => evidence.map(({ told }) => told.key);
  const pairOf = (
    one: 'short at splice' | 'wet splice',
    other: 'short in lead-in' | 'cut insulation',
    share: number
  ) =>
    keysOf(
      first([
        { faults: [{ kind: one }], probability: 0.9 - share, places: [{ predicted: [10] }] },
        { faults: [{ kind: other }], probability: share, places: [{ predicted: [10] }] },
        none
      ])
    );

  it('is the other end of what a meter cannot tell apart, from a twentieth on', () => {
    expect(pairOf('short at splice', 'short in lead-in', 0.06)).toEqual(['evidence.splice-or-end']);
    expect(pairOf('short at splice', 'short in lead-in', 0.04)).toEqual(['evidence.prior']);
    expect(pairOf('wet splice', 'cut insulation', 0.06)).toEqual(['evidence.splice-or-cable']);
    expect(pairOf('wet splice', 'cut insulation', 0.04)).toEqual(['evidence.prior']);
  });

  const openIn = (inLoop: number, inLeadIn: number): RankedCause =>
    first([
      { faults: [{ kind: 'open', subject: 'L1' }], probability: inLoop, places: [{ predicted: [10] }] },
      { faults: [{ kind: 'open', subject: null }], probability: inLeadIn, places: [{ predicted: [10] }] },
      none
    ]);

  it('is that it may as well be the lead-in', () => {
    expect(openIn(0.5, 0.4).evidence.map(({ told }) => told)).toEqual([
      { key: 'evidence.which-one-or-lead-in', values: { names: 'L1' } }
    ]);
    // six tenths for the loop, half of a tenth for the lead-in: it is named, and the other not told
    expect(keysOf(openIn(0.9, 0.05))).toEqual(['evidence.prior']);
  });

  it('is that it is the lead-in, where it could have been a loop', () => {
    expect(keysOf(openIn(0.05, 0.9))).toEqual(['evidence.in-lead-in']);
    const alone = first([
      { faults: [{ kind: 'open', subject: null }], probability: 0.9, places: [{ predicted: [10] }] },
      none
    ]);
    expect(keysOf(alone)).toEqual(['evidence.prior']);
  });

  it('tells names that hold a comma apart', () => {
    const named = site.loops.map((loop) => ({ ...loop, name: `Left, ${loop.id}` }));
    const which = first(
      [
        {
          faults: [{ kind: 'reversed loop', subject: 'L2' }],
          probability: 0.5,
          places: [{ predicted: [10] }]
        },
        {
          faults: [{ kind: 'reversed loop', subject: 'L1' }],
          probability: 0.4,
          places: [{ predicted: [10] }]
        },
        none
      ],
      undefined,
      { ...site, loops: named }
    );
    expect(which.evidence[0]!.told.values).toEqual({ names: 'Left, L2; Left, L1' });
  });

  it('is among which loops it lies, by their names, and that there are two at once', () => {
    const which = first([
      { faults: [{ kind: 'reversed loop', subject: 'L2' }], probability: 0.5, places: [{ predicted: [10] }] },
      { faults: [{ kind: 'reversed loop', subject: 'L1' }], probability: 0.4, places: [{ predicted: [10] }] },
      none
    ]);
    expect(which.evidence.map(({ told }) => told)).toEqual([
      { key: 'evidence.which-one', values: { names: 'L2, L1' } }
    ]);
    const two = first([
      { faults: [{ kind: 'open' }, { kind: 'steel near' }], probability: 0.9, places: [{ predicted: [10] }] },
      none
    ]);
    expect(keysOf(two)).toEqual(['evidence.two-at-once']);
    expect(two.remedy.key).toBe('remedy.two-at-once');
  });
});

describe('what to do', () => {
  const nothing = (probability: number, would: number) =>
    first(
      [
        { faults: [], probability, places: [{ predicted: [would] }] },
        { faults: [{ kind: 'steel near' }], probability: 1 - probability, places: [{ predicted: [10] }] }
      ],
      ({ faults }) => faults[0]!.kind === 'nothing wrong'
    );

  it('is reading again where nothing can be wrong but the figure, and nothing where all fits', () => {
    expect(nothing(0.3, 10.3).remedy.key).toBe('remedy.slip');
    expect(nothing(0.3, 10).remedy.key).toBe('remedy.nothing wrong');
  });

  it('is the remedy of its own kind', () => {
    expect(
      first([{ faults: [{ kind: 'open' }], probability: 0.9, places: [{ predicted: [10] }] }, none]).remedy
        .key
    ).toBe('remedy.open');
  });
});

/**
 * What each prediction says, once more in numbers that are taken from the curves and not from the lesson's own measures and
 * conditions: a condition that does not fit its text, or a measure of the wrong place, is found here.
 */
import { describe, expect, it } from 'vitest';
import { outcomeOfLesson, shelf } from './shelf';

/** Of figure and curve, both counted from 0, at a value of x that was computed. */
type At = (figure: number, curve: number, x: number) => number;
interface Seen {
  readonly at: At;
  readonly xs: readonly number[];
}
type Claim = readonly [says: RegExp, holds: (seen: Seen) => boolean];

/** The x of the highest value among those from `from` on. */
const bestAt = ({ at, xs }: Seen, figure: number, curve: number): number =>
  xs.reduce((best, x) => (at(figure, curve, x) > at(figure, curve, best) ? x : best), xs[0]!);

/** The highest x at which the usual threshold of 0.16 % is still reached. */
const reach = ({ at, xs }: Seen, curve: number): number =>
  Math.max(...xs.filter((x) => at(0, curve, x) >= 0.0016));

const lowest = ({ at, xs }: Seen, curve: number, from: number, to: number): number =>
  Math.min(...xs.filter((x) => x >= from && x <= to).map((x) => at(0, curve, x)));

const between = (value: number, least: number, below: number): boolean => value >= least && value < below;

const turns = ({ at }: Seen) => at(0, 0, 4) / at(0, 0, 2);
const far = ({ at }: Seen) => at(0, 1, 2.5) / at(0, 0, 2.5);
const diluted = ({ at }: Seen) => at(0, 0, 100) / at(0, 0, 0);
const steel = ({ at }: Seen) => at(0, 0, 0.1) / at(0, 0, 1.5) / (at(1, 0, 0.1) / at(1, 0, 1.5));
const helped = ({ at }: Seen) => at(0, 0, 2) / at(0, 1, 1);
const trailer = (seen: Seen) => lowest(seen, 0, -1, 1);
const joint = ({ at }: Seen) => at(1, 1, 30) / at(1, 0, 30);
const deep = ({ at }: Seen) => at(0, 0, 0.3) / at(0, 0, 0.05);
const sense = ({ at }: Seen) => at(0, 1, 0.2) / at(0, 0, 0.2);
const shorted = ({ at }: Seen) => at(0, 1, 1) / at(0, 0, 0);

const CLAIMS: Readonly<Record<string, readonly Claim[]>> = {
  turns: [
    [/doubles/u, (seen) => turns(seen) < 2.5],
    [/more than two and a half/u, (seen) => between(turns(seen), 2.5, 4)],
    [/fourfold or more/u, (seen) => turns(seen) >= 4]
  ],
  'short-side': [
    [/long side/u, (seen) => reach(seen, 2) > reach(seen, 1)],
    [/alike/u, (seen) => reach(seen, 2) === reach(seen, 1)],
    [/short side/u, (seen) => reach(seen, 1) > reach(seen, 2)]
  ],
  'figure-of-eight': [
    [/Half as strong .*or stronger/u, (seen) => far(seen) >= 0.5],
    [/Between a quarter and a half/u, (seen) => between(far(seen), 0.25, 0.5)],
    [/Less than a quarter/u, (seen) => far(seen) < 0.25]
  ],
  'dead-spot': [
    [/In the middle/u, (seen) => bestAt(seen, 0, 0) < 0.3],
    [/Half-way/u, (seen) => between(bestAt(seen, 0, 0), 0.3, 0.6)],
    [/Near the wire/u, (seen) => Math.abs(bestAt(seen, 0, 0) - 0.9) <= 0.3],
    [/Beyond the wire/u, (seen) => bestAt(seen, 0, 0) > 1.2]
  ],
  'lead-in': [
    [/Nearly all/u, (seen) => diluted(seen) >= 0.8],
    [/Between a third and four fifths/u, (seen) => between(diluted(seen), 1 / 3, 0.8)],
    [/Less than a third/u, (seen) => diluted(seen) < 1 / 3]
  ],
  steel: [
    [/car’s response, by far/u, (seen) => steel(seen) < 0.5],
    [/about the same/u, (seen) => between(steel(seen), 0.5, 1.5)],
    [/inductance, by far/u, (seen) => steel(seen) >= 1.5]
  ],
  neighbours: [
    [/Twice the distance helps more/u, (seen) => helped(seen) < 0.7],
    [/about alike/u, (seen) => between(helped(seen), 0.7, 1.4)],
    [/Another setting helps more/u, (seen) => helped(seen) >= 1.4]
  ],
  'high-lorry': [
    [/stays above 0\.3 %/u, (seen) => trailer(seen) >= 0.003],
    [/but the call holds/u, (seen) => between(trailer(seen), 0.0018, 0.003)],
    [/The call ends/u, (seen) => trailer(seen) < 0.0018]
  ],
  q: [
    [/falls as Q does/u, (seen) => joint(seen) < 0.5],
    [/but less than Q/u, (seen) => between(joint(seen), 0.5, 0.97)],
    [/almost the same/u, (seen) => between(joint(seen), 0.97, 1.03)],
    [/grows/u, (seen) => joint(seen) >= 1.03]
  ],
  'deep-loop': [
    [/More than four fifths/u, (seen) => deep(seen) >= 0.8],
    [/35 % to 80 %/u, (seen) => between(deep(seen), 0.35, 0.8)],
    [/Less than 35 %/u, (seen) => deep(seen) < 0.35]
  ],
  'aiding-opposing': [
    [/The same way round/u, (seen) => sense(seen) < 0.99],
    [/No difference/u, (seen) => between(sense(seen), 0.99, 1.01)],
    [/The opposite ways round/u, (seen) => sense(seen) >= 1.01]
  ],
  'shorted-turn': [
    [/^About that/u, (seen) => between(shorted(seen), 0.9, 1.1)],
    [/^More than that/u, (seen) => shorted(seen) >= 1.1],
    [/^Less than that/u, (seen) => shorted(seen) < 0.9]
  ]
};

describe('what a prediction says', () => {
  it.each(shelf)('is what its condition asks for: $file', ({ lesson }) => {
    const { picture, right } = outcomeOfLesson(lesson.id);
    const xs = picture.x.values;
    const at: At = (figure, curve, x) => {
      const value = picture.figures[figure]?.values[curve]?.[xs.indexOf(x)];
      if (typeof value !== 'number') throw new Error(`nothing at ${x}`);
      return value;
    };
    const claims = CLAIMS[lesson.id]!;
    const held = lesson.predictions.map(({ says }) => {
      const fitting = claims.filter(([text]) => text.test(says.en));
      expect(fitting, says.en).toHaveLength(1);
      return fitting[0]![1]({ at, xs });
    });
    expect(claims).toHaveLength(lesson.predictions.length);
    expect(held).toEqual(right);
  });
});

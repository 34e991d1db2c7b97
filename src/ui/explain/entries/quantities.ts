/** What is bought and cut. */
import type { QuantityLine } from '#analysis/results';
import { quantitiesOf } from '#analysis/takeoff/quantities';
import type { ExplainedId } from '../topic';
import { given, perimeterOf, type Entry, type Facts, type Given } from '../facts';

/** As the drawing says, without what runs past the ends of cuts. */
const amountOf = ({ site, topic }: Facts, ...what: QuantityLine['what'][]): number => {
  const subject = topic.loop ?? topic.circuit;
  return quantitiesOf(site)
    .lines.filter(
      (line) =>
        what.includes(line.what) &&
        !line.id.endsWith('/ends') &&
        (subject === undefined || line.subject === subject)
    )
    .reduce((sum, { amount }) => sum + amount, 0);
};

const TAIL = ['tail wire', 'tail slack'] as const;
const WIRE = ['loop wire', ...TAIL] as const;
const SAWN = ['loop saw cut', 'home run saw cut'] as const;

const turns = ({ loop }: Facts): Given => given('N', 'explain.in.turns', loop?.drawn.turns, 'count');
const round = ({ loop }: Facts): Given =>
  given('P', 'explain.in.perimeter', perimeterOf(loop?.drawn), 'length');

/** A value of one loop, left out where a total of all loops is explained. */
const ofOne = (facts: Facts, ...values: readonly Given[]): readonly Given[] => (facts.loop ? values : []);

export const quantityEntries = {
  wire: {
    formulas: ['l = N P', 'l_{all} = l + 2 l_{tail}'],
    inputs: (facts) => [
      ...ofOne(facts, turns(facts), round(facts)),
      given('l', 'quantities.loopWire', amountOf(facts, 'loop wire'), 'length'),
      given('2 l_{tail}', 'quantities.tailWire', amountOf(facts, ...TAIL), 'length')
    ],
    result: (facts) => given('l_{all}', 'quantities.wire', amountOf(facts, ...WIRE), 'length')
  },
  'saw-cut': {
    formulas: ['s_{all} = s + l_{tail}'],
    inputs: (facts) => [
      given('s', 'quantities.loopSawCut', amountOf(facts, 'loop saw cut'), 'length'),
      given('l_{tail}', 'quantities.homeRun', amountOf(facts, 'home run saw cut'), 'length')
    ],
    result: (facts) => given('s_{all}', 'quantities.sawCut', amountOf(facts, ...SAWN), 'length')
  }
} satisfies Partial<Record<ExplainedId, Entry>>;

/** What is bought and cut. */
import type { QuantityLine } from '#analysis/results';
import type { ExplainedId } from '../topic';
import { given, perimeterOf, type Entry, type Facts, type Given } from '../facts';

const amountOf = ({ assessment, topic }: Facts, ...what: QuantityLine['what'][]): number | undefined => {
  const subject = topic.loop ?? topic.circuit;
  const lines = assessment?.quantities.lines.filter(
    (line) => what.includes(line.what) && (subject === undefined || line.subject === subject)
  );
  return lines?.reduce((sum, { amount }) => sum + amount, 0);
};

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
      given('2 l_{tail}', 'quantities.tailWire', amountOf(facts, 'tail wire'), 'length')
    ],
    result: (facts) =>
      given('l_{all}', 'quantities.wire', amountOf(facts, 'loop wire', 'tail wire'), 'length')
  },
  'saw-cut': {
    formulas: ['s_{all} = s + l_{tail}'],
    inputs: (facts) => [
      given('s', 'quantities.loopSawCut', amountOf(facts, 'loop saw cut'), 'length'),
      given('l_{tail}', 'quantities.homeRun', amountOf(facts, 'home run saw cut'), 'length')
    ],
    result: (facts) =>
      given('s_{all}', 'quantities.sawCut', amountOf(facts, 'loop saw cut', 'home run saw cut'), 'length')
  },
  sealant: {
    formulas: ['V = s_{all} h w − frac{π D^2}{4} l_{all}'],
    inputs: (facts) => [
      given('s_{all}', 'quantities.sawCut', amountOf(facts, 'loop saw cut', 'home run saw cut'), 'length'),
      given('l_{all}', 'quantities.wire', amountOf(facts, 'loop wire', 'tail wire'), 'length'),
      ...ofOne(
        facts,
        given('h', 'explain.in.slotDepth', facts.loop?.drawn.slot.depth, 'smallLength'),
        given('w', 'explain.in.slotWidth', facts.loop?.drawn.slot.width, 'smallLength'),
        given('D', 'explain.in.insulated', facts.loop?.wireUsed?.insulatedDiameter, 'smallLength')
      )
    ],
    result: (facts) => given('V', 'quantities.sealant', amountOf(facts, 'sealant'), 'volume')
  },
  'lead-in': {
    formulas: ['l_{in} = ∑_i l_i'],
    inputs: ({ circuit }) =>
      circuit
        ? [circuit.drawn.leadIn, ...(circuit.drawn.leadIn.further ?? [])].map(({ length }) =>
            given('l_i', 'explain.in.cable', length, 'length')
          )
        : [],
    result: (facts) => given('l_{in}', 'quantities.leadIn', amountOf(facts, 'lead-in'), 'length')
  }
} satisfies Partial<Record<ExplainedId, Entry>>;

/** Two circuits beside each other. */
import type { Sweep } from '#analysis/results';
import type { ExplainedId } from '../topic';
import { separationOptions } from '../../frequencies/separation';
import { given, type Entry, type Facts, type Given } from '../facts';

const inductanceOf = ({ assessment }: Facts, id: string | undefined): number | undefined =>
  assessment?.circuits.find((circuit) => circuit.id === id)?.inductance_H;

const sweepOf = ({ assessment }: Facts, id: string | undefined): Sweep | undefined =>
  assessment?.channels.find(({ circuit }) => circuit === id)?.sweep;

const inductances = (facts: Facts): readonly Given[] => [
  given('L_1', 'quantity.terminalInductance', inductanceOf(facts, facts.topic.circuit), 'inductance'),
  given('L_2', 'quantity.terminalInductance', inductanceOf(facts, facts.topic.other), 'inductance')
];

const lowest = (facts: Facts): readonly Given[] => [
  given('f_1', 'explain.in.lowest', sweepOf(facts, facts.topic.circuit)?.low_Hz, 'frequency'),
  given('f_2', 'explain.in.lowest2', sweepOf(facts, facts.topic.other)?.low_Hz, 'frequency')
];

const highest = (facts: Facts): readonly Given[] => [
  given('h_1', 'explain.in.highest', sweepOf(facts, facts.topic.circuit)?.high_Hz, 'frequency'),
  given('h_2', 'explain.in.highest2', sweepOf(facts, facts.topic.other)?.high_Hz, 'frequency')
];

const coupling = ({ beat }: Facts): Given =>
  given('k', 'explain.in.coupling', beat?.k, 'ratio', { digits: 3 });
const separation = ({ beat }: Facts): Given =>
  given(
    'Δf',
    'explain.in.separation',
    beat?.separation_Hz,
    'frequency',
    beat && separationOptions(beat.separation_Hz)
  );

/** The channel that suffers more; of the pair as it stands in the list. */
const sufferer = ({ beat }: Facts) => {
  const [a, b] = beat?.sides ?? [];
  return a && b && (a.ratio >= b.ratio ? a : b);
};

export const neighbourEntries = {
  coupling: {
    formulas: ['k = frac{M}{sqrt{L_1 L_2}}', 'M = ∑_i ∑_j s_i s_j M_{ij} + M_S ± M_C'],
    inputs: (facts) => [
      given('∑', 'explain.in.loopsMutual', facts.beat?.coupling.loops_H, 'inductance', { digits: 3 }),
      given('M_S', 'explain.in.steelMutual', facts.beat?.coupling.steel_H, 'inductance', { digits: 3 }),
      given('M_C', 'explain.in.conduitMutual', facts.beat?.coupling.conduits_H, 'inductance', { digits: 3 }),
      ...inductances(facts)
    ],
    result: coupling
  },
  sweep: {
    formulas: ['f_h = max ( f , f_K , f_W ) frac{1}{sqrt{1 + frac{ΔL}{L}}}', 'f_n = min ( f , f_K , f_W )'],
    inputs: (facts) => {
      const sweep = sweepOf(facts, facts.topic.circuit);
      return [
        given('f', 'explain.in.rest', sweep?.rest_Hz, 'frequency'),
        given('f_K', 'explain.in.coldFrequency', sweep?.cold_Hz, 'frequency'),
        given('f_W', 'explain.in.hotFrequency', sweep?.hot_Hz, 'frequency'),
        given('frac{ΔL}{L}', 'explain.in.deepest', sweep?.deepest, 'ratio'),
        given('f_n', 'explain.in.lowest', sweep?.low_Hz, 'frequency')
      ];
    },
    result: (facts) =>
      given('f_h', 'explain.in.highest', sweepOf(facts, facts.topic.circuit)?.high_Hz, 'frequency')
  },
  separation: {
    formulas: ['Δf = max ( 0 , f_2 − h_1 , f_1 − h_2 )'],
    inputs: (facts) => [...lowest(facts), ...highest(facts)],
    result: separation
  },
  ripple: {
    formulas: [
      'r = | k | · frac{sqrt{L_1}}{sqrt{L_2}} · frac{2 f_1}{f_1 + f_2} · min ( 1 , frac{1}{π Δf t_m} )'
    ],
    inputs: (facts) => {
      const victim = sufferer(facts);
      const { topic } = facts;
      // the formula's first circuit is the one that suffers
      const turned: Facts =
        victim && victim.circuit === topic.other
          ? {
              ...facts,
              topic: { ...topic, circuit: topic.other, ...(topic.circuit && { other: topic.circuit }) }
            }
          : facts;
      return [
        coupling(facts),
        ...inductances(turned),
        ...lowest(turned),
        separation(facts),
        given('Δf_L', 'explain.in.locking', facts.beat?.lockingRange_Hz, 'frequency', { digits: 3 }),
        given('t_m', 'explain.in.measuringTime', victim?.measuringTime_s, 'time')
      ];
    },
    result: ({ beat }) => given('r', 'explain.in.ripple', beat?.ripple, 'ratio', { digits: 2 })
  }
} satisfies Partial<Record<ExplainedId, Entry>>;

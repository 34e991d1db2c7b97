/** Two circuits beside each other. */
import type { ExplainedId } from '../topic';
import { given, type Entry, type Facts, type Given } from '../facts';

const inductanceOf = ({ assessment }: Facts, id: string | undefined): number | undefined =>
  assessment?.circuits.find((circuit) => circuit.id === id)?.inductance_H;

const frequencyOf = ({ assessment }: Facts, id: string | undefined): number | undefined =>
  assessment?.circuits.find((circuit) => circuit.id === id)?.frequency_Hz;

const inductances = (facts: Facts): readonly Given[] => [
  given('L_1', 'quantity.terminalInductance', inductanceOf(facts, facts.topic.circuit), 'inductance'),
  given('L_2', 'quantity.terminalInductance', inductanceOf(facts, facts.topic.other), 'inductance')
];

const frequencies = (facts: Facts): readonly Given[] => [
  given('f_1', 'explain.in.frequency', frequencyOf(facts, facts.topic.circuit), 'frequency'),
  given('f_2', 'explain.in.frequency', frequencyOf(facts, facts.topic.other), 'frequency')
];

/** From k and the two inductances, of which it was made. */
function mutualOf(facts: Facts): number | undefined {
  const [a, b] = inductances(facts).map(({ value }) => value ?? Number.NaN);
  return facts.beat && facts.beat.k * Math.sqrt(a! * b!);
}

const coupling = ({ beat }: Facts): Given =>
  given('k', 'explain.in.coupling', beat?.k, 'ratio', { digits: 3 });
const separation = ({ beat }: Facts): Given =>
  given('Δf', 'explain.in.separation', beat?.separation_Hz, 'frequency', { digits: 3 });

export const neighbourEntries = {
  coupling: {
    formulas: ['k = frac{M}{sqrt{L_1 L_2}}', 'M = ∑_i ∑_j s_i s_j M_{ij}'],
    inputs: (facts) => [
      given('M', 'explain.in.mutual', mutualOf(facts), 'inductance', { digits: 3 }),
      ...inductances(facts)
    ],
    result: coupling
  },
  separation: {
    formulas: ['Δf = max ( 0 , f_{2} − f_{1} ( 1 + frac{1}{2} | frac{ΔL}{L} | ) )'],
    inputs: frequencies,
    result: separation
  },
  ripple: {
    formulas: ['r = | k | sqrt{frac{L_1}{L_2}} frac{f_1}{f_2} min ( 1 , frac{1}{π Δf t_m} )'],
    inputs: (facts) => {
      const unitOf = (id: string | undefined) => {
        const channel = facts.site.circuits.find((circuit) => circuit.id === id)?.channel;
        return facts.site.units.find((unit) => unit.id === channel?.unit);
      };
      return [
        coupling(facts),
        ...inductances(facts),
        ...frequencies(facts),
        separation(facts),
        given('t_m', 'explain.in.measuringTime', unitOf(facts.topic.circuit)?.measuringTime_s, 'time')
      ];
    },
    result: ({ beat }) => given('r', 'explain.in.ripple', beat?.ripple, 'ratio', { digits: 2 })
  }
} satisfies Partial<Record<ExplainedId, Entry>>;

/** What vehicles, test plates, steel and tolerances do to a circuit. */
import type { CircuitReadout } from '#analysis/results';
import { vehicleOf } from '#plan/catalogue/vehicles';
import { probeReadoutOf } from '../../plan/calls';
import type { QuantityKind } from '#units/kind';
import type { ExplainedId, RangedFigure } from '../topic';
import { given, type Entry, type Facts, type Given } from '../facts';

const inductance = ({ circuit }: Facts): Given =>
  given('L', 'quantity.terminalInductance', circuit?.inductance_H, 'inductance');
const threshold = ({ circuit }: Facts): Given =>
  given('t', 'explain.in.threshold', circuit?.drawn.channel?.tripThreshold, 'ratio');

/** Height of the largest plate: the figure that decides most. */
const height = ({ site, topic }: Facts): Given => {
  const plates = vehicleOf(topic.vehicle ?? '', site)?.parts.flatMap((part) =>
    part.kind === 'plate' ? [part] : []
  );
  const largest = plates?.sort((a, b) => b.width * b.length - a.width * a.length)[0];
  return given('h_v', 'explain.in.height', largest?.height, 'smallLength');
};

const FIGURES: Readonly<
  Record<RangedFigure, { kind: QuantityKind; label: Given['label']; of: (c: CircuitReadout) => number }>
> = {
  inductance_H: {
    kind: 'inductance',
    label: 'quantity.terminalInductance',
    of: ({ inductance_H }) => inductance_H
  },
  resistance_ohm: {
    kind: 'resistance',
    label: 'quantity.resistance',
    of: ({ resistance_ohm }) => resistance_ohm
  },
  resistanceDc_ohm: {
    kind: 'resistance',
    label: 'quantity.dc',
    of: ({ resistanceDc_ohm }) => resistanceDc_ohm
  },
  q: { kind: 'plain', label: 'quantity.q', of: ({ q }) => q },
  frequency_Hz: {
    kind: 'frequency',
    label: 'quantity.frequency',
    of: ({ frequency_Hz }) => frequency_Hz
  }
};

const kindOf = ({ topic }: Facts): QuantityKind => (topic.figure ? FIGURES[topic.figure].kind : 'ratio');

function atRest({ topic, circuit, response }: Facts): Given {
  if (!topic.figure) return given('x', 'explain.in.response', response?.worst, 'ratio');
  const { kind, label, of } = FIGURES[topic.figure];
  return given('x', label, circuit && of(circuit), kind);
}

/** What is a thousandth of the largest part or less adds nothing as a square. */
function worthShowing({ range }: Facts) {
  const parts = range?.contributions ?? [];
  const largest = Math.max(0, ...parts.map(({ halfWidth }) => halfWidth));
  return parts.filter(({ halfWidth }) => halfWidth > largest / 1000);
}

export const vehicleEntries = {
  response: {
    formulas: ['ΔL_{ij} = − φ_i^T A^{−1} φ_j', 'frac{ΔL}{L} = frac{L_{with} − L}{L}'],
    inputs: (facts) => [inductance(facts), height(facts)],
    result: ({ response }) => given('frac{ΔL}{L}', 'explain.in.response', response?.worst, 'ratio')
  },
  'response-inductance': {
    formulas: ['ΔL = L_{with} − L', 'Δf = − frac{1}{2} frac{ΔL}{L} f'],
    inputs: (facts) => [
      inductance(facts),
      given('f', 'explain.in.frequency', facts.circuit?.frequency_Hz, 'frequency')
    ],
    result: ({ site, assessment, topic }) => {
      const probe = assessment && probeReadoutOf(site, assessment, topic.probe ?? 0);
      const here = probe?.circuits.find(({ id }) => id === topic.circuit);
      return given('ΔL', 'explain.in.deltaL', here?.deltaL_H, 'inductance', { digits: 3 });
    }
  },
  margin: {
    formulas: ['m = − frac{1}{t} frac{ΔL}{L}'],
    inputs: (facts) => [
      given('frac{ΔL}{L}', 'explain.in.response', facts.response?.worst, 'ratio'),
      threshold(facts)
    ],
    result: ({ response }) => given('m', 'explain.in.margin', response?.margin, 'plain')
  },
  range: {
    formulas: ['h_i = frac{1}{2} | x (p_i + τ_i) − x (p_i − τ_i) |', 'x ± sqrt{∑_i h_i^2}'],
    inputs: (facts) => [
      atRest(facts),
      ...worthShowing(facts).map(({ input, halfWidth }) =>
        given('h_i', `ranges.input.${input}`, halfWidth, kindOf(facts), { digits: 2 })
      ),
      given('', 'explain.in.low', facts.range?.low, kindOf(facts))
    ],
    result: (facts) => given('', 'explain.in.high', facts.range?.high, kindOf(facts))
  },
  'class-margin': {
    formulas: ['m = − frac{1}{t} frac{ΔL}{L}'],
    inputs: (facts) => [
      given('', 'explain.in.classFigure', facts.margin?.onStandardLoop, 'ratio'),
      height(facts),
      given('frac{ΔL}{L}', 'explain.in.response', facts.margin?.worst, 'ratio'),
      threshold(facts)
    ],
    result: ({ margin }) => given('m', 'explain.in.margin', margin?.margin, 'plain')
  },
  'steel-cost': {
    formulas: ['ΔM_{ij} = − φ_i^T ( L_s + frac{z}{jω} G )^{−1} φ_j', 's = 1 − frac{x_{with}}{x_{without}}'],
    inputs: (facts) => [
      given('', 'explain.in.withoutSteel', facts.circuit?.steel?.withoutSteel.inductance_H, 'inductance'),
      inductance(facts),
      given('', 'explain.in.qLost', facts.circuit?.steel?.qShare, 'ratio', { digits: 2 })
    ],
    result: ({ circuit }) =>
      given('s', 'explain.in.inductanceLost', circuit?.steel?.inductanceShare, 'ratio', { digits: 2 })
  },
  'next-lane': {
    formulas: ['frac{ΔL}{L} = frac{L_{with} − L}{L}'],
    inputs: (facts) => [inductance(facts), height(facts), threshold(facts)],
    result: ({ neighbour }) => given('frac{ΔL}{L}', 'explain.in.response', neighbour?.deltaLOverL, 'ratio')
  }
} satisfies Partial<Record<ExplainedId, Entry>>;

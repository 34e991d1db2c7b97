/** All figures that a drawing has, for choosing from. */
import type { Site } from '#plan/schema';
import { loopsIn } from '#plan/wiring';
import { vehiclesOn } from '../passing/in-play';
import type { Figure, FigureKind } from './results';

const OF_LOOP: readonly FigureKind[] = ['loopInductance', 'loopResistance', 'selfResonance', 'cover'];
const OF_CIRCUIT: readonly FigureKind[] = ['inductance', 'resistance', 'resistanceDc', 'q', 'frequency'];
const OF_LOOPS: readonly FigureKind[] = ['mutual', 'coupling'];
const OF_CHANNELS: readonly FigureKind[] = ['separation', 'ripple', 'beatRatio'];
const OF_SITE: readonly FigureKind[] = ['wire', 'sawCut', 'cost'];

/** With more than this nobody chooses two from a list of all pairs. */
const MOST_PAIRED = 40;

const each = (kinds: readonly FigureKind[], subjects: readonly Omit<Figure, 'kind'>[]): readonly Figure[] =>
  subjects.flatMap((subject) => kinds.map((kind) => ({ kind, ...subject })));

const pairs = (list: readonly { readonly id: string }[]): readonly Omit<Figure, 'kind'>[] =>
  list.length > MOST_PAIRED
    ? []
    : list.flatMap((a, i) => list.slice(i + 1).map((b) => ({ subject: a.id, other: b.id })));

/** Circuits first, as what people mostly ask for. Vehicles on the worst path: any other path may be put in. */
export const figuresOf = (site: Site): readonly Figure[] => {
  const circuits = site.circuits.filter((circuit) => loopsIn(circuit).length > 0);
  const connected = circuits.filter(({ channel }) => channel !== null);
  const priced = site.estimate?.prices && site.estimate.prices.length > 0;
  return [
    ...circuits.flatMap((circuit) => [
      ...each(OF_CIRCUIT, [{ subject: circuit.id }]),
      ...vehiclesOn(circuit, site).flatMap(({ id }) =>
        each(circuit.channel ? ['response', 'margin'] : ['response'], [
          { subject: circuit.id, vehicle: id, path: 'worst' }
        ])
      ),
      ...(site.lanes.length > 1 ? each(['neighbour'], [{ subject: circuit.id }]) : [])
    ]),
    ...each(OF_CHANNELS, pairs(connected)),
    ...each(
      OF_LOOP,
      site.loops.map(({ id }) => ({ subject: id }))
    ),
    ...each(OF_LOOPS, pairs(site.loops)),
    ...each(priced ? OF_SITE : OF_SITE.filter((kind) => kind !== 'cost'), [{ subject: null }])
  ];
};

/** Steel that nobody drew, below the loops of a circuit: what the product's own steel says it does, taken as given. */
import { createModeller, ownMeans } from '#analysis/electrical/alone';
import { wireOf } from '#plan/catalogue/wires';
import type { Circuit, Point, Site, Steel } from '#plan/schema';
import type { BuiltCircuit } from './built';
import type { Random } from './random';

export interface SteelUnder {
  readonly severity: string;
  /** Below the road, metres. */
  readonly depth: number;
  readonly adds: NonNullable<BuiltCircuit['steel']>;
}

const extent = (site: Site): readonly [Point, Point] => {
  const points = site.loops.flatMap(({ shape }): Point[] => {
    if (shape.kind === 'polygon') return [...shape.points];
    if (shape.kind === 'circle') throw new Error('a circle is a polygon here');
    const [x, y] = [shape.width / 2, shape.length / 2];
    return [
      [shape.centre[0] - x, shape.centre[1] - y],
      [shape.centre[0] + x, shape.centre[1] + y]
    ];
  });
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return [
    [Math.min(...xs), Math.min(...ys)],
    [Math.max(...xs), Math.max(...ys)]
  ];
};

/** A mat of reinforcement a few centimetres under the slots, sometimes a plate deeper down; it reaches half a metre beyond all loops. */
const steelBy = (random: Random, site: Site, slot: number): Steel => {
  const [[left, low], [right, high]] = extent(site);
  const outline: Point[] = [
    [left - 0.5, low - 0.5],
    [right + 0.5, low - 0.5],
    [right + 0.5, high + 0.5],
    [left - 0.5, high + 0.5]
  ];
  if (random.chance(0.25))
    return { id: 'S', kind: 'plate', depth: slot + random.between(0.1, 0.35), outline };
  return {
    ...{ id: 'S', kind: 'mat', outline },
    depth: slot + random.between(0.01, 0.08),
    pitch: random.between(0.1, 0.2),
    barRadius: random.between(0.003, 0.008)
  };
};

export const steelUnder = (random: Random, site: Site, circuit: Circuit): SteelUnder => {
  const own = circuit.strings.flat().map(({ loop }) => site.loops.find(({ id }) => id === loop)!);
  const steel = steelBy(random, { ...site, loops: own }, own[0]!.slot.depth);
  const means = ownMeans();
  const modeller = createModeller(means);
  const models = own.map((loop) => modeller(loop, wireOf(loop.wire, site))!);
  const matrix = means.steel(models, { ...site, steel: [steel] });
  const known = new Map<number, ReturnType<NonNullable<typeof matrix>['at']>>();
  return {
    depth: steel.depth,
    severity: `${steel.kind} ${(steel.depth - own[0]!.slot.depth).toFixed(3)} m under the slot`,
    adds: (frequency) => {
      const table = known.get(frequency) ?? matrix!.at(frequency);
      known.set(frequency, table);
      return (i, j) => table[i]![j]!;
    }
  };
};

/**
 * What steel does to a loop for every number of turns and every wire, from three solutions instead of one a choice. To the
 * steel a column of turns is nearly one wire at the column's middle that carries the current N times; what one such wire
 * meets changes smoothly with its height, so a parabola through three heights gives the rest. Against every choice solved
 * by itself the inductance is off by under a thousandth (tests).
 */
import { add, complex, scale, type Complex } from '#physics/numeric/complex';
import { matrixOf } from '#physics/numeric/complex-matrix';
import type { Wire } from '#plan/catalogue/wires';
import type { Loop, Site } from '#plan/schema';
import type { AloneMeans, Modeller } from '../electrical/alone';
import type { SteelMatrix } from '../electrical/circuit-model';

interface Given {
  readonly site: Site;
  /** In the order in which the circuit wires them. */
  readonly loops: readonly Loop[];
  readonly isChanging: (loop: string) => boolean;
  readonly means: AloneMeans;
  readonly modeller: Modeller;
  readonly wireOf: (loop: Loop) => Wire;
  /** The tallest column of the loops that may change, metres. */
  readonly tallest: number;
}

/** Shares of the tallest column's middle at which the steel is solved. */
const HEIGHTS = [0.08, 0.5, 1];
/** Thin enough to lie at any of the heights; a loop's currents in steel do not know how thick its wire is. */
const THIN = 1e-4;

/** Lagrange's weights of three values for the value at `x`. */
const weightsAt = (x: number, nodes: readonly number[]): readonly number[] =>
  nodes.map((node, k) =>
    nodes.reduce((product, other, j) => (j === k ? product : (product * (x - other)) / (node - other)), 1)
  );

/** For `turns` of a wire of the given insulated diameter: what the solver takes. Null where no steel is near. */
export type SteelOfChoices = (turns: number, insulatedDiameter: number) => SteelMatrix | null;

export const steelOfChoices = (given: Given): SteelOfChoices => {
  const { site, loops, isChanging, means, modeller, wireOf, tallest } = given;
  if (site.steel.length === 0) return () => null;
  const middles = HEIGHTS.map((share) => (share * tallest) / 2);
  const solutions = middles.map((middle) =>
    means.steel(
      loops.map((loop) => {
        const wire = wireOf(loop);
        const single = { ...wire, conductorDiameter: THIN, insulatedDiameter: 2 * middle };
        return isChanging(loop.id) ? modeller({ ...loop, turns: 1 }, single)! : modeller(loop, wire)!;
      }),
      site
    )
  );
  const [first] = solutions;
  if (!first || solutions.some((solution) => !solution)) return () => null;
  return (turns, insulatedDiameter) => {
    const weights = weightsAt((turns * insulatedDiameter) / 2, middles);
    const carried = loops.map(({ id }) => (isChanging(id) ? turns : 1));
    return {
      pieces: first.pieces,
      at: (frequency) => {
        const matrices = solutions.map((solution) => solution!.at(frequency));
        return matrixOf(loops.length, loops.length, (i, j) =>
          matrices.reduce<Complex>(
            (sum, matrix, k) => add(sum, scale(matrix[i]![j]!, weights[k]! * carried[i]! * carried[j]!)),
            complex(0)
          )
        );
      },
      // no vehicle is driven over a choice
      dipolesAt: () => loops.map(() => null)
    };
  };
};

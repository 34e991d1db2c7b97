/** A circuit as it was designed, or as it would be with one input off by its tolerance: what faults are put into. */
import { complex, type Complex } from '#physics/numeric/complex';
import type { LeadInCable } from '#plan/catalogue/cables';
import { wireOf, type Wire } from '#plan/catalogue/wires';
import type { Circuit, Loop, Site } from '#plan/schema';
import type { Alone } from '../../electrical/alone';
import { cablesInRow } from '../../electrical/lead';
import type { LoopModel } from '../../electrical/loop-model';
import { interpolated } from './interpolated';
import type { Materials } from './materials';
import type { TurnStore } from './turn-store';

export interface DesignLoop {
  readonly id: string;
  readonly loop: Loop;
  /** Whose turns stand for its own, in proportion: of one that differs in its dimensions, the loop as drawn. */
  readonly turnsOf: Loop;
  readonly model: LoopModel;
  readonly string: number;
  readonly reversed: boolean;
  /** The user's own series resistance, Ω. */
  readonly added: number;
}

/** What something near the loops adds to their inductances as drawn, H: entry (i, j). */
export type Added = (i: number, j: number) => Complex;

export interface Design {
  readonly site: Site;
  readonly circuit: Circuit;
  readonly loops: readonly DesignLoop[];
  /** External mutual inductance of two loops as drawn, H. */
  readonly mutual: (i: number, j: number) => number;
  /** Of the steel that is drawn, at a frequency; null where there is none near. */
  readonly steelAt: ((frequency: number) => Added) | null;
  /** From the pull box to the cabinet. */
  readonly cables: readonly { readonly cable: LeadInCable; readonly length: number }[];
  readonly materials: Materials;
  readonly turns: TurnStore;
  /** Another wire than the drawn one, under the same tolerance; undefined for one that is unknown. */
  readonly wireOf: (id: string) => Wire | undefined;
}

export type Shared = Pick<Design, 'materials' | 'turns'>;

export interface Difference {
  /** By how much any wire's insulation is thicker than its maker says, metres. */
  readonly thicker?: number;
  /** From which this one differs in its loops' dimensions. */
  readonly drawn?: Design;
}

export const designOf = (
  site: Site,
  circuit: Circuit,
  alone: Alone,
  shared: Shared,
  { thicker = 0, drawn }: Difference = {}
): Design => {
  const { input } = alone.solved;
  const size = input.loops.length;
  const mutuals = new Float64Array(size * size);
  for (let i = 0; i < size; i++)
    for (let j = 0; j < i; j++) mutuals[i * size + j] = mutuals[j * size + i] = input.mutual(i, j);
  const ids = circuit.strings.flat().map(({ loop }) => loop);
  const entries = input.steel && interpolated((frequency) => flattened(input.steel!.at(frequency)));
  return {
    ...{ site, circuit, ...shared },
    // equal circuits share a solution: the names are this one's
    loops: input.loops.map(({ model, string, reversed, added }, k) => {
      const id = ids[k]!;
      const { loop } = alone.loops.get(id)!;
      const turnsOf = drawn?.loops[k]?.loop ?? loop;
      return { id, loop, turnsOf, model, string, reversed, added };
    }),
    mutual: (i, j) => mutuals[i * size + j]!,
    steelAt:
      entries &&
      ((frequency) => {
        const flat = entries(frequency);
        return (i, j) => complex(flat[2 * (i * size + j)]!, flat[2 * (i * size + j) + 1]);
      }),
    cables: cablesInRow(circuit, site),
    wireOf: wiresOf(site, thicker)
  };
};

/** One object a wire: its figures are kept by it. */
const wiresOf = (site: Site, thicker: number): Design['wireOf'] => {
  const known = new Map<string, Wire | undefined>();
  return (id) => {
    if (!known.has(id)) {
      const wire = wireOf(id, site);
      known.set(
        id,
        wire && thicker !== 0 ? { ...wire, insulatedDiameter: wire.insulatedDiameter + thicker } : wire
      );
    }
    return known.get(id);
  };
};

const flattened = (matrix: readonly (readonly Complex[])[]): number[] =>
  matrix.flatMap((row) => row.flatMap(({ re, im }) => [re, im]));

export const lengthOf = ({ cables }: Pick<Design, 'cables'>): number =>
  cables.reduce((sum, { length }) => sum + length, 0);

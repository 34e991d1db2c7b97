/** The impedance matrix of a circuit's loops and of the shorted turns in them, at one frequency and temperature. */
import { eliminateRings } from '#physics/circuit/flat';
import { blockSum } from '#physics/inductance/turns';
import { conditionsOf, groundLossOf } from '../../electrical/loop-model';
import { coilOf, type Block, type Coil } from './coil';
import type { Added, Design } from './design';
import type { LoopState, State } from './state';

export interface Point {
  readonly frequency: number;
  /** °C */
  readonly temperature: number;
}

export interface CoilMatrix {
  /** Loops' impedances, Ω, with rings gone: pairs of numbers, `stride` entries to a row. */
  readonly z: Float64Array;
  readonly stride: number;
}

/** What a state makes of a design's windings, made once a state. */
export interface Windings {
  readonly coils: readonly Coil[];
  /** Turns of each loop, and of each ring, over the turns as drawn. */
  readonly ratios: readonly number[];
  /** Loop to which each row belongs: the loops, then the rings. */
  readonly owners: readonly number[];
  readonly mutual: (row: number, column: number) => number;
}

export const windingsOf = (design: Design, state: State): Windings => {
  const coils = design.loops.map((loop, k) => coilOf(loop, state.loops[k]!, design));
  const ringed = coils.flatMap(({ ring }, k) => (ring ? [k] : []));
  const owners = [...coils.keys(), ...ringed];
  const turnsOf = (row: number): readonly [number, number] => {
    const { turns, shorted } = state.loops[owners[row]!]!;
    return row < coils.length || !shorted ? [0, turns] : [shorted.from, shorted.from + shorted.count];
  };
  const mutual = (row: number, column: number): number => {
    const [i, j] = [owners[row]!, owners[column]!];
    const whole = design.mutual(i, j);
    const [a, b] = [design.loops[i]!, design.loops[j]!];
    const [rows, columns] = [turnsOf(row), turnsOf(column)];
    const isWhole =
      rows[0] === 0 && rows[1] === a.loop.turns && columns[0] === 0 && columns[1] === b.loop.turns;
    if (isWhole) return whole;
    const turns = design.turns.between(a.turnsOf, a.model.wire, b.turnsOf, b.model.wire);
    if (!turns)
      return (whole * (rows[1] - rows[0]) * (columns[1] - columns[0])) / (a.loop.turns * b.loop.turns);
    const { inductances, count } = turns;
    const drawn = blockSum(inductances, count, [0, a.loop.turns], [0, b.loop.turns]);
    return (whole / drawn) * blockSum(inductances, count, rows, columns);
  };
  const known = new Map<number, number>();
  return {
    coils,
    owners,
    ratios: owners.map((k, row) => (turnsOf(row)[1] - turnsOf(row)[0]) / design.loops[k]!.loop.turns),
    mutual: (row, column) => {
      const key = row * owners.length + column;
      const found = known.get(key);
      if (found !== undefined) return found;
      const made = mutual(row, column);
      known.set(key, made);
      return made;
    }
  };
};

/** `added`: what steel and vehicles add to the loops' inductances as drawn, H. */
export const coilMatrix = (
  design: Design,
  state: State,
  { coils, owners, ratios, mutual }: Windings,
  { frequency, temperature }: Point,
  added: readonly Added[]
): CoilMatrix => {
  const omega = 2 * Math.PI * frequency;
  const size = owners.length;
  const z = new Float64Array(2 * size * size);
  const { pavementConductivity } = conditionsOf(design.site);
  const put = (i: number, j: number, resistance: number, inductance: number): void => {
    const [a, b] = [owners[i]!, owners[j]!];
    const share = ratios[i]! * ratios[j]!;
    let [re, im] = [resistance, omega * inductance];
    for (const each of added) {
      const henries = each(a, b);
      re -= omega * share * henries.im;
      im += omega * share * henries.re;
    }
    for (const at of i === j ? [i * size + j] : [i * size + j, j * size + i]) {
      z[2 * at] = re;
      z[2 * at + 1] = im;
    }
  };
  for (let i = 0; i < size; i++) {
    const k = owners[i]!;
    const { wire } = state.loops[k]!;
    const { whole, ring } = coils[k]!;
    const per = design.materials.wire(wire, frequency, temperature);
    const ground =
      pavementConductivity === 0
        ? 0
        : pavementConductivity * groundLossOf(design.loops[k]!.model) * frequency * frequency;
    const within = (j: number, block: Block, more: number): void =>
      put(
        i,
        j,
        per.resistance * block.length + 2 * per.loss * block.losses + ground * block.share + more,
        block.external + per.inductance * block.length
      );
    if (i < coils.length) within(i, whole, design.loops[k]!.added);
    else {
      within(i, ring!.own, ring!.resistance);
      within(k, ring!.cross, 0);
    }
    for (let j = 0; j < i; j++) if (owners[j] !== k) put(i, j, 0, mutual(i, j));
  }
  eliminateRings(z, size, coils.length);
  return { z, stride: size };
};

/** Whether anything of the loop is left in its string. */
export const carriesCurrent = ({ isMissing, isOpen }: LoopState): boolean => !isMissing && !isOpen;

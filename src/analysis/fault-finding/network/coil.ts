/** The inductances and losses of a loop's winding, and of shorted turns in it, as far as no frequency comes in. */
import { blockSum } from '#physics/inductance/turns';
import { turnLosses } from '#physics/wire/turn-losses';
import type { DesignLoop, Shared } from './design';
import { RememberedOf } from './remembered';
import type { LoopState } from './state';

/** Between two sets of turns of one loop, or of one with itself. */
export interface Block {
  /** External inductance, H. */
  readonly external: number;
  /** Length of wire that is in both, metres. */
  readonly length: number;
  /** Proximity loss, over that of a wire in a field of 1 A/m: 1/m. */
  readonly losses: number;
  /** Product of their turns over the square of the turns as drawn: what the field outside changes with. */
  readonly share: number;
}

export interface Coil {
  readonly whole: Block;
  /** Of the shorted turns: with themselves, and with the whole. */
  readonly ring: { readonly own: Block; readonly cross: Block; readonly resistance: number } | null;
}

type Range = readonly [from: number, to: number];

const overlap = ([a, b]: Range, [c, d]: Range): number => Math.max(0, Math.min(b, d) - Math.max(a, c));

/** A state's loop belongs to one design: that alone is enough to know a coil by. */
const coils = new RememberedOf<LoopState, Coil>();

export const coilOf = (drawn: DesignLoop, state: LoopState, shared: Shared): Coil =>
  coils.get(state, () => made(drawn, state, shared));

const made = ({ loop, turnsOf, model }: DesignLoop, state: LoopState, { turns: store }: Shared): Coil => {
  const { turns, wire, shorted } = state;
  const isDrawn = turns === loop.turns && wire === model.wire;
  const perTurn = model.winding.wireLength / loop.turns;
  const known = isDrawn && !shorted ? null : store.of(turnsOf, isDrawn ? model.wire : wire);
  // so that the turns as drawn add up to the loop as it is modelled
  const scale = known && drawnScale(loop.turns, model, store.of(turnsOf, model.wire));
  const losses = lossMatrix(model.winding.columns, loop.turns, turns, wire.insulatedDiameter);
  const block = (rows: Range, columns: Range): Block => ({
    external:
      known && scale !== null
        ? scale * blockSum(known.inductances, known.count, rows, columns)
        : model.external,
    length: perTurn * overlap(rows, columns),
    losses: blockSum(losses, turns, rows, columns),
    share: ((rows[1] - rows[0]) * (columns[1] - columns[0])) / loop.turns ** 2
  });
  const all: Range = [0, turns];
  if (!shorted) return { whole: block(all, all), ring: null };
  const part: Range = [shorted.from, shorted.from + shorted.count];
  return {
    whole: block(all, all),
    ring: { own: block(part, part), cross: block(part, all), resistance: shorted.resistance }
  };
};

const drawnScale = (
  turns: number,
  { external }: DesignLoop['model'],
  drawn: { readonly inductances: Float64Array; readonly count: number }
): number => external / blockSum(drawn.inductances, drawn.count, [0, turns], [0, turns]);

/** Over all columns of wires, each with as many of every turn as drawn. */
const lossMatrix = (
  columns: DesignLoop['model']['winding']['columns'],
  drawn: number,
  turns: number,
  pitch: number
): Float64Array => {
  const matrix = new Float64Array(turns * turns);
  for (const { length, wires } of columns) {
    const each = turnLosses((wires / drawn) * turns, turns, pitch);
    for (let k = 0; k < matrix.length; k++) matrix[k]! += length * each[k]!;
  }
  return matrix;
};

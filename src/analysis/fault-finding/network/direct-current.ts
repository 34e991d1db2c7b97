/** What an ohmmeter reads: the same network at direct current, where turns and lines are their copper alone. */
import { dcResistancePerMetre } from '#physics/wire/round-wire';
import { leadInDcPerMetre } from '../../electrical/lead';
import type { Design } from './design';
import { carriesCurrent } from './coils';
import { piecesOf, stringsOf, type Piece } from './box';
import type { State } from './state';

const parallel = (a: number, b: number): number => {
  if (a === Infinity) return b;
  return b === Infinity ? a : (a * b) / (a + b);
};

/** Of one loop with its tail, Ω; Infinity for an open one. */
export const dcOfLoop = (design: Design, { loops }: State, k: number, temperature: number): number => {
  const { loop, model, added } = design.loops[k]!;
  const { turns, wire, shorted, isOpen } = loops[k]!;
  if (isOpen) return Infinity;
  const perMetre = dcResistancePerMetre(wire.conductorDiameter / 2, temperature);
  const perTurn = (perMetre * model.winding.wireLength) / loop.turns;
  const ring = shorted ? parallel(perTurn * shorted.count, shorted.resistance) : 0;
  return perTurn * (turns - (shorted?.count ?? 0)) + ring + 2 * perMetre * loop.tail.length + added;
};

export const dcAtBox = (design: Design, state: State, temperature: number): number => {
  const strings = stringsOf(state);
  const sums: number[] = [];
  state.loops.forEach((loop, k) => {
    const string = strings[k]!;
    if (string < 0 || !carriesCurrent(loop)) return;
    sums[string] = (sums[string] ?? 0) + dcOfLoop(design, state, k, temperature) + loop.splice;
  });
  return sums.reduce(parallel, Infinity);
};

/** `box`: Ω at the pull box. */
export const dcAtCabinet = (design: Design, { leadIn }: State, box: number, temperature: number): number => {
  const { far, near } = piecesOf(design, leadIn);
  const run = (pieces: readonly Piece[]): number =>
    pieces.reduce((sum, { cable, length }) => sum + leadInDcPerMetre(cable, temperature) * length, 0);
  const { splice, shunt, isOpen, short } = leadIn;
  const behind = isOpen ? Infinity : parallel(box, shunt > 0 ? 1 / shunt : Infinity);
  const shorted = parallel(behind + splice + run(far), short?.resistance ?? Infinity);
  return shorted + run(near);
};

/** Of the lead-in alone from the cabinet to a short, Ω. */
export const dcToShort = (design: Design, leadIn: State['leadIn'], temperature: number): number =>
  piecesOf(design, leadIn).near.reduce(
    (sum, { cable, length }) => sum + leadInDcPerMetre(cable, temperature) * length,
    leadIn.short?.resistance ?? 0
  );

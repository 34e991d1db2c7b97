/** From the loops to the pull box, and through the lead-in to the cabinet. */
import { boxImpedance, type FlatBranch } from '#physics/circuit/flat';
import { inputImpedance, lineChain, shuntCapacitance, THROUGH, type Chain } from '#physics/circuit/line';
import { windingLeakage } from '#physics/circuit/slot-capacitance';
import { complex, divide, type Complex } from '#physics/numeric/complex';
import { cascade } from '#physics/circuit/network';
import type { CoilMatrix, Point } from './coils';
import { lengthOf, type Design } from './design';
import { Remembered } from './remembered';
import type { LeadInState, LoopState, State } from './state';

const chains = new Remembered<LoopState, Chain>();

/** From a loop's ends to the pull box: its own capacitance, its tail, and its splice where that counts. */
const chainOf = (design: Design, k: number, state: LoopState, point: Point, isSpliced: boolean): Chain => {
  const chain = chains.get(state, point.frequency, point.temperature, () => tailOf(design, k, state, point));
  return isSpliced && state.splice > 0 ? cascade([chain, inSeries(state.splice)]) : chain;
};

const tailOf = (
  design: Design,
  k: number,
  { turns, wire }: LoopState,
  { frequency, temperature }: Point
): Chain => {
  const { loop, model } = design.loops[k]!;
  const { pavement } = design.site;
  const across = windingLeakage(
    {
      conductorRadius: wire.conductorDiameter / 2,
      insulatedRadius: wire.insulatedDiameter / 2,
      insulationPermittivity: wire.insulationPermittivity,
      slotWidth: loop.slot.width,
      slotDepth: loop.slot.depth,
      fillPermittivity: loop.slot.relativePermittivity,
      pavementPermittivity: pavement.relativePermittivity,
      pavementConductivity: pavement.conductivity_S_m ?? 0
    },
    (model.winding.wireLength * turns) / loop.turns,
    turns,
    frequency
  );
  const tail = lineChain(design.materials.tail(wire, frequency, temperature), loop.tail.length, frequency);
  const { capacitance, conductance } = across.ground;
  return cascade([shuntCapacitance(across.turns + capacitance, frequency, conductance), tail]);
};

const inSeries = (resistance: number): Chain => ({ ...THROUGH, b: complex(resistance) });

/** Strings by the numbers of their loops; one with an open loop carries nothing, and one of missing loops is not there. */
export const stringsOf = ({ loops, strings }: Pick<State, 'loops' | 'strings'>): readonly number[] => {
  const open = new Set(
    loops.flatMap(({ isOpen, isMissing }, k) => (isOpen && !isMissing ? [strings[k]!] : []))
  );
  const numbers = new Map<number, number>();
  return loops.map(({ isMissing }, k) => {
    const string = strings[k]!;
    if (isMissing || open.has(string)) return -1;
    const number = numbers.get(string) ?? numbers.size;
    numbers.set(string, number);
    return number;
  });
};

/** Of the spliced loops at the pull box, Ω; null where no current can flow. */
export const atBox = (
  design: Design,
  state: State,
  { z, stride }: CoilMatrix,
  point: Point
): Complex | null => {
  const strings = stringsOf(state);
  const branches = state.loops.map((loop, k): FlatBranch => ({
    chain: strings[k]! < 0 ? THROUGH : chainOf(design, k, loop, point, true),
    string: strings[k]!,
    reversed: loop.reversed
  }));
  return boxImpedance(z, stride, branches);
};

/** Of one loop by itself at the end of its tail, the others open. */
export const ofLoop = (
  design: Design,
  state: State,
  { z, stride }: CoilMatrix,
  point: Point,
  k: number
): Complex | null => {
  const loop = state.loops[k]!;
  if (loop.isOpen) return null;
  const at = 2 * (k * stride + k);
  return inputImpedance(chainOf(design, k, loop, point, false), complex(z[at]!, z[at + 1]));
};

export interface Piece {
  readonly cable: Design['cables'][number]['cable'];
  readonly length: number;
}

/** The lead-in's cables from the pull box to the cabinet with what is added to them, in two: before and behind a short. */
export const piecesOf = (
  design: Design,
  { extra, short }: LeadInState
): { readonly far: readonly Piece[]; readonly near: readonly Piece[] } => {
  const all = design.cables.map(({ cable, length }, k) => ({
    cable,
    length: length + (k === 0 ? extra : 0)
  }));
  if (!short) return { far: all, near: [] };
  let left = Math.max(0, lengthOf({ cables: all }) - short.distance);
  const far: Piece[] = [];
  const near: Piece[] = [];
  for (const { cable, length } of all) {
    const before = Math.min(left, length);
    left -= before;
    if (before > 0) far.push({ cable, length: before });
    if (length > before) near.push({ cable, length: length - before });
  }
  return { far, near };
};

/** What a chain shows with nothing at its far end, a/c; null where that is nothing at all. */
const openEnd = ({ a, c }: Chain): Complex | null => (c.re === 0 && c.im === 0 ? null : divide(a, c));

const through = (chain: Chain, load: Complex | null): Complex | null =>
  load === null ? openEnd(chain) : inputImpedance(chain, load);

/** `box`: what the pull box holds, null for nothing. */
export const atCabinet = (
  design: Design,
  { leadIn }: State,
  box: Complex | null,
  { frequency, temperature }: Point
): Complex | null => {
  const { far, near } = piecesOf(design, leadIn);
  const run = (pieces: readonly Piece[]): Chain[] =>
    pieces.map(({ cable, length }) =>
      lineChain(design.materials.cable(cable, frequency, temperature), length, frequency)
    );
  const { splice, shunt, isOpen, short } = leadIn;
  const chains = [
    ...(shunt > 0 && !isOpen ? [acrossLine(shunt)] : []),
    ...(splice > 0 ? [inSeries(splice)] : []),
    ...run(far),
    ...(short ? [acrossLine(1 / short.resistance)] : []),
    ...run(near)
  ];
  return through(cascade(chains), isOpen ? null : box);
};

const acrossLine = (siemens: number): Chain => ({ ...THROUGH, c: complex(siemens) });

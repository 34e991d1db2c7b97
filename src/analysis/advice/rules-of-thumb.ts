/**
 * What the rules of thumb of the trade would have said: L(µH) ≈ (P/4)(N² + N) with the perimeter P in feet (FHWA-IP-90-002
 * chapter 2, from memory), and that the loops have at least the inductance of their lead-in (common practice).
 */
import type { Circuit, Loop, Shape } from '#plan/schema';
import { pathOf } from '#plan/shapes/index';
import type { RulesOfThumb, ThumbRow, TurnsWish } from './advice';

const FOOT = 0.3048;

/** H of one loop alone; perimeter in metres. */
export const thumbInductance = (perimeter: number, turns: number): number =>
  (perimeter / FOOT / 4) * (turns * turns + turns) * 1e-6;

/** Two cells share their slot: the rule is about one. */
const isOneCell = (shape: Shape): boolean => pathOf(shape).cells.length === 1;

/** Strings of loops in series, strings in parallel, as if no loop saw another. H. */
export const wiredUp = ({ strings }: Circuit, inductanceOf: (loop: string) => number): number =>
  1 /
  strings.reduce((sum, string) => sum + 1 / string.reduce((all, { loop }) => all + inductanceOf(loop), 0), 0);

interface Given {
  readonly circuit: Circuit;
  /** The circuit's loops as drawn. */
  readonly loops: readonly Loop[];
  readonly isChanging: (loop: string) => boolean;
  readonly wish: TurnsWish;
  readonly turns: readonly number[];
  /** By the model, H of one loop alone with so many turns of the drawn wire; those that do not change as drawn. */
  readonly modelled: (loop: string, turns: number) => number;
  readonly leadIn: number;
  /** What tails add at the box, H, a loop. */
  readonly tailOf: (loop: string) => number;
}

/** Null where a loop is of a shape that the rule does not know. */
export const rulesOfThumb = (given: Given): RulesOfThumb | null => {
  const { circuit, loops, isChanging, wish, turns, modelled, leadIn, tailOf } = given;
  if (!loops.every(({ shape }) => isOneCell(shape))) return null;
  const perimeters = new Map(loops.map(({ id, shape }) => [id, pathOf(shape).sawCut]));
  const drawnTurns = new Map(loops.map((loop) => [loop.id, loop.turns]));
  const ruled = (loop: string, count: number): number =>
    thumbInductance(perimeters.get(loop)!, isChanging(loop) ? count : drawnTurns.get(loop)!);
  const rows = turns.map((count): ThumbRow => {
    const loops_H = wiredUp(circuit, (loop) => ruled(loop, count));
    const modelled_H = wiredUp(circuit, (loop) => modelled(loop, count));
    return { turns: count, loops_H, modelled_H, error: loops_H / modelled_H - 1 };
  });
  const atTerminals = (count: number): number =>
    leadIn + wiredUp(circuit, (loop) => ruled(loop, count) + tailOf(loop));
  return {
    rows,
    turns:
      turns.find((count) => {
        const inductance = atTerminals(count);
        return inductance >= wish.least_H && inductance <= wish.most_H;
      }) ?? null,
    leadIn_H: leadIn,
    leastTurnsForLeadIn: rows.find(({ loops_H }) => loops_H >= leadIn)?.turns ?? null
  };
};

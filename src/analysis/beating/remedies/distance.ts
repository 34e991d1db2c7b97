/** How much further apart the loops would have to lie: the circuit with fewer loops moves, away from the other. */
import type { Point, Site } from '#plan/schema';
import { centreOf, moveShape } from '#plan/shapes/index';
import { loopsIn } from '#plan/wiring';
import type { Remedy } from '../../results';
import type { Steps } from '../../steps';
import { WATCH_FROM } from '../rate';
import type { BeatTank } from '../tank';
import { effectOf, type Outcome, type RemedyContext, type Trial } from './trial';

/** Metres. */
const FINENESS = 0.05;
const FURTHEST = 25.6;
/** A fifth nearer each time: where it is not clear again is not stepped over. */
const nearer = (steps: number): number => Math.floor(0.8 * steps);

/** The middle of a circuit's loops. */
export const middleOf = ({ circuit }: Pick<BeatTank, 'circuit'>, { loops }: Pick<Site, 'loops'>): Point => {
  const own = new Set(loopsIn(circuit));
  const centres = loops.filter(({ id }) => own.has(id)).map(({ shape }) => centreOf(shape));
  const mean = (at: 0 | 1): number => centres.reduce((sum, point) => sum + point[at], 0) / centres.length;
  return [mean(0), mean(1)];
};

/** From the one to the other, of length 1; to the right where they coincide. */
const directionOf = ([x0, y0]: Point, [x1, y1]: Point): Point => {
  const far = Math.hypot(x1 - x0, y1 - y0);
  return far < 1e-6 ? [1, 0] : [(x1 - x0) / far, (y1 - y0) / far];
};

/** The drawing with one circuit's loops moved away from the other's middle. */
export const movedApart =
  (moving: Pick<BeatTank, 'circuit'>, from: Pick<BeatTank, 'circuit'>, by: number) =>
  (site: Site): Site => {
    const [dx, dy] = directionOf(middleOf(from, site), middleOf(moving, site));
    const own = new Set(loopsIn(moving.circuit));
    return {
      ...site,
      loops: site.loops.map((loop) =>
        own.has(loop.id) ? { ...loop, shape: moveShape(loop.shape, [dx * by, dy * by]) } : loop
      )
    };
  };

export function* moreDistance({ a, b }: RemedyContext, attempt: Trial): Steps<Remedy[]> {
  const [moving, from] = loopsIn(a.circuit).length < loopsIn(b.circuit).length ? [a, b] : [b, a];
  const at = (by: number): Outcome | null => attempt(movedApart(moving, from, by), [moving.circuit.id]);
  const isClear = (outcome: Outcome | null): boolean =>
    outcome !== null && (outcome.rating?.ratio ?? 0) < WATCH_FROM;
  // in steps of the fineness, from far away inwards for as long as the pair stays clear: on its way out the coupling of
  // loops that overlap passes through nothing, and what is clear to a few centimetres only is no remedy
  let far = Math.round(FURTHEST / FINENESS);
  if (!isClear(at(far * FINENESS))) return [];
  yield;
  let near = nearer(far);
  while (near > 0 && isClear(at(near * FINENESS))) {
    far = near;
    near = nearer(far);
    yield;
  }
  while (far - near > 1) {
    const middle = Math.floor((near + far) / 2);
    if (isClear(at(middle * FINENESS))) far = middle;
    else near = middle;
    yield;
  }
  const by_m = Number((far * FINENESS).toFixed(2));
  return [{ kind: 'distance', circuit: moving.circuit.id, by_m, ...effectOf(at(by_m)!) }];
}

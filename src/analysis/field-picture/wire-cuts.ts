/** Where wires pass through a section, and which places of a picture lie in a wire. */
import type { Run } from '#physics/inductance/winding';
import { seenFrom, type Frame } from './frame';
import type { FieldPicture } from './results';
import type { SourceLoop } from './source';

type Cut = FieldPicture['wires'][number];

/** A wire as good as parallel to the section does not pass through it: the sine of their angle. */
const PARALLEL = 1e-6;

const cutsOfRun = (run: Run, frame: Frame, current: number): Cut[] => {
  const { across, u } = frame;
  const [from, , aside] = seenFrom(frame, [run.x, run.y, 0]);
  const cut = (at: number, towards: number): Cut[] =>
    run.heights.map((v) => ({ u: at, v, current: Math.sign(towards) * current }));
  if (run.kind === 'straight') {
    const towards = run.ux * across[0] + run.uy * across[1];
    if (Math.abs(towards) < PARALLEL) return [];
    const along = -aside / towards;
    // the far end belongs to the wire that goes on from there
    if (along < 0 || along >= run.length) return [];
    return cut(from + along * (run.ux * u[0] + run.uy * u[1]), towards);
  }
  const half = Math.sqrt(Math.max(0, run.radius ** 2 - aside ** 2));
  // counter-clockwise as seen from above: on the right of the picture the current goes away
  return half > 0 ? [...cut(from + half, -1), ...cut(from - half, 1)] : [];
};

/** Turn by turn, within the picture; none where no current flows. */
export const wireCuts = (loops: readonly SourceLoop[], frame: Frame): Cut[] =>
  loops
    .filter(({ current }) => current !== 0)
    .flatMap(({ model, current }) => model.winding.runs.flatMap((run) => cutsOfRun(run, frame, current)))
    .filter(({ u, v }) => u >= frame.left && u <= frame.right && v >= frame.low && v <= frame.high);

const isIn = (run: Run, radius: number, x: number, y: number, z: number): boolean => {
  const px = x - run.x;
  const py = y - run.y;
  let beside: number;
  if (run.kind === 'round') beside = Math.hypot(px, py) - run.radius;
  else {
    const along = Math.min(run.length, Math.max(0, px * run.ux + py * run.uy));
    beside = Math.hypot(px - along * run.ux, py - along * run.uy);
  }
  if (Math.abs(beside) > radius) return false;
  return run.heights.some((height) => Math.hypot(beside, z - height) <= radius);
};

/** Whether a place lies in the copper, metres. */
export const touchesWire = (loops: readonly SourceLoop[], x: number, y: number, z: number): boolean =>
  loops.some(({ model: { winding } }) => winding.runs.some((run) => isIn(run, winding.wireRadius, x, y, z)));

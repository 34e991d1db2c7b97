/**
 * Vertical magnetic dipoles as sources: what the current round one mesh of a mat, or in one cell of a plate, looks like
 * from more than its own size away. Field and vector potential of a point dipole (any text on electromagnetism).
 */
import type { Placement } from './filaments';

/**
 * x, y, z, and the moment per ampere of the loop that causes it (A·m²), its part in phase with that current and the part a
 * quarter period ahead, one dipole after the other.
 */
export type Dipoles = Float64Array;
export const DIPOLE = 5;

/** As seen from a body, whose frame has x to the right and y ahead. */
export const dipolesInFrame = (dipoles: Dipoles, { x, y, heading }: Placement): Dipoles => {
  const turn = ((heading - 90) * Math.PI) / 180;
  const cosine = Math.cos(turn);
  const sine = Math.sin(turn);
  const turned = Float64Array.from(dipoles);
  for (let at = 0; at < dipoles.length; at += DIPOLE) {
    const px = dipoles[at]! - x;
    const py = dipoles[at + 1]! - y;
    turned[at] = px * cosine + py * sine;
    turned[at + 1] = py * cosine - px * sine;
  }
  return turned;
};

/** Writes Bz over µ0/4π at a point: in phase, and a quarter period ahead. Sums at hand: a map of a mat's field asks half a million times. */
export const dipoleFieldAt = (
  dipoles: Dipoles,
  x: number,
  y: number,
  z: number,
  into: Float64Array
): void => {
  let inPhase = 0;
  let ahead = 0;
  for (let at = 0; at < dipoles.length; at += DIPOLE) {
    const px = x - dipoles[at]!;
    const py = y - dipoles[at + 1]!;
    const pz = z - dipoles[at + 2]!;
    const square = pz * pz;
    const beside = px * px + py * py;
    const all = beside + square;
    const shape = (2 * square - beside) / (all * all * Math.sqrt(all));
    inPhase += dipoles[at + 3]! * shape;
    ahead += dipoles[at + 4]! * shape;
  }
  into[0] = inPhase;
  into[1] = ahead;
};

/** A·d over µ0/4π for a step (dx, dy) at (x, y, z), both phases. */
export const dipolePotentialAlong = (
  dipoles: Dipoles,
  x: number,
  y: number,
  z: number,
  dx: number,
  dy: number
): readonly [number, number] => {
  let inPhase = 0;
  let ahead = 0;
  for (let at = 0; at < dipoles.length; at += DIPOLE) {
    const px = x - dipoles[at]!;
    const py = y - dipoles[at + 1]!;
    const pz = z - dipoles[at + 2]!;
    const square = px * px + py * py + pz * pz;
    const shape = (px * dy - py * dx) / (square * Math.sqrt(square));
    inPhase += dipoles[at + 3]! * shape;
    ahead += dipoles[at + 4]! * shape;
  }
  return [inPhase, ahead];
};

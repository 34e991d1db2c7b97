/**
 * Mutual inductance of two straight pairs of wires that run parallel to one another, go and return, per metre:
 *
 *   M' = (µ0/2π)·ln( d(a−, b+)·d(a+, b−) / (d(a+, b+)·d(a−, b−)) ),
 *
 * d the distances between axes (two-wire lines by their flux; Maxwell). Exact for thin currents; for round wires it holds
 * at low frequency, and otherwise as long as they are not so near that their skin currents shift. H per metre, signed:
 * positive where the currents of both plus wires run the same way and their fluxes add. Twisting turns the sign over at
 * every half twist, so that straight pairs are the limit that twisted ones stay far below.
 */
import { MU0 } from '../constants';

/** Across the run: where the middle between the wires lies, how far their axes are apart (m), which way the plus wire is. */
export interface StraightPair {
  readonly at: readonly [number, number];
  readonly spacing: number;
  /** Radians from the first axis, from the minus wire to the plus wire. */
  readonly angle: number;
}

const wiresOf = ({ at: [x, y], spacing, angle }: StraightPair) => {
  const [dx, dy] = [(Math.cos(angle) * spacing) / 2, (Math.sin(angle) * spacing) / 2];
  return { plus: [x + dx, y + dy], minus: [x - dx, y - dy] } as const;
};

const distance = ([ax, ay]: readonly [number, number], [bx, by]: readonly [number, number]): number =>
  Math.hypot(bx - ax, by - ay);

export const pairCoupling = (a: StraightPair, b: StraightPair): number => {
  const [ours, theirs] = [wiresOf(a), wiresOf(b)];
  const unlike = distance(ours.minus, theirs.plus) * distance(ours.plus, theirs.minus);
  const like = distance(ours.plus, theirs.plus) * distance(ours.minus, theirs.minus);
  return (MU0 / (2 * Math.PI)) * Math.log(unlike / like);
};

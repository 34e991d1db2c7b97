/** What closed forms are measured against: Neumann's double integral by Gauss–Legendre, wire by wire, nothing collapsed. */
import { gaussLegendre } from '#physics/numeric/gauss-legendre';
import type { StraightRun, Winding } from '#physics/inductance/winding';

const POINTS = 24;
const MU0_OVER_4PI = 1e-7;

const straight = ({ runs }: Winding): StraightRun[] => runs.filter((run) => run.kind === 'straight');

/**
 * ∬ cos ε/|r−r'| ds dt of two wires `z` apart. Nodes crowd towards both ends, where wires meet; close
 * parallel wires get more of them along the inner one through splitting at the outer point.
 */
const wirePair = (a: StraightRun, b: StraightRun, z: number): number => {
  const cosine = a.ux * b.ux + a.uy * b.uy;
  if (Math.abs(cosine) < 1e-12) return 0;
  const { nodes, weights } = gaussLegendre(POINTS);
  let sum = 0;
  for (let i = 0; i < POINTS; i++) {
    const [s, ds] = crowded((nodes[i]! + 1) / 2);
    const x = a.x + a.ux * a.length * s;
    const y = a.y + a.uy * a.length * s;
    const foot = Math.min(1, Math.max(0, ((x - b.x) * b.ux + (y - b.y) * b.uy) / b.length));
    for (const [from, to] of [
      [0, foot],
      [foot, 1]
    ] as const) {
      if (to - from < 1e-12) continue;
      for (let j = 0; j < POINTS; j++) {
        const [c, dc] = crowded((nodes[j]! + 1) / 2);
        const t = from + (to - from) * c;
        const dx = b.x + b.ux * b.length * t - x;
        const dy = b.y + b.uy * b.length * t - y;
        sum +=
          (weights[i]! * weights[j]! * ds * dc * (to - from)) /
          (4 * Math.sqrt(dx * dx + dy * dy + z * z + 1e-18));
      }
    }
  }
  return MU0_OVER_4PI * cosine * a.length * b.length * sum;
};

/** u³(10 − 15u + 6u²): maps [0, 1] onto itself, smooth, its slope 0 at both ends. */
const crowded = (u: number): readonly [number, number] => [
  u * u * u * (10 - 15 * u + 6 * u * u),
  30 * u * u * (1 - u) * (1 - u)
];

const sum = (a: StraightRun, b: StraightRun, least: number): number => {
  let total = 0;
  for (const za of a.heights)
    for (const zb of b.heights) total += wirePair(a, b, Math.max(Math.abs(za - zb), least));
  return total;
};

export const neumannMutual = (a: Winding, b: Winding): number =>
  straight(a).reduce((total, run) => total + straight(b).reduce((t, other) => t + sum(run, other, 0), 0), 0);

export const neumannExternal = (a: Winding): number =>
  straight(a).reduce(
    (total, run) =>
      total + straight(a).reduce((t, other) => t + sum(run, other, run === other ? a.wireRadius : 0), 0),
    0
  );

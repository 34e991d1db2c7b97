/**
 * Losses of a loop on a pavement that conducts. To first order in the conductivity σ the loop's own electric field
 * −jωA drives currents in the half space below it, and dissipates R·|I|² with R = ω²σ∫|A|²dV. For a closed loop on the
 * surface the integral over the half space comes down to a double integral along the wire:
 * R = −(ω²µ0²σ/16π)·∮∮|r − r′| dl·dl′, which is σ(ωµ0)²a³/3 for a circle of radius a (tests derive both numerically).
 * Valid while the loop is small against the skin depth in the ground (over 15 m at 50 kHz for σ up to 0.02 S/m).
 */
import { MU0 } from '../constants';
import { STRIDE, type Filaments } from '../field/filaments';
import { gaussLegendre } from '../numeric/gauss-legendre';

const POINTS = 6;

/** Whether two are one in the plan, as the halves of a slot that two cells share are. */
const liesOn = (filaments: Filaments, a: number, b: number): boolean =>
  a === b || [0, 1, 2, 3, 4].every((k) => Math.abs(filaments[a + k]! - filaments[b + k]!) < 1e-9);

/** ∮∮|r − r′| dl·dl′ over all wires, m³; heights are left out, they lie within millimetres of one another. */
const distanceIntegral = (filaments: Filaments): number => {
  const { nodes, weights } = gaussLegendre(POINTS);
  let sum = 0;
  for (let a = 0; a < filaments.length; a += STRIDE) {
    const length = filaments[a + 4]!;
    const wires = filaments[a + 6]!;
    for (let b = 0; b < filaments.length; b += STRIDE) {
      const facing = filaments[a + 2]! * filaments[b + 2]! + filaments[a + 3]! * filaments[b + 3]!;
      const other = filaments[b + 4]!;
      const pairs = wires * filaments[b + 6]! * facing;
      // ∬|s − t| has a kink that quadrature does not like, and a closed form
      if (liesOn(filaments, a, b)) sum += (pairs * length ** 3) / 3;
      else
        for (let i = 0; i < POINTS; i++)
          for (let j = 0; j < POINTS; j++) {
            const s = ((1 + nodes[i]!) / 2) * length;
            const t = ((1 + nodes[j]!) / 2) * other;
            const x = filaments[a]! + s * filaments[a + 2]! - filaments[b]! - t * filaments[b + 2]!;
            const y = filaments[a + 1]! + s * filaments[a + 3]! - filaments[b + 1]! - t * filaments[b + 3]!;
            sum += ((pairs * weights[i]! * weights[j]! * length * other) / 4) * Math.hypot(x, y);
          }
    }
  }
  return sum;
};

/** Ω per S/m and per hertz squared: the resistance is this times σ·f². */
export const groundLossCoefficient = (filaments: Filaments): number =>
  (-((2 * Math.PI * MU0) ** 2) / (16 * Math.PI)) * distanceIntegral(filaments);

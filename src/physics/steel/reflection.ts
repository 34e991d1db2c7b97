/**
 * What one screen does to one loop, at every frequency at once.
 *
 * With L = C·Cᵀ the operator H = C⁻¹·G·C⁻ᵀ is real and does not know the frequency. Lanczos' method from r = C⁻¹Φ gives
 * an orthonormal basis Q in which H is a small tridiagonal T, and (1 + sH)⁻¹r = Q·(1 + sT)⁻¹·e₁·|r| for any s. The steps
 * needed are few because s·H is small against 1: steel resists less than it induces (Golub & Van Loan, *Matrix
 * Computations*, on Lanczos' method).
 */
import { backSubstituteInPlace, dot, forwardSubstituteInPlace } from '../numeric/cholesky';
import { add, complex, divide, multiply, scale, subtract, type Complex } from '../numeric/complex';
import type { Dipoles } from '../field/dipoles';
import type { Filaments } from '../field/filaments';
import type { Screen } from './screen';

const STEPS = 10;

export interface Reflection {
  readonly screen: Screen;
  /** |C⁻¹Φ|, and the tridiagonal matrix. */
  readonly norm: number;
  readonly diagonal: readonly number[];
  readonly beside: readonly number[];
  readonly basis: readonly Float64Array[];
}

const reducedFluxOf = (screen: Screen, filaments: Filaments): Float64Array => {
  const flux = screen.fluxOf(filaments);
  forwardSubstituteInPlace(screen.factor, flux, 0);
  return flux;
};

const applied = (screen: Screen, vector: Float64Array): Float64Array => {
  const currents = Float64Array.from(vector);
  backSubstituteInPlace(screen.factor, currents);
  const voltages = screen.resist(currents);
  forwardSubstituteInPlace(screen.factor, voltages, 0);
  return voltages;
};

const subtractTimes = (from: Float64Array, factor: number, vector: Float64Array): void => {
  for (let k = 0; k < from.length; k++) from[k]! -= factor * vector[k]!;
};

export const reflectionOf = (screen: Screen, filaments: Filaments): Reflection => {
  const start = reducedFluxOf(screen, filaments);
  const norm = Math.sqrt(dot(start, start));
  const diagonal: number[] = [];
  const beside: number[] = [];
  const basis: Float64Array[] = [];
  if (!(norm > 0)) return { screen, norm: 0, diagonal, beside, basis };
  let next = start.map((value) => value / norm);
  for (let step = 0; step < Math.min(STEPS, screen.size); step++) {
    basis.push(next);
    const image = applied(screen, next);
    diagonal.push(dot(image, next));
    // against all of the basis, twice: rounding would otherwise bring the first vectors back
    for (let pass = 0; pass < 2; pass++)
      for (const vector of basis) subtractTimes(image, dot(image, vector), vector);
    const size = Math.sqrt(dot(image, image));
    if (size < 1e-9 * diagonal[0]!) break;
    beside.push(size);
    next = image.map((value) => value / size);
  }
  return { screen, norm, diagonal, beside, basis };
};

/** (1 + sT)⁻¹·e₁·|r|: the screen's answer in the basis. */
const answerAt = ({ norm, diagonal, beside }: Reflection, s: Complex): Complex[] => {
  const size = diagonal.length;
  // Thomas' algorithm from the last row up, so that the right side, which has only its first entry, stays as it is
  const pivots: Complex[] = [];
  for (let k = size - 1; k >= 0; k--) {
    const own = add(complex(1), scale(s, diagonal[k]!));
    const lower = pivots[k + 1];
    const off = scale(s, beside[k] ?? 0);
    pivots[k] = lower ? subtract(own, divide(multiply(off, off), lower)) : own;
  }
  const answer: Complex[] = [];
  for (let k = 0; k < size; k++)
    answer.push(
      k === 0
        ? divide(complex(norm), pivots[0]!)
        : divide(multiply(scale(s, -beside[k - 1]!), answer[k - 1]!), pivots[k]!)
    );
  return answer;
};

/** ΔL of the loop itself, H. */
export const ownReflection = (reflection: Reflection, frequency: number): Complex => {
  if (reflection.norm === 0) return complex(0);
  const [first] = answerAt(reflection, reflection.screen.ratioAt(frequency));
  return scale(first!, -reflection.norm);
};

/** The other loop's flux in the basis of this one's answer: all that ΔM of the two needs. */
export const overlapOf = ({ screen, basis }: Reflection, other: Filaments): readonly number[] => {
  const flux = reducedFluxOf(screen, other);
  return basis.map((vector) => dot(vector, flux));
};

/** ΔM of the loop with the one of the overlap, H. */
export const mutualReflection = (
  reflection: Reflection,
  overlap: readonly number[],
  frequency: number
): Complex =>
  answerAt(reflection, reflection.screen.ratioAt(frequency)).reduce(
    (sum, value, k) => subtract(sum, scale(value, overlap[k]!)),
    complex(0)
  );

/** The currents in the steel as dipoles on the plan, per ampere in the loop. */
export const inducedDipoles = (reflection: Reflection, frequency: number): Dipoles => {
  const { screen, basis } = reflection;
  const inPhase = new Float64Array(screen.size);
  const ahead = new Float64Array(screen.size);
  answerAt(reflection, screen.ratioAt(frequency)).forEach(({ re, im }, k) => {
    subtractTimes(inPhase, re, basis[k]!);
    subtractTimes(ahead, im, basis[k]!);
  });
  backSubstituteInPlace(screen.factor, inPhase);
  backSubstituteInPlace(screen.factor, ahead);
  return screen.dipolesOf(inPhase, ahead);
};

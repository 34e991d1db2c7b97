/**
 * Ratios of neighbouring Bessel functions of complex argument.
 *
 * J_n(z)/J_{n−1}(z) = z / (2n − z²/(2(n+1) − z²/(2(n+2) − …))), Gauss's continued fraction (Abramowitz & Stegun
 * 9.1.73), evaluated by Lentz's method in the modified form of Thompson & Barnett 1986. Converges for every z that
 * is not a zero of J_{n−1}; on the ray z = (1−j)·x of the round wire there are none. Accurate to about 1e-14.
 */
import { add, complex, divide, magnitude, multiply, ONE, scale, subtract, type Complex } from './complex';

const TINY = 1e-290;
const MOST_STEPS = 10_000;

const notZero = (a: Complex): Complex => (magnitude(a) === 0 ? complex(TINY) : a);

/** J_order(z) / J_{order−1}(z) for order ≥ 1. */
export const besselRatio = (order: number, z: Complex): Complex => {
  const minusSquare = scale(multiply(z, z), -1);
  let value = complex(2 * order);
  let c = value;
  let d = complex(0);
  for (let step = 1; step < MOST_STEPS; step++) {
    const b = complex(2 * (order + step));
    d = divide(ONE, notZero(add(b, multiply(minusSquare, d))));
    c = notZero(add(b, divide(minusSquare, c)));
    const change = multiply(c, d);
    value = multiply(value, change);
    if (magnitude(subtract(change, ONE)) < 1e-15) break;
  }
  return divide(z, value);
};

/** Complex numbers as plain pairs: just what the circuit and the wire need. */
export interface Complex {
  readonly re: number;
  readonly im: number;
}

export const complex = (re: number, im = 0): Complex => ({ re, im });
export const ZERO = complex(0);
export const ONE = complex(1);

export const add = (a: Complex, b: Complex): Complex => complex(a.re + b.re, a.im + b.im);
export const subtract = (a: Complex, b: Complex): Complex => complex(a.re - b.re, a.im - b.im);
export const scale = (a: Complex, factor: number): Complex => complex(a.re * factor, a.im * factor);
export const multiply = (a: Complex, b: Complex): Complex =>
  complex(a.re * b.re - a.im * b.im, a.re * b.im + a.im * b.re);

export const divide = (a: Complex, b: Complex): Complex => {
  const norm = b.re * b.re + b.im * b.im;
  return complex((a.re * b.re + a.im * b.im) / norm, (a.im * b.re - a.re * b.im) / norm);
};

export const magnitude = (a: Complex): number => Math.hypot(a.re, a.im);

/** Principal square root: real part ≥ 0. */
export const squareRoot = (a: Complex): Complex => {
  const size = magnitude(a);
  const re = Math.sqrt((size + Math.abs(a.re)) / 2);
  if (re === 0) return ZERO;
  const other = Math.abs(a.im) / (2 * re);
  const sign = a.im < 0 ? -1 : 1;
  return a.re >= 0 ? complex(re, sign * other) : complex(other, sign * re);
};

export const hyperbolicCosine = (a: Complex): Complex =>
  complex(Math.cosh(a.re) * Math.cos(a.im), Math.sinh(a.re) * Math.sin(a.im));

export const hyperbolicSine = (a: Complex): Complex =>
  complex(Math.sinh(a.re) * Math.cos(a.im), Math.cosh(a.re) * Math.sin(a.im));

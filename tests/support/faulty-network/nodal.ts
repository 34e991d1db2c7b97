/**
 * Modified nodal analysis of a network at one frequency: the textbook method. Unknown are the potentials of all nodes but
 * node 0, and the currents of coils and of the source; one dense complex system, Gauss with row pivoting.
 */
export interface C {
  readonly re: number;
  readonly im: number;
}

export const c = (re: number, im = 0): C => ({ re, im });
export const plus = (a: C, b: C): C => c(a.re + b.re, a.im + b.im);
const minus = (a: C, b: C): C => c(a.re - b.re, a.im - b.im);
export const times = (a: C, b: C): C => c(a.re * b.re - a.im * b.im, a.re * b.im + a.im * b.re);
export const over = (a: C, b: C): C => {
  const square = b.re * b.re + b.im * b.im;
  return c((a.re * b.re + a.im * b.im) / square, (a.im * b.re - a.re * b.im) / square);
};

/** [V₁; I₁] = [[a, b], [c, d]]·[V₂; I₂], I₂ flowing out. */
export interface Chain {
  readonly a: C;
  readonly b: C;
  readonly c: C;
  readonly d: C;
}

interface Stamp {
  readonly row: number;
  readonly column: number;
  readonly value: C;
}

export class Net {
  private nodes = 1;
  private readonly conductances: Stamp[] = [];
  private readonly coils: { readonly from: number; readonly to: number }[] = [];
  private coupling: (i: number, j: number) => C = () => c(0);

  /** Node 0 is there from the start. */
  node(): number {
    return this.nodes++;
  }

  /** S, between two nodes. */
  admittance(p: number, q: number, y: C): void {
    const negative = c(-y.re, -y.im);
    this.conductances.push(
      { row: p, column: p, value: y },
      { row: q, column: q, value: y },
      { row: p, column: q, value: negative },
      { row: q, column: p, value: negative }
    );
  }

  resistor(p: number, q: number, ohms: number): void {
    this.admittance(p, q, c(1 / ohms));
  }

  /** Charges that follow the potentials of two nodes against a third by a matrix [[self, mutual], [mutual, self]], S. */
  twoToGround(p: number, q: number, ground: number, self: C, mutual: C): void {
    const own = plus(self, mutual);
    this.admittance(p, ground, own);
    this.admittance(q, ground, own);
    this.admittance(p, q, c(-mutual.re, -mutual.im));
  }

  /** Two wires go in at `near` and come out at `far`; the second wire of both ends is the node `common`. */
  chain(near: number, far: number, common: number, { a, b, d }: Chain): void {
    const through = over(c(1), b);
    // of a reciprocal two-port: y11 = d/b, y22 = a/b, y12 = −1/b
    this.admittance(near, far, through);
    this.admittance(near, common, over(minus(d, c(1)), b));
    this.admittance(far, common, over(minus(a, c(1)), b));
  }

  /** A branch whose impedance to itself and to every other coil `coils` tells. Its number comes back. */
  coil(from: number, to: number): number {
    return this.coils.push({ from, to }) - 1;
  }

  /** Ω, between the coils by their numbers. */
  couple(impedance: (i: number, j: number) => C): void {
    this.coupling = impedance;
  }

  /** Between the terminals, Ω; infinite where nothing flows. */
  impedance(p: number, q: number): C {
    const first = this.nodes - 1;
    const size = first + this.coils.length + 1;
    const system = new Dense(size);
    const at = (node: number) => node - 1;
    for (const { row, column, value } of this.conductances)
      if (row > 0 && column > 0) system.add(at(row), at(column), value);
    const source = size - 1;
    this.coils.forEach(({ from, to }, k) => {
      system.incidence(at(from), at(to), first + k);
      this.coils.forEach((_, j) => {
        const { re, im } = this.coupling(k, j);
        system.add(first + k, first + j, c(-re, -im));
      });
    });
    system.incidence(at(p), at(q), source);
    system.right(source, c(1));
    const current = system.solve(source);
    return current.re === 0 && current.im === 0 ? c(Infinity) : over(c(-1), current);
  }
}

/** Real and imaginary parts side by side, row by row, the right side in the last column. */
class Dense {
  private readonly re: Float64Array;
  private readonly im: Float64Array;
  private readonly width: number;

  constructor(private readonly size: number) {
    this.width = size + 1;
    this.re = new Float64Array(size * this.width);
    this.im = new Float64Array(size * this.width);
  }

  add(row: number, column: number, { re, im }: C): void {
    this.re[row * this.width + column]! += re;
    this.im[row * this.width + column]! += im;
  }

  /** Current `unknown` leaves `from` and enters `to` (−1: node 0); its own equation is the voltage between them. */
  incidence(from: number, to: number, unknown: number): void {
    if (from >= 0) {
      this.add(from, unknown, c(1));
      this.add(unknown, from, c(1));
    }
    if (to >= 0) {
      this.add(to, unknown, c(-1));
      this.add(unknown, to, c(-1));
    }
  }

  right(row: number, value: C): void {
    this.add(row, this.size, value);
  }

  /** The unknown that is asked for has to be the last one. */
  solve(wanted: number): C {
    const { size, width, re, im } = this;
    for (let k = 0; k < size; k++) {
      let pivot = k;
      let most = 0;
      for (let i = k; i < size; i++) {
        const square = re[i * width + k]! ** 2 + im[i * width + k]! ** 2;
        if (square > most) [most, pivot] = [square, i];
      }
      if (most === 0) throw new Error('a part of the network hangs on nothing');
      if (pivot !== k)
        for (let j = k; j < width; j++) {
          [re[k * width + j], re[pivot * width + j]] = [re[pivot * width + j]!, re[k * width + j]!];
          [im[k * width + j], im[pivot * width + j]] = [im[pivot * width + j]!, im[k * width + j]!];
        }
      const pr = re[k * width + k]!;
      const pi = im[k * width + k]!;
      for (let i = k + 1; i < size; i++) {
        const br = re[i * width + k]!;
        const bi = im[i * width + k]!;
        if (br === 0 && bi === 0) continue;
        const fr = (br * pr + bi * pi) / most;
        const fi = (bi * pr - br * pi) / most;
        for (let j = k + 1; j < width; j++) {
          const ar = re[k * width + j]!;
          const ai = im[k * width + j]!;
          if (ar === 0 && ai === 0) continue;
          re[i * width + j]! -= fr * ar - fi * ai;
          im[i * width + j]! -= fr * ai + fi * ar;
        }
      }
    }
    const last = wanted * width;
    return over(c(re[last + size]!, im[last + size]), c(re[last + wanted]!, im[last + wanted]));
  }
}

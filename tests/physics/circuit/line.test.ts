import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  inputImpedance,
  lineChain,
  shuntCapacitance,
  THROUGH,
  twistedPair,
  type LineConstants
} from '#physics/circuit/line';
import { complex, magnitude, multiply, ONE, subtract, type Complex } from '#physics/numeric/complex';
import { between, SEED } from '../support/arbitraries';
import { relativeError } from '../support/reference';

const MU0 = 4e-7 * Math.PI;
const EPSILON0 = 8.8541878128e-12;
const CABLE: LineConstants = { resistance: 0.03, inductance: 6.7e-7, capacitance: 8e-11 };
const LOAD = complex(0.3, 23.56);

const distance = (a: Complex, b: Complex): number => magnitude(subtract(a, b)) / magnitude(b);

describe('a line', () => {
  it('of no length is not there', () => {
    expect(lineChain(CABLE, 0, 5e4)).toEqual(THROUGH);
    expect(inputImpedance(THROUGH, LOAD)).toEqual(LOAD);
  });

  it("that is short adds R'l + jωL'l to a small load", () => {
    const omega = 2 * Math.PI * 2e4;
    const load = complex(0.001, 0.01);
    for (const length of [1e-3, 0.1, 3]) {
      const added = subtract(inputImpedance(lineChain(CABLE, length, 2e4), load), load);
      const wanted = complex(CABLE.resistance * length, omega * CABLE.inductance * length);
      expect(distance(added, wanted)).toBeLessThan(1e-5);
    }
  });

  it("changes any load by (Z' − Y'·Z²) per metre (Riccati's form of the telegraph equations)", () => {
    const omega = 2 * Math.PI * 5e4;
    const admittance = complex(0, omega * CABLE.capacitance);
    const slope = subtract(
      complex(CABLE.resistance, omega * CABLE.inductance),
      multiply(admittance, multiply(LOAD, LOAD))
    );
    const step = 1e-3;
    const added = subtract(inputImpedance(lineChain(CABLE, step, 5e4), LOAD), LOAD);
    expect(distance(added, complex(slope.re * step, slope.im * step))).toBeLessThan(1e-5);
  });

  it("without capacitance adds R'l + jωL'l at every length", () => {
    fc.assert(
      fc.property(between(0.1, 2000), between(1e4, 2e5), (length, frequency) => {
        const chain = lineChain({ ...CABLE, capacitance: 0 }, length, frequency);
        const wanted = complex(
          LOAD.re + CABLE.resistance * length,
          LOAD.im + 2 * Math.PI * frequency * CABLE.inductance * length
        );
        expect(distance(inputImpedance(chain, LOAD), wanted)).toBeLessThan(1e-12);
      }),
      { seed: SEED }
    );
  });

  it('comes to that without a step as its capacitance goes', () => {
    const bare = inputImpedance(lineChain({ ...CABLE, capacitance: 0 }, 100, 5e4), LOAD);
    let last = Infinity;
    for (const capacitance of [1e-11, 1e-13, 1e-15, 1e-20]) {
      const away = distance(inputImpedance(lineChain({ ...CABLE, capacitance }, 100, 5e4), LOAD), bare);
      expect(away).toBeLessThan(last);
      last = away;
    }
    expect(last).toBeLessThan(1e-11);
  });

  it('is reciprocal: A·D − B·C = 1', () => {
    fc.assert(
      fc.property(between(0, 3000), between(1e4, 2e5), (length, frequency) => {
        const { a, b, c, d } = lineChain(CABLE, length, frequency);
        const size = 1 + magnitude(multiply(a, d));
        expect(magnitude(subtract(subtract(multiply(a, d), multiply(b, c)), ONE))).toBeLessThan(1e-11 * size);
      }),
      { seed: SEED }
    );
  });

  it('cut in two is the same line', () => {
    const half = lineChain(CABLE, 120, 6e4);
    const twice = inputImpedance(half, inputImpedance(half, LOAD));
    expect(distance(twice, inputImpedance(lineChain(CABLE, 240, 6e4), LOAD))).toBeLessThan(1e-12);
  });

  it('a quarter wave long and without loss turns a load Z into Z0²/Z', () => {
    const lossless = { ...CABLE, resistance: 0 };
    const frequency = 1 / (4 * 500 * Math.sqrt(CABLE.inductance * CABLE.capacitance));
    const found = inputImpedance(lineChain(lossless, 500, frequency), complex(50, 0));
    expect(distance(found, complex(CABLE.inductance / CABLE.capacitance / 50, 0))).toBeLessThan(1e-10);
  });

  it("very long shows its own √(Z'/Y') whatever hangs at its end", () => {
    const lossy = { ...CABLE, resistance: 0.5 };
    const omega = 2 * Math.PI * 1e5;
    const seen = inputImpedance(lineChain(lossy, 20_000, 1e5), LOAD);
    const series = complex(lossy.resistance, omega * lossy.inductance);
    const square = complex(series.im / (omega * lossy.capacitance), -series.re / (omega * lossy.capacitance));
    expect(distance(multiply(seen, seen), square)).toBeLessThan(1e-6);
  });

  it('longer than anybody can build still has figures', () => {
    const worst = { resistance: 10, inductance: 1e-4, capacitance: 1e-8 };
    for (const frequency of [1e3, 5e4, 1e6]) {
      const { re, im } = inputImpedance(lineChain(worst, 10_000, frequency), LOAD);
      const omega = 2 * Math.PI * frequency;
      const square = complex(
        worst.inductance / worst.capacitance,
        -worst.resistance / (omega * worst.capacitance)
      );
      const found = complex(re, im);
      expect(distance(multiply(found, found), square)).toBeLessThan(1e-9);
    }
  });
});

describe('a capacitance across the terminals', () => {
  it('raises the apparent inductance to L/(1−ω²LC)', () => {
    const [L, C, frequency] = [1e-4, 2e-9, 6e4];
    const omega = 2 * Math.PI * frequency;
    const found = inputImpedance(shuntCapacitance(C, frequency), complex(0, omega * L));
    expect(relativeError(found.im / omega, L / (1 - omega ** 2 * L * C))).toBeLessThan(1e-12);
    expect(found.re).toBe(0);
  });

  it('of nothing changes nothing', () => {
    expect(inputImpedance(shuntCapacitance(0, 5e4), LOAD)).toEqual(LOAD);
  });
});

describe('a twisted pair', () => {
  it("has C' = πε0εr/acosh(D/d) and, slowly, L' = (µ0/π)·(acosh(D/d) + ¼)", () => {
    const { inductance, capacitance } = twistedPair(0.0038, 0.001628, 2.3, 1, 20);
    const ratio = Math.acosh(0.0038 / 0.001628);
    expect(relativeError(capacitance, (Math.PI * EPSILON0 * 2.3) / ratio)).toBeLessThan(1e-12);
    expect(relativeError(inductance, (MU0 / Math.PI) * (ratio + 0.25))).toBeLessThan(1e-8);
  });

  it('carries a wave at the speed of light in its insulation when the field stays outside the copper', () => {
    const { inductance, capacitance } = twistedPair(0.01, 0.001, 2.3, 1e12, 20);
    expect(relativeError(1 / Math.sqrt(inductance * capacitance), 299_792_458 / Math.sqrt(2.3))).toBeLessThan(
      1e-4
    );
  });

  it('has the resistance of both wires: 2 × 1.7241e-8 Ω·m over the section', () => {
    const { resistance } = twistedPair(0.0038, 0.001628, 2.3, 1, 20);
    expect(relativeError(resistance, (2 * 1.7241e-8) / (Math.PI * 0.000814 ** 2))).toBeLessThan(1e-8);
  });
});

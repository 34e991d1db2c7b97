import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { driveOf, lockingRange, rippleOf, separationOf, type Tank } from '#physics/coupling/beat';
import { between, SEED } from '../support/arbitraries';
import { relativeError } from '../support/reference';

const tank = (low: number, high = low, over: Partial<Tank> = {}): Tank => ({
  inductance: 1e-4,
  low,
  high,
  measuringTime: 0.005,
  ...over
});

describe('distance of two frequency intervals', () => {
  it.each([
    ['apart', 40_000, 41_000, 42_500, 43_000, 1_500],
    ['touching', 40_000, 41_000, 41_000, 43_000, 0],
    ['overlapping', 40_000, 41_000, 40_500, 43_000, 0],
    ['one inside the other', 40_000, 45_000, 41_000, 42_000, 0],
    ['two points', 40_000, 40_000, 40_250, 40_250, 250]
  ])('%s', (_, a0, a1, b0, b1, wanted) => {
    expect(separationOf(tank(a0, a1), tank(b0, b1))).toBe(wanted);
    expect(separationOf(tank(b0, b1), tank(a0, a1))).toBe(wanted);
  });
});

describe('ripple', () => {
  it('of equal channels that beat slowly is ±k in L/L', () => {
    expect(rippleOf(tank(50_000), tank(50_000), 0.004)).toBe(0.004);
    expect(rippleOf(tank(50_000), tank(50_000), -0.004)).toBe(0.004);
    // the unit averages over 1/(π·Δf) or longer: up to 63.66 Hz at 5 ms nothing is averaged away
    expect(rippleOf(tank(50_000), tank(50_063), 0.001)).toBeCloseTo((0.001 * 100_000) / 100_063, 12);
  });

  it('falls with 1/(π·Δf·T) beyond that', () => {
    const wanted = ((0.004 * 100_000) / 102_000) * (1 / (Math.PI * 2_000 * 0.005));
    expect(rippleOf(tank(50_000), tank(52_000), 0.004)).toBeCloseTo(wanted, 15);
    const longer = rippleOf(tank(50_000, 50_000, { measuringTime: 0.01 }), tank(52_000), 0.004);
    expect(longer).toBeCloseTo(wanted / 2, 15);
  });

  it("counts the victim's measuring time alone", () => {
    const a = tank(50_000, 50_000, { measuringTime: 0.001 });
    const b = tank(55_000, 55_000, { measuringTime: 0.1 });
    expect(relativeError(rippleOf(a, b, 0.01), ((0.01 * 100) / 105) * (1 / (Math.PI * 5)))).toBeLessThan(
      1e-12
    );
  });

  it('is weighted with √(L1/L2)·2·f1/(f1 + f2): a large tank suffers from a small one', () => {
    const small = tank(50_000, 50_000, { inductance: 1e-4 });
    const large = tank(50_000, 50_000, { inductance: 4e-4 });
    expect(rippleOf(large, small, 0.01)).toBeCloseTo(0.02, 14);
    expect(rippleOf(small, large, 0.01)).toBeCloseTo(0.005, 14);
  });

  it('is symmetric up to the drive: the product of the two is k²·4·f1·f2/(f1 + f2)² where nothing is averaged away', () => {
    fc.assert(
      fc.property(between(2e-5, 2e-3), between(2e-5, 2e-3), between(1e-5, 0.1), (La, Lb, k) => {
        const a = tank(40_000, 60_000, { inductance: La });
        const b = tank(50_000, 51_000, { inductance: Lb });
        const wanted = (k * k * 4 * 40 * 50) / (40 + 50) ** 2;
        expect(relativeError(rippleOf(a, b, k) * rippleOf(b, a, k), wanted)).toBeLessThan(1e-12);
      }),
      { seed: SEED }
    );
  });

  it('never grows when the frequencies move apart or the unit measures longer', () => {
    fc.assert(
      fc.property(
        between(0, 5_000),
        between(1, 5_000),
        between(1e-4, 0.1),
        between(1, 10),
        (gap, more, T, s) => {
          // the drive's share of the change is taken out: it depends on which way they move
          const at = (separation: number, time: number): number => {
            const b = tank(50_000 + separation);
            return (
              rippleOf(tank(50_000, 50_000, { measuringTime: time }), b, 0.01) / driveOf(1, 1, 50_000, b.low)
            );
          };
          expect(at(gap + more, T)).toBeLessThanOrEqual(at(gap, T) * (1 + 1e-12));
          expect(at(gap, T * s)).toBeLessThanOrEqual(at(gap, T) * (1 + 1e-12));
        }
      ),
      { seed: SEED }
    );
  });

  it('has no step where the averaging begins', () => {
    const edge = 1 / (Math.PI * 0.005);
    const below = rippleOf(tank(50_000), tank(50_000 + edge * (1 - 1e-9)), 0.001);
    const above = rippleOf(tank(50_000), tank(50_000 + edge * (1 + 1e-9)), 0.001);
    expect(relativeError(above, below)).toBeLessThan(1e-8);
  });

  it('is averaged away by no measuring time where the two may lock: nearer than k·√(L1/L2)·f', () => {
    const slow = { measuringTime: 0.1 };
    const ripple = (separation: number, L = 1e-4): number =>
      rippleOf(
        tank(50_000, 50_000, slow),
        tank(50_000 + separation, 50_000 + separation, { ...slow, inductance: L }),
        0.01
      );
    // 1 % of 50 kHz
    expect(ripple(490)).toBeCloseTo(0.01, 4);
    expect(ripple(515)).toBeLessThan(1e-4);
    expect(lockingRange(tank(50_000), tank(50_000), -0.01)).toBeCloseTo(500, 9);
    // the tank of four times the inductance is disturbed twice as much, and locks at twice the distance
    expect(ripple(990, 4e-4)).toBeCloseTo(0.005, 4);
    expect(ripple(990, 0.25e-4)).toBeCloseTo(0.02, 3);
    expect(ripple(1_030, 4e-4)).toBeLessThan(1e-4);
  });
});

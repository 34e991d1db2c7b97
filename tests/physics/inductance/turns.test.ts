import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { externalInductance, mutualInductance } from '#physics/inductance/loop';
import { blockSum, partOf, turnCouplings, turnInductances, turnsOf } from '#physics/inductance/turns';
import { proximityResistance, transverseFieldLoss } from '#physics/wire/round-wire';
import { turnLosses } from '#physics/wire/turn-losses';
import { between, PATIENCE, SEED, windings } from '../support/arbitraries';
import { relativeError } from '../support/reference';

const RUNS = { seed: SEED, numRuns: 25 };

describe('a winding turn by turn', () => {
  it(
    'adds up to the whole, and to each part of it',
    () => {
      fc.assert(
        fc.property(windings(), fc.nat(), (winding, where) => {
          const turns = turnsOf(winding);
          const matrix = turnInductances(winding);
          const whole = blockSum(matrix, turns, [0, turns], [0, turns]);
          expect(relativeError(whole, externalInductance(winding))).toBeLessThan(2e-5);
          if (turns < 2) return;
          const k = 1 + (where % (turns - 1));
          const part = blockSum(matrix, turns, [0, k], [0, k]);
          expect(relativeError(part, externalInductance(partOf(winding, 0, k)))).toBeLessThan(2e-5);
        }),
        RUNS
      );
    },
    PATIENCE
  );

  it(
    'couples two parts by half of what the whole has more than both',
    () => {
      fc.assert(
        fc.property(windings(), fc.nat(), (winding, where) => {
          const turns = turnsOf(winding);
          if (turns < 2) return;
          const k = 1 + (where % (turns - 1));
          const [low, high] = [partOf(winding, 0, k), partOf(winding, k, turns - k)];
          const half = (externalInductance(winding) - externalInductance(low) - externalInductance(high)) / 2;
          const block = blockSum(turnInductances(winding), turns, [0, k], [k, turns]);
          expect(relativeError(block, half)).toBeLessThan(5e-5);
        }),
        RUNS
      );
    },
    PATIENCE
  );

  it(
    'couples with another loop alike from both sides, and in all by the mutual inductance',
    () => {
      fc.assert(
        fc.property(windings(2), windings(2), (a, b) => {
          const there = turnCouplings(a, b);
          const back = turnCouplings(b, a);
          const [n, m] = [turnsOf(a), turnsOf(b)];
          const scale = Math.sqrt(externalInductance(a) * externalInductance(b));
          for (let i = 0; i < n; i++)
            for (let j = 0; j < m; j++)
              expect(Math.abs(there[i * m + j]! - back[j * n + i]!)).toBeLessThan(1e-9 * scale);
          const all = blockSum(there, m, [0, n], [0, m]);
          expect(Math.abs(all - mutualInductance(a, b))).toBeLessThan(1e-4 * scale);
        }),
        { seed: SEED, numRuns: 10 }
      );
    },
    PATIENCE
  );

  it('says what it matters which turn is shorted: a perfect ring in the middle takes most, at either end as much less', () => {
    const heights = [0, 1, 2, 3, 4].map((k) => -0.05 + 0.004 * k);
    const side = (x: number, y: number, ux: number, uy: number) => ({
      ...{ kind: 'straight' as const, x, y, ux, uy, length: 1.8, heights }
    });
    const winding = {
      runs: [side(0, 0, 1, 0), side(1.8, 0, 0, 1), side(1.8, 1.8, -1, 0), side(0, 1.8, 0, -1)],
      wireRadius: 0.0008,
      pitch: 0.004,
      columns: [{ length: 7.2, wires: 5 }],
      wireLength: 36
    };
    const matrix = turnInductances(winding);
    const whole = blockSum(matrix, 5, [0, 5], [0, 5]);
    const left = [0, 1, 2, 3, 4].map((k) => {
      const own = matrix[k * 5 + k]!;
      return whole - blockSum(matrix, 5, [k, k + 1], [0, 5]) ** 2 / own;
    });
    const [bottom, , middle, , top] = left as [number, number, number, number, number];
    expect(relativeError(bottom, top)).toBeLessThan(1e-9);
    expect(middle).toBe(Math.min(...left));
    expect(bottom).toBe(Math.max(...left));
    expect((bottom - middle) / whole).toBeLessThan(0.12);
  });
});

describe('proximity loss turn by turn', () => {
  it('adds up to that of a stack with one current, also of two wires a turn', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 6 }),
        fc.constantFrom(1, 2),
        between(5e-4, 1.3e-3),
        between(20_000, 100_000),
        (turns, each, radius, frequency) => {
          const pitch = 2.5 * radius;
          const losses = turnLosses(each * turns, turns, pitch);
          const sum = blockSum(losses, turns, [0, turns], [0, turns]);
          const wanted = proximityResistance(radius, pitch, each * turns, frequency, 20);
          expect(2 * transverseFieldLoss(radius, frequency, 20) * sum).toBeCloseTo(wanted, 12);
        }
      ),
      { seed: SEED, numRuns: 100 }
    );
  });

  it('is nothing in a turn that lies alone, and the field of neighbours that carry nothing is none', () => {
    expect([...turnLosses(1, 1, 0.003)]).toEqual([0]);
    const [first, between01, , second] = turnLosses(2, 2, 0.003);
    const square = (1 / (2 * Math.PI * 0.003)) ** 2;
    // each wire loses in the other's field alone
    expect(first).toBeCloseTo(square, 9);
    expect(second).toBeCloseTo(square, 9);
    expect(between01).toBe(0);
  });
});

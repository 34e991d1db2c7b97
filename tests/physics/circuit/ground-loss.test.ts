/** What a pavement that conducts adds to a loop's resistance, against integrals over the ground; see the generator. */
import { describe, expect, it } from 'vitest';
import { groundLossCoefficient } from '#physics/circuit/ground-loss';
import { FEW_SIDES, filamentsOf } from '#physics/field/filaments';
import type { Winding } from '#physics/inductance/winding';
import type { Loop } from '#plan/schema';
import { referenceOf, relativeError } from '../support/reference';
import { circleWinding, drawnWinding, placed, rectangleWinding, scaled } from '../support/windings';

interface LossCase {
  readonly name: string;
  readonly conductivity_S_m: number;
  readonly frequency: number;
  readonly resistance_ohm: number;
  readonly loop: Loop;
}

const { cases, generator } = referenceOf<LossCase>('pavement-loss');
const MU0 = 4e-7 * Math.PI;

const loss = (winding: Winding, conductivity: number, frequency: number): number =>
  conductivity * frequency ** 2 * groundLossCoefficient(filamentsOf(winding));
const one = (winding: Winding): number => loss(winding, 0.05, 5e4);

describe(`a loop on a ground that conducts (${generator})`, () => {
  it.each(cases)('$name at $frequency Hz, $conductivity_S_m S/m', (row) => {
    const winding = drawnWinding(row.loop);
    expect(
      relativeError(loss(winding, row.conductivity_S_m, row.frequency), row.resistance_ohm)
    ).toBeLessThan(2e-3);
    const roughly =
      row.conductivity_S_m * row.frequency ** 2 * groundLossCoefficient(filamentsOf(winding, FEW_SIDES));
    expect(relativeError(roughly, row.resistance_ohm)).toBeLessThan(2e-2);
  });

  it('is σ(ωµ0)²a³/3 for a circle: ∮∮|r − r′| dl·dl′ = −16πa³/3 [C]', () => {
    for (const a of [0.5, 0.9, 2]) {
      const wanted = (0.05 * (2 * Math.PI * 5e4 * MU0) ** 2 * a ** 3) / 3;
      expect(relativeError(one(circleWinding(a)), wanted)).toBeLessThan(2e-3);
    }
  });
});

describe('the loss in the ground', () => {
  const square = rectangleWinding(1.8, 1.8);

  it('grows with the square of the turns and the cube of the size', () => {
    const three = rectangleWinding(1.8, 1.8, { turns: 3 });
    expect(relativeError(one(three), 9 * one(square))).toBeLessThan(1e-9);
    expect(relativeError(one(scaled(square, 2)), 8 * one(square))).toBeLessThan(1e-9);
  });

  it('does not depend on where and how the loop lies', () => {
    const elsewhere = placed(rectangleWinding(1.2, 3), 0.7, 40, -25);
    expect(relativeError(one(elsewhere), one(rectangleWinding(1.2, 3)))).toBeLessThan(1e-6);
  });
});

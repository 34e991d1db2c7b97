/** The sampled field of dipoles against their own, and their field against Biot–Savart round a small square. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DIPOLE, dipoleFieldAt, dipolePotentialAlong } from '#physics/field/dipoles';
import { fieldMapOf } from '#physics/field/field-map';
import { filamentsOf, potentialAlong, verticalField } from '#physics/field/filaments';
import { relativeError } from '../support/reference';
import { rectangleWinding } from '../support/windings';

/** A lattice as a mat makes it: moments that rise and fall smoothly, two phases. */
const lattice = (z: number): Float64Array => {
  const dipoles = new Float64Array(DIPOLE * 18 * 22);
  for (let i = 0; i < 18; i++)
    for (let j = 0; j < 22; j++) {
      const x = (i - 8.5) * 0.2;
      const y = (j - 10.5) * 0.2;
      const edge =
        Math.exp(-((Math.abs(x) - 0.9) ** 2) / 0.05) + Math.exp(-((Math.abs(y) - 0.9) ** 2) / 0.05);
      dipoles.set([x, y, z, -edge, 0.2 * Math.cos(x + y)], DIPOLE * (i * 22 + j));
    }
  return dipoles;
};

const directly = (dipoles: Float64Array, x: number, y: number, z: number): readonly [number, number] => {
  const value = new Float64Array(2);
  dipoleFieldAt(dipoles, x, y, z, value);
  return [value[0]!, value[1]!];
};

describe('the map of a field', () => {
  it('differs from the field itself by under a percent of its strongest, and at a mat’s corners by under 3.5', () => {
    const dipoles = lattice(-0.14);
    fc.assert(
      fc.property(
        fc.constantFrom(0.27, 0.45, 0.9),
        fc.double({ min: -4.5, max: 4.5, noNaN: true }),
        fc.double({ min: -5, max: 5, noNaN: true }),
        (z, x, y) => {
          const strongest = Math.abs(directly(dipoles, 0.9, 0, z)[0]);
          const found = new Float64Array(2);
          fieldMapOf(dipoles, z)!.at(x, y, found);
          directly(dipoles, x, y, z).forEach((wanted, phase) => {
            // where two edges of the mat meet, the field bends most
            const isCorner = Math.abs(x) < 1.5 && Math.abs(y) < 1.5;
            expect(Math.abs(found[phase]! - wanted)).toBeLessThan((isCorner ? 0.035 : 0.012) * strongest);
          });
        }
      ),
      { numRuns: 300 }
    );
  });

  it('far away takes all dipoles for one', () => {
    const dipoles = lattice(-0.14);
    const found = new Float64Array(2);
    fieldMapOf(dipoles, 0.45)!.at(14, 3, found);
    expect(relativeError(found[0]!, directly(dipoles, 14, 3, 0.45)[0])).toBeLessThan(0.03);
  });

  it('is not made where the plane lies among the dipoles', () => {
    expect(fieldMapOf(lattice(-0.14), -0.1)).toBeNull();
  });
});

describe('a dipole', () => {
  it('is the far field of a small square of wire: Bz and potential', () => {
    const side = 0.05;
    const square = filamentsOf(rectangleWinding(side, side, { turns: 1, bottom: 0 }));
    const dipole = Float64Array.of(0, 0, 0, side * side, 0);
    for (const [x, y, z] of [
      [0.3, 0.2, 0.6],
      [1, -0.4, 0.2],
      [0, 0, 0.8]
    ] as const) {
      const field = new Float64Array(1);
      verticalField(square, square.length, Float64Array.of(x), Float64Array.of(y), z, field);
      expect(relativeError(directly(dipole, x, y, z)[0], field[0]!)).toBeLessThan(0.01);
      const wanted = potentialAlong(square, square.length, x, y, z, 0.3, 0.7);
      expect(Math.abs(dipolePotentialAlong(dipole, x, y, z, 0.3, 0.7)[0] - wanted)).toBeLessThan(
        0.01 * Math.abs(wanted) + 1e-12
      );
    }
  });
});

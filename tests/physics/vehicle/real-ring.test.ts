/** Rings of real metal against networks of coupled coils with losses, solved in complex numbers. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { add, complex, divide, multiply, subtract, type Complex } from '#physics/numeric/complex';
import { dot } from '#physics/numeric/cholesky';
import { filamentsOf } from '#physics/field/filaments';
import { buildBody } from '#physics/vehicle/body';
import { reducedFlux } from '#physics/vehicle/flux';
import type { RingPart } from '#physics/vehicle/parts';
import { effectiveInductance, mutualOfRings, REFERENCE_FREQUENCY, ringPath } from '#physics/vehicle/ring';
import { between, SEED } from '../support/arbitraries';
import { relativeError } from '../support/reference';
import { rectangleWinding } from '../support/windings';

const MU0 = 4e-7 * Math.PI;
const OMEGA = 2 * Math.PI * REFERENCE_FREQUENCY;

const rim = (over: Partial<RingPart> = {}): RingPart => ({
  kind: 'ring',
  x: 0.2,
  y: 0,
  height: 0.34,
  radius: 0.31,
  conductorRadius: 0.008,
  axis: [1, 0, 0],
  ...over
});
/** Mild steel, aluminium alloy, stainless: Ω·m, relative permeability. */
const METALS = [
  { resistivity: 1.7e-7, relativePermeability: 100 },
  { resistivity: 4e-8 },
  { resistivity: 7.2e-7, relativePermeability: 1.02 }
];

const external = ({ radius, conductorRadius }: RingPart): number =>
  MU0 * radius * (Math.log((8 * radius) / conductorRadius) - 2);

/**
 * Impedance once round a ring at the reference frequency, Ω: surface impedance ρ·(1+j)/δ over the section's rim. The first
 * term of the skin effect, independent of the Bessel functions: good to δ/2a.
 */
const thinSkin = ({ radius, conductorRadius, resistivity, relativePermeability = 1 }: RingPart) => {
  const depth = Math.sqrt((2 * resistivity!) / (OMEGA * MU0 * relativePermeability));
  const resistance = (resistivity! / depth) * (radius / conductorRadius);
  return { resistance, inductance: resistance / OMEGA, share: depth / (2 * conductorRadius) };
};

const winding = rectangleWinding(1.8, 1.8, { turns: 3 }, [-0.9, -0.9]);
const filaments = filamentsOf(winding);
const HERE = { x: 0, y: 0.4, heading: 90 };

const drop = (parts: readonly RingPart[]): number => {
  const reduced = reducedFlux(buildBody(parts), filaments, HERE);
  return dot(reduced, reduced);
};

/** What coils of impedances `own`, coupled by `mutual`, take off the inductance of a loop that sends `flux` through them. */
const byNetwork = (
  own: readonly [Complex, Complex],
  mutual: number,
  flux: readonly [number, number]
): number => {
  // (Z)(i) = −jω(φ); what the loop sees in series is jω·φᵀ·i
  const jw = complex(0, OMEGA);
  const cross = multiply(jw, complex(mutual));
  const determinant = subtract(multiply(own[0], own[1]), multiply(cross, cross));
  const current = (mine: number, other: number, otherOwn: Complex): Complex =>
    divide(
      multiply(
        complex(0, -OMEGA),
        subtract(multiply(otherOwn, complex(mine)), multiply(cross, complex(other)))
      ),
      determinant
    );
  const first = current(flux[0], flux[1], own[1]);
  const second = current(flux[1], flux[0], own[0]);
  const seen = multiply(jw, add(multiply(first, complex(flux[0])), multiply(second, complex(flux[1]))));
  return -seen.im / OMEGA;
};

/** Flux per ampere of the loop through one ring alone, from what a perfect one answers. */
const fluxOf = (part: RingPart): number => Math.sqrt(drop([part]) * external(part));

describe('a ring of real metal', () => {
  it.each(METALS)('answers like a coil with its resistance and inner inductance: %o', (metal) => {
    const real = rim(metal);
    const { resistance, inductance, share } = thinSkin(real);
    const impedance = complex(resistance, OMEGA * (external(real) + inductance));
    // a second coil that nothing goes through takes no part
    const wanted = byNetwork([impedance, complex(1, 1)], 0, [fluxOf(rim()), 0]);
    // of the share of the skin effect in the whole the thin skin leaves its own error
    const metals = (resistance / OMEGA + inductance) / external(real);
    expect(relativeError(drop([real]), wanted)).toBeLessThan(1e-6 + 2 * share * metals);
    expect(drop([real])).toBeLessThan(drop([rim()]));
  });

  it('two of them answer like two coupled coils, to 1 %, as far as their phases differ', () => {
    for (const metal of METALS) {
      const rings = [rim(metal), rim({ y: 0.5, radius: 0.25, conductorRadius: 0.02, ...metal })] as const;
      const perfect = [rim(), rim({ y: 0.5, radius: 0.25, conductorRadius: 0.02 })] as const;
      const impedances = rings.map((ring) => {
        const { resistance, inductance } = thinSkin(ring);
        return complex(resistance, OMEGA * (external(ring) + inductance));
      });
      const mutual = mutualOfRings(ringPath(perfect[0], 1), ringPath(perfect[1], 1));
      // both rings hang in the loop's field the same way round
      const wanted = byNetwork([impedances[0]!, impedances[1]!], mutual, [
        fluxOf(perfect[0]),
        fluxOf(perfect[1])
      ]);
      expect(relativeError(drop(rings), wanted)).toBeLessThan(0.01);
    }
  });

  it('of perfect metal is what it was: µ0·R·(ln(8R/a) − 2)', () => {
    expect(relativeError(effectiveInductance(rim()), external(rim()))).toBeLessThan(1e-14);
    const nearly = rim({ resistivity: 1e-16 });
    expect(relativeError(effectiveInductance(nearly), external(nearly))).toBeLessThan(1e-4);
    // permeability says nothing of a rim whose metal nobody has named
    expect(effectiveInductance(rim({ relativePermeability: 100 }))).toBe(effectiveInductance(rim()));
  });

  it('never answers more than a perfect one, and less the worse it conducts', () => {
    fc.assert(
      fc.property(
        between(-9, -3),
        between(0, 5),
        between(0.05, 1),
        between(0.001, 0.02),
        (power, permeability, radius, conductorRadius) => {
          const part = rim({
            radius,
            conductorRadius,
            resistivity: 10 ** power,
            relativePermeability: 10 ** permeability
          });
          const found = effectiveInductance(part);
          expect(found).toBeGreaterThanOrEqual(external(part));
          expect(Number.isFinite(found)).toBe(true);
          expect(effectiveInductance({ ...part, resistivity: 1.3 * 10 ** power })).toBeGreaterThan(found);
        }
      ),
      { seed: SEED, numRuns: 200 }
    );
  });

  it('that hardly conducts does nothing', () => {
    expect(drop([rim({ resistivity: 1e-3 })])).toBeLessThan(0.01 * drop([rim()]));
  });
});

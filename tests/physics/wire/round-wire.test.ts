import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  copperResistivity,
  dcResistancePerMetre,
  internalImpedance,
  proximityResistance,
  roundConductorImpedance,
  transverseFieldLoss
} from '#physics/wire/round-wire';
import { between, SEED } from '../support/arbitraries';
import { ofKind, referenceOf, relativeError } from '../support/reference';

const MU0 = 4e-7 * Math.PI;

interface SkinCase {
  readonly kind: 'skin';
  readonly wire: string;
  readonly diameter: number;
  readonly frequency: number;
  readonly resistanceDcPerMetre: number;
  readonly resistanceRatio: number;
  readonly internalInductancePerMetre: number;
  readonly internalInductanceRatio: number;
}

interface ProximityCase {
  readonly kind: 'proximity';
  readonly wire: string;
  readonly diameter: number;
  readonly pitch: number;
  readonly count: number;
  readonly frequency: number;
  readonly resistancePerMetreOfSlot: number;
}

const { cases, tolerance, generator } = referenceOf<SkinCase | ProximityCase>('round-wire');

describe(`skin effect (${generator})`, () => {
  it.each(ofKind(cases, 'skin'))('$wire at $frequency Hz', (row) => {
    const a = row.diameter / 2;
    const { resistance, inductance } = internalImpedance(a, row.frequency, 20);
    const dc = dcResistancePerMetre(a, 20);
    expect(relativeError(dc, row.resistanceDcPerMetre)).toBeLessThan(tolerance);
    expect(relativeError(resistance / dc, row.resistanceRatio)).toBeLessThan(tolerance);
    expect(relativeError(inductance, row.internalInductancePerMetre)).toBeLessThan(tolerance);
    expect(relativeError(inductance / (MU0 / (8 * Math.PI)), row.internalInductanceRatio)).toBeLessThan(
      tolerance
    );
  });

  it('has the limits of a slow and of a fast field: R and µ0/8π, then a surface layer of one skin depth', () => {
    const a = 1e-3;
    const slow = internalImpedance(a, 1, 20);
    expect(relativeError(slow.resistance, dcResistancePerMetre(a, 20))).toBeLessThan(1e-8);
    expect(relativeError(slow.inductance, MU0 / (8 * Math.PI))).toBeLessThan(1e-8);
    const frequency = 1e9;
    const depth = Math.sqrt(copperResistivity(20) / (Math.PI * frequency * MU0));
    const layer = copperResistivity(20) / (2 * Math.PI * a * depth);
    const fast = internalImpedance(a, frequency, 20);
    // the next term of the series is δ/2a of R and nothing of X (Abramowitz & Stegun 9.7)
    expect(relativeError(fast.resistance, layer * (1 + depth / (2 * a)))).toBeLessThan(1e-5);
    expect(relativeError(2 * Math.PI * frequency * fast.inductance, layer)).toBeLessThan(1e-5);
  });

  it('depends on a√(f/ρ) alone, as a ratio to direct current', () => {
    fc.assert(
      fc.property(between(2e-4, 2e-3), between(1e3, 2e5), between(-40, 90), between(0.3, 3), (a, f, t, s) => {
        const ratio = (radius: number, frequency: number, temperature: number): number =>
          internalImpedance(radius, frequency, temperature).resistance /
          dcResistancePerMetre(radius, temperature);
        const one = ratio(a, f, t);
        expect(relativeError(ratio(a * s, f / (s * s), t), one)).toBeLessThan(1e-11);
        const warmer = copperResistivity(90) / copperResistivity(t);
        expect(relativeError(ratio(a, f * warmer, 90), one)).toBeLessThan(1e-11);
      }),
      { seed: SEED }
    );
  });

  it('only ever raises the resistance and lowers the internal inductance with frequency', () => {
    fc.assert(
      fc.property(between(2e-4, 2e-3), between(1e3, 1e5), between(1.01, 10), (a, f, s) => {
        const low = internalImpedance(a, f, 20);
        const high = internalImpedance(a, f * s, 20);
        expect(high.resistance).toBeGreaterThan(low.resistance);
        expect(high.inductance).toBeLessThan(low.inductance);
      }),
      { seed: SEED }
    );
  });
});

describe('copper', () => {
  it('has 1.7241·10⁻⁸ Ω·m at 20 °C and 0.393 % more a degree', () => {
    expect(copperResistivity(20)).toBe(1.7241e-8);
    expect(relativeError(copperResistivity(70), 1.7241e-8 * 1.1965)).toBeLessThan(1e-12);
    expect(relativeError(copperResistivity(-30), 1.7241e-8 * 0.8035)).toBeLessThan(1e-12);
  });
});

interface BarCase {
  readonly name: string;
  readonly frequency: number;
  readonly bar_ohm_per_m: readonly [number, number];
  readonly steel: {
    readonly barRadius: number;
    readonly resistivity_ohm_m: number;
    readonly relativePermeability: number;
  };
}

const bars = referenceOf<BarCase>('steel');

describe(`bars of steel (${bars.generator})`, () => {
  it.each(bars.cases)('$name, $frequency Hz, permeability $steel.relativePermeability', (row) => {
    const { barRadius, resistivity_ohm_m, relativePermeability } = row.steel;
    const found = roundConductorImpedance(barRadius, row.frequency, resistivity_ohm_m, relativePermeability);
    const [resistance, reactance] = row.bar_ohm_per_m;
    expect(relativeError(found.resistance, resistance)).toBeLessThan(1e-9);
    expect(relativeError(2 * Math.PI * row.frequency * found.inductance, reactance)).toBeLessThan(1e-9);
  });
});

describe(`proximity effect (${generator})`, () => {
  it.each(ofKind(cases, 'proximity'))('$count wires of $wire at $frequency Hz', (row) => {
    const found = proximityResistance(row.diameter / 2, row.pitch, row.count, row.frequency, 20);
    expect(relativeError(found, row.resistancePerMetreOfSlot)).toBeLessThan(tolerance);
  });

  it('tends to πσω²µ0²a⁴H²/8 at low frequency', () => {
    const [a, frequency] = [8e-4, 20];
    const omega = 2 * Math.PI * frequency;
    const wanted = (Math.PI * omega ** 2 * MU0 ** 2 * a ** 4) / (8 * copperResistivity(20));
    expect(relativeError(transverseFieldLoss(a, frequency, 20), wanted)).toBeLessThan(1e-6);
  });

  it('of two wires is what each loses in the field 1/2πD of the other', () => {
    const [a, pitch, frequency] = [8.14e-4, 3.8e-3, 5e4];
    const field = 1 / (2 * Math.PI * pitch);
    // 1 A peak carries ½ A² of effective square: R = 2P, for two wires
    const wanted = 2 * 2 * transverseFieldLoss(a, frequency, 20) * field ** 2;
    expect(relativeError(proximityResistance(a, pitch, 2, frequency, 20), wanted)).toBeLessThan(1e-12);
  });

  it('is nothing for a wire alone and falls with the square of the pitch', () => {
    expect(proximityResistance(8e-4, 3.8e-3, 1, 5e4, 20)).toBe(0);
    const near = proximityResistance(8e-4, 3e-3, 5, 5e4, 20);
    const far = proximityResistance(8e-4, 6e-3, 5, 5e4, 20);
    expect(relativeError(near, 4 * far)).toBeLessThan(1e-12);
  });
});

import { describe, expect, it } from 'vitest';
import {
  groundLeakagePerMetre,
  pairCapacitancePerMetre,
  resonance,
  windingLeakage,
  type WindingLeakage,
  type SlotDielectric
} from '#physics/circuit/slot-capacitance';
import { relativeError } from '../support/reference';

const EPSILON0 = 8.8541878128e-12;
const SLOT: SlotDielectric = {
  conductorRadius: 0.000814,
  insulatedRadius: 0.0019,
  insulationPermittivity: 2.3,
  slotWidth: 0.008,
  slotDepth: 0.05,
  fillPermittivity: 4,
  pavementPermittivity: 5,
  pavementConductivity: 0
};
const total = ({ turns, ground }: WindingLeakage): number => turns + ground.capacitance;

describe('capacitance between two wires', () => {
  it("is C' = πε0εr/acosh(D/d): 12.1 pF/m in air at D = 10 d (two-wire line formula)", () => {
    expect(pairCapacitancePerMetre(0.01, 0.001, 1)).toBeCloseTo(
      (Math.PI * EPSILON0) / Math.log(10 + Math.sqrt(99)),
      20
    );
    expect(pairCapacitancePerMetre(0.01, 0.001, 2.3)).toBeCloseTo(
      2.3 * pairCapacitancePerMetre(0.01, 0.001, 1),
      20
    );
  });
});

describe('capacitance of a wire to the ground', () => {
  it('in one and the same material is that of a coaxial line out to the depth of the slot', () => {
    const even = { ...SLOT, insulationPermittivity: 3, fillPermittivity: 3, pavementPermittivity: 3 };
    const wanted = (2 * Math.PI * EPSILON0 * 3) / Math.log(0.05 / 0.000814);
    expect(relativeError(groundLeakagePerMetre(even, 5e4).capacitance, wanted)).toBeLessThan(1e-12);
  });

  it('is the layers in series: insulation, fill out to the wall, pavement', () => {
    const layers = [
      [0.0019 / 0.000814, 2.3],
      [0.004 / 0.0019, 4],
      [0.05 / 0.004, 5]
    ] as const;
    const elastance = layers.reduce(
      (sum, [ratio, permittivity]) => sum + Math.log(ratio) / (2 * Math.PI * EPSILON0 * permittivity),
      0
    );
    expect(relativeError(groundLeakagePerMetre(SLOT, 5e4).capacitance, 1 / elastance)).toBeLessThan(1e-12);
  });

  it('grows with every permittivity', () => {
    const before = groundLeakagePerMetre(SLOT, 5e4).capacitance;
    for (const key of ['insulationPermittivity', 'fillPermittivity', 'pavementPermittivity'] as const)
      expect(groundLeakagePerMetre({ ...SLOT, [key]: 2 * SLOT[key] }, 5e4).capacitance).toBeGreaterThan(
        before
      );
  });

  it('stays a positive number when the wire fills the slot or stands out of it', () => {
    for (const odd of [
      { ...SLOT, slotWidth: 0.003 },
      { ...SLOT, slotDepth: 0.001 }
    ]) {
      expect(groundLeakagePerMetre(odd, 5e4).capacitance).toBeGreaterThan(0);
      expect(groundLeakagePerMetre(odd, 5e4).capacitance).toBeLessThan(1e-8);
    }
  });
});

describe('a pavement that conducts', () => {
  /** Two layers of which one conducts, seen as one capacitance with a conductance across it (Maxwell and Wagner) [C]. */
  const layered = (conductivity: number, frequency: number) => {
    const omega = 2 * Math.PI * frequency;
    const perMetre = (ratio: number, permittivity: number): number =>
      (2 * Math.PI * EPSILON0 * permittivity) / Math.log(ratio);
    const [insulation, fill] = [perMetre(0.0019 / 0.000814, 2.3), perMetre(0.004 / 0.0019, 4)];
    const inside = (insulation * fill) / (insulation + fill);
    const pavement = perMetre(0.05 / 0.004, 5);
    const leak = (2 * Math.PI * conductivity) / Math.log(0.05 / 0.004);
    const both = leak ** 2 + omega ** 2 * (inside + pavement) ** 2;
    return {
      capacitance: (inside * (leak ** 2 + omega ** 2 * pavement * (inside + pavement))) / both,
      conductance: (omega ** 2 * inside ** 2 * leak) / both
    };
  };

  it.each([
    [1e-6, 2e4],
    [1e-5, 5e4],
    [1e-3, 5e4],
    [0.05, 1e5]
  ])('%d S/m at %d Hz: its layer leaks', (pavementConductivity, frequency) => {
    const found = groundLeakagePerMetre({ ...SLOT, pavementConductivity }, frequency);
    const wanted = layered(pavementConductivity, frequency);
    expect(relativeError(found.capacitance, wanted.capacitance)).toBeLessThan(1e-12);
    expect(relativeError(found.conductance, wanted.conductance)).toBeLessThan(1e-9);
  });

  it('ends at the capacitance of insulation and fill, without loss', () => {
    const salted = groundLeakagePerMetre({ ...SLOT, pavementConductivity: 10 }, 5e4);
    const inside = Math.log(0.0019 / 0.000814) / 2.3 + Math.log(0.004 / 0.0019) / 4;
    expect(relativeError(salted.capacitance, (2 * Math.PI * EPSILON0) / inside)).toBeLessThan(1e-6);
    expect(salted.conductance / (2 * Math.PI * 5e4 * salted.capacitance)).toBeLessThan(1e-4);
  });
});

describe('capacitance at the ends of a winding', () => {
  it('of one turn is a third of that to the ground: the voltage falls linearly along it', () => {
    const wanted = (groundLeakagePerMetre(SLOT, 5e4).capacitance * 7.2) / 3;
    expect(relativeError(total(windingLeakage(SLOT, 7.2, 1, 5e4)), wanted)).toBeLessThan(1e-12);
  });

  it("adds C'·P·(N−1)/N² between the turns, P the length of one", () => {
    for (const turns of [2, 3, 6]) {
      const between = pairCapacitancePerMetre(0.0038, 0.001628, 2.3);
      const wanted =
        (between * 7.2 * (turns - 1)) / turns ** 2 +
        (groundLeakagePerMetre(SLOT, 5e4).capacitance * 7.2 * turns) / 3;
      expect(relativeError(total(windingLeakage(SLOT, 7.2 * turns, turns, 5e4)), wanted)).toBeLessThan(1e-12);
    }
  });

  it('resonates with the inductance at 1/(2π√(LC)): 100 µH and 1 nF at 503.3 kHz', () => {
    expect(resonance(1e-4, 1e-9)).toBeCloseTo(503_292.1, 0);
  });
});

/** From drawn circuits to figures at the terminals. */
import { describe, expect, it } from 'vitest';
import { createAssessor } from '#analysis/assess';
import type { Assessment, CircuitReadout } from '#analysis/results';
import { relativeError } from '../../physics/support/reference';
import { channel, circuit, loop, siteOf, square, unit } from '../support/sites';

type Json = Readonly<Record<string, unknown>>;

/** Adds its R'l and L'l and nothing else. */
const CABLE: Json = {
  id: 'k',
  resistancePerMetre_ohm: 0.02,
  inductancePerMetre_H: 7e-7,
  capacitancePerMetre_F: 0
};
const assess = (loops: readonly Json[], over: Json, fields: Json = {}): Assessment =>
  createAssessor().assess(
    siteOf({
      loops,
      circuits: [circuit('C1', ['L1'], { leadIn: { cable: 'k', length: 0 }, ...over })],
      cables: [CABLE],
      units: [unit('U1')],
      ...fields
    }),
    'prepared'
  );
const of = (...given: Parameters<typeof assess>): CircuitReadout => assess(...given).circuits[0]!;
const one = [loop('L1', square(0, 0))];
const far = [
  loop('L1', square(0, 0)),
  loop('L2', square(200, 0)),
  loop('L3', square(0, 200)),
  loop('L4', square(200, 200))
];
const strings = (...groups: readonly (readonly string[])[]): Json => ({
  strings: groups.map((group) => group.map((each) => ({ loop: each })))
});

describe('a lead-in', () => {
  it("of a user's own cable without capacitance adds R'l + jωL'l", () => {
    const [bare, behind] = [of(one, {}), of(one, { leadIn: { cable: 'k', length: 80 } })];
    expect(behind.inductance_H - bare.inductance_H).toBeCloseTo(80 * 7e-7, 12);
    expect(behind.resistance_ohm - bare.resistance_ohm).toBeCloseTo(80 * 0.02, 9);
    expect(behind.resistanceDc_ohm - bare.resistanceDc_ohm).toBeCloseTo(80 * 0.02, 12);
    expect(behind.q).toBeCloseTo((2 * Math.PI * 50_000 * behind.inductance_H) / behind.resistance_ohm, 9);
  });

  it("of a user's own cable states its resistance at the operating frequency: heat and frequency leave it alone", () => {
    const at = (temperature_C: number): number =>
      of(one, { leadIn: { cable: 'k', length: 80 } }, { temperature_C }).resistance_ohm -
      of(one, {}, { temperature_C }).resistance_ohm;
    expect(at(60)).toBeCloseTo(at(20), 9);
  });

  it('of the catalogue has the direct-current resistance of both its wires, more when it is warm', () => {
    const dc = (temperature_C: number): number =>
      of(one, { leadIn: { cable: 'pair-14', length: 100 } }, { temperature_C }).resistanceDc_ohm -
      of(one, {}, { temperature_C }).resistanceDc_ohm;
    const wanted = (100 * 2 * 1.7241e-8) / (Math.PI * 0.000814 ** 2);
    expect(relativeError(dc(20), wanted)).toBeLessThan(1e-3);
    expect(relativeError(dc(45), wanted * (1 + 25 * 0.00393))).toBeLessThan(1e-3);
  });

  it.each([
    [20_000, 1.1666529467],
    [50_000, 1.63868859109],
    [100_000, 2.2219302544]
  ])(
    'of the catalogue has skin effect at %i Hz: %f times the direct-current value of 14 AWG',
    (frequency_Hz, ratio) => {
      const at = (length: number): number =>
        of([loop('L1', square(0, 0, 0.5), { turns: 1 })], {
          leadIn: { cable: 'pair-14', length },
          channel: channel('U1', 1, { frequency_Hz })
        }).resistance_ohm;
      // ratios of the round-wire reference
      const wanted = (ratio * 10 * 2 * 1.7241e-8) / (Math.PI * 0.000814 ** 2);
      // the cable's own capacitance adds a few thousandths
      expect(relativeError(at(10) - at(0), wanted)).toBeLessThan(5e-3);
    }
  );

  it('of no length changes nothing', () => {
    const bare = of(one, {});
    expect(of(one, { leadIn: { cable: 'pair-18', length: 0 } }).inductance_H).toBe(bare.inductance_H);
  });
});

describe('a tail', () => {
  it('adds 2 × 4 m of wire to the direct-current resistance', () => {
    const [without, behind] = [of(one, {}), of([loop('L1', square(0, 0), { tail: { length: 4 } })], {})];
    const perMetre = 1.7241e-8 / (Math.PI * 0.000814 ** 2);
    expect(relativeError(behind.resistanceDc_ohm - without.resistanceDc_ohm, 8 * perMetre)).toBeLessThan(
      1e-9
    );
    expect(relativeError(without.resistanceDc_ohm, 21.6 * perMetre)).toBeLessThan(1e-9);
  });

  it('adds the inductance of a twisted pair: 3.8 mm between its wires', () => {
    // one turn, on which the tail's capacitance tells hardly at all
    const single = (length: number) => of([loop('L1', square(0, 0), { turns: 1, tail: { length } })], {});
    const [without, behind] = [single(0), single(10)];
    // (µ0/π)·acosh(D/d) and both internal parts, 0.7024 of µ0/8π at 50 kHz (round-wire reference)
    const perMetre = 4e-7 * (Math.acosh(3.8 / 1.628) + 0.7024 / 4);
    expect(relativeError(behind.inductance_H - without.inductance_H, 10 * perMetre)).toBeLessThan(0.01);
  });
});

describe('loops far from one another', () => {
  it.each([
    ['in series', strings(['L1', 'L2', 'L3', 'L4']), 4],
    ['in parallel', strings(['L1'], ['L2'], ['L3'], ['L4']), 0.25],
    ['series-parallel', strings(['L1', 'L2'], ['L3', 'L4']), 1]
  ] as const)('%s have that many times the figures of one', (_, wiring, factor) => {
    const [single, all] = [of(one, {}), of(far, wiring)];
    // a loop's own capacitance weighs a little differently
    expect(relativeError(all.inductance_H, factor * single.inductance_H)).toBeLessThan(1e-4);
    expect(relativeError(all.resistance_ohm, factor * single.resistance_ohm)).toBeLessThan(1e-4);
    expect(relativeError(all.resistanceDc_ohm, factor * single.resistanceDc_ohm)).toBeLessThan(1e-12);
  });
});

describe('loops beside one another in series', () => {
  const two = [loop('L1', square(0, 0)), loop('L2', square(2, 0))];
  const wired = (reversed: boolean): Assessment =>
    assess(two, { strings: [[{ loop: 'L1' }, { loop: 'L2', reversed }]] });

  it('have L1 + L2 + 2M, M negative side by side, and L1 + L2 − 2M with one reversed', () => {
    const found = wired(false);
    const [a, b] = found.loops;
    const M = found.couplings[0]!.mutual_H;
    expect(M).toBeLessThan(0);
    // capacitance apart, which raises the apparent inductance a little
    expect(
      relativeError(found.circuits[0]!.inductance_H, a!.inductance_H + b!.inductance_H + 2 * M)
    ).toBeLessThan(5e-3);
    const other = wired(true).circuits[0]!.inductance_H;
    expect(relativeError(other - found.circuits[0]!.inductance_H, -4 * M)).toBeLessThan(0.02);
  });

  it('report their coupling as drawn, whatever the wiring', () => {
    expect(wired(true).couplings).toEqual(wired(false).couplings);
  });
});

describe("a loop's own figures", () => {
  it('hold at the frequency of its circuit, and at 50 kHz in none', () => {
    const found = assess([loop('L1', square(0, 0)), loop('L2', square(20, 0))], {
      channel: channel('U1', 1, { frequency_Hz: 80_000 })
    });
    expect(found.loops.map(({ frequency_Hz }) => frequency_Hz)).toEqual([80_000, 50_000]);
    expect(found.loops[0]!.resistanceAc_ohm).toBeGreaterThan(found.loops[1]!.resistanceAc_ohm);
    expect(found.loops[0]!.inductance_H).toBeLessThan(found.loops[1]!.inductance_H);
    expect(relativeError(found.loops[0]!.resistanceDc_ohm, found.loops[1]!.resistanceDc_ohm)).toBeLessThan(
      1e-12
    );
  });

  it('know nothing of tail and lead-in', () => {
    const long = assess([loop('L1', square(0, 0), { tail: { length: 50 } })], {
      leadIn: { cable: 'k', length: 500 }
    });
    expect(long.loops[0]!.inductance_H).toBe(assess(one, {}).loops[0]!.inductance_H);
  });
});

describe('capacitance', () => {
  it('raises the apparent inductance to about L/(1 − ω²LC)', () => {
    const found = assess([loop('L1', square(0, 0, 3), { turns: 8 })], {
      channel: channel('U1', 1, { frequency_Hz: 100_000 })
    });
    const { inductance_H: L, capacitance_F: C } = found.loops[0]!;
    const wanted = L / (1 - (2 * Math.PI * 100_000) ** 2 * L * C);
    expect(wanted / L).toBeGreaterThan(1.05);
    expect(relativeError(found.circuits[0]!.inductance_H, wanted)).toBeLessThan(1e-3);
  });
});

describe('a lead-in so long that the terminals look capacitive', () => {
  it('has no frequency of its own and does no harm to the rest', () => {
    const found = of(one, {
      leadIn: { cable: 'pair-14', length: 6_000 },
      channel: channel('U1', 1, { frequency_Hz: null })
    });
    expect(Number.isFinite(found.frequency_Hz)).toBe(true);
    expect(Number.isFinite(found.inductance_H)).toBe(true);
    expect(Number.isFinite(found.resistance_ohm)).toBe(true);
  });
});

/**
 * Whole sites drawn at random, against an independent network: loops by Neumann's integral, lines and wiring as one nodal
 * system, vehicles and mats as one dense matrix.
 *
 * What is asked of the product: L within 1 %, R within 5 %, Q within 6 %, ΔL/L within 2 %. What holds is tighter, and that
 * is what is tested.
 */
import { describe, expect, it } from 'vitest';
import { createAssessor } from '#analysis/assess';
import { PATIENCE } from '../physics/support/arbitraries';
import { referenceOf, relativeError } from '../physics/support/reference';
import { siteOf } from './support/sites';

interface Design {
  readonly name: string;
  readonly circuits: readonly {
    readonly id: string;
    readonly frequency_Hz: number;
    readonly inductance_H: number;
    readonly resistance_ohm: number;
    readonly q: number;
    readonly resistanceDc_ohm: number;
  }[];
  /** Of loops 1 and 2, 1 and 3, … 2 and 3, … */
  readonly mutuals_H: readonly number[];
  readonly probes: readonly { readonly deltaLOverL: readonly number[] }[];
  readonly site: { readonly steel?: readonly { readonly pitch: number }[] } & Readonly<
    Record<string, unknown>
  >;
}

const { cases, generator } = referenceOf<Design>('designs');

/**
 * Without steel all that differs is the heat that two loops on one pavement lose together (up to 4e-4 of R), and wires that
 * cross closer than their insulation allows, which the reference lets through one another (up to 1e-3 of M).
 */
const PLAIN = {
  frequency_Hz: 1e-5,
  inductance_H: 2e-5,
  resistance_ohm: 1e-3,
  q: 1e-3,
  resistanceDc_ohm: 1e-8
};
/** A mat is cut off a metre beyond the loops. */
const OVER_STEEL = {
  frequency_Hz: 5e-4,
  inductance_H: 1e-3,
  resistance_ohm: 3e-3,
  q: 3e-3,
  resistanceDc_ohm: 1e-8
};
/** Over too many meshes bars at a multiple of the pitch stand for the mat's own. */
const OVER_CLOSE_MAT = { ...OVER_STEEL, inductance_H: 6e-3, resistance_ohm: 6e-3, q: 1e-2 };
const MUTUAL = 1e-3;
/** ΔL/L. The mesh always errs towards less; where fluxes nearly cancel, its half per cent is one of what is left. */
const RESPONSE = 0.0125;
/** Over a mat the vehicle's own images are those of a plane: within 2 % of ΔL/L … */
const RESPONSE_OVER_STEEL = 0.02;
/** … or within so much of L where there is hardly a response. */
const LEAST = 5e-6;

describe.each(cases)(`$name (${generator})`, { timeout: PATIENCE }, (design) => {
  const found = createAssessor().assess(siteOf(design.site), 'all');
  const isClose = design.site.steel?.some(({ pitch }) => pitch < 0.15);
  const limits = isClose ? OVER_CLOSE_MAT : design.site.steel ? OVER_STEEL : PLAIN;

  it.each(design.circuits)('circuit $id at its terminals', (wanted) => {
    const circuit = found.circuits.find(({ id }) => id === wanted.id)!;
    for (const key of ['frequency_Hz', 'inductance_H', 'resistance_ohm', 'q', 'resistanceDc_ohm'] as const)
      expect(relativeError(circuit[key], wanted[key]), key).toBeLessThan(limits[key]);
  });

  it('loops in pairs', () => {
    expect(found.couplings).toHaveLength(design.mutuals_H.length);
    expect(found.couplings.length).toBe((found.loops.length * (found.loops.length - 1)) / 2);
    design.mutuals_H.forEach((wanted, k) =>
      expect(relativeError(found.couplings[k]!.mutual_H, wanted)).toBeLessThan(MUTUAL)
    );
  });

  it('vehicles over it', () => {
    expect(found.probes).toHaveLength(design.probes.length);
    const limit = design.site.steel ? RESPONSE_OVER_STEEL : RESPONSE;
    design.probes.forEach(({ deltaLOverL }, k) =>
      deltaLOverL.forEach((wanted, i) => {
        const off = Math.abs(found.probes[k]!.circuits[i]!.deltaLOverL - wanted);
        expect(off, found.probes[k]!.vehicle).toBeLessThan(
          Math.max(limit * -wanted, design.site.steel ? LEAST : 0)
        );
      })
    );
  });
});

import { describe, expect, it } from 'vitest';
import { createAssessor } from '#analysis/assess';
import { readSite } from '#plan/read';
import { archived } from '../archive/documents';
import { referenceOf, relativeError, type Reference } from '../physics/support/reference';

interface Expected {
  readonly generator: string;
  readonly tolerance: Readonly<Record<string, number>>;
  readonly loops: readonly {
    readonly id: string;
    readonly inductance_H: number;
    readonly resistanceDc_ohm: number;
    readonly wireLength_m: number;
  }[];
  readonly couplings: readonly { readonly a: string; readonly b: string; readonly mutual_H: number }[];
  readonly probes: readonly { readonly probe: number; readonly loop: string; readonly deltaL_H: number }[];
  readonly circuits: readonly {
    readonly id: string;
    readonly inductance_H: number;
    readonly resistance_ohm: number;
    readonly q: number;
  }[];
}

const expected = referenceOf('contract.expected') as Reference<never> & Expected;
const reading = readSite(archived('contract'));
if (!reading.ok) throw new Error('the contract example cannot be read');
const found = createAssessor().assess(reading.site);
const by = <T extends { readonly id: string }>(list: readonly T[], id: string): T =>
  list.find((each) => each.id === id)!;
const limit = (name: string): number => expected.tolerance[name]!;

describe(`the contract example (${expected.generator})`, () => {
  it.each(expected.loops)('loop $id', (row) => {
    const loop = by(found.loops, row.id);
    expect(relativeError(loop.inductance_H, row.inductance_H)).toBeLessThan(limit('loops'));
    expect(relativeError(loop.resistanceDc_ohm, row.resistanceDc_ohm)).toBeLessThan(limit('loops'));
    expect(relativeError(loop.wireLength_m, row.wireLength_m)).toBeLessThan(limit('loops'));
  });

  it.each(expected.couplings)('coupling of $a and $b', ({ a, b, mutual_H }) => {
    const coupling = found.couplings.find((each) => each.a === a && each.b === b)!;
    expect(relativeError(coupling.mutual_H, mutual_H)).toBeLessThan(limit('couplings'));
    const k = mutual_H / Math.sqrt(by(found.loops, a).inductance_H * by(found.loops, b).inductance_H);
    expect(relativeError(coupling.k, k)).toBeLessThan(limit('couplings'));
  });

  it.each(expected.probes)('loop $loop under the vehicle of probe $probe', ({ probe, loop, deltaL_H }) => {
    const change = by(found.probes[probe]!.loops, loop);
    expect(relativeError(change.deltaL_H, deltaL_H)).toBeLessThan(limit('probes'));
  });

  it.each(expected.circuits)('circuit $id', (row) => {
    const circuit = by(found.circuits, row.id);
    for (const key of ['inductance_H', 'resistance_ohm', 'q'] as const)
      expect(relativeError(circuit[key], row[key])).toBeLessThan(limit(`circuits.${key}`));
  });

  it('keeps its sums: a coupling for every two loops, a figure for every loop and circuit', () => {
    expect(found.couplings).toHaveLength(15);
    expect(found.loops.map(({ id }) => id)).toEqual(['A1', 'A2', 'A3', 'A4', 'A5', 'A6']);
    expect(found.circuits.map(({ frequencyFrom }) => frequencyFrom)).toEqual(['given', 'given', 'given']);
    expect(found.beats).toEqual([]);
  });
});

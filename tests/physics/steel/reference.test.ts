/** Mats and vehicles over them against an independent computation of the whole lattice; see the generators. */
import { describe, expect, it } from 'vitest';
import { modelLoop } from '#analysis/electrical/loop-model';
import { createSteelStore } from '#analysis/electrical/steel';
import { wireOf } from '#plan/catalogue/wires';
import type { Loop, Steel } from '#plan/schema';
import { PATIENCE } from '../support/arbitraries';
import { referenceOf } from '../support/reference';

interface MatCase {
  readonly name: string;
  readonly frequency: number;
  readonly change_H: readonly (readonly (readonly [number, number])[])[];
  readonly steel: Steel;
  readonly loops: readonly Loop[];
}

const { cases, generator } = referenceOf<MatCase>('steel');
const isCutOff = (name: string): boolean => name.includes('edge');
const store = createSteelStore();
const modelOf = (loop: Loop, key: number) => modelLoop(loop, wireOf(loop.wire, { wires: [] }), key)!;

describe(`a mat under loops (${generator})`, { timeout: PATIENCE }, () => {
  let key = 1;
  it.each(cases)('$name', ({ name, frequency, change_H, steel, loops }) => {
    const models = loops.map((loop) => modelOf(loop, key++));
    const found = store.matrixFor(models, { steel: [steel] })!.at(frequency);
    change_H.forEach((row, i) =>
      row.forEach(([re, im], j) => {
        const own = Math.hypot(...change_H[i]![i]!);
        const off = Math.hypot(found[i]![j]!.re - re, found[i]![j]!.im - im);
        expect(off / own).toBeLessThan(i === j ? 0.0075 : 0.005);
        // a lattice is cut off a metre beyond the loop: where it is whole, next to nothing is missing
        if (i === j && !isCutOff(name)) expect(off / own).toBeLessThan(0.002);
      })
    );
  });
});

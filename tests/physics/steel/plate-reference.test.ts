/** Plates at rest against an independent method; see the generator. */
import { describe, expect, it } from 'vitest';
import { modelLoop } from '#analysis/electrical/loop-model';
import { createSteelStore } from '#analysis/electrical/steel';
import { wireOf } from '#plan/catalogue/wires';
import type { Loop, Steel } from '#plan/schema';
import { PATIENCE } from '../support/arbitraries';
import { referenceOf } from '../support/reference';

interface PlateCase {
  readonly name: string;
  readonly frequency: number;
  readonly change_H: readonly [number, number];
  readonly steel: Steel;
  readonly loop: Loop;
}

const { cases, generator } = referenceOf<PlateCase>('steel-plates');
const store = createSteelStore();

describe(`a plate under or beside a loop (${generator})`, { timeout: PATIENCE }, () => {
  let key = 1;
  it.each(cases)('$name', (row) => {
    const model = modelLoop(row.loop, wireOf(row.loop.wire, { wires: [] }), key++)!;
    const found = store.matrixFor([model], { steel: [row.steel] })!.at(row.frequency)[0]![0]!;
    const [re, im] = row.change_H;
    expect(Math.abs(found.re / re - 1)).toBeLessThan(0.012);
    expect(Math.abs(found.im / im - 1)).toBeLessThan(0.03);
    expect(Math.abs(found.re - re) / model.external).toBeLessThan(0.0015);
  });
});

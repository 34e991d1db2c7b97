import { describe, expect, it } from 'vitest';
import { externalInductance, mutualInductance } from '#physics/inductance/loop';
import type { Loop } from '#plan/schema';
import { referenceOf, relativeError } from '../support/reference';
import { drawnWinding } from '../support/windings';

interface LoopCase {
  readonly loop: Loop;
  readonly externalInductance_H: number;
  readonly wireLength_m: number;
}

interface PairCase {
  readonly name: string;
  readonly a: Loop;
  readonly b: Loop;
  readonly mutual_H: number;
}

const alone = referenceOf<LoopCase>('loops');
const pairs = referenceOf<PairCase>('loop-pairs');

describe(`a loop alone (${alone.generator})`, () => {
  it.each(alone.cases)('$loop.name', ({ loop, externalInductance_H, wireLength_m }) => {
    const winding = drawnWinding(loop);
    // the closed forms of a circle with itself differ in terms of (wire radius / radius)²
    const circles = loop.shape.kind === 'circle' ? ((2 * winding.wireRadius) / loop.shape.diameter) ** 2 : 0;
    expect(relativeError(externalInductance(winding), externalInductance_H)).toBeLessThan(
      alone.tolerance + circles
    );
    expect(relativeError(winding.wireLength, wireLength_m)).toBeLessThan(1e-11);
  });
});

describe(`two loops (${pairs.generator})`, () => {
  it.each(pairs.cases)('$name', ({ a, b, mutual_H }) => {
    const found = mutualInductance(drawnWinding(a), drawnWinding(b));
    if (mutual_H === 0) expect(Math.abs(found)).toBeLessThan(1e-15);
    else expect(relativeError(found, mutual_H)).toBeLessThan(pairs.tolerance);
  });
});

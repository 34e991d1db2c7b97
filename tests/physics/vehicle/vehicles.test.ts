import { describe, expect, it } from 'vitest';
import { partsOf } from '#analysis/electrical/bodies';
import type { Loop, VehiclePart } from '#plan/schema';
import { PATIENCE } from '../support/arbitraries';
import { referenceOf, relativeError } from '../support/reference';
import { bodyOf, change } from '../support/vehicles';
import { drawnWinding } from '../support/windings';

interface VehicleCase {
  readonly name: string;
  readonly deltaL_H: number;
  /** Nothing by symmetry: compare with this in henries. */
  readonly absolute?: true;
  readonly parts: readonly VehiclePart[];
  readonly at: readonly [number, number];
  readonly heading: number;
  readonly loop: Loop;
}

const { cases, tolerance, generator } = referenceOf<VehicleCase>('plates');
const ROUND_OFF = 1e-12;
/** What the mesh of the usual fineness may add to the tolerance of the values. */
const MESH = 0.009;
/** A column of wires counts at its mean height, a ring as so many points. */
const RING = 0.001;

describe(`ΔL of a loop under a vehicle (${generator})`, { timeout: PATIENCE }, () => {
  it.each(cases)('$name', ({ deltaL_H, absolute, parts, at, heading, loop }) => {
    const body = bodyOf(partsOf({ id: 'v', name: '', parts }));
    const found = change(body, drawnWinding(loop), { x: at[0], y: at[1], heading });
    const plates = parts.some(({ kind }) => kind === 'plate');
    if (absolute) expect(Math.abs(found)).toBeLessThan(ROUND_OFF);
    else expect(relativeError(found, deltaL_H)).toBeLessThan(tolerance + (plates ? MESH : RING));
  });
});

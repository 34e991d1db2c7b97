/**
 * The places of a pass by the vehicle's mesh itself: over steel, where the compressed form does not hold, and for vehicles
 * too large for it. A place costs milliseconds there. So every second or fourth is computed, by the coarse mesh, and where the response is
 * strong every fourth by the fine one too; how the two differ changes little from one to the next. Tests hold the result
 * against the fine mesh: within 2 % of the strongest response of the pass.
 */
import type { Placement } from '#physics/field/filaments';
import type { VehicleBody } from '../electrical/bodies';
import type { SolvedCircuit } from '../electrical/circuit-model';
import { quickEffect, vehicleEffect } from '../electrical/vehicle-effect';
import type { Steps } from '../steps';
import { COARSER, fillBetween, type Run } from './samples';

/** A response below this is left as the coarse mesh gives it. */
const FAINT = 5e-5;
const MIDDLE = COARSER / 2;

export function* samplesByMesh(
  solved: SolvedCircuit,
  body: VehicleBody,
  {
    from,
    step,
    last,
    runs
  }: { readonly from: number; readonly step: number; readonly last: number; readonly runs: readonly Run[] },
  placeAt: (along: number) => Placement
): Steps<Float64Array> {
  const samples = new Float64Array(last + 1);
  const isKnown = new Uint8Array(last + 1);
  const factors = new Float64Array(last + 1).fill(1);
  const placed = (k: number): Placement => placeAt(from + k * step);
  for (let k = 0; k <= last; k += COARSER) {
    const quick = -quickEffect(solved, body, placed(k));
    samples[k] = quick;
    isKnown[k] = 1;
    yield;
    if (quick < FAINT) continue;
    samples[k] = -vehicleEffect(solved, body, placed(k));
    factors[k] = samples[k]! / quick;
    yield;
  }
  for (const run of runs) {
    if (run.every !== 1) continue;
    for (let k = run.from + MIDDLE; k < run.from + run.count; k += COARSER) {
      const factor = (factors[k - MIDDLE]! + factors[k + MIDDLE]!) / 2;
      samples[k] = -quickEffect(solved, body, placed(k)) * factor;
      isKnown[k] = 1;
      yield;
    }
  }
  fillBetween(samples, isKnown, COARSER, MIDDLE);
  fillBetween(samples, isKnown, MIDDLE);
  return samples;
}

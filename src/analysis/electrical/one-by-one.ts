/**
 * Responses at many places one by one: over steel, and by the mesh itself of a vehicle that is too large for its height to be
 * compressed.
 */
import type { Placement } from '#physics/field/filaments';
import type { Steps } from '../steps';
import type { VehicleBody } from './bodies';
import type { SolvedCircuit } from './circuit-model';
import { responsesOverSteel } from './steel-effects';
import { vehicleEffect } from './vehicle-effect';

/** −ΔL/L at every place. */
export function* responsesOneByOne(
  solved: SolvedCircuit,
  body: VehicleBody,
  placements: readonly Placement[],
  onShare: (share: number) => number | void = () => {}
): Steps<Float64Array> {
  const overSteel = solved.steel && (yield* responsesOverSteel(solved, body, placements, onShare));
  if (overSteel) return overSteel;
  const responses = new Float64Array(placements.length);
  for (const [k, placement] of placements.entries()) {
    responses[k] = -vehicleEffect(solved, body, placement);
    yield onShare(k / placements.length);
  }
  return responses;
}

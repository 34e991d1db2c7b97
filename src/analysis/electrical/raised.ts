/** A prepared vehicle with every part higher or lower, without preparing it anew. */
import { raisedBody } from '#physics/vehicle/raised';
import { BOUNDS } from '#plan/bounds';
import type { Part } from '#physics/vehicle/parts';
import type { Meshes, VehicleBody } from './bodies';

const raisedMeshes = (meshes: Meshes, by: number): Meshes => ({
  get fine() {
    return raisedBody(meshes.fine, by);
  },
  get coarse() {
    return raisedBody(meshes.coarse, by);
  }
});

/** `by` metres. Over a conducting plane that is the vehicle as it was over a plane as much deeper, lifted. */
export const raised = (vehicle: VehicleBody, by: number): VehicleBody => ({
  ...vehicle,
  ...raisedMeshes(vehicle, by),
  parts: vehicle.parts.map((part) => ({ ...part, height: part.height + by })),
  over: (depth) => raisedMeshes(vehicle.over(depth + by), by)
});

/** The part's lowest point, metres above the road. */
export const lowestOf = (part: Part): number => {
  if (part.kind === 'plate') return part.height;
  const [x, y, z] = part.axis;
  return part.height - (part.radius * Math.hypot(x, y)) / Math.hypot(x, y, z);
};

/** How far it can be lowered and still clear the road, metres; 0 or more. */
export const clearanceOf = ({ parts }: VehicleBody): number =>
  Math.max(0, Math.min(...parts.map(lowestOf)) - BOUNDS.partHeight.min);

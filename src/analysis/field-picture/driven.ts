/**
 * The currents that a source drives in a vehicle that stands somewhere: by the very mesh that the vehicle's responses come
 * from, and the loop's flux as they see it.
 */
import type { Placement } from '#physics/field/filaments';
import { placedSource } from '#physics/field/placed-field';
import type { FieldMaker } from '#physics/field/points';
import type { Body } from '#physics/vehicle/body';
import { drivenBy, drivenSources, type DrivenCurrents } from '#physics/vehicle/currents';
import { fluxThrough } from '#physics/vehicle/flux';
import type { Part } from '#physics/vehicle/parts';
import { vehicleOf } from '#plan/catalogue/vehicles';
import type { Probe, Site } from '#plan/schema';
import type { Means } from '../means';
import type { Source } from './source';

export interface Driven {
  readonly placement: Placement;
  readonly parts: readonly Part[];
  readonly body: Body;
  readonly currents: DrivenCurrents;
}

/** Null for a vehicle that is not there. The first of its kind is prepared first, some tenths of a second. */
export const drivenIn = (
  site: Site,
  { vehicle: id, at, heading }: Probe,
  { loops }: Source,
  { bodies }: Means
): Driven | null => {
  const vehicle = vehicleOf(id, site);
  if (!vehicle) return null;
  const { fine: body, parts } = bodies.get(vehicle);
  const placement = { x: at[0], y: at[1], heading };
  const flux = new Float64Array(body.size);
  for (const { model, current } of loops) {
    const own = fluxThrough(body, model.filaments, placement);
    for (let k = 0; k < flux.length; k++) flux[k]! += current * own[k]!;
  }
  return { placement, parts, body, currents: drivenBy(body, flux) };
};

export const fieldOfDriven = ({ body, currents, placement }: Driven): FieldMaker =>
  placedSource(drivenSources(body, currents), placement);

const largestCell = (nodes: Float64Array): number =>
  nodes.reduce((most, node, k) => (k === 0 ? most : Math.max(most, node - nodes[k - 1]!)), 0);

/** See `FieldPicture`. */
export const unresolvedBy = ({ currents: { sheets } }: Driven): number =>
  Math.max(0, ...sheets.map(({ xs, ys }) => Math.max(largestCell(xs), largestCell(ys)))) / 3;

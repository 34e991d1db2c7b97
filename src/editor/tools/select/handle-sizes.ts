/** Sizes that belong to a handle, and where the handle goes for those that are typed. */
import { BOUNDS } from '#plan/bounds';
import { add, rotate, scale, subtract } from '#plan/geometry/points';
import type { Point, Shape, Site } from '#plan/schema';
import { handleSide } from '#plan/shapes/box';
import type { EntryOffer, TypedSizes } from '../../dimension-entry';
import { shiftBy, shiftSizes, sizeOffer } from '../../entry/placing';
import type { PlanHandle } from '../../handles';
import { laneOf, loopOf } from '../../things';
import type { Ref } from '../../types';

const shapeOf = (site: Site, { kind, id }: Ref): Shape | undefined =>
  kind === 'loop' ? loopOf(site, id)?.shape : undefined;

/** What can be typed: the sides that the handle moves, the width of a lane, or how far a point goes. */
export function handleOffer(draft: Site, ref: Ref, handle: PlanHandle, to: Point): EntryOffer {
  const offer = (fields: EntryOffer['fields'], takesPlace = false): EntryOffer => ({
    of: 'resizing',
    fields,
    takesPlace
  });
  if (handle.kind === 'width')
    return offer([sizeOffer('width', laneOf(draft, ref.id)?.width ?? 0, BOUNDS.laneWidth)]);
  const shape = shapeOf(draft, ref);
  if (!shape || shape.kind === 'polygon') return offer(shiftSizes(subtract(to, handle.at)), true);
  if (shape.kind === 'circle') return offer([sizeOffer('diameter', shape.diameter, BOUNDS.side)]);
  const [x, y] = handleSide(handle.id);
  return offer([
    ...(x === 0 ? [] : [sizeOffer('width', shape.width, BOUNDS.side)]),
    ...(y === 0 ? [] : [sizeOffer('length', shape.length, BOUNDS.side)])
  ]);
}

/** Where a corner or side goes: the opposite one stays, or with control the centre. */
function boxHandleTo(
  shape: Exclude<Shape, { kind: 'circle' | 'polygon' }>,
  id: string,
  to: Point,
  { width, length }: TypedSizes,
  isFromCentre: boolean
): Point {
  const side = handleSide(id);
  const reach: Point = [(-side[0] * shape.width) / 2, (-side[1] * shape.length) / 2];
  const fixed = isFromCentre ? shape.centre : add(shape.centre, rotate(reach, shape.rotation));
  const share = isFromCentre ? 0.5 : 1;
  const [x, y] = rotate(subtract(to, fixed), -shape.rotation);
  const local: Point = [
    width === undefined ? x : side[0] * width * share,
    length === undefined ? y : side[1] * length * share
  ];
  return add(fixed, rotate(local, shape.rotation));
}

/** The place that the handle is to be dragged to, for a pointer that would drag it to `to`. */
export function handleTo(
  site: Site,
  ref: Ref,
  handle: PlanHandle,
  to: Point,
  typed: TypedSizes,
  isFromCentre: boolean
): Point {
  const shape = shapeOf(site, ref);
  if (!shape || shape.kind === 'polygon') return add(handle.at, shiftBy(subtract(to, handle.at), typed));
  if (shape.kind !== 'circle') return boxHandleTo(shape, handle.id, to, typed, isFromCentre);
  if (typed.diameter === undefined) return to;
  const rim = scale(subtract(handle.at, shape.centre), 2 / shape.diameter);
  const reach = isFromCentre ? typed.diameter / 2 : typed.diameter - shape.diameter / 2;
  return add(shape.centre, scale(rim, reach));
}

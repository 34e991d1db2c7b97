/** What lies on and in the road beside the loops: lanes, marks, ways, vehicles in place, steel. */
import { z } from 'zod';
import { BOUNDS } from '../bounds';
import { angle, id, name, note, point, points, within } from './basics';
import { ARROW_TURNS, bends, handling, opening } from './drawing';
import { metal } from './vehicles';

export const lane = z.looseObject({
  id,
  name: name.default(''),
  centreline: points(2),
  width: within(BOUNDS.laneWidth),
  /** The largest vehicle that uses the lane: what the loops of the next lane must not see. */
  largestVehicle: id.optional(),
  /** The centreline counts; this says what it was drawn from, so that it can be bent again. */
  bends: bends.optional(),
  ...handling
});

const MARK_KINDS = [
  'stop-line',
  'kerb',
  'gate',
  'cover',
  'joint',
  'note',
  'pull-box',
  'cabinet',
  'conduit',
  'island',
  'arrow',
  'dimension'
] as const;

export const mark = z.looseObject({
  id,
  kind: z.enum(MARK_KINDS),
  points: points(1),
  text: note.optional(),
  /** Of a gate, whose points run from the hinge or the post to the tip of the closed leaf. */
  opening: opening.optional(),
  /** Of an arrow, whose points run from its tail to its head. */
  turn: z.enum(ARROW_TURNS).optional(),
  /** Of a dimension: how far its line lies to the left of the way from one point to the other, metres. */
  offset: within(BOUNDS.dimensionOffset).optional(),
  ...handling
});

/** A way across the plan that is no lane: what a vehicle takes when it turns, cuts a corner or changes lanes. */
export const path = z.looseObject({ id, name: name.default(''), points: points(2), ...handling });

export const probe = z.looseObject({ vehicle: id, at: point, heading: angle.default(90), ...handling });

export const steel = z.discriminatedUnion('kind', [
  z.looseObject({
    id,
    kind: z.literal('mat'),
    depth: within(BOUNDS.steelDepth),
    pitch: within(BOUNDS.pitch),
    barRadius: within(BOUNDS.barRadius),
    outline: points(3),
    ...metal,
    ...handling
  }),
  z.looseObject({
    id,
    kind: z.literal('plate'),
    depth: within({ min: -5, max: 5 }),
    outline: points(3),
    ...metal,
    ...handling
  })
]);

/** What only the drawing knows: nothing here changes a figure. */
import { z } from 'zod';
import { BOUNDS, COUNTS } from '../bounds';
import { angle, id, name, point, points, whole, within } from './basics';

/** Of anything that can be drawn: a locked thing does not move, a hidden one is not drawn; both still count. */
export const handling = { locked: z.boolean().optional(), hidden: z.boolean().optional() };

/** What a curved centreline was made from: corners, and the radius of the bend at each (the ends' say nothing). */
export const bends = z.looseObject({
  points: points(2),
  radii: z.array(within(BOUNDS.bendRadius)).min(2).max(COUNTS.points)
});

/** How the leaf of a gate opens: about its first point, or along itself. */
export const opening = z.discriminatedUnion('kind', [
  z.looseObject({ kind: z.literal('swing'), angle: within({ min: -180, max: 180 }) }),
  z.looseObject({ kind: z.literal('slide'), travel: within(BOUNDS.leafTravel) })
]);

export const ARROW_TURNS = [
  'ahead',
  'left',
  'right',
  'ahead-left',
  'ahead-right',
  'left-right',
  'back'
] as const;

export const BASE64 = /^[A-Za-z0-9+/]*={0,2}$/;

const onLines = within({ min: -1e9, max: 1e9 });
/** Of a picture, or of a drawing in its own unit, which may be a thousandth of a millimetre. */
const pixel = z.tuple([onLines.min(0), onLines.min(0)]);

/** Lines of another drawing. Places are in that drawing's unit, as pixels are: from the upper left corner, y downwards. */
const lines = z.looseObject({
  width: onLines.min(0),
  height: onLines.min(0),
  paths: z
    .array(
      z
        .array(z.tuple([onLines, onLines]))
        .min(2)
        .max(COUNTS.linePoints)
    )
    .max(COUNTS.linePaths)
});

/** A picture, or the lines of another drawing, laid under the plan. */
export const underlay = z.looseObject({
  id,
  name: name.default(''),
  /** Null: its bytes are missing, and a place is kept for them. */
  picture: z
    .looseObject({
      mediaType: z.enum(['image/png', 'image/jpeg', 'image/webp']),
      /** The file's bytes as base64. */
      data: z.string().max(COUNTS.pictureText).regex(BASE64, { error: 'base64' }),
      width: whole(1, COUNTS.picturePixels),
      height: whole(1, COUNTS.picturePixels)
    })
    .nullable(),
  /** In place of a picture, which is null then. */
  lines: lines.optional(),
  /** Where the picture's middle lies on the plan. */
  at: point,
  metresPerPixel: within(BOUNDS.metresPerPixel),
  rotation: angle.default(0),
  opacity: within(BOUNDS.opacity).default(0.6),
  ...handling,
  locked: z.boolean().default(true),
  /** How it was scaled last: two points in pixels from the picture's upper left corner, and what lies between them. */
  scaledBy: z.looseObject({ from: pixel, to: pixel, distance_m: within(BOUNDS.side) }).optional()
});

const layer = z.looseObject({ hidden: z.boolean().optional(), locked: z.boolean().optional() });

export const layers = z.looseObject({
  underlay: layer.optional(),
  lanes: layer.optional(),
  loops: layer.optional(),
  notes: layer.optional()
});

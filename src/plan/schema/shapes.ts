/** Shapes of loops. */
import { z } from 'zod';
import { BOUNDS } from '../bounds';
import { angle, point, points, side, within } from './basics';

const rectangle = z.looseObject({
  kind: z.literal('rectangle'),
  centre: point,
  width: side,
  length: side,
  rotation: angle.default(0),
  cornerCut: within({ min: 0, max: BOUNDS.side.max }).default(0)
});

const quadrupole = z.looseObject({
  kind: z.literal('quadrupole'),
  centre: point,
  width: side,
  length: side,
  rotation: angle.default(0)
});

const diagonal = z.looseObject({
  kind: z.literal('diagonal'),
  centre: point,
  width: side,
  length: side,
  rotation: angle.default(0)
});

const circle = z.looseObject({ kind: z.literal('circle'), centre: point, diameter: side });

const polygon = z.looseObject({ kind: z.literal('polygon'), points: points(3) });

export const shape = z.discriminatedUnion('kind', [rectangle, quadrupole, diagonal, circle, polygon]);

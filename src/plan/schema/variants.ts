/** Designs that are kept beside the present one, each under a name. */
import { z } from 'zod';
import { COUNTS } from '../bounds';
import { id, name, note } from './basics';
import { design } from './design';

export const variant = z.looseObject({
  id,
  name: name.default(''),
  note: note.optional(),
  /** When it was kept last, ISO 8601. */
  kept: z.string().max(40).optional(),
  design
});

/** In the order in which they were first kept. */
export const variants = z.array(variant).max(COUNTS.variants);

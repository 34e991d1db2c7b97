/** Pictures that lie under the plan, as far as they can be drawn. */
import type { Picture } from '#plan/schema';

export type PictureState =
  | { readonly kind: 'waiting' }
  /** The bytes are there, and are no picture. */
  | { readonly kind: 'broken' }
  /** From the finest version to the coarsest, each half as large as the one before. */
  | { readonly kind: 'ready'; readonly versions: readonly ImageBitmap[] };

export type Pictures = ReadonlyMap<Picture, PictureState>;

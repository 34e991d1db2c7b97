import type { Translation } from '../message';

/** Was auf dem Plan neben dem Gezeichneten steht, und Tiefen in Worten. */
export const canvas = {
  'depth.below': '{depth} tief',
  'depth.above': '{depth} über der Fahrbahn',
  'canvas.mat': 'Matte, Stäbe alle {pitch}, {depth}',
  'canvas.plate': 'Platte, {depth}'
} as const satisfies Partial<Translation>;

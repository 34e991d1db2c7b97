/** Readings and what explains them, and designs side by side, computed on the spot. */
import { createAnswerer } from '#analysis/questions';
import { finish } from '#analysis/steps';
import type { Reckon } from '#exchange/files/exported';

export const reckon: Reckon = (kind, asked, site) =>
  Promise.resolve(finish(createAnswerer()(kind, site, asked)));

import { underlaysScene } from '#scenes/underlays';
import type { LayerDefinition } from './layer';

/** By itself and beneath everything, because a photograph takes longer to draw than all lines together. */
export const underlay: LayerDefinition = {
  name: 'underlay',
  dependsOn: ({ site, state, pictures, lineTiles, theme }) =>
    site.underlays.length === 0
      ? []
      : [site.underlays, site.layers?.underlay, pictures, lineTiles, state.viewport, theme],
  draw: underlaysScene
};

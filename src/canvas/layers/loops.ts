import { loopsScene } from '../scenes/loops';
import type { LayerDefinition } from './layer';

export const loops: LayerDefinition = {
  name: 'loops',
  dependsOn: ({ site, state, calls, theme }) => [
    site.loops,
    site.circuits,
    site.marks,
    calls,
    state.viewport,
    theme
  ],
  draw: ({ site, calls, state, theme }) => loopsScene(site, calls, state.viewport, theme)
};

import { loopsScene } from '#scenes/loops';
import { NO_CALLS, outputsScene } from '#scenes/traffic';
import type { LayerDefinition } from './layer';

/** While traffic is shown, what its outputs say stands for what the vehicles on the plan would. */
export const loops: LayerDefinition = {
  name: 'loops',
  dependsOn: ({ site, state, calls, moment, theme }) => [
    site.loops,
    site.circuits,
    site.marks,
    calls,
    moment?.outputs ?? null,
    state.viewport,
    theme
  ],
  draw: ({ site, calls, moment, state, theme }) => [
    ...(moment ? outputsScene(moment.outputs, site, state.viewport, theme) : []),
    ...loopsScene(site, moment ? NO_CALLS : calls, state.viewport, theme)
  ]
};

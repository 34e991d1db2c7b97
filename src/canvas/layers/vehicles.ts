import { vehiclesScene } from '../scenes/vehicles';
import type { LayerDefinition } from './layer';

/** By itself, because a vehicle that is dragged changes nothing else. */
export const vehicles: LayerDefinition = {
  name: 'vehicles',
  dependsOn: ({ site, state, theme }) => [site.probes, site.vehicles, state.viewport, theme],
  draw: ({ site, state, theme }) => vehiclesScene(site, state.viewport, theme)
};

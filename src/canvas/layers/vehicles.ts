import { trafficScene } from '#scenes/traffic';
import { vehiclesScene } from '#scenes/vehicles';
import type { LayerDefinition } from './layer';

/** By itself, because a vehicle that is dragged changes nothing else. */
export const vehicles: LayerDefinition = {
  name: 'vehicles',
  dependsOn: ({ site, state, moment, theme }) => [site.probes, site.vehicles, moment, state.viewport, theme],
  draw: ({ site, state, moment, theme }) =>
    moment ? trafficScene(moment, site, state.viewport, theme) : vehiclesScene(site, state.viewport, theme)
};

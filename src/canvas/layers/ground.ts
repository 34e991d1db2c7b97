/** The road and the grid on it. */
import { gridScene } from '../scenes/grid';
import { laneLinesScene, surfaceScene } from '../scenes/lanes';
import { marksScene } from '../scenes/marks';
import { steelScene } from '../scenes/steel';
import type { LayerDefinition } from './layer';

export const ground: LayerDefinition = {
  name: 'ground',
  dependsOn: ({ site, state, theme }) => [
    site.lanes,
    site.marks,
    site.steel,
    site.displayUnits,
    state.viewport,
    state.snap.showGrid,
    theme
  ],
  draw: ({ site, state: { viewport, snap }, theme }) => [
    ...surfaceScene(site.lanes, viewport, theme),
    ...(snap.showGrid ? gridScene(viewport, site.displayUnits, theme) : []),
    ...steelScene(site.steel, viewport, site.displayUnits, theme),
    ...laneLinesScene(site.lanes, viewport, theme),
    ...marksScene(site.marks, viewport, theme)
  ]
};

/** The road, the response map and the grid on it. */
import type { Site } from '#plan/schema';
import { gridScene } from '#scenes/grid';
import { laneLinesScene, surfaceScene } from '#scenes/lanes';
import { mapScene } from '#scenes/map';
import { marksScene } from '#scenes/marks';
import { pathsScene } from '#scenes/paths';
import { steelScene } from '#scenes/steel';
import { visibleUnderlays } from '#scenes/underlays';
import type { Theme } from '#scenes/theme';
import type { LayerDefinition } from './layer';

/** Lanes that are traced over a picture must not cover it. */
const onPicture = (site: Site, theme: Theme): Theme =>
  visibleUnderlays(site).length > 0 ? { ...theme, asphalt: theme.asphaltOnPicture } : theme;

export const ground: LayerDefinition = {
  name: 'ground',
  dependsOn: ({ site, state, map, theme }) => [
    site.lanes,
    site.marks,
    site.steel,
    site.paths,
    map,
    site.displayUnits,
    visibleUnderlays(site).length > 0,
    state.viewport,
    state.snap.showGrid,
    theme
  ],
  draw: ({ site, state: { viewport, snap }, map, theme }) => [
    ...surfaceScene(site.lanes, viewport, onPicture(site, theme)),
    ...mapScene(map, viewport, theme),
    ...(snap.showGrid ? gridScene(viewport, site.displayUnits, theme) : []),
    ...steelScene(site.steel, viewport, site.displayUnits, theme),
    ...laneLinesScene(site.lanes, viewport, theme),
    ...pathsScene(site.paths, viewport, theme),
    ...marksScene(site.marks, viewport, site.displayUnits, theme)
  ]
};

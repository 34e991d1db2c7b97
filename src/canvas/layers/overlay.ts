/** Labels, those of a response map too, selection, a pair that is pointed at, help for the gesture in hand, scale bar and north. */
import { furnitureScene } from '../scenes/furniture';
import { helpScene } from '../scenes/help';
import { labelBoxes, labelsScene } from '../scenes/labels';
import { mapLabelsScene } from '../scenes/map';
import { pairScene } from '../scenes/pair';
import { selectionScene } from '../scenes/selection';
import { NO_CALLS } from '../scenes/traffic';
import { spanScene, underlayLabelsScene } from '../scenes/underlays';
import type { LayerDefinition } from './layer';

export const overlay: LayerDefinition = {
  name: 'overlay',
  dependsOn: ({
    site,
    state,
    figures,
    severities,
    calls,
    pointed,
    map,
    moment,
    pictures,
    showsLabels,
    theme
  }) => [
    site,
    state.selection,
    state.overlay,
    state.keyboardPoint,
    state.tool,
    state.busy,
    state.viewport,
    figures,
    severities,
    calls,
    pointed,
    map,
    moment === null,
    pictures,
    showsLabels,
    theme
  ],
  draw: (frame) => [
    ...underlayLabelsScene(frame),
    ...(frame.map ? mapLabelsScene(frame.map, frame.state.viewport, frame.theme, labelBoxes(frame)) : []),
    ...labelsScene(frame.moment ? { ...frame, calls: NO_CALLS } : frame),
    ...selectionScene(frame),
    ...pairScene(frame),
    ...spanScene(frame),
    ...helpScene(frame),
    ...furnitureScene(frame.state.viewport, frame.site.displayUnits, frame.theme)
  ]
};

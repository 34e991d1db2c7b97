/** Labels, those of a response map too, selection, a pair that is pointed at, places and cuts that are looked at, help for the gesture in hand, scale bar and north. */
import { orderScene, setOutScene } from '#scenes/cutting';
import { ghostScene } from '#scenes/designs';
import { currentsScene, sectionLineScene, sectionMarksScene } from '#scenes/field';
import { furnitureScene } from '#scenes/furniture';
import { helpScene } from '#scenes/help';
import { labelBoxes, labelsScene } from '#scenes/labels';
import { mapLabelsScene } from '#scenes/map';
import { boxNamesScene } from '#scenes/marks';
import { pairScene } from '#scenes/pair';
import { placesScene } from '#scenes/places';
import { selectionScene } from '#scenes/selection';
import { NO_CALLS } from '#scenes/traffic';
import { spanScene, underlayLabelsScene } from '#scenes/underlays';
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
    field,
    moment,
    marked,
    cutting,
    ghost,
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
    field ?? null,
    moment === null,
    marked,
    cutting,
    ghost,
    pictures,
    showsLabels,
    theme
  ],
  draw: (frame) => [
    ...underlayLabelsScene(frame),
    ...(frame.field ? currentsScene(frame.field, frame.state.viewport, frame.theme) : []),
    ...(frame.map ? mapLabelsScene(frame.map, frame.state.viewport, frame.theme, labelBoxes(frame)) : []),
    ...(frame.cutting ? setOutScene(frame.cutting, frame.state.viewport, frame.theme) : []),
    ...(frame.ghost ? ghostScene(frame.ghost, frame.state.viewport, frame.theme) : []),
    ...boxNamesScene(frame.site.marks, frame.state.viewport, frame.theme),
    ...sectionLineScene(frame),
    ...labelsScene(frame.moment ? { ...frame, calls: NO_CALLS } : frame),
    ...sectionMarksScene(frame),
    ...selectionScene(frame),
    ...placesScene(frame.marked, frame.state.viewport, frame.theme),
    ...(frame.cutting ? orderScene(frame.cutting, frame.state.viewport, frame.theme, labelBoxes(frame)) : []),
    ...pairScene(frame),
    ...spanScene(frame),
    ...helpScene(frame),
    ...furnitureScene(frame.state.viewport, frame.site.displayUnits, frame.theme)
  ]
};

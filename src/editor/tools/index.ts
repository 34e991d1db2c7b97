/** The state that each tool begins in. */
import type { ToolName } from '../types';
import { areaMarkTool } from './area-mark';
import { arrowTool } from './arrow';
import { boxShapeTool } from './box-shape';
import { calibrateTool } from './calibrate';
import { circleTool } from './circle';
import { dimensionTool } from './dimension';
import { gateTool } from './gate';
import { laneTool } from './lane';
import { lineMarkTool } from './line-mark';
import { measureTool } from './measure';
import { panTool } from './pan';
import { pathTool } from './path';
import { placeMarkTool } from './place-mark';
import { polygonTool } from './polygon';
import { idle } from './select/idle';
import { steelTool } from './steel';
import { stopLineTool } from './stop-line';
import type { ToolState } from './tool';
import { vehicleTool } from './vehicle';

export const tools: Readonly<Record<ToolName, ToolState>> = {
  select: idle,
  pan: panTool,
  rectangle: boxShapeTool('rectangle'),
  quadrupole: boxShapeTool('quadrupole'),
  diagonal: boxShapeTool('diagonal'),
  circle: circleTool,
  polygon: polygonTool,
  lane: laneTool,
  'stop-line': stopLineTool,
  steel: steelTool,
  'pull-box': placeMarkTool('pull-box'),
  cabinet: placeMarkTool('cabinet'),
  kerb: lineMarkTool('kerb'),
  island: areaMarkTool('island'),
  arrow: arrowTool,
  gate: gateTool,
  cover: areaMarkTool('cover'),
  joint: lineMarkTool('joint'),
  conduit: lineMarkTool('conduit'),
  note: placeMarkTool('note'),
  dimension: dimensionTool,
  calibrate: calibrateTool,
  path: pathTool,
  vehicle: vehicleTool,
  measure: measureTool
};

/** The state that each tool begins in. */
import type { ToolName } from '../types';
import { boxShapeTool } from './box-shape';
import { circleTool } from './circle';
import { laneTool } from './lane';
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
  // Placed here until each has a tool of its own.
  kerb: idle,
  island: idle,
  arrow: idle,
  gate: idle,
  cover: idle,
  joint: idle,
  conduit: idle,
  note: idle,
  dimension: idle,
  calibrate: idle,
  path: pathTool,
  vehicle: vehicleTool,
  measure: measureTool
};

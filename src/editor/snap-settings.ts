import type { DisplayUnits } from '#plan/schema';
import { INCH } from '#units/constants';
import type { DrawingOptions, SnapSettings, SnapSwitch } from './types';

/** A tenth of a metre or half a foot: round in the system that the drawing shows. */
const GRID_STEP: Readonly<Record<DisplayUnits, number>> = { metric: 0.1, imperial: 6 * INCH };

export const defaultSnap = (units: DisplayUnits): SnapSettings => ({
  grid: true,
  objects: true,
  showGrid: true,
  gridStep: GRID_STEP[units],
  corners: true,
  centres: true,
  edges: true,
  lanes: true,
  gaps: true,
  tolerance: 8
});

export const SNAP_SWITCHES = [
  'grid',
  'objects',
  'showGrid',
  'corners',
  'centres',
  'edges',
  'lanes',
  'gaps'
] as const satisfies readonly SnapSwitch[];

export type SnapSwitches = Readonly<Record<SnapSwitch, boolean>>;

/** Each switch as `isOn` has it. */
export const snapSwitches = (isOn: (name: SnapSwitch) => boolean): SnapSwitches =>
  Object.fromEntries(SNAP_SWITCHES.map((name) => [name, isOn(name)])) as unknown as SnapSwitches;

export const DEFAULT_DRAWING: DrawingOptions = {
  laneCount: 1,
  laneWidth: null,
  lanesOppose: false,
  isArc: false,
  bendRadius: 0,
  gate: 'swing',
  arrow: 'ahead'
};

/** What the tools leave on the road, seen from above in a box of 24 by 24: lines of their icons. */
import type { ToolName } from '#editor/types';

export interface ToolIcon {
  readonly lines: readonly string[];
  /** Drawn thickly: paint, a leaf. */
  readonly thick?: readonly string[];
  readonly broken?: readonly string[];
}

export type RoadTool = Extract<
  ToolName,
  | 'lane'
  | 'stop-line'
  | 'arrow'
  | 'kerb'
  | 'island'
  | 'path'
  | 'steel'
  | 'cover'
  | 'joint'
  | 'pull-box'
  | 'cabinet'
  | 'conduit'
  | 'gate'
  | 'note'
  | 'dimension'
>;

export const ROAD_ICONS: Readonly<Record<RoadTool, ToolIcon>> = {
  lane: { lines: ['M5 3v18M19 3v18', 'M12 20v-9M9 14l3-3l3 3M12 6V4'] },
  'stop-line': { lines: ['M5 3v18M19 3v18', 'M12 20v-5'], thick: ['M8 9h8'] },
  arrow: { lines: ['M10 21v-9h4v9zM12 3l5 9H7z'] },
  kerb: { lines: ['M3 16c7 0 12-4 13-13', 'M3 21c10 0 17-6 18-18', 'M11 14l3 4M15 9l4.5 2'] },
  island: { lines: ['M12 3c4 3 6 9 6 15a6 3 0 0 1-12 0c0-6 2-12 6-15z', 'M12 8v9'] },
  path: { lines: ['M15 7l4-4l3 4'], broken: ['M5 21c0-9 14-6 14-17'] },
  steel: { lines: ['M8 3v18M16 3v18M3 8h18M3 16h18'] },
  cover: { lines: ['M4 6h16v12H4z', 'M9 6l-5 5M15 6L4 17M20 7L9 18M20 13l-5 5'] },
  joint: { lines: ['M3 5h18M3 19h18'], broken: ['M3 12h18'] },
  'pull-box': { lines: ['M7 7h10v10H7z', 'M2 12h5M17 12h5'] },
  cabinet: { lines: ['M6 3h12v15H6zM12 3v15M9 21v-3M15 21v-3'] },
  conduit: { lines: ['M8 21v-7a3 3 0 0 1 3-3h10', 'M3 21v-8a7 7 0 0 1 7-7h11'] },
  gate: { lines: ['M3 15h4v4H3z'], thick: ['M7 17h14'], broken: ['M5 5c8 0 14 4 15 10', 'M5 15V5'] },
  note: { lines: ['M5 3h14v12l-5 6H5z', 'M19 15h-5v6', 'M8.5 8h7M8.5 12h4'] },
  dimension: { lines: ['M4 4v9M20 4v9', 'M2 17h20', 'M2 19l4-4M18 19l4-4'] }
};

export const isRoadTool = (tool: ToolName): tool is RoadTool => tool in ROAD_ICONS;

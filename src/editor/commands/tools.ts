import type { Command, ToolName } from '../types';

const TOOLS: readonly (readonly [tool: ToolName, key: string, label: string])[] = [
  ['select', 'V', 'Select and move'],
  ['pan', 'H', 'Move the view'],
  ['rectangle', 'R', 'Draw a rectangle'],
  ['quadrupole', 'Q', 'Draw a quadrupole'],
  ['diagonal', 'D', 'Draw a diagonal'],
  ['circle', 'C', 'Draw a circle'],
  ['polygon', 'P', 'Draw a free polygon'],
  ['lane', 'L', 'Draw a lane'],
  ['stop-line', 'S', 'Draw a stop line'],
  ['steel', 'B', 'Draw steel in the pavement'],
  ['pull-box', 'J', 'Place a pull box'],
  ['cabinet', 'K', 'Place a cabinet'],
  ['path', 'N', 'Draw a path that vehicles take'],
  ['vehicle', 'A', 'Place a vehicle'],
  ['measure', 'M', 'Measure']
];

export const toolCommands: readonly Command[] = TOOLS.map(([tool, key, label]) => ({
  id: `tool-${tool}`,
  label,
  keys: [key],
  applies: () => true,
  run: (editor) => editor.setTool(tool)
}));

import type { Command, ToolName } from '../types';

const TOOLS: readonly (readonly [tool: ToolName, key: string])[] = [
  ['select', 'V'],
  ['pan', 'H'],
  ['rectangle', 'R'],
  ['quadrupole', 'Q'],
  ['diagonal', 'D'],
  ['circle', 'C'],
  ['polygon', 'P'],
  ['lane', 'L'],
  ['stop-line', 'S'],
  ['steel', 'B'],
  ['kerb', 'E'],
  ['island', 'Shift+E'],
  ['arrow', 'Shift+A'],
  ['gate', 'Y'],
  ['cover', 'Shift+Y'],
  ['joint', 'Z'],
  ['pull-box', 'J'],
  ['cabinet', 'K'],
  ['conduit', 'Shift+Z'],
  ['note', 'Shift+N'],
  ['dimension', 'Shift+M'],
  ['path', 'N'],
  ['vehicle', 'A'],
  ['measure', 'M'],
  ['calibrate', '']
];

export const toolCommands: readonly Command[] = TOOLS.map(([tool, key]) => ({
  id: `tool-${tool}`,
  keys: key === '' ? [] : [key],
  applies: () => true,
  run: (editor) => editor.setTool(tool)
}));

/** Tools that draw, and what they say. */
export const drawing = {
  'tool.kerb': 'Kerb',
  'tool.kerb.tip': 'Draw a kerb, point by point',
  'tool.island': 'Island',
  'tool.island.tip': 'Draw a traffic island, corner by corner',
  'tool.arrow': 'Arrow',
  'tool.arrow.tip': 'Put a direction arrow on the road',
  'tool.gate': 'Gate',
  'tool.gate.tip': 'Draw a gate leaf from its hinge or post to its tip',
  'tool.cover': 'Cover',
  'tool.cover.tip': 'Draw a cover in the road, corner by corner',
  'tool.joint': 'Joint',
  'tool.joint.tip': 'Draw a joint in the pavement',
  'tool.conduit': 'Conduit',
  'tool.conduit.tip': 'Draw a conduit, point by point',
  'tool.note': 'Note',
  'tool.note.tip': 'Write a note on the plan',
  'tool.dimension': 'Dimension',
  'tool.dimension.tip': 'Draw a dimension between two points',
  'tool.calibrate': 'Scale',
  'tool.calibrate.tip': 'Scale the picture by two points'
} as const;

/** Options of the tools that draw, and the fields of what they left on the plan. */
export const marks = {
  'options.title': 'Options: {tool}',

  'lanes.count': 'Lanes',
  'lanes.width': 'Lane width',
  'lanes.manner': 'How the next piece goes on',
  'lanes.straight': 'Straight',
  'lanes.arc': 'Arc',
  'lanes.bend': 'Bend radius',
  'lanes.oppose': 'Both ways',
  'lanes.hint': 'The key / changes between straight and arc, also in the middle of a lane',

  'gate.opens': 'Opens',
  'gate.swing': 'swinging',
  'gate.slide': 'sliding',
  'gate.unknown': 'not stated',
  'gate.angle': 'Swing, to the left',
  'gate.travel': 'Travel, towards its tip',

  'arrow.turn': 'Points',
  'turn.ahead': 'ahead',
  'turn.left': 'left',
  'turn.right': 'right',
  'turn.ahead-left': 'ahead and left',
  'turn.ahead-right': 'ahead and right',
  'turn.left-right': 'left and right',
  'turn.back': 'back',

  'marks.text': 'Text',
  'marks.x': 'Position x',
  'marks.y': 'Position y',
  'marks.length': 'Length',
  'marks.direction': 'Direction',
  'marks.offset': 'Line beside it by',
  'marks.run': '{length} long',
  'marks.round': '{count} corners, {round} round'
} as const;

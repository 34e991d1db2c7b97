/** What new things are called until somebody names them; written into the site. */
export const naming = {
  'site.untitled': 'Untitled site',
  'unit.numbered': 'Unit {number}',
  'path.numbered': 'Path {number}',

  'named.leftFront': 'Left, front',
  'named.leftRear': 'Left, rear',
  'named.rightFront': 'Right, front',
  'named.rightRear': 'Right, rear',

  'demo.name': 'Ostervale Road at Pennick Street, stop line',
  'demo.aheadLeft': 'Ahead and left',
  'demo.aheadRight': 'Ahead and right',
  'demo.cover': 'Loops keep 0.6 m and more from the cover.',
  'demo.dryDay': 'Cut and seal on a dry day above 5 °C; test every loop before the slot is filled.',
  'demo.leftUnit': 'Left lane unit',
  'demo.rightUnit': 'Right lane unit',
  'demo.notes':
    'Presence at the line and a queue loop behind it, lane by lane. Work on a road follows the local rules for closing the lane; saw cutting, splices and the cabinet are for people licensed to do them.'
} as const;

/** Why a loop's shape is impossible: said of files, of entries and in findings. */
export const shapes = {
  'finding.shape.width': 'width',
  'finding.shape.length': 'length',
  'finding.shape.diameter': 'diameter',
  'finding.shape.rotation': 'rotation',
  'finding.shape.points': 'points',
  'finding.shape.cornerCut': 'corner cut',

  'shape.size': '{size} m',
  'shape.sizes': 'a length from {min} m to {max} m',
  'shape.points': '{count} points',
  'shape.pointsRange': 'from {least} to {most} points',
  'shape.pointTwice': 'the point {point} twice in a row',
  'shape.pointsApart': 'every point apart from the one before it',
  'shape.side': 'a side of {length} m',
  'shape.sides': 'sides of at most {most} m',
  'shape.crossing': 'side {a} crossing or touching side {b}',
  'shape.simple': 'an outline that neither crosses nor touches itself',
  'shape.empty': 'an outline that encloses nothing',
  'shape.area': 'an area of at least {least}',
  'shape.cut': 'a cut from 0 to less than half the shorter side, here {room} m'
} as const;

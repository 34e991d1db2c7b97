/** Two-wheelers that make no call. */
export const walkCycles = {
  'walk.cycles.design.none': 'No two-wheeler is known to {circuit}.',
  'walk.cycles.design.never': 'The {vehicle} answers {best} at best; the threshold is {threshold}.',
  'walk.cycles.design.some':
    'The {vehicle} answers {worst} to {best}, depending on its path; the threshold is {threshold}.',
  'walk.cycles.design.always':
    'By the design the {vehicle} is seen on every path: {worst} at its worst, {times} times the threshold.',
  'walk.cycles.where.ask': 'Where do the riders go that are missed?',
  'walk.cycles.where.middle': 'In the middle of the lane it answers least: {response}.',
  'walk.cycles.where.right': '{offset} to the right of the middle it answers least: {response}.',
  'walk.cycles.where.left': '{offset} to the left of the middle it answers least: {response}.',
  'walk.cycles.where.there': 'There',
  'walk.cycles.where.elsewhere': 'Elsewhere, or everywhere',
  'walk.cycles.set.ask': 'Is channel {number} set to a threshold of {threshold}, or lower?',
  'walk.cycles.delay.none': 'No delay is set here: no call is too short.',
  'walk.cycles.delay.short':
    'The delay of {delay} is shorter than the {time} that a rider at 30 km/h takes for {length}.',
  'walk.cycles.delay.ask':
    'Are those missed that ride across without stopping, sooner than the delay of {delay}?',
  'walk.cycles.delay.fact': 'It is detected over {length} of its way: {time} at 30 km/h.',
  'walk.cycles.depth.ask': 'Has the road been overlaid since, or do the wires lie deeper than drawn?',
  'walk.cycles.lower.alone': 'Lower the threshold to {threshold}: no lane beside stands against it.',
  'walk.cycles.lower.keeps':
    'Lower the threshold to {threshold}: the {vehicle} in {lane} then still stays below it, with {response}.',
  'walk.cycles.lower.spoils':
    'A threshold of {threshold} would do, but then the {vehicle} in {lane} makes calls too, with {response}.',
  'walk.cycles.check': 'Ride the {vehicle} across ten times, at both edges and in the middle: ten calls.',
  'walk.cycles.end.never': '{circuit} as designed and set cannot see the {vehicle}.',
  'walk.cycles.end.path': 'They ride where the loop sees least.',
  'walk.cycles.end.shape':
    'When it is cut anew: a quadrupole or a diagonal, whose wires lie where they ride. Try it in the drawing.',
  'walk.cycles.end.share': 'Fewer loops on one channel: each of them gives a larger share of the inductance.',
  'walk.cycles.end.mark': 'Mark on the road where two-wheelers are seen best: over the wires.',
  'walk.cycles.end.set': 'The unit is set less sensitive than this site says.',
  'walk.cycles.end.delay': 'The delay of {delay} is longer than a two-wheeler stays.',
  'walk.cycles.end.delay.shorter':
    'Make the delay shorter, or let the controller do without it while two-wheelers are to be served.',
  'walk.cycles.end.depth': 'The wires lie deeper than the design reckons with: what is above answers less.',
  'walk.cycles.end.depth.draw': 'Draw the true depth of the slot and look at the answers again.'
} as const;

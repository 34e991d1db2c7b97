/** Two circuits that call together. */
export const walkLanes = {
  'walk.lanes.which.ask': 'Which circuit calls together with {circuit}?',
  'walk.lanes.which.only': 'Beside {circuit} only {other} is on a channel: it must be that one.',
  'walk.lanes.which.other': '{other}',
  'walk.lanes.who.ask': 'What is on the road when {circuit} and {other} call together?',
  'walk.lanes.who.one': 'One vehicle, in one lane',
  'walk.lanes.who.across': 'One vehicle, across both lanes',
  'walk.lanes.who.nobody': 'Nothing',
  'walk.lanes.pickUp.none': 'Neither {circuit} nor {other} has the other’s lane within reach.',
  'walk.lanes.pickUp.ask':
    'Drive something like the {vehicle} along {lane} alone. Does {circuit} call each time?',
  'walk.lanes.apart.ask':
    'Take the lead-in of {other} off its terminals. Does a vehicle on the loops of {other} still make {circuit} call?',
  'walk.lanes.between.ask':
    'Both lead-ins off the unit: what insulation is there between that of {circuit} and that of {other}?',
  'walk.lanes.beat.never': '{circuit} and {other} never run at the same time: they cannot beat.',
  'walk.lanes.beat.ask':
    'Switch the channel of {other} off for some minutes. Do the calls of {circuit} stop?',
  'walk.lanes.beat.conduit': 'Shared conduits make up {share} of their coupling.',
  'walk.lanes.outputs.ask': 'Do the outputs of {circuit} and {other} end on one input, or touch on the way?',
  'walk.lanes.check': 'A vehicle on each loop in turn makes only that one’s circuit call.',
  'walk.lanes.end.alone': '{circuit} is the only circuit on a channel here.',
  'walk.lanes.end.alone.draw':
    'Draw the other circuit and give it a channel; or choose “calls with nobody there”.',
  'walk.lanes.end.across': 'Both are right: one vehicle is over both.',
  'walk.lanes.end.across.markings':
    'See why vehicles drive there: markings, parking, a lane too narrow or a turn too tight.',
  'walk.lanes.end.across.narrower':
    'Narrower loops, further from the line between the lanes, see less of it.',
  'walk.lanes.end.crossed': 'Loops of {other} hang on the terminals of {circuit}.',
  'walk.lanes.end.crossed.trace':
    'Trace both lead-ins from the pull box to the cabinet, set the cores right, and label both ends.',
  'walk.lanes.end.touching': 'The wires of {circuit} and {other} touch, or water joins them.',
  'walk.lanes.end.touching.splices':
    'Look at the splices that they share a box with: make both anew, sealed and apart.',
  'walk.lanes.end.touching.cable':
    'In one cable: use a pair of its own for each circuit, never one wire of each.',
  'walk.lanes.end.outputs': 'The outputs are joined, not the loops.',
  'walk.lanes.end.outputs.separate':
    'Separate them at the controller’s inputs, or let the controller tell them apart.'
} as const;

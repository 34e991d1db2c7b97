/** No call for a vehicle that is there. */
export const walkNever = {
  'walk.never.alive.ask': 'What does channel {number} of {unit} show with nothing over the loops?',
  'walk.never.alive.runs': 'It runs, without a fault',
  'walk.never.alive.fault': 'A fault of the loop',
  'walk.never.alive.dark': 'Nothing',
  'walk.never.reach.none':
    'Nothing that {circuit} is asked for reaches its threshold of {threshold}: the {vehicle} answers {response} at best.',
  'walk.never.reach.fine':
    'By its design {circuit} sees the {vehicle}: {response} at best, over a threshold of {threshold}.',
  'walk.never.reach.fact':
    'The {vehicle} answers {response} where it answers most: {times} times the threshold of {threshold}.',
  'walk.never.test.ask':
    'Stop a vehicle like the {vehicle} in the middle of the loops. Does the unit show it?',
  'walk.never.test.any': 'Stop a vehicle in the middle of the loops. Does the unit show it?',
  'walk.never.delay.none': 'No delay is set here: nothing keeps a call back.',
  'walk.never.delay.ask': 'Leave it standing for more than the delay of {delay}. Does the call come then?',
  'walk.never.pulse.none':
    'The output holds for as long as a vehicle is there: it is not too short to be seen.',
  'walk.never.pulse.ask': 'The output gives one pulse of {pulse}. Can the controller see so short a call?',
  'walk.never.output.ask':
    'While the unit shows the vehicle: does its output change over, measured at its terminals?',
  'walk.never.frequency.ask':
    'Read the frequency with the loops empty, then with the vehicle. What does it do?',
  'walk.never.frequency.rise': 'The {vehicle} raises it by about {rise}.',
  'walk.never.frequency.rises': 'It rises about so much',
  'walk.never.frequency.less': 'It rises far less',
  'walk.never.frequency.stays': 'It stays where it is',
  'walk.never.frequency.unknown': 'The unit shows no frequency',
  'walk.never.set.ask': 'Is channel {number} set to a threshold of {threshold}, or lower?',
  'walk.never.elsewhere.none':
    '{circuit} is the only circuit here: its wires cannot be changed over with another’s.',
  'walk.never.elsewhere.ask':
    'Drive over the loops of {circuits}. Does the channel of {circuit} answer to any of them?',
  'walk.never.check':
    'Every one of ten vehicles makes {circuit} call, one of them at walking pace and one near the edge of the lane.',
  'walk.never.end.dark': 'Channel and unit show nothing: {unit} may have no power.',
  'walk.never.end.dark.other': 'Go on with the complaint “no power”.',
  'walk.never.end.threshold': 'By its design {circuit} cannot see what it is asked for.',
  'walk.never.end.threshold.lower':
    'Set a threshold of {threshold}: half of what the {vehicle} answers at best. Look at the lanes beside before.',
  'walk.never.end.threshold.anew':
    'Turns, shape, depth and the length of the lead-in decide the answer: try them in the drawing.',
  'walk.never.end.delay': 'The delay of {delay} keeps back the calls of vehicles that leave sooner.',
  'walk.never.end.delay.shorter': 'Make it shorter than a vehicle stays, or take it out.',
  'walk.never.end.pulse': 'The controller misses a pulse of {pulse}.',
  'walk.never.end.pulse.longer':
    'Use presence, a longer pulse, or an input of the controller that keeps a pulse.',
  'walk.never.end.controller': 'Unit and output are right: the call is lost on its way to the controller.',
  'walk.never.end.controller.wire':
    'Follow the output’s wires to the input of the controller, and see which input it is set to watch.',
  'walk.never.end.relay': 'The output of {unit} does not follow what it detects.',
  'walk.never.end.relay.replace':
    'See whether the output is switched off or belongs to another channel; else replace the unit.',
  'walk.never.end.set': 'The unit is not set as this site says.',
  'walk.never.end.set.as': 'Set channel {number} to a threshold of {threshold} with nothing over the loops.'
} as const;

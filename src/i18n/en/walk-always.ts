/** A call that does not go. */
export const walkAlways = {
  'walk.always.occupied.ask':
    'Is any metal over or beside {loops}: a vehicle, a plate, a skip, a leaf of a gate left half way?',
  'walk.always.occupied.holds':
    'Whatever answers more than {release} holds a call; the {vehicle} answers {response} where it answers most.',
  'walk.always.shown.ask': 'What does {unit} show for {circuit}?',
  'walk.always.shown.fault': 'A fault: the loop is out of range',
  'walk.always.shown.detection': 'A vehicle',
  'walk.always.shown.nothing': 'Neither, and yet there is a call',
  'walk.always.range.inside':
    'By its design {circuit} has {inductance}, and {unit} accepts {least} to {most}: it is the loop that has changed.',
  'walk.always.range.outside':
    'By its design {circuit} has {inductance}, and {unit} accepts only {least} to {most}.',
  'walk.always.reset.ask': 'Nothing over the loops: reset the channel of {circuit}. What does the call do?',
  'walk.always.reset.staysAway': 'It goes, and stays away',
  'walk.always.reset.comesBack': 'It goes, and comes back by itself',
  'walk.always.reset.stays': 'It stays',
  'walk.always.held.ask': 'Let a vehicle come and leave. When does its call go?',
  'walk.always.held.extension': 'An extension of {extension} is set.',
  'walk.always.held.noExtension': 'No extension is set here.',
  'walk.always.held.longest': 'After {longest} a standing vehicle is given up.',
  'walk.always.held.noLongest':
    'No longest presence is set: a parked vehicle holds its call for as long as the unit keeps it.',
  'walk.always.held.withIt': 'With the vehicle',
  'walk.always.held.after': 'About {extension} later',
  'walk.always.held.reset': 'Only when the channel is reset',
  'walk.always.beside.ask': 'Does the call last while vehicles stand in {lane}, and go with them?',
  'walk.always.beside.release': 'From {release} on a call that exists is held.',
  'walk.always.output.ask':
    'Take the output of {unit} off its wires. What does the call at the controller do?',
  'walk.always.output.goes': 'It goes',
  'walk.always.output.stays': 'It stays',
  'walk.always.check':
    '{circuit} has no call for an hour with nothing over the loops, and one for every vehicle.',
  'walk.always.end.occupied': 'Something over or beside the loop holds the call, as it should.',
  'walk.always.end.occupied.clear': 'Move it away and see the call go.',
  'walk.always.end.occupied.lasting':
    'If it has to stay, reset {circuit} while it is there: the unit then counts it as part of the road.',
  'walk.always.end.range': '{circuit} as designed is no loop for {unit}: it fails to a call.',
  'walk.always.end.range.more':
    'More turns, or loops in series, raise the inductance: see the advice on turns.',
  'walk.always.end.range.fewer':
    'Fewer turns, or loops in parallel, lower the inductance: see the advice on turns.',
  'walk.always.end.extension':
    'The extension of {extension} holds the call; under dense traffic it never ends.',
  'walk.always.end.extension.shorter':
    'Make it shorter, or leave it to the controller: one of the two, not both.',
  'walk.always.end.release': 'What is left when a vehicle has gone stays above the release of {release}.',
  'walk.always.end.release.higher': 'Raise the release; it stands at {ratio} of the threshold.',
  'walk.always.end.release.longest': 'Set a longest presence, so that the unit gives up by itself.',
  'walk.always.end.release.longestIs':
    'A longest presence of {longest} ends it by itself: see whether the unit is set so.',
  'walk.always.end.relay': 'The output of {unit} is on without a vehicle.',
  'walk.always.end.relay.contact':
    'See which contact is wired: the one that opens or the one that closes for a call, and which of them is safe without power.',
  'walk.always.end.relay.stuck': 'If it is the right one, its contact is stuck: replace the unit.',
  'walk.always.end.controller': 'The call does not come from the unit.',
  'walk.always.end.controller.wire':
    'Look for a bridge, a wet terminal or a short on the wires to the controller, and at its input’s setting.'
} as const;

/** Calls with nothing over the loops. */
export const walkNobody = {
  'walk.nobody.beside.ask': 'Do the calls come when something like the {vehicle} passes in {lane}?',
  'walk.nobody.gate.none': 'No gate is drawn here.',
  'walk.nobody.gate.far':
    'The nearest gate that is drawn is {distance} from the loops: too far to be seen by loops of usual size.',
  'walk.nobody.gate.ask': 'Do the calls come while the gate moves?',
  'walk.nobody.gate.fact': 'The nearest gate is {distance} from the loops.',
  'walk.nobody.weather.ask': 'Do they come with rain, or in the hours after it?',
  'walk.nobody.joint.ask':
    'Lead-in off the unit, meter on it: tug gently at each terminal and splice. Does the resistance jump?',
  'walk.nobody.joint.fact': '{circuit} should stay at {value}.',
  'walk.nobody.threshold.noRoom':
    'The threshold cannot be raised: the {vehicle} answers only {times} times as much at its worst.',
  'walk.nobody.threshold.nobody':
    '{circuit} is asked for no vehicle, so nothing says how far its threshold may be raised.',
  'walk.nobody.threshold.ask':
    'For a day, set a threshold of {threshold} instead of {before}. Do the calls stop?',
  'walk.nobody.interference.ask':
    'Does the lead-in run beside power cables or drives, or is a part of it untwisted?',
  'walk.nobody.interference.fact': 'The lead-in is {length} long.',
  'walk.nobody.check': 'A day with nothing over the loops brings no call, and every vehicle still does.',
  'walk.nobody.end.gate': '{circuit} sees the moving gate.',
  'walk.nobody.end.gate.away':
    'While the gate moves, let its controller ignore this call only if something else protects whoever is in the way: a loop is never the only safety device.',
  'walk.nobody.end.gate.shape':
    'When it is cut anew: a metre or more from the path of the leaf, or as a quadrupole, whose field ends sooner.',
  'walk.nobody.end.gate.check':
    'Let the gate open and close ten times with nothing over the loops: no call may come.',
  'walk.nobody.end.joint': 'A joint of {circuit} is loose.',
  'walk.nobody.end.joint.anew':
    'Make it anew: soldered and sealed at the pull box, clamped with a ferrule at the cabinet.',
  'walk.nobody.end.threshold': 'At {threshold} {circuit} is more sensitive than its vehicles ask for.',
  'walk.nobody.end.interference': 'The lead-in picks up what it should not.',
  'walk.nobody.end.interference.pair':
    'Use a twisted, shielded pair to the very terminals, its shield earthed at the cabinet only.',
  'walk.nobody.end.interference.apart':
    'Keep it in a conduit of its own, away from power cables; where they meet, cross at a right angle.'
} as const;

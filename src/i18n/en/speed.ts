/** Two loops at a known distance that measure speed and length. */
export const speed = {
  'speed.title': 'Speed pair',
  'speed.pair': 'Pair',
  'speed.pairOf': '{a} and {b}, {spacing} ({lane})',
  'speed.noPair':
    'No two circuits follow one another in a lane. A pair needs two circuits, each on a channel, with their loops in one lane and their leading edges 0.5 to 30 m apart.',
  'speed.driven': 'Speed driven',
  'speed.drivenTyped': 'Speed, typed',
  'speed.way': 'Direction of travel',
  'speed.forward': 'With the lane',
  'speed.backward': 'Against it',
  'speed.noVehicle': 'Tick a vehicle to drive over the pair.',
  'speed.aim': 'Error to stay under',
  'speed.failed': 'The pair could not be calculated: {reason}.',

  'speed.chart': '{vehicle}: response of both loops over time',
  'speed.threshold': 'trip threshold',
  'speed.axis': 'Milliseconds from the first trip; −ΔL/L of each circuit.',
  'speed.at': '{time} and {way} from the first trip: {a}, {b}',
  'speed.valueOf': '{name} {value}',
  'speed.between': '{time} for {way}',

  'speed.summary':
    '{vehicle}: the trips are {trips} apart, {time} at this speed. The pair shows {speed}, {error} off, ±{chance} by chance, and a length of {length}.',
  'speed.none': '{vehicle}: no speed, {why}.',
  'speed.missed': 'not detected by {circuits}',
  'speed.wrongOrder': 'the second loop trips no later than the first',
  'speed.several': '{circuit} tells it as {count} vehicles',
  'speed.plusMinus': '±{value}',
  'speed.spread': '±{usual}, at most {worst}',
  'speed.unbounded': 'any',

  'speed.measured': 'What the pair shows',
  'speed.vehicle': 'Vehicle',
  'speed.tripDistance': 'Trip to trip',
  'speed.time': 'Time',
  'speed.speed': 'Speed shown',
  'speed.error': 'Always off by',
  'speed.chance': 'By chance',
  'speed.length': 'Length shown',
  'speed.lengthSpread': '{length} {chance}',
  'speed.trueLength': 'True length',
  'speed.spacing': 'Spacing for the aim',
  'speed.causes': 'Where the error of the speed comes from',
  'speed.byThresholds': 'Thresholds that differ',
  'speed.byResponses': 'Loops that answer differently',
  'speed.bySpacing': 'Tolerance of the spacing',
  'speed.byLooking': 'Moment of looking',

  'speed.uneven':
    'The thresholds differ, {a} {one} and {b} {other}: every vehicle trips the two at different places of its own. Set both alike.',
  'speed.unevenBy':
    'The thresholds differ, {a} {one} and {b} {other}: that alone puts this speed off by {error}. Set both alike.',
  'speed.wanted':
    'With the leading edges {spacing} apart the error stays under {aim} for all of these vehicles, nineteen times in twenty; now they are {now} apart.',
  'speed.enough':
    'The leading edges are {now} apart: the error stays under {aim} for all of these vehicles, nineteen times in twenty. {spacing} would do.',
  'speed.noSpacing':
    'One of these vehicles has no speed, so no spacing helps: bring it over both thresholds first.',
  'speed.explain':
    'Speed = distance of the leading edges ÷ time between the trips. Length = speed × time occupied − loop length, the mean of the two loops; this is common practice, and it tells the length of the detection zone, not that of the bodywork. A unit sees a trip up to one round of its channels later, at any moment alike; ± holds nineteen times in twenty.',
  'speed.caution':
    'A pair measures well only with equal loops, turns, lead-ins and thresholds. Loops far apart let a vehicle change its speed or lane between them, or a second one come in. What it shows is an estimate for traffic control, no evidence of a speed.'
} as const;

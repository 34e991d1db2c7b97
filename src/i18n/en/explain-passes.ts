/** How it was computed: vehicles along a lane, and calls in time. */
export const explainPasses = {
  'explain.in.release': 'Release threshold',
  'explain.in.offset': 'To the right of the lane’s middle',
  'explain.in.drop': 'Strongest −ΔL/L on this path',
  'explain.in.lowestPlate': 'Effective height of the lowest plate',
  'explain.in.zone': 'Length of the detection zone',
  'explain.in.ruleOfThumb': 'Two thirds of the loop’s shorter side',
  'explain.in.detectionHeight': 'Height of detection',
  'explain.in.delay': 'Delay',
  'explain.in.extension': 'Extension',
  'explain.in.adaptation': 'Time constant of adaptation',
  'explain.in.calls': 'Calls',

  'explain.path-response.title': 'Response on one path along the lane',
  'explain.path-response.words':
    'The vehicle is driven along the lane at this distance from its middle, and the strongest drop of the terminal inductance on the way is shown. A vehicle that fills its lane is tried in the middle and with its side on either edge, a two-wheeler on five paths, the traffic of the next lane in its middle and at its near edge.',
  'explain.path-response.source':
    'As the response to a vehicle; places closer than the vehicle’s height above the road, interpolated between.',
  'explain.path-response.range':
    'Within half a percent of the response or two millionths, against the vehicle placed there. Over steel some percent.',
  'explain.path-response.omits': 'Vehicles that drive obliquely. A jointed vehicle stays straight in a bend.',

  'explain.detection-zone.title': 'Detection zone',
  'explain.detection-zone.words':
    'Driven forwards, the vehicle trips the channel where its response reaches the threshold, and releases it where the response falls below the release. The zone is the way of the vehicle’s middle in between; the vehicle itself reaches further by half its length to either side.',
  'explain.detection-zone.source': 'Follows from the response along the lane.',
  'explain.detection-zone.range': 'Slow enough that the unit measures often within the zone.',
  'explain.detection-zone.omits': 'Measuring time and scanning in turn: up to one cycle later at either end.',

  'explain.detection-height.title': 'Height of detection',
  'explain.detection-height.words':
    'A plate as large as a car’s floor (1.6 × 4.2 m) is lifted over the loop until it just makes a call on its best place. Beside it stands the rule of thumb, two thirds of the loop’s shorter side, which knows neither threshold nor turns nor lead-in.',
  'explain.detection-height.source':
    'As the response to a vehicle at thirteen heights, and between them. The rule of thumb is common practice.',
  'explain.detection-height.range':
    '5 cm to 3 m, within a percent; over steel some percent, by the coarse mesh. The plate’s mesh is that for 0.45 m.',
  'explain.detection-height.omits':
    'Axles and engines, which lie lower than the floor: a lorry is seen where its floor alone is not.',

  'explain.calls.title': 'Calls with the traffic of the site',
  'explain.calls.words':
    'Every vehicle drives along its lane; each circuit’s response x is the sum over the vehicles. The channel detects from the threshold on until the release, against R, what it takes for the empty road: R follows a standing vehicle slowly and falls back quickly when it leaves. Delay, extension, longest presence or pulse make the call. The truth is a vehicle of the lanes served with its body over the loops.',
  'explain.calls.source':
    'Timings: common practice, each editable. Following: Newell’s simplified car-following (2002). The times of events are roots in closed form, not sampled.',
  'explain.calls.range': 'Traffic that keeps to its lane; the same seed gives the same traffic.',
  'explain.calls.omits':
    'That two vehicles near each other change each other’s response, the unit’s scan cycle, noise and beating.'
} as const;

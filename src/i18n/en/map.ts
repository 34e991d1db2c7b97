/** The response map under the plan. */
export const map = {
  'map.title': 'Response map',
  'map.show': 'Response map on the plan',
  'map.vehicle': 'Centre of',
  'map.heading': 'Heading',
  'map.usualHeading': 'as the lane, {heading}',
  'map.circuits': 'Circuits of the map',
  'map.all': 'All circuits',
  'map.selected': 'Of selected loops',
  'map.lines': 'Lines of −ΔL/L:',
  'map.trip': 'trip {value}',
  'map.tripOwn': 'trip',
  'map.tripWords': 'Inside the strong line the vehicle makes a call.',
  'map.tripOwnWords': 'Inside the strong line the vehicle makes a call; each circuit has its own threshold.',
  'map.tripNever': 'Nowhere on the map does the vehicle make a call.',
  'map.noThreshold': 'No circuit has a threshold.',
  'map.working': 'Calculating …',
  'map.refining': 'Coarse so far …',
  'map.nothing': 'No loop is in sight.',
  'map.failed': 'The map could not be calculated: {reason}.'
} as const;

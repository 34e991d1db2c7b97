/** Advance loops and stopping distances from the speed on an approach. */
export const approach = {
  'approach.title': 'Setting out by speed',
  'approach.noLane': 'Draw a lane with a stop line across it: advance loops are set out before that line.',
  'approach.lane': 'Lane',
  'approach.speed': '85th percentile speed',
  'approach.slow': 'Slow end of speeds',
  'approach.from': 'Zone begins',
  'approach.to': 'Zone ends',
  'approach.extension': 'Extension of a call',
  'approach.reaction': 'Reaction',
  'approach.brakingMetres': 'Braking, m/s²',
  'approach.brakingFeet': 'Braking, ft/s²',
  'approach.grade': 'Grade, uphill +',

  'approach.place': 'Place these loops',
  'approach.step': {
    one: 'place {count} advance loop on {lane}',
    other: 'place {count} advance loops on {lane}'
  },
  'approach.refused': 'The loops cannot be placed: the site is full, or they would lie outside the plan.',
  'approach.noLine': 'No stop line lies across this lane: its end stands for one.',
  'approach.fromLine': 'Distances count from the stop line across this lane.',
  'approach.there':
    'These loops are on the plan; their lead-ins are as long as the last one drawn, so check them.',
  'approach.longer':
    'The lane is too short for the first loop: it will be drawn on by {missing} at its start.',

  'approach.metres': '{value}\u00a0m',
  'approach.feet': '{value}\u00a0ft',
  'approach.mph': '{value}\u00a0mph',
  'approach.seconds': '{value}\u00a0s',
  'approach.unbounded': 'no end',
  'approach.axis': 'Distance before the stop line; traffic from left to right.',
  'approach.pointed':
    '{distance} before the line: {time} at the 85th percentile speed, {slow} at the slow end',
  'approach.zoneAt': 'zone at {speed}: {from} to {to}',
  'approach.bar': '{text} {distance}',

  'approach.zoneIs': 'The decision zone lies {from} to {to} before the line.',
  'approach.tooMany':
    'No sensible number of loops keeps a slow vehicle on call across it: give a longer extension, or a faster slow end.',
  'approach.loopsAre': {
    one: 'One loop, its leading edge {distances} before the line.',
    other: '{count} loops, their leading edges {distances} before the line.'
  },
  'approach.carried': 'The call of a slow vehicle is held to {to} before the line.',
  'approach.zone': 'Decision zone',
  'approach.stopping': 'Stopping distance at a yellow',
  'approach.sight': 'Stopping sight distance',
  'approach.yellow': 'Yellow that belongs to it, 3 to 6 s',
  'approach.yellowInterval': 'Yellow',
  'approach.reach': 'Leading edges at most apart',
  'approach.headway': 'Front to front, green held up to',
  'approach.passage': 'Passage time, one such loop alone',

  'approach.loops': 'Advance loops',
  'approach.loop': 'Loop',
  'approach.edge': 'Leading edge before line',
  'approach.timeAt': 'At {speed}',

  'approach.published': 'Published figures beside those of this program',
  'approach.publishedSpeed': 'Speed',
  'approach.inPrint': 'published',
  'approach.here': 'here',
  'approach.passages': 'Passage time of one zone at the stop line, 25 to 55 mph, 3 s from front to front',
  'approach.passageZone': 'Length of the zone',
  'approach.sources':
    'Sources: decision zone {zone}; yellow {yellow}; passage time {passage}; stopping sight distance {sight}. Each was read in a restatement that names the document and the place, not in the document itself. The zone is widened to whole 5 ft at both ends, sight distance rounded up to 5 ft, as the published figures are.',
  'approach.stepped':
    'Another published rule, FHWA-HOP-08-024, page 4-25: a loop where the zone begins for the 85th percentile speed, and one for every 10 mph less, usually three or four. For {speed}: {distances}.',
  'approach.formulas':
    'Zone = speed × time. Stopping distance = v·t + v²/(2·(a + g·grade)); yellow = that ÷ v, with 1.0 s and 10 ft/s² where nothing else is typed; sight distance with 2.5 s and 11.2 ft/s². Passage time = 3 s − (20 ft + zone) ÷ mean speed, the mean being 0.88 of the 85th percentile.',
  'approach.rule':
    'The first loop lies where the zone begins. A vehicle at the slow end must reach the next loop before its call ends, so two leading edges are at most (loop length + slow speed × extension) apart; the length of the vehicle is left out, so that a motorcycle keeps its call too. The last loop lies where the zone ends, or nearer where a slow vehicle would lose its call before the end of its own zone. The extension may be given by the unit or by the controller, not by both.',
  'approach.caution':
    'A first layout, no timing plan: local practice, the agency’s timing policy and an engineer’s judgement decide. A green that ends at its longest time protects nobody in the zone, however many loops there are.'
} as const;

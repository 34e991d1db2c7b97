import { walkAlways } from './walk-always';
import { walkCycles } from './walk-cycles';
import { walkDrops } from './walk-drops';
import { walkLanes } from './walk-lanes';
import { walkNever } from './walk-never';
import { walkNobody } from './walk-nobody';
import { walkPower } from './walk-power';
import { walkRain } from './walk-rain';
import { walkShared } from './walk-shared';

/** Ways through a complaint. */
export const walkThrough = {
  ...walkShared,
  ...walkPower,
  ...walkAlways,
  ...walkNever,
  ...walkNobody,
  ...walkCycles,
  ...walkLanes,
  ...walkRain,
  ...walkDrops,
  'walk.title': 'Walk-through',
  'walk.intro':
    'Choose what is complained of. Each step uses the figures of this site, and leaves out what they rule out.',
  'walk.complaint': 'Complaint',
  'walk.complaint.no power': 'No power',
  'walk.complaint.always calling': 'Always calling',
  'walk.complaint.never calling': 'Never calling',
  'walk.complaint.calls with nobody there': 'Calls with nobody there',
  'walk.complaint.misses motorcycles': 'Misses motorcycles',
  'walk.complaint.two lanes call together': 'Two lanes call together',
  'walk.complaint.works until it rains': 'Works until it rains',
  'walk.complaint.drops a standing vehicle': 'Drops a standing vehicle',
  'walk.step': 'Step {number}',
  'walk.facts': 'What this site’s figures say',
  'walk.ruledOut': 'Already settled by the figures',
  'walk.answers': 'Answer',
  'walk.back': 'Back one step',
  'walk.restart': 'Start again',
  'walk.other': 'Another complaint',
  'walk.trail': 'Answered so far',
  'walk.trail.change': 'Change: {question}',
  'walk.measure': 'Take the reading down',
  'walk.causes': 'Weigh the causes',
  'walk.verdict': 'What it is',
  'walk.remedies': 'What to do',
  'walk.check': 'How to make sure',
  'walk.working': 'Looking at the site’s figures …',
  'walk.failed': 'This step could not be worked out: {reason}',
  'walk.none': 'This circuit cannot be computed: see the findings.',
  'walk.noCircuit': 'No circuit yet: draw a loop first.',
  'walk.hazards': 'Before you do this',
  'walk.hazard.mains':
    'Cabinet and unit carry mains. Only licensed people open them, with the supply isolated, locked off and checked wherever the step allows.',
  'walk.hazard.traffic':
    'Whoever stands on the road, or takes a detector off it, needs the traffic control approved for it, and high-visibility clothing.',
  'walk.hazard.gate':
    'What this circuit controls may move: gate, barrier or signal. Make it safe first, and let nobody stand in its way.',
  'walk.hazard.insulation tester':
    'The insulation tester puts some hundred volts on the wires: both ends free, the unit off, nobody touches them; discharge afterwards.',
  'walk.codes':
    'Local codes and licensed practice decide; these steps inform them. A loop is never the only safety device.'
} as const;

/** The turns adviser. */
export const advice = {
  'advice.title': 'Turns and wire for circuit {name}',
  'advice.least': 'Least inductance',
  'advice.most': 'Most inductance',
  'advice.q': 'Least Q',
  'advice.scope': 'Change',
  'advice.allLoops': 'all {count} loops alike',
  'advice.onlyLoop': 'only {name}',
  'advice.window':
    'Inductance at the unit’s terminals. The window begins as common practice has it, 80 to 300 µH, inside what the unit accepts: enough to outweigh the lead-in, not so much that the winding’s capacitance rules.',
  'advice.qSource': 'A unit may not run with a Q under 5: NEMA TS 1 and TS 2, from memory of the standard.',
  'advice.asking': 'Winding and solving every choice …',
  'advice.failed': 'The calculation failed: {reason}',
  'advice.none': 'This circuit cannot be advised on.',

  'advice.best': 'Recommended: {choice}.',
  'advice.nearest': 'Nothing satisfies the wish. Nearest: {choice}.',
  'advice.choice': { one: '{count} turn of {wire}', other: '{count} turns of {wire}' },
  'advice.whyFewer': 'The fewest turns that will do: with one turn less, {objection}.',
  'advice.whyOne': 'A single turn will do.',
  'advice.whyEnough': 'One turn less would also do, but not as well.',
  'advice.whyWire.only': 'No other wire does it with so few turns.',
  'advice.whyWire.drawn': 'The wire is the one that is drawn: its Q is {ratio} times the least.',
  'advice.whyWire.thinnest':
    'The thinnest wire whose Q is ample, {ratio} times the least; it leaves the most cover.',
  'advice.whyWire.highest-q': 'The wire with the highest Q, {ratio} times the least.',

  'advice.wire': 'Wire',
  'advice.table': 'Every number of turns of this wire',
  'advice.turns': 'Turns',
  'advice.cover': 'Cover',
  'advice.length': 'Wire',
  'advice.resonance': 'Resonance',
  'advice.resonanceTitle': 'Lowest self-resonance over the operating frequency',
  'advice.verdict': 'Verdict',
  'advice.good': 'good',
  'advice.chosen': 'recommended',
  'advice.drawn': 'as drawn',
  'advice.select': 'Choose {choice}',
  'advice.use': 'Use {choice}',
  'advice.step': 'Use {choice} in {name}',

  'advice.no.inductance-low': 'L of {value} is under {limit}',
  'advice.no.inductance-high': 'L of {value} is over {limit}',
  'advice.no.q-low': 'Q of {value} is under {limit}',
  'advice.no.slot-narrow': 'the wire, {value}, does not go into a slot {limit} wide',
  'advice.no.slot-full': 'the wires stand {value} out of the slot',
  'advice.no.cover-thin': 'cover of {value} is under {limit}',
  'advice.no.lead-in-heavy': 'only {value} of the inductance is the loops’: the lead-in outweighs them',
  'advice.no.resonance-near': 'resonance is only {value} times the operating frequency',

  'advice.thumb': 'What rules of thumb say',
  'advice.thumbRule':
    'L in µH ≈ (P/4)(N² + N), P in feet, from memory of FHWA-IP-90-002, chapter 2; added up as the loops are wired, and set beside the model.',
  'advice.thumbTurns': { one: 'It would take {count} turn.', other: 'It would take {count} turns.' },
  'advice.thumbNone': 'By it no number of turns falls into the window.',
  'advice.thumbLeadIn': {
    one: 'Loops at least as large as the lead-in’s {inductance}, as common practice has it: from {count} turn on.',
    other:
      'Loops at least as large as the lead-in’s {inductance}, as common practice has it: from {count} turns on.'
  },
  'advice.thumbShape': 'The rule does not speak of loops with two cells.',
  'advice.thumbByRule': 'By the rule',
  'advice.thumbByModel': 'By the model',
  'advice.thumbError': 'Error'
} as const;

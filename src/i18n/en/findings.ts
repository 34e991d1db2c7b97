/** What is wrong with a design, why, and what to change. */
export const findings = {
  'finding.and': ' and ',

  'finding.beating':
    '{a} and {b} run at the same time, {distance}, coupled by k = {k}: a ripple of {ripple}, {times} the trip threshold ({verdict}).',
  'finding.beating.watch': 'watch',
  'finding.beating.falseCalls': 'false calls likely',
  'finding.beating.apart': 'at least {separation} apart',
  'finding.beating.apartLocking': 'at least {separation} apart (they may lock nearer than {lockingRange})',
  'finding.beating.overlapping': 'on frequencies that overlap when vehicles pass or the temperature changes',
  'finding.beating.times': '{ratio} times',
  'finding.beating.keepApart': 'Keep their frequencies at least {separation} apart',
  'finding.beating.noSeparation': 'No separation within the usual band is enough',
  'finding.beating.orMove':
    '{before}. Move the loops apart, or connect both to one unit that scans its channels in turn.',
  'finding.beating.bySettings':
    '{before} by other frequency settings, move the loops apart, or connect both to one unit that scans its channels in turn.',
  'finding.beating.clearing': 'Any of these clears it: {ways}.',
  'finding.beating.nothingElse': '{before}. No other single change helps.',
  'finding.beating.helping': '{before}. None of these clears it by itself, but they help: {ways}.',
  'finding.beating.but': ', but {names} would beat more',
  'finding.beating.left': '{times} the threshold{but}',
  'finding.beating.way.setting': 'setting {setting} ({frequency}) for {circuit}: {left}',
  'finding.beating.way.distance': 'the loops {distance} further apart: {left}',
  'finding.beating.way.winding': '{loop} wound the other way: {left}',
  'finding.beating.way.scanning': 'both on {unit}, scanned in turn: never at the same time{but}',
  'finding.beating.oneUnit': 'one unit',
  'finding.beating.way.threshold': 'a trip threshold of {raised}: {left}{cost}',
  'finding.beating.raised': '{threshold} for {circuit}',
  'finding.beating.loses': ', which loses vehicles that are asked for',
  'finding.beating.way.measuringTime': '{units} measuring for {time}: {left}',
  'finding.beating.way.conduit': 'a conduit of its own for one of the lead-ins: {left}',

  'finding.channelTaken': '{a} and {b} are both on channel {number} of {unit}.',
  'finding.channelTaken.advice': 'Give one of them another channel, or join their loops into one circuit.',
  'finding.frequencyBand': '{circuit} would run at {frequency}, outside the usual {least} to {most}.',
  'finding.frequencyBand.advice': 'Choose another frequency setting or another number of turns.',
  'finding.noOscillation':
    '{circuit} would not oscillate on setting {setting} of {unit} ({capacitance}): it is damped too much, or its lead-in makes it look capacitive. Its figures hold for 50 kHz.',
  'finding.noOscillation.advice':
    'Choose a setting of higher frequency, more turns, or a shorter or heavier lead-in.',
  'finding.resonance':
    'A loop of {circuit} resonates with its own capacitance at about {resonance}, near its {frequency}: the apparent inductance depends on the weather.',
  'finding.resonance.advice': 'Use fewer turns or a lower frequency.',
  'finding.noCircuit': '{loop} belongs to no circuit: its figures hold for 50 kHz.',
  'finding.noCircuit.advice': 'Connect it to a circuit to see what the unit sees.',
  'finding.noChannel':
    '{circuit} is on no channel: its figures hold for 50 kHz and nothing is compared with a threshold.',
  'finding.noChannel.advice': 'Choose a unit and a channel.',

  'finding.cover': 'Only {cover} of cover over the uppermost wire of {loop}.',
  'finding.cover.out': 'The wires of {loop} stand {out} out of a slot {depth} deep.',
  'finding.cover.advice':
    'Cut the slot {deeper} deep for {least} of cover, or use fewer turns or thinner wire.',
  'finding.slotWidth': 'The wire of {loop} is {diameter} thick and does not go into a slot {width} wide.',
  'finding.slotWidth.advice': 'Use a wider blade or thinner wire.',

  'finding.inductanceRange': '{circuit} has {inductance} at the terminals; {unit} accepts {least} to {most}.',
  'finding.inductanceRange.low': 'Add turns, or connect its loops in series.',
  'finding.inductanceRange.high': 'Take turns off, connect loops in parallel, or shorten the lead-in.',

  'finding.lowQ': '{circuit} has Q = {q} at {frequency}; under {least} the oscillator may fail.',
  'finding.lowQ.advice': 'Of its {resistance}, {causes}. {remedy}',
  'finding.lowQ.share': '{share} are {cause}',
  'finding.lowQ.is.copper': "the copper's direct-current resistance",
  'finding.lowQ.is.skin': 'the skin effect',
  'finding.lowQ.is.proximity': 'the proximity effect',
  'finding.lowQ.is.tail': 'the tails',
  'finding.lowQ.is.lead-in': 'the lead-in',
  'finding.lowQ.is.pavement': 'the pavement',
  'finding.lowQ.is.steel': 'steel in the pavement',
  'finding.lowQ.is.added': 'the resistance that was added',
  'finding.lowQ.against.copper': 'Use thicker wire or more turns.',
  'finding.lowQ.against.skin':
    'Use more turns or a lower frequency; thicker wire helps less than its copper suggests.',
  'finding.lowQ.against.proximity': 'Use a wire with thicker insulation, which keeps the turns apart.',
  'finding.lowQ.against.tail': 'Shorten the tail or bring the pull box nearer.',
  'finding.lowQ.against.lead-in': 'Use a thicker lead-in cable or a shorter one.',
  'finding.lowQ.against.pavement': 'Keep the slot dry and sealed; the pavement conducts.',
  'finding.lowQ.against.steel': 'Move the loop off the steel or cut it less deep.',
  'finding.lowQ.against.added': 'Look for the joint that adds the resistance, and solder it.',

  'finding.miscounts':
    'With the traffic of this site {circuit} makes {calls} calls for {vehicles} vehicles: {mistakes}.',
  'finding.miscounts.missed': '{number} missed',
  'finding.miscounts.merged': '{number} merged into the call before',
  'finding.miscounts.split': '{number} called more than once',
  'finding.miscounts.false': '{number} called with nobody there',
  'finding.miscounts.advice':
    'Open "Passing", "Calls over time": each mistake is listed there with its cause.',

  'finding.nextLane':
    'A {vehicle} in the middle of {lane} changes {circuit} by {change}, {times} times its threshold of {threshold}.',
  'finding.nextLane.calls':
    'Move the loop away from that lane, make it narrower, use a quadrupole, or raise the threshold as far as the smallest vehicle asked for allows.',
  'finding.nextLane.near':
    'Vehicles that keep to the near side of their lane may make a call; leave more distance or raise the threshold.',
  'finding.nextLaneEdge':
    'A {vehicle} at the near edge of {lane} changes {circuit} by {change}, {times} times its threshold of {threshold}.',

  'finding.missedAtEdge':
    '{circuit} misses a {vehicle} that drives {offset} beside the middle of its lane, still within it: {response} there, the threshold is {threshold}.',
  'finding.missedAtEdge.advice': 'Lower the threshold, or make the loop wider where the next lane allows it.',
  'finding.countedTwice':
    '{circuit} detects one {vehicle} {detections} times: over {gap} its response falls to {response}, under the release at {release}.',
  'finding.countedTwice.several':
    'Set the loops nearer to one another, lower the threshold, or give the output an extension that covers the gap at the slowest speed.',
  'finding.countedTwice.one':
    'Its middle is too high for this loop: lower the threshold or the release, make the loop longer or wider, or give the output an extension that covers the gap.',

  'finding.shape': '{loop} cannot be cut: its {what} is {found}, expected {expected}.',
  'finding.shape.advice': 'Correct the shape.',
  'finding.shape.cornerCut.advice': 'Make the corner cut smaller or the loop larger.',
  'finding.cornerCut': 'Corner cuts of {cut} leave only {straight} of the {side} side of {loop} straight.',
  'finding.cornerCut.advice':
    'About a sixth of the side at each corner is usual; a larger cut makes the loop smaller.',

  'finding.steelNear': 'Steel in the pavement takes {share} of the inductance of {circuit}.',
  'finding.steelNear.vehicle':
    'Steel in the pavement takes {share} of the inductance of {circuit} and {response} of the least response to: {vehicle}.',
  'finding.steelNear.noDepth':
    'No depth to 2 m brings the loss under {share}: move the loop off the steel, or ask for less.',
  'finding.steelNear.deeper':
    'Steel deeper than {depth} would cost less than {share}; else add a turn, lower the threshold, or move the loop off the steel.',
  'finding.steelInSlot': 'The slot of {loop}, {depth} deep, meets steel at {top}.',
  'finding.steelInSlot.advice':
    'Cut no deeper than the steel allows, or move the loop: a cut bar weakens the pavement, and wires that lie on steel lose most of their response.',

  'finding.undetected':
    '{circuit} does not detect a {vehicle}: {best} at best, the threshold is {threshold}.',
  'finding.undetected.advice':
    'Lower the threshold, bring a wire nearer to its path, add a turn, shorten the lead-in, or choose a shape with its wires closer together.',
  'finding.detectedInPart':
    '{circuit} misses a {vehicle} on part of the lane: from {worst} on the worst path to {best} on the best, the threshold is {threshold}.',
  'finding.detectedInPart.advice':
    'Lower the threshold, widen the loop, or choose a shape with a wire under every path, such as a diagonal or a quadrupole.',

  'finding.turns.few': {
    one: '{count} turn is unusually few for {loop}: the loop alone has {inductance}.',
    other: '{count} turns are unusually few for {loop}: the loop alone has {inductance}.'
  },
  'finding.turns.many': {
    one: '{count} turn is unusually many for {loop}: the loop alone has {inductance}.',
    other: '{count} turns are unusually many for {loop}: the loop alone has {inductance}.'
  },
  'finding.turns.size': 'Change its size, or connect it in series or in parallel with another loop.',
  'finding.turns.least': 'About {turns} would bring it to at least {inductance}.',
  'finding.turns.most': 'About {turns} would bring it to at most {inductance}.',

  'finding.vehicleTooLow':
    'What {vehicle} does to a loop is beyond the model: do not trust its figures.{plate}',
  'finding.vehicleTooLow.plate': ' A plate of {width} × {length} at {height} is too large for its height.',
  'finding.vehicleTooLow.advice':
    'Give the plate its effective height, which lies above the clearance of a real underside, or make it smaller.'
} as const;

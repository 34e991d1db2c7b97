/** What every way through a complaint says. */
export const walkShared = {
  'walk.answer.yes': 'Yes',
  'walk.answer.no': 'No',
  'walk.loop.expected': '{circuit} should read {value}; with a usual meter {low} to {high} is plausible.',
  'walk.loop.expectedWith': '{circuit} should read {value}; with {meter} {low} to {high} is plausible.',
  'walk.loop.meterAt': 'That is for a meter that measures at {frequency}; at another frequency it differs.',
  'walk.loop.capacitive':
    'At the {frequency} of the meter {circuit} is no inductance any more: the capacitance of its lead-in outweighs it.',
  'walk.loop.lastRead': 'Read before: {value}. {day}',
  'walk.loop.lastOver': 'Read before: over range. {day}',
  'walk.loop.fits': '{low} to {high}',
  'walk.loop.less': 'Less than {low}',
  'walk.loop.more': 'More than {high}',
  'walk.loop.open': 'Over range: no connection',
  'walk.loop.noMeter': 'I have no meter for that',
  'walk.loop.resistance.ask':
    'Take the lead-in off the unit. What direct-current resistance does it have at the cabinet?',
  'walk.loop.inductance.ask': 'Lead-in still off the unit: what inductance does it have?',
  'walk.loop.insulation.ask':
    'Lead-in still off the unit: what insulation do both wires have against ground?',
  'walk.loop.insulation.limit': 'At least {limit}: the strictest limit that this site has chosen.',
  'walk.loop.insulation.good': '{limit} or more',
  'walk.loop.insulation.bad': 'Less than {limit}',
  'walk.loop.leak.ask':
    'Open the splice at the pull box and test both sides by themselves. Which side has less than {limit}?',
  'walk.loop.leak.loop': 'The loop with its tail',
  'walk.loop.leak.leadIn': 'The lead-in',
  'walk.loop.leak.splice': 'Neither: it was the splice',
  'walk.loop.frequency':
    'With nothing over its loops {circuit} should run at {value}; {low} to {high} is plausible.',
  'walk.check.sound':
    'Afterwards {circuit} reads {low} to {high} at the cabinet, and the unit runs at about {frequency} with nothing over the loops.',
  'walk.check.insulation':
    'Afterwards loop, lead-in and both together read {limit} or more, also when everything is wet.',
  'walk.end.noChannel':
    '{circuit} is on no channel here, so there is no threshold, setting or output to reason with.',
  'walk.end.noChannel.choose': 'Choose its unit and channel among the details, then come back.',
  'walk.end.unit': 'The loops of {circuit} are sound: {unit} or its channel is at fault.',
  'walk.end.unit.replace':
    'Replace {unit} or move to another channel; set channel {number} as here: threshold {threshold}, setting {setting}.',
  'walk.end.unit.replaceGiven':
    'Replace {unit} or move to another channel; set channel {number} to the threshold of {threshold}, as here.',
  'walk.end.unexplained': 'None of these explains it.',
  'walk.end.unexplained.readings':
    'Take down what was measured under Readings: Causes weighs faults, and two at once, that no single question finds.',
  'walk.end.unexplained.log': 'Note when it happens, with weather, traffic and what the other channels do.',
  'walk.end.elsewhere': 'Another loop hangs on the terminals of {circuit}.',
  'walk.end.elsewhere.trace':
    'Trace the lead-ins from the pull boxes to the cabinet and connect {loops} here. Label both ends.',
  'walk.end.elsewhere.check': 'A vehicle on {loops} makes {circuit} call, and no other.',
  'walk.end.open': '{circuit} is open: a wire, a splice or a terminal has let go.',
  'walk.end.open.joints': 'Look at terminals and splices first: they let go more often than wire does.',
  'walk.end.open.half':
    'Measure the loops at the pull box with the lead-in off. Open there too: it is a loop or its tail. Else it is the {length} of lead-in.',
  'walk.end.short': 'Something bridges the wires of {circuit} on this side of the loop.',
  'walk.end.short.leadIn':
    'The lead-in alone has {resistance} over {length}: half of that resistance points to half of its length.',
  'walk.end.short.distance':
    'Take the resistance down under Readings: Causes says how far from the cabinet the short lies, and shows the place.',
  'walk.end.short.splice': 'Open the splice at the pull box: a lead-in that reads over range now is sound.',
  'walk.end.splice': 'A splice or terminal of {circuit} has more resistance than it should.',
  'walk.end.splice.move':
    'Move each splice and terminal while the meter is connected: at the bad one the reading jumps. Make that one anew and seal it.',
  'walk.end.splice.wire':
    'Every joint is sound and the reading stays: the wire is thinner or longer than drawn. Correct the drawing.',
  'walk.end.turns':
    '{circuit} has less inductance than wound: turns are shorted or missing, or steel is near.',
  'walk.end.turns.causes':
    'Take the inductance down under Readings: Causes weighs these against each other and says how many turns.',
  'walk.end.turns.steel': 'Look for steel that was not there: covers, plates, reinforcement.',
  'walk.end.turns.anew': 'Shorted turns cannot be mended in the slot: the loop has to be cut anew.',
  'walk.end.more':
    '{circuit} has more inductance than drawn: more turns, another loop or a longer lead-in hangs on these terminals.',
  'walk.end.more.which': 'Drive over each loop in turn and see which of them this channel answers.',
  'walk.end.more.drawing':
    'Where the road is right and the drawing is not, correct the drawing: all figures follow.',
  'walk.end.leak.loop': 'Water reaches the copper of a loop or of its tail.',
  'walk.end.leak.loop.slot': 'Look along the slot for cracked or lifted sealant and for wire that shows.',
  'walk.end.leak.loop.anew':
    'Insulation that is cut cannot be mended in the slot for long: plan to cut the loop anew.',
  'walk.end.leak.leadIn': 'The insulation of the lead-in is hurt.',
  'walk.end.leak.leadIn.replace':
    'Replace the lead-in of {length}, or the length between two boxes that reads low by itself.',
  'walk.end.leak.splice': 'The splice at the pull box is wet.',
  'walk.end.leak.splice.anew':
    'Make the splice anew, soldered, in a closure that is filled, and fix it high in the box.',
  'walk.swap.ask':
    'Put {circuit} on another channel, or a sound unit in the place of {unit}, with nothing over the loops. Is it cured?',
  'walk.swap.free': 'Free channels on {unit}: {count}.',
  'walk.swap.full': 'All channels of {unit} are taken: borrow one whose lane can be spared.',
  'walk.threshold.raise': 'Raise the threshold of {circuit} from {before} to {threshold}.',
  'walk.threshold.room':
    'Raise the threshold of {circuit} from {before} to {threshold}: the {vehicle}, weakest of those asked for, still answers {times} times that.',
  'walk.threshold.noRoom':
    'No threshold does it: at the {threshold} that {circuit} would need, the {vehicle} is lost, which answers {response} at its worst.',
  'walk.beat.none': 'No other circuit runs at the same time as {circuit}: nothing can beat with it.',
  'walk.beat.weak': '{other} disturbs {circuit} by {share} of its threshold: too little to matter.',
  'walk.beat.fact':
    '{other}: a ripple of {share} of the threshold of {circuit}, frequencies {separation} apart.',
  'walk.beat.overlap':
    '{other}: a ripple of {share} of the threshold of {circuit}, on frequencies that overlap when vehicles pass or the weather changes.',
  'walk.beat.strong':
    '{other}: a ripple of {times} times the threshold of {circuit}, frequencies {separation} apart.',
  'walk.beat.strongOverlap':
    '{other}: a ripple of {times} times the threshold of {circuit}, on frequencies that overlap when vehicles pass or the weather changes.',
  'walk.beat.ask':
    'Switch each of these channels off for some minutes, one at a time. With which of them off does it stop?',
  'walk.beat.off': 'With {other} off',
  'walk.beat.goesOn': 'It goes on',
  'walk.end.beat':
    '{other} beats with {circuit}: two frequencies too near for how strongly the two are coupled.',
  'walk.end.beat.check': 'Leave {other} on for an hour with nothing over the loops: no call may come.',
  'walk.remedy.setting':
    'Set {setting} instead of {before} for {circuit}: then at rest {apart} from {other}, and {share} of the threshold is left.',
  'walk.remedy.settingFirst':
    'Set {setting} for {circuit}: then at rest {apart} from {other}, and {share} of the threshold is left.',
  'walk.remedy.distance':
    'When they are cut anew: the loops of {circuit} {distance} further away leave {share} of the threshold.',
  'walk.remedy.winding':
    'Change over the two ends of {loop} at its splice: {share} of the threshold is left.',
  'walk.remedy.scanning':
    'Put both on {unit}, which scans its channels in turn: then they never run at the same time.',
  'walk.remedy.scanningNew':
    'Put both on one unit that scans its channels in turn: then they never run at the same time.',
  'walk.remedy.threshold':
    'Raise the threshold of {circuit} to {threshold}: {share} of it is left, and every vehicle asked for is still seen.',
  'walk.remedy.thresholdLoses':
    'A threshold of {threshold} for {circuit} leaves {share} of it, but loses: {vehicles}.',
  'walk.remedy.measuring': 'Let {units} measure for {time}: {share} of the threshold is left.',
  'walk.remedy.conduit': 'A conduit of its own for one of the lead-ins: {share} of the threshold is left.',
  'walk.remedy.none':
    'No single change clears it. Set the two frequencies as far apart as the settings allow, or put both on one unit that scans in turn.',
  'walk.beside.none': 'No lane with traffic of its own runs beside {circuit}.',
  'walk.beside.weak':
    'The {vehicle} in {lane} changes {circuit} by {response}, {share} of its threshold: too little.',
  'walk.beside.fact':
    'The {vehicle} in the middle of {lane} changes {circuit} by {response}, {share} of its threshold.',
  'walk.end.beside': '{circuit} sees the traffic of {lane}.',
  'walk.end.beside.delay': 'A delay keeps out what only drives by; {circuit} has {delay} now.',
  'walk.end.beside.anew':
    'When it is cut anew: narrower, further from that lane, or as a quadrupole, whose field ends sooner.',
  'walk.end.beside.check':
    'Let the {vehicle} drive along {lane} ten times, near its edge too: no call may come.'
} as const;

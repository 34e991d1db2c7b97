/** What may be wrong, what to do about it, and what to measure next. */
export const causes = {
  'causes.kind.nothing wrong': 'Nothing wrong',
  'causes.kind.shorted turns': 'Shorted turns',
  'causes.kind.wrong turns': 'Another number of turns',
  'causes.kind.wrong wire': 'Another wire',
  'causes.kind.open': 'Open: a wire or joint is parted',
  'causes.kind.resistive splice': 'A splice that resists',
  'causes.kind.short at splice': 'Short at the splice',
  'causes.kind.short in lead-in': 'Short in the lead-in',
  'causes.kind.reversed loop': 'A loop reversed',
  'causes.kind.missing loop': 'A loop left out',
  'causes.kind.parallel for series': 'Loops in parallel that should be in series',
  'causes.kind.series for parallel': 'Loops in series that should be in parallel',
  'causes.kind.wet splice': 'Water in a splice',
  'causes.kind.cut insulation': 'Insulation cut',
  'causes.kind.steel near': 'Steel near the wires',
  'causes.kind.other loop': 'Another circuit’s loops on these terminals',
  'causes.kind.longer lead-in': 'Lead-in longer than drawn',
  'causes.kind.wrong setting': 'Unit set otherwise',
  'causes.kind.wrong meter frequency': 'Meter at another test frequency',
  'causes.kind.something else': 'Something else',

  'causes.remedy.nothing wrong':
    'Leave it as it is. If the complaint stays, look at the settings, at the neighbours and at what the vehicles do.',
  'causes.remedy.slip':
    'Read again what does not fit, with another meter if there is one. If it reads the same, something is wrong: take the causes below in their order.',
  'causes.remedy.shorted turns':
    'The loop has to be cut and wound anew: a short inside the slot cannot be reached. First measure the loop alone at the pull box to make sure that it is not the splice.',
  'causes.remedy.wrong turns':
    'Pull a little wire back into the pull box and count, or ask who laid it. Where the circuit detects what it should, put the true number into the drawing; else wind anew.',
  'causes.remedy.wrong wire':
    'Measure the conductor’s diameter at the pull box. Where Q is enough, put the true wire into the drawing.',
  'causes.remedy.open':
    'Measure the resistance of each loop alone at the pull box: the one that shows none is parted, and if all show one it is the splice or the lead-in. Make the joint anew, or wind the loop anew.',
  'causes.remedy.resistive splice':
    'Cut the splice out and make it anew: twisted, soldered, sealed. Then measure again; move the wires meanwhile, a bad joint answers.',
  'causes.remedy.short at splice':
    'Open the splice, part the conductors, measure loops and lead-in each alone, and make it anew.',
  'causes.remedy.short in lead-in':
    'Part the lead-in at the pull box and measure it from both ends: the two distances add up to its length. Replace it, or joint it in a box at that place.',
  'causes.remedy.reversed loop':
    'Swap the two tails of that loop at the splice. Where it cannot be told which, measure the inductance after each swap.',
  'causes.remedy.missing loop': 'Follow the tails at the pull box and splice the loop in.',
  'causes.remedy.parallel for series':
    'Open the splice: join the end of one loop to the beginning of the next, only the two outer ends go to the lead-in.',
  'causes.remedy.series for parallel':
    'Open the splice: join all beginnings to one wire of the lead-in and all ends to the other.',
  'causes.remedy.wet splice':
    'Open the splice, dry it, make it anew and seal it watertight; drain the pull box. Then measure insulation again.',
  'causes.remedy.cut insulation':
    'Measure insulation of each loop and of the lead-in apart to find where it is. A loop with cut insulation works until it rains: wind it anew; a lead-in is replaced.',
  'causes.remedy.steel near':
    'Look for steel that is not drawn: a mat, a cover, a rail. Draw it, and see what is left of the response; more turns do not help, distance does.',
  'causes.remedy.other loop':
    'Put a piece of steel or a vehicle on the loop and see which channel answers; then swap the wires in the cabinet and label them.',
  'causes.remedy.longer lead-in':
    'Put the true length into the drawing. A coil of spare cable in a duct or in the cabinet is to be cut off.',
  'causes.remedy.wrong setting': 'Set the channel as planned, or put the true setting into the drawing.',
  'causes.remedy.wrong meter frequency':
    'Set the meter’s test frequency, or state the one that it has, and measure again.',
  'causes.remedy.something else':
    'Check meter, leads and terminals, and measure again at a second place. What is drawn may differ from what was built.',
  'causes.remedy.two-at-once':
    'Put right first what is quicker to reach, measure again, and see whether the rest still speaks for the other.',

  'causes.how.loop.resistanceDc_ohm':
    'Open the splice at the pull box, take this loop’s two tails apart from everything, and measure across them with the ohmmeter, its leads’ own resistance taken off.',
  'causes.how.loop.inductance_H':
    'Open the splice at the pull box and measure across this loop’s two tails with the inductance meter; note its test frequency.',
  'causes.how.loop.q':
    'Open the splice at the pull box and read Q across this loop’s two tails; note the meter’s test frequency.',
  'causes.how.loop.insulation_ohm':
    'Open the splice at the pull box. Tester from one tail of this loop to a good earth, 500 V, for a minute.',
  'causes.how.pull-box.resistanceDc_ohm':
    'Take the lead-in off at the pull box and measure across the spliced loops with the ohmmeter, its leads’ own resistance taken off.',
  'causes.how.pull-box.inductance_H':
    'Take the lead-in off at the pull box and measure across the spliced loops; note the test frequency.',
  'causes.how.pull-box.q':
    'Take the lead-in off at the pull box and read Q across the spliced loops; note the test frequency.',
  'causes.how.pull-box.insulation_ohm':
    'Take the lead-in off at the pull box. Tester from the spliced loops to a good earth, 500 V, for a minute.',
  'causes.how.cabinet.resistanceDc_ohm':
    'Unplug the unit and measure across this circuit’s two terminals with the ohmmeter, its leads’ own resistance taken off.',
  'causes.how.cabinet.inductance_H':
    'Unplug the unit and measure across this circuit’s two terminals with the inductance meter; note its test frequency.',
  'causes.how.cabinet.q':
    'Unplug the unit and read Q across this circuit’s two terminals; note the test frequency.',
  'causes.how.cabinet.insulation_ohm':
    'Unplug the unit and take both wires off the terminals, also off any surge arrester. Tester from one wire to earth, 500 V, for a minute.',
  'causes.how.cabinet.insulationBetween_ohm':
    'Part the lead-in from the loops at the pull box and from the terminals in the cabinet. Tester from one wire to the other.',
  'causes.how.unit.inductance_H': 'Read the inductance that the unit shows, with no vehicle near.',
  'causes.how.unit.frequency_Hz':
    'Read the frequency that the unit shows, with no vehicle near; note its setting.',
  'causes.how.unit.deltaLOverL':
    'Let the known vehicle stand where it answers most and read the largest change that the unit shows.',

  'causes.safety.mains':
    'Mains voltage in the cabinet: only people who are qualified and allowed to open it; switch off and secure what can be switched off, and follow local rules.',
  'causes.safety.traffic':
    'Beside or on the road: close the lane or secure the place as local rules ask, wear high-visibility clothing, and never work alone.',
  'causes.safety.tester':
    'The tester’s voltage destroys electronics and hurts: nothing but wire may be connected, nobody touches it, and the cable is discharged afterwards.',
  'causes.safety.gate':
    'A gate or barrier here may move: switch its drive off and secure it before anyone stands in its way.',

  'causes.doubt.meant': '{value} does not fit, {other} would. Was that meant?',
  'causes.doubt.under': '{value} is under the limit of {other}.',
  'causes.doubt.over': '{value} is over the limit of {other}.',
  'causes.doubt.far.below.resistanceDc_ohm':
    '{value} is less than half of what the copper of this circuit has: {low} to {high}. Zero the meter with its probes together, take the wires off the unit and read again. If it stays, the current takes a shorter way.',
  'causes.doubt.far.above.resistanceDc_ohm':
    '{value} is more than ten times what the copper of this circuit has: {low} to {high}. Scrape the ends bright and read again. If it stays, a joint is bad.',
  'causes.doubt.far.below.inductance_H':
    '{value} is less than a tenth of what this circuit has: {low} to {high}. Check the range and the unit of the meter and read again. If it stays, the loops are bridged.',
  'causes.doubt.far.above.inductance_H':
    '{value} is more than ten times what this circuit has: {low} to {high}. Hardly any fault does that. Check range, unit and terminals and read again.',
  'causes.doubt.far.above.q':
    'A Q of {value} is more than three times what this circuit has: {low} to {high}. Faults only add losses. Check the frequency of the meter and the terminals.',
  'causes.doubt.resistanceDc_ohm':
    '{value}: no circuit of copper has such a resistance. Check unit and contact.',
  'causes.doubt.inductance_H': '{value}: no loop has such an inductance. Check unit, sign and range.',
  'causes.doubt.q': 'A Q of {value}: no loop in a road has that. Check what the meter shows.',
  'causes.doubt.frequency_Hz': '{value}: no unit runs there. Check the unit of the figure.',
  'causes.doubt.insulation_ohm': '{value}: no tester can tell that. Enter it as over range.',
  'causes.doubt.insulationBetween_ohm': '{value}: no tester can tell that. Enter it as over range.',
  'causes.doubt.deltaLOverL': '{value}: no vehicle changes a loop by that much. Percent or share?',

  'causes.distance.resistance':
    'From direct-current resistance: no more than {distance}; nearer if the short itself has resistance.',
  'causes.distance.inductance':
    'From inductance: {distance}. The resistance of the short hardly matters for it.',
  'causes.distance.agree': 'About {distance}: resistance and inductance agree.',
  'causes.distance.disagree':
    'About {distance} by this figure; resistance and inductance do not agree, so the short has resistance or is none.',

  'causes.assumed.tolerances':
    'Tolerances of the drawing hold nineteen times in twenty: sides {dimensions}, depth {depth}, lead-in {leadIn}, temperature {temperature} K.',
  'causes.assumed.meters':
    'Meters whose accuracy is not stated are as meters usually are: common practice, no published source.',
  'causes.assumed.frequency':
    'Where no test frequency is stated, inductance and Q were measured at {frequency}.',
  'causes.assumed.temperature':
    'Where no temperature was taken down, the wires are at {temperature}, give or take the tolerance.',
  'causes.assumed.voltage':
    'A limit of insulation is stated for {voltage} V; the tester had less, so that keeping it proves less.',
  'causes.assumed.prior.commissioning':
    'On the day of commissioning mistakes of building are held likelier than damage: judgement, no published source.',
  'causes.assumed.prior.later':
    'After commissioning damage is held likelier than mistakes of building: judgement, no published source.',
  'causes.assumed.baseline':
    'All was well on the day of commissioning: its readings narrow down what the drawing leaves open.',
  'causes.assumed.baseline-refused':
    'The readings of commissioning day do not fit the drawing either, so nothing is concluded from them.',
  'causes.assumed.one':
    'No more than two faults at once, and two only where no single one explains the figures.',
  'causes.assumed.repeats': 'Of one figure that was read again and again, the last {count} readings count.',
  'causes.assumed.left-out': {
    one: '{count} figure says nothing to the model and was left out.',
    other: '{count} figures say nothing to the model and were left out.'
  }
} as const;

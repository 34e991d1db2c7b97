/** Works until it rains. */
export const walkRain = {
  'walk.rain.pavement':
    'From dry to wet pavement {circuit} moves from {dry} to {wet}. That is as much as {change} of ΔL/L, {share} of its threshold; it comes slowly, and a unit follows it.',
  'walk.rain.frequency.ask': 'In the wet, with nothing over the loops: what frequency does the unit show?',
  'walk.rain.frequency.within': '{low} to {high}, steady',
  'walk.rain.frequency.beyond': 'Beyond that, or it jumps',
  'walk.rain.frequency.unknown': 'The unit shows no frequency',
  'walk.rain.between.ask':
    'Lead-in off the unit and its splice at the pull box open: what insulation is there between its two wires?',
  'walk.rain.between.skip': 'The splice stays closed for now',
  'walk.rain.box.ask': 'Does water stand in the pull box, so that splices lie in it?',
  'walk.rain.slot.ask': 'Is sealant cracked, lifted or missing anywhere along the slots?',
  'walk.rain.cabinet.ask': 'Are terminals, arresters or the base of the unit damp or corroded?',
  'walk.rain.beat.far':
    'Rain moves the frequency by {shift}; the nearest neighbour, {other}, stays {separation} away.',
  'walk.rain.beat.ask': 'In the wet, switch the channel of {other} off for some minutes. Is it cured?',
  'walk.rain.beat.shift': 'Rain moves this frequency by {shift}.',
  'walk.rain.check':
    'Pour water over splices and slots, wait half an hour, and measure the insulation again.',
  'walk.rain.end.cable': 'The two wires of the lead-in leak into each other.',
  'walk.rain.end.box': 'Splices stand in water.',
  'walk.rain.end.box.drain': 'Give the box a drain, or hang the splices above where the water stands.',
  'walk.rain.end.slot': 'Water gets into a slot.',
  'walk.rain.end.slot.seal': 'Clean it out, dry it and seal it anew while the insulation is still good.',
  'walk.rain.end.cabinet': 'Water is in the cabinet.',
  'walk.rain.end.cabinet.dry':
    'Seal cable entries, look at door gasket and heater, clean and dry the terminals, replace arresters that leak.'
} as const;

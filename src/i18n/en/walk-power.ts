/** The unit shows nothing. */
export const walkPower = {
  'walk.power.sign.ask': 'Look at {unit}: does anything light up or show a figure?',
  'walk.power.sign.serves': '{unit} also serves {circuits}.',
  'walk.power.sign.alone': '{circuit} is the only circuit on {unit}.',
  'walk.power.sign.dark': 'Everything is dark',
  'walk.power.sign.channel': 'Only channel {number} is dark',
  'walk.power.sign.alive': 'It runs',
  'walk.power.others.none': '{unit} is the only unit here: there is no other to compare it with.',
  'walk.power.others.ask': 'Do the other units run: {units}?',
  'walk.power.supply.ask': 'Is the supply of the cabinet on: main switch, residual-current device, fuse?',
  'walk.power.supply.on': 'All of it is on',
  'walk.power.supply.off': 'Something is switched off',
  'walk.power.supply.tripped': 'Something has tripped',
  'walk.power.terminals.ask':
    'Licensed people only: is the voltage at the supply terminals of {unit} what its label says?',
  'walk.power.terminals.right': 'Yes, as on the label',
  'walk.power.terminals.low': 'There is some, but too little',
  'walk.power.terminals.none': 'There is none',
  'walk.power.fuse.ask': 'With the supply isolated: how are the fuse of {unit} and its seat in its base?',
  'walk.power.fuse.whole': 'Fuse whole, seat firm',
  'walk.power.fuse.loose': 'The seat is loose or corroded',
  'walk.power.fuse.blown': 'The fuse has blown',
  'walk.power.another.ask': 'Put a unit that is known to run in its place. Does that one run?',
  'walk.power.channel.ask': 'Is channel {number} of {unit} switched on?',
  'walk.power.other.one': '{unit} has one channel: the loops can be tried on no other.',
  'walk.power.other.ask': 'Put {circuit} on another channel of {unit}. Does that channel run?',
  'walk.power.check': '{unit} runs, and still does after an hour with the cabinet closed.',
  'walk.power.end.alive': '{unit} has power.',
  'walk.power.end.alive.other': 'Choose the complaint that fits what it does: always calling, or never.',
  'walk.power.end.off': 'The supply of the cabinet is switched off.',
  'walk.power.end.off.why':
    'Find out who switched it off and why, before anything is switched on: somebody may be working on it.',
  'walk.power.end.tripped': 'A protective device of the cabinet has tripped.',
  'walk.power.end.tripped.once':
    'Licensed people switch it on once. If it trips again, the fault is in the cabinet.',
  'walk.power.end.tripped.apart':
    'Then take one load off at a time until it holds: units, heater, light, socket.',
  'walk.power.end.low': '{unit} gets less voltage than it needs.',
  'walk.power.end.low.load':
    'Compare the power supply with what hangs on it, and its terminals with what the label of the unit asks for.',
  'walk.power.end.wire': 'No voltage reaches {unit}.',
  'walk.power.end.wire.trace':
    'Follow the supply back to the last terminal that has voltage: a fuse, a bridge or a wire in between has let go.',
  'walk.power.end.loose': '{unit} does not sit firmly in its base.',
  'walk.power.end.loose.seat':
    'Isolate, clean the contacts, seat it and fasten it. Replace a base whose contacts have lost their spring.',
  'walk.power.end.fuse': 'The fuse of {unit} has blown.',
  'walk.power.end.fuse.once':
    'Replace it by one of the same rating, once. If it blows again, replace the unit.',
  'walk.power.end.fuse.surge':
    'A surge over the lead-in can be the reason: test its insulation, {limit} or more, and the arresters.',
  'walk.power.end.dead': '{unit} itself has failed.',
  'walk.power.end.dead.replace':
    'Replace it, or use another of its channels than {number}, and set it as this site says.',
  'walk.power.end.base': 'The base of {unit} or its wires are at fault.',
  'walk.power.end.base.pins': 'Compare the wires of the base with the drawing of the cabinet, pin by pin.',
  'walk.power.end.switchedOff': 'Channel {number} is switched off.',
  'walk.power.end.switchedOff.on': 'Ask why, then switch it on with nothing over the loops.'
} as const;

/** What the terms of the trade mean: a name, and a sentence or two under `glossary.<term>.text`. */
export const glossary = {
  'glossary.title': 'Terms of the trade',
  'glossary.search': 'Search the terms',
  'glossary.none': 'No term has this in its name or its explanation.',

  'glossary.loop': 'Loop',
  'glossary.loop.text':
    'A few turns of insulated wire in a slot in the road. Metal above it lowers its inductance, and that is what the unit notices.',
  'glossary.turns': 'Turns',
  'glossary.turns.text':
    'How often the wire goes round in the slot. The inductance grows almost with the square of the number; two to five are usual, more for small loops.',
  'glossary.wire': 'Loop wire',
  'glossary.wire.text':
    'Stranded copper with tough insulation. Its diameter decides the resistance, and with the insulation how close the turns lie.',
  'glossary.slot': 'Slot',
  'glossary.slot.text':
    'The groove that is sawn into the pavement for the wire. Its width must take the wire and let the sealant flow round it.',
  'glossary.slot-depth': 'Slot depth',
  'glossary.slot-depth.text':
    'From the surface to the bottom of the slot; the wires lie at the bottom. Deeper wires are better protected and answer less to vehicles.',
  'glossary.saw-cut': 'Saw cut',
  'glossary.saw-cut.text':
    'The line along which the slot is sawn. Its length decides much of the cost: blades, time, and how long the lane is closed.',
  'glossary.corner-cut': 'Corner cut',
  'glossary.corner-cut.text':
    'A short slanting cut across a corner, so that no sharp edge chafes the wire. How far from the corner it starts, along each side.',
  'glossary.tail': 'Tail',
  'glossary.tail.text':
    'The two ends of the loop’s wire, twisted together, on their way to the pull box. Twisting keeps them from acting as a loop of their own.',
  'glossary.twisted-pair': 'Twisted pair',
  'glossary.twisted-pair.text':
    'Two wires laid round each other. Each half twist cancels what its neighbour picks up. It adds its own inductance and capacitance, metre by metre.',
  'glossary.lead-in': 'Lead-in',
  'glossary.lead-in.text':
    'The cable from the pull box to the cabinet. Its inductance takes part in the circuit but no vehicle changes it: the longer it is, the weaker the response.',
  'glossary.pull-box': 'Pull box',
  'glossary.pull-box.text': 'A box with a cover beside the road where tails are spliced to the lead-in.',
  'glossary.cabinet': 'Cabinet',
  'glossary.cabinet.text':
    'The box in which the detector units stand. It carries mains: leave it to licensed people.',
  'glossary.conduit': 'Conduit',
  'glossary.conduit.text':
    'A pipe for cables. Lead-ins that share one lie side by side for its whole length and act on each other a little.',
  'glossary.sealant': 'Sealant',
  'glossary.sealant.text':
    'What fills the slot over the wires. It must stick to both walls, stay elastic, and leave no hollow in which a wire can move.',
  'glossary.backer': 'Backer',
  'glossary.backer.text':
    'Short pieces of foam rod pressed into the slot to hold the wires down until the sealant has set.',
  'glossary.added-resistance': 'Added resistance',
  'glossary.added-resistance.text':
    'Resistance of splices and terminals on top of the wire’s own. A poor splice shows here, and lowers Q.',
  'glossary.circuit': 'Circuit',
  'glossary.circuit.text':
    'All loops that one channel sees as one: the loops, how they are wired, and the lead-in.',
  'glossary.series': 'In series',
  'glossary.series.text':
    'One loop after the other. Their inductances add; a vehicle over one of two equal loops changes the whole about half as much.',
  'glossary.parallel': 'In parallel',
  'glossary.parallel.text':
    'Loops side by side on the same two terminals. The inductance is lower than that of each one.',
  'glossary.winding-sense': 'Winding sense',
  'glossary.winding-sense.text':
    'Which way round the current goes. Two neighbours wound against each other cancel much of what reaches both from afar.',
  'glossary.unit': 'Detector unit',
  'glossary.unit.text':
    'The device in the cabinet that lets its circuits oscillate and watches their frequencies. Its channels take turns, or all run at once.',
  'glossary.channel': 'Channel',
  'glossary.channel.text': 'One input of a unit: one circuit, one threshold, one output.',
  'glossary.setting': 'Frequency setting',
  'glossary.setting.text':
    'A capacitor that the unit puts across the circuit. With the circuit’s inductance it decides the frequency; neighbours get different settings so that they do not beat.',
  'glossary.measuring-time': 'Measuring time',
  'glossary.measuring-time.text':
    'How long a channel counts before it judges. Longer sees smaller changes and answers later.',
  'glossary.threshold': 'Trip threshold',
  'glossary.threshold.text':
    'How much the inductance must fall, as a share of the whole, before there is a call. Smaller finds motorcycles, and the next lane’s lorries too.',
  'glossary.release-ratio': 'Release ratio',
  'glossary.release-ratio.text':
    'The call ends when the response falls below this share of the threshold. The gap keeps a call from flickering.',
  'glossary.call': 'Call',
  'glossary.call.text': 'The output’s word that a vehicle is there.',
  'glossary.presence': 'Presence',
  'glossary.presence.text': 'An output that calls for as long as a vehicle is over the loop.',
  'glossary.pulse': 'Pulse',
  'glossary.pulse.text': 'An output that makes one short call for each vehicle: what a counter wants.',
  'glossary.delay': 'Delay',
  'glossary.delay.text':
    'A vehicle must stay so long before there is a call. It keeps vehicles that only turn across the loop from calling.',
  'glossary.extension': 'Extension',
  'glossary.extension.text': 'The call is held so long after the vehicle has left.',
  'glossary.longest-presence': 'Longest presence',
  'glossary.longest-presence.text':
    'After this time a vehicle that does not move counts as part of the road, and the loop works again for others.',
  'glossary.recovery': 'Recovery',
  'glossary.recovery.text':
    'How soon after a vehicle that was tuned out has left the channel is as sensitive as before.',
  'glossary.inductance': 'Inductance',
  'glossary.inductance.text':
    'How much magnetic flux a current makes in its own loop, in microhenries. The unit watches it through the frequency.',
  'glossary.resistance': 'Resistance',
  'glossary.resistance.text':
    'What the current loses in wire, splices and ground. At the working frequency it is more than a meter for direct current reads.',
  'glossary.q': 'Q',
  'glossary.q.text':
    'The reactance over the resistance: how clearly a circuit rings. Low Q, by wet splices or thin wire, makes a frequency that wanders.',
  'glossary.self-resonance': 'Self-resonance',
  'glossary.self-resonance.text':
    'The frequency at which a circuit rings with its own capacitance alone. The working frequency must stay well below it.',
  'glossary.response': 'ΔL/L',
  'glossary.response.text':
    'The change of the inductance over the inductance: the response to a vehicle. A car over a loop makes some percent, a bicycle some hundredths of a percent.',
  'glossary.beating': 'Beating',
  'glossary.beating.text':
    'Two channels with nearly the same frequency, close to each other, disturb each other in the rhythm of their difference: false calls, or none.',
  'glossary.coupling': 'Coupling k',
  'glossary.coupling.text':
    'How much of one circuit’s flux goes through another, from −1 to 1. Neighbouring lanes have some thousandths.',
  'glossary.quadrupole': 'Quadrupole',
  'glossary.quadrupole.text':
    'A loop with a third slot along its middle, wound as a figure of eight. It sees less of the next lane, and tall vehicles less as well.',
  'glossary.diagonal': 'Diagonal',
  'glossary.diagonal.text':
    'A loop with a slot from corner to corner, wound as a figure of eight. A bicycle crosses a wire wherever it rides.',
  'glossary.stop-line': 'Stop line',
  'glossary.stop-line.text':
    'Where vehicles wait. Loops reach a little beyond it, for those who stop too far ahead.',
  'glossary.advance-loop': 'Advance loop',
  'glossary.advance-loop.text':
    'A loop far before the stop line that tells the signal who is coming while there is still time to decide.',
  'glossary.insulation-test': 'Megger test',
  'glossary.insulation-test.text':
    'Resistance between wire and ground at some hundred volts. A sound new loop reads a hundred megohms or more; water in a splice reads far less.',
  'glossary.plate-height': 'Plate height',
  'glossary.plate-height.text':
    'A vehicle is calculated as flat plates; this is how high one of them lies. Lower plates answer more. It is an effective height, not what a rule would measure.',
  'glossary.mat': 'Steel mat',
  'glossary.mat.text':
    'Reinforcing bars in the pavement, tied to a lattice. Currents in its meshes weaken the loop: the less concrete between, the more.',
  'glossary.permittivity': 'Relative permittivity',
  'glossary.permittivity.text':
    'How much more capacitance the wires have in the pavement than in air. Wet ground has a high one: the frequency falls a little after rain.',
  'glossary.conductivity': 'Conductivity of the ground',
  'glossary.conductivity.text':
    'How well the pavement conducts. Salt and water raise it, and the loop loses Q.',
  'glossary.tolerance': 'Tolerance',
  'glossary.tolerance.text':
    'Plus or minus, as it turns out on a real site nineteen times in twenty. From all of them follows the range that a meter may read.'
} as const;

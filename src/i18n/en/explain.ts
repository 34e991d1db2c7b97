/** How it was computed: what every explanation shares, and the figures of a loop and of what is cut and bought. */
export const explain = {
  'explain.values': 'With the present values',
  'explain.what': 'What',
  'explain.symbol': 'Symbol',
  'explain.value': 'Value',
  'explain.source': 'Source',
  'explain.range': 'Holds for',
  'explain.omits': 'Leaves out',
  'explain.circuit': 'circuit {name}',

  'explain.in.turns': 'Turns',
  'explain.in.conductor': 'Diameter of the conductor',
  'explain.in.insulated': 'Diameter with insulation',
  'explain.in.perimeter': 'Length of the outline',
  'explain.in.slotDepth': 'Slot depth',
  'explain.in.slotWidth': 'Slot width',
  'explain.in.frequency': 'Operating frequency',
  'explain.in.temperature': 'Wire temperature',
  'explain.in.wireLength': 'Wire in the slot',
  'explain.in.magnetic': 'Magnetic inductance',
  'explain.in.steelInductance': 'Taken away by steel, already counted',
  'explain.in.capacitance': 'Capacitance',
  'explain.in.insulation': 'Relative permittivity of the insulation',
  'explain.in.fill': 'Relative permittivity of the fill',
  'explain.in.pavement': 'Relative permittivity of the pavement',
  'explain.in.conductivity': 'Conductivity of the pavement, mS/m',
  'explain.in.loopInductance': 'Magnetic inductance of a loop',
  'explain.in.leadIn': 'Length of the lead-in',
  'explain.in.cable': 'Length of a cable',
  'explain.in.setting': 'Capacitance of the frequency setting',
  'explain.in.coldResistance': 'Resistance, coldest',
  'explain.in.hotResistance': 'Resistance, hottest',
  'explain.in.dryInductance': 'Apparent inductance, dry',
  'explain.in.wetInductance': 'Apparent inductance, wet',
  'explain.in.threshold': 'Trip threshold',
  'explain.in.height': 'Effective height of the largest plate',
  'explain.in.response': 'Change of inductance, a drop is negative',
  'explain.in.deltaL': 'Change of inductance',
  'explain.in.margin': 'Times the threshold',
  'explain.in.low': 'Low end',
  'explain.in.high': 'High end',
  'explain.in.classFigure': 'The class’s figure on the standard loop',
  'explain.in.withoutSteel': 'Apparent inductance without steel',
  'explain.in.qLost': 'Share of Q that is lost',
  'explain.in.inductanceLost': 'Share of the inductance that is lost',
  'explain.in.loopsMutual': 'Of their loops',
  'explain.in.steelMutual': 'What steel adds',
  'explain.in.conduitMutual': 'Of shared conduits',
  'explain.in.locking': 'Nearer than this the two may lock',
  'explain.in.rest': 'Frequency at rest',
  'explain.in.coldFrequency': 'Frequency, coldest',
  'explain.in.hotFrequency': 'Frequency, hottest',
  'explain.in.deepest': 'Strongest change by a vehicle',
  'explain.in.lowest': 'Lowest frequency',
  'explain.in.highest': 'Highest frequency',
  'explain.in.lowest2': 'Lowest frequency of the other',
  'explain.in.highest2': 'Highest frequency of the other',
  'explain.in.coupling': 'Coupling',
  'explain.in.separation': 'Least distance of the two frequencies',
  'explain.in.measuringTime': 'Measuring time of the unit',
  'explain.in.ripple': 'Apparent change of inductance',

  'explain.loop-inductance.title': 'Magnetic inductance of the loop alone',
  'explain.loop-inductance.words':
    'Every straight piece of every turn is paired with every other one, and with itself; the mutual inductances of all pairs are added up. The field inside the copper comes on top, less of it the higher the frequency.',
  'explain.loop-inductance.source':
    'Self-inductance of a straight wire: Rosa 1908. Two straight filaments anywhere in space: Campbell; Grover 1946, chapters 6 and 7. Two circles on one axis: Maxwell, with complete elliptic integrals. Field inside the copper: Bessel solution of the round wire, tabulated in NBS Circular 74.',
  'explain.loop-inductance.range':
    'Loops of any shape, cut or drawn at any size; within 0.2 % of closed forms and of converged numeric integration.',
  'explain.loop-inductance.omits':
    'Wires that do not lie in one column in the slot; bends of the wire at the corners; iron nearby that is not drawn as steel.',

  'explain.loop-apparent.title': 'Apparent inductance of the loop',
  'explain.loop-apparent.words':
    'The loop’s own capacitance lies across its inductance. Below resonance the two together read as a larger inductance: that is what a bridge shows at the loop’s ends.',
  'explain.loop-apparent.source':
    'Parallel circuit of an inductance and a capacitance, any text on circuits.',
  'explain.loop-apparent.range': 'Well below the self-resonance; the capacitance itself is an estimate.',
  'explain.loop-apparent.omits': 'Losses, which change the apparent inductance by about 1/Q².',

  'explain.loop-dc.title': 'Resistance of the loop to direct current',
  'explain.loop-dc.words':
    'Length of the wire over its cross-section, times the resistivity of copper at the wire’s temperature. What an ohmmeter reads at the loop’s ends.',
  'explain.loop-dc.source':
    'Annealed copper, IEC 60028: 1.7241·10⁻⁸ Ω·m and 0.00393 per kelvin at 20 °C. American wire gauges: ASTM B258.',
  'explain.loop-dc.range': 'Solid copper from about −60 to 90 °C.',
  'explain.loop-dc.omits':
    'Tail, lead-in, splices, and your own added resistance, which stands apart; the lay of stranded wire, which adds one or two percent.',

  'explain.loop-ac.title': 'Resistance of the loop at the operating frequency',
  'explain.loop-ac.words':
    'The direct-current resistance, plus what crowds the current to the rim of the wire (skin effect), what the neighbouring turns’ field drives in it (proximity), and what is lost in a conducting pavement and in steel; your own figure comes on top.',
  'explain.loop-ac.source':
    'Skin and proximity effect: exact Bessel solutions of the round wire (Ramo, Whinnery & Van Duzer; skin effect tabulated in NBS Circular 74). Pavement: currents induced by the loop’s own electric field, first order in the conductivity. Steel: see what steel costs.',
  'explain.loop-ac.range':
    'Frequencies from 1 kHz to 1 MHz; the pavement’s part while the loop is small against the skin depth in the ground.',
  'explain.loop-ac.omits':
    'Bad splices and joints, unless you add them as a resistance; losses in metal that is not drawn.',

  'explain.loop-q.title': 'Quality factor of the loop alone',
  'explain.loop-q.words':
    'How much larger the inductive reactance is than the resistance. A low Q means that losses eat the signal that a vehicle makes.',
  'explain.loop-q.source': 'Definition.',
  'explain.loop-q.range': 'The frequency shown.',
  'explain.loop-q.omits': 'Tail and lead-in; they are in the circuit’s Q.',

  'explain.capacitance.title': 'Capacitance of the loop',
  'explain.capacitance.words':
    'Between neighbouring turns, and from the winding to the ground around the slot: both as they count at the loop’s two ends.',
  'explain.capacitance.source': 'Sum of the two parts, each of which has an explanation of its own.',
  'explain.capacitance.range':
    'An engineering estimate: to some ten percent, more if the pavement’s permittivity is unknown.',
  'explain.capacitance.omits':
    'Screening of the wires of a column by one another; tail and lead-in, which are lines of their own.',

  'explain.turn-capacitance.title': 'Capacitance between turns',
  'explain.turn-capacitance.words':
    'Two round wires side by side in their insulation. Each of the gaps between neighbouring turns carries an N-th of the voltage, so that the whole counts little.',
  'explain.turn-capacitance.source': 'Capacitance of two parallel round wires, any text on electrostatics.',
  'explain.turn-capacitance.range': 'Turns that touch, stacked in one column.',
  'explain.turn-capacitance.omits': 'Air or sealant between the round insulations.',

  'explain.ground-capacitance.title': 'Capacitance to the ground',
  'explain.ground-capacitance.words':
    'The wire in coaxial layers: its insulation, the fill out to the slot’s wall, and the pavement out to the slot’s depth. The voltage falls evenly along the winding, so that a third of the whole counts. Where the pavement’s conductivity is stated, its permittivity is complex: it is then little short of a conductor, and what is left is the capacitance of insulation and fill.',
  'explain.ground-capacitance.source': 'Coaxial layers in series, any text on electrostatics.',
  'explain.ground-capacitance.range':
    'An estimate. The pavement’s permittivity is poorly known: about 2 to 4 for dry asphalt, 20 and more for wet concrete.',
  'explain.ground-capacitance.omits':
    'That the layers are not round, and that the wires of a column screen one another.',

  'explain.self-resonance.title': 'Self-resonance of the loop',
  'explain.self-resonance.words':
    'The frequency at which the loop’s inductance and its own capacitance swing by themselves. The operating frequency should stay well below it.',
  'explain.self-resonance.source': 'Thomson’s formula.',
  'explain.self-resonance.range':
    'As good as the capacitance: an estimate with a wide range from dry to wet.',
  'explain.self-resonance.omits': 'Tail and lead-in, which lower it further.',

  'explain.cover.title': 'Cover over the uppermost wire',
  'explain.cover.words':
    'Slot depth less the height of the column of wires. In a slot that two halves of a loop share, the column holds the wires of both.',
  'explain.cover.source': 'Geometry of the slot.',
  'explain.cover.range': 'Wires pressed down to the bottom, one above the other.',
  'explain.cover.omits': 'Backer rod and anything else under or between the wires.',

  'explain.wire.title': 'Wire',
  'explain.wire.words': 'All turns along the saw cut, and both wires of the tails with their slack.',
  'explain.wire.source': 'Measured on the drawing.',
  'explain.wire.range': 'The drawing as it stands.',
  'explain.wire.omits':
    'Waste and what twisting takes up, which the take-off lists by themselves, and what is left at the splice, unless it is in the tail’s length.',

  'explain.saw-cut.title': 'Saw cut',
  'explain.saw-cut.words':
    'The loop’s slot and the cut to the pull box: as long as the tail, without a drawn tail’s slack and depth. A slot that several loops or home runs lie in counts once, with one of them.',
  'explain.saw-cut.source': 'Measured on the drawing.',
  'explain.saw-cut.range': 'The drawing as it stands.',
  'explain.saw-cut.omits': 'Overcuts at the corners: the take-off lists them by themselves.'
} as const;

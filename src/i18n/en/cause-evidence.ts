/** What a figure says for a cause, and what against it. */
export const causeEvidence = {
  'causes.for.figure': '{measured} is what this gives ({predicted}); as designed it would be {expected}.',
  'causes.for.alone': '{measured} is what this gives ({predicted}).',
  'causes.for.over': 'Over the meter’s range, as this would be.',
  'causes.for.open.over': 'The meter finds no way round: somewhere the wire is parted.',
  'causes.for.sound': 'Insulation of {measured} shows no sign of a leak, as it would not with this.',
  'causes.for.nothing-wrong':
    '{measured} lies within what this design allows; {expected} would be right on it.',
  'causes.for.nothing-wrong.insulation': 'Insulation of {measured} shows no sign of a leak.',
  'causes.for.something-else': 'None of the known causes gives {measured}.',
  'causes.for.something-else.over': 'None of the known causes leaves the meter without a figure here.',
  'causes.for.not-told': '{measured} does not contradict this.',
  'causes.against.figure': 'This would give {predicted}, but {measured} was read.',
  'causes.against.alone': 'This would give {predicted}, but {measured} was read.',
  'causes.against.over': 'Over the meter’s range, where this would still give {predicted}.',
  'causes.against.over.unexplained': 'This does not explain what was read here.',
  'causes.against.open.finite': '{measured} was read: current goes round, so the wire is whole.',
  'causes.against.should-be-over':
    '{measured} was read, where with this the meter would have nothing to show.',
  'causes.against.sound': 'This leaves insulation sound, but {measured} was read.',
  'causes.against.nothing-wrong':
    'As designed it would be about {expected}; {measured} is further off than meter and tolerances allow.',
  'causes.against.nothing-wrong.insulation': 'Insulation of {measured} is not sound.',
  'causes.against.nothing-wrong.over': 'Over the meter’s range, where a sound circuit gives a figure.',
  'causes.against.something-else': '{measured} is explained better by one of the known causes.',
  'causes.against.something-else.over': 'A meter without a figure is explained better by a known cause.',
  'causes.evidence.which-one': 'Which one it is, these readings do not tell: {names}.',
  'causes.evidence.which-one-or-lead-in':
    'Which one it is, these readings do not tell: {names}, or the lead-in.',
  'causes.evidence.in-lead-in': 'It lies in the lead-in or in its splice to the loops.',
  'causes.evidence.splice-or-end':
    'A short at the splice and one in the last metres of the lead-in read alike: look at both.',
  'causes.evidence.splice-or-cable':
    'Seen from the cabinet, a leak to ground in a splice and one in a cable read alike: part them at the pull box and test each.',
  'causes.evidence.two-at-once': 'No single cause explains all figures; together these two do.',
  'causes.evidence.prior':
    'The readings hardly speak for or against this; what is shown is how common it is by experience.',

  'causes.for.shorted turns.inductance_H':
    'Inductance is {measured} in the place of {expected}: turns that are shorted drop out and push back on the rest.',
  'causes.for.shorted turns.q':
    'Q is down to {measured} from {expected}: shorted turns are a closed ring that eats energy.',
  'causes.for.shorted turns.resistanceDc_ohm':
    'Resistance is {measured} in the place of {expected}: part of the wire is bridged.',
  'causes.against.shorted turns.inductance_H':
    'Inductance is {measured}; with turns shorted it would be {predicted}.',
  'causes.against.shorted turns.q':
    'Q of {measured} does not go with a closed ring of shorted turns, which leaves {predicted}.',
  'causes.against.shorted turns.resistanceDc_ohm':
    'Resistance is {measured}; with part of the wire bridged it would be {predicted}.',
  'causes.for.wrong turns.inductance_H':
    'Inductance goes nearly with the square of the turns: {measured} belongs to another number than is drawn, which gives {expected}.',
  'causes.for.wrong turns.resistanceDc_ohm':
    'Resistance goes with the length of wire: {measured} belongs to another number of turns than is drawn, which gives {expected}.',
  'causes.against.wrong turns.inductance_H':
    'Inductance is {measured}; another number of turns would give {predicted}.',
  'causes.against.wrong turns.resistanceDc_ohm':
    'Resistance is {measured}; the wire of another number of turns would have {predicted}.',
  'causes.for.wrong wire.resistanceDc_ohm':
    'Resistance is {measured} in the place of {expected}: that is copper of another thickness.',
  'causes.against.wrong wire.resistanceDc_ohm':
    'Resistance is {measured}; copper of that thickness would have {predicted}.',
  'causes.against.wrong wire.inductance_H':
    'Another wire hardly changes inductance: {predicted}, but {measured} was read.',
  'causes.for.resistive splice.resistanceDc_ohm':
    'Resistance is {measured} in the place of {expected}: a joint in the way resists.',
  'causes.for.resistive splice.q':
    'Q is down to {measured} from {expected}: resistance was added to the winding.',
  'causes.against.resistive splice.resistanceDc_ohm':
    'Resistance is {measured}: with a joint that resists it would be {predicted}.',
  'causes.against.resistive splice.inductance_H':
    'A joint that resists leaves inductance at {predicted}, but {measured} was read.',
  'causes.against.resistive splice.q': 'Q of {measured} does not go with a joint that resists: {predicted}.',
  'causes.for.short at splice.resistanceDc_ohm':
    'Resistance is {measured} in the place of {expected}: the current turns back before the loops.',
  'causes.for.short at splice.inductance_H':
    'Only {measured} of {expected} are left, about what the lead-in has by itself.',
  'causes.against.short at splice.resistanceDc_ohm':
    'Resistance is {measured}; a short before the loops would leave {predicted}.',
  'causes.against.short at splice.inductance_H':
    'Inductance is {measured}, so the loops are in it; a short before them would leave {predicted}.',
  'causes.for.short in lead-in.resistanceDc_ohm':
    'Resistance is {measured} in the place of {expected}: the current takes a short way home.',
  'causes.for.short in lead-in.inductance_H':
    'Only {measured} of {expected} are left, as a piece of lead-in has.',
  'causes.against.short in lead-in.resistanceDc_ohm':
    'Resistance is {measured}; a short in the lead-in would leave {predicted}.',
  'causes.against.short in lead-in.inductance_H':
    'Inductance is {measured}, so the loops are in it; a short in the lead-in would leave {predicted}.',
  'causes.for.reversed loop.inductance_H':
    'Inductance is {measured} in the place of {expected}: the loops couple with the other sign.',
  'causes.against.reversed loop.inductance_H':
    'Inductance is {measured}; with a loop reversed it would be {predicted}.',
  'causes.against.reversed loop.resistanceDc_ohm':
    'A reversed loop leaves resistance at {predicted}, but {measured} was read.',
  'causes.for.missing loop.resistanceDc_ohm':
    'Resistance is {measured} in the place of {expected}: a loop is not in the circuit.',
  'causes.for.missing loop.inductance_H':
    'Inductance is {measured} in the place of {expected}: a loop is not in the circuit.',
  'causes.against.missing loop.resistanceDc_ohm':
    'Resistance is {measured}; without a loop it would be {predicted}.',
  'causes.against.missing loop.inductance_H':
    'Inductance is {measured}; without a loop it would be {predicted}.',
  'causes.for.parallel for series.resistanceDc_ohm':
    'Resistance is {measured} in the place of {expected}, as loops side by side have.',
  'causes.for.parallel for series.inductance_H':
    'Inductance is {measured} in the place of {expected}, as loops side by side have.',
  'causes.against.parallel for series.resistanceDc_ohm':
    'Resistance is {measured}; loops in parallel would have {predicted}.',
  'causes.against.parallel for series.inductance_H':
    'Inductance is {measured}; loops in parallel would have {predicted}.',
  'causes.for.series for parallel.resistanceDc_ohm':
    'Resistance is {measured} in the place of {expected}, as loops one after another have.',
  'causes.for.series for parallel.inductance_H':
    'Inductance is {measured} in the place of {expected}, as loops one after another have.',
  'causes.against.series for parallel.resistanceDc_ohm':
    'Resistance is {measured}; loops in series would have {predicted}.',
  'causes.against.series for parallel.inductance_H':
    'Inductance is {measured}; loops in series would have {predicted}.',
  'causes.for.wet splice.insulation_ohm':
    'Insulation to ground is down to {measured}: water has found a way to the conductor.',
  'causes.for.wet splice.insulationBetween_ohm':
    'Only {measured} between the conductors: water in a splice bridges the two.',
  'causes.for.wet splice.q':
    'Q is down to {measured} from {expected}: water across the conductors takes energy.',
  'causes.against.wet splice.insulation_ohm':
    'Insulation to ground is {measured}; with water in a splice it would be {predicted}.',
  'causes.against.wet splice.insulationBetween_ohm':
    '{measured} between the conductors; water in a splice would leave {predicted}.',
  'causes.for.cut insulation.insulation_ohm':
    'Insulation to ground is down to {measured}: the conductor touches what is damp.',
  'causes.against.cut insulation.insulation_ohm':
    'Insulation to ground is {measured}; with the insulation cut it would be {predicted}.',
  'causes.against.cut insulation.inductance_H':
    'Cut insulation leaves inductance at {predicted}, but {measured} was read.',
  'causes.for.steel near.inductance_H':
    'Inductance is {measured} in the place of {expected}: steel near the wires pushes their field back.',
  'causes.for.steel near.q': 'Q is {measured} in the place of {expected}: steel near the wires takes energy.',
  'causes.against.steel near.resistanceDc_ohm':
    'Steel leaves direct-current resistance at {predicted}, but {measured} was read.',
  'causes.against.steel near.inductance_H':
    'Inductance is {measured}; with steel near it would be {predicted}.',
  'causes.against.steel near.q': 'Q is {measured}; with steel near it would be {predicted}.',
  'causes.for.other loop.resistanceDc_ohm':
    'Resistance is {measured}, as another circuit’s loops would have here; this one’s have {expected}.',
  'causes.for.other loop.inductance_H':
    'Inductance is {measured}, as another circuit’s loops would have here; this one’s have {expected}.',
  'causes.against.other loop.resistanceDc_ohm':
    'Resistance is {measured}; the other circuit’s loops would give {predicted}.',
  'causes.against.other loop.inductance_H':
    'Inductance is {measured}; the other circuit’s loops would give {predicted}.',
  'causes.for.longer lead-in.resistanceDc_ohm':
    'Resistance is {measured} in the place of {expected}: there is more cable than is drawn.',
  'causes.for.longer lead-in.inductance_H':
    'Inductance is {measured} in the place of {expected}: more cable adds a little.',
  'causes.against.longer lead-in.resistanceDc_ohm':
    'Resistance is {measured}; with more cable it would be {predicted}.',
  'causes.for.wrong setting.frequency_Hz':
    '{measured} is what another setting gives; the one that was meant gives {expected}.',
  'causes.against.wrong setting.frequency_Hz':
    'The frequency is {measured}; another setting would give {predicted}.',
  'causes.against.wrong setting.inductance_H':
    'A setting changes nothing about inductance: {predicted}, but {measured} was read.',
  'causes.for.wrong meter frequency.q':
    'Q of {measured} is what the circuit has at another test frequency; at the stated one it has {expected}.',
  'causes.for.wrong meter frequency.inductance_H':
    '{measured} is what the circuit has at another test frequency; at the stated one it has {expected}.',
  'causes.against.wrong meter frequency.resistanceDc_ohm':
    'A test frequency changes nothing about direct-current resistance: {predicted}, but {measured} was read.',
  'causes.against.wrong meter frequency.q':
    'Q is {measured}; at another test frequency it would be {predicted}.'
} as const;

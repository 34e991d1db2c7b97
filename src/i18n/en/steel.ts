/** Steel in the pavement, tolerances and what the weather does. */
export const steel = {
  'steel.mat': 'Mat of bars',
  'steel.plate': 'Plate',
  'steel.title.mat': 'Steel mat {id}',
  'steel.title.plate': 'Steel plate {id}',
  'steel.kind': 'Kind',
  'steel.depth': 'Depth',
  'steel.depthHint':
    'From the road surface to the middle of the steel; a plate may lie above the road: a negative depth.',
  'steel.pitch': 'Pitch of the bars',
  'steel.bar': 'Bar diameter',
  'steel.resistivity': 'Resistivity, nΩ·m',
  'steel.permeability': 'Relative permeability',
  'steel.more': 'The metal',
  'steel.metalHint':
    'Mild steel unless you know better. The permeability at small fields is an assumption: 40 to 400 occur. It changes the losses, hardly the inductance.',
  'steel.matHint':
    'Bars count as bonded wherever they cross; a mat that is only tied loosely, or coated, costs less.',
  'steel.plateHint': 'An outline that is no rectangle counts as a rectangle of the same area.',
  'steel.subject': 'the steel',
  'steel.costOf': 'What it costs the circuits near it',
  'steel.lostInductance': 'Inductance lost',
  'steel.lostResponse': 'Response lost',
  'steel.accepted': 'Share of a response that steel may cost, everywhere on the site',
  'steel.costNone': 'It costs no circuit anything worth showing.',
  'steel.waiting': 'Still to be computed …',

  'tolerance.title': 'Tolerances',
  'tolerance.intro': 'Plus or minus, holding nineteen times in twenty. An empty field means the usual.',
  'tolerance.summary': { one: '{count} stated', other: '{count} stated' },
  'tolerance.allUsual': 'as usual',
  'tolerance.dimensions': 'Loop dimensions ±',
  'tolerance.depth': 'Slot depth ±',
  'tolerance.wirePitch': 'Pitch of the wires ±',
  'tolerance.leadInLength': 'Lead-in length ±',
  'tolerance.temperatureMetric': 'Wire temperature ± °C',
  'tolerance.temperatureImperial': 'Wire temperature ± °F',
  'tolerance.permittivity': 'Permittivity ±',
  'tolerance.vehicleHeight': 'Vehicle height ±',

  'weather.title': 'Weather and pavement',
  'weather.coldest': 'Coldest day, wire',
  'weather.hottest': 'Hottest day, wire',
  'weather.conductivity': 'Conductivity, mS/m',
  'weather.hint':
    'Wet or salted concrete conducts some 10 to 100 mS/m, dry asphalt next to nothing. Empty leaves these losses out.'
} as const;

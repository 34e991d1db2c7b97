import type { Translation } from '../message';

/** Steel in the pavement, tolerances and what the weather does. */
export const steel = {
  'steel.mat': 'Bewehrungsmatte',
  'steel.plate': 'Platte',
  'steel.title.mat': 'Bewehrungsmatte {id}',
  'steel.title.plate': 'Stahlplatte {id}',
  'steel.kind': 'Art',
  'steel.depth': 'Tiefe',
  'steel.depthHint':
    'Von der Fahrbahnoberfläche bis zur Mitte des Stahls; eine Platte darf über der Fahrbahn liegen: negative Tiefe.',
  'steel.pitch': 'Stababstand',
  'steel.bar': 'Stabdurchmesser',
  'steel.resistivity': 'Spez. Widerstand, nΩ·m',
  'steel.permeability': 'Relative Permeabilität',
  'steel.more': 'Das Metall',
  'steel.metalHint':
    'Baustahl, wenn Sie es nicht besser wissen. Die Permeabilität bei kleinen Feldern ist eine Annahme: 40 bis 400 kommen vor. Sie ändert die Verluste, die Induktivität kaum.',
  'steel.matHint':
    'Stäbe gelten an jeder Kreuzung als leitend verbunden; eine lose gebundene oder beschichtete Matte kostet weniger.',
  'steel.plateHint': 'Ein nicht rechteckiger Umriss zählt als Rechteck gleicher Fläche.',
  'steel.subject': 'Stahl',
  'steel.costOf': 'Was es die Schleifenkreise in der Nähe kostet',
  'steel.lostInductance': 'Induktivität verloren',
  'steel.lostResponse': 'Verstimmung verloren',
  'steel.accepted': 'Anteil einer Verstimmung, den Stahl in der ganzen Anlage kosten darf',
  'steel.costNone': 'Es kostet keinen Schleifenkreis etwas Nennenswertes.',
  'steel.waiting': 'Noch zu berechnen …',

  'tolerance.title': 'Toleranzen',
  'tolerance.intro':
    'Plus oder minus, in neunzehn von zwanzig Fällen gültig. Ein leeres Feld bedeutet den üblichen Wert.',
  'tolerance.summary': { one: '{count} angegeben', other: '{count} angegeben' },
  'tolerance.allUsual': 'wie üblich',
  'tolerance.dimensions': 'Schleifenmaße ±',
  'tolerance.depth': 'Fugentiefe ±',
  'tolerance.wirePitch': 'Drahtabstand ±',
  'tolerance.leadInLength': 'Länge der Zuleitung ±',
  'tolerance.temperatureMetric': 'Drahttemperatur ± °C',
  'tolerance.temperatureImperial': 'Drahttemperatur ± °F',
  'tolerance.permittivity': 'Permittivität ±',
  'tolerance.vehicleHeight': 'Fahrzeughöhe ±',

  'weather.title': 'Wetter und Belag',
  'weather.coldest': 'Kältester Tag, Draht',
  'weather.hottest': 'Heißester Tag, Draht',
  'weather.conductivity': 'Leitfähigkeit, mS/m',
  'weather.hint':
    'Nasser oder gesalzener Beton leitet etwa 10 bis 100 mS/m, trockener Asphalt so gut wie nicht. Leer lässt diese Verluste weg.'
} as const satisfies Partial<Translation>;

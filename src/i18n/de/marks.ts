import type { Translation } from '../message';

/** Options of the tools that draw, and the fields of what they left on the plan. */
export const marks = {
  'options.title': 'Einstellungen: {tool}',

  'lanes.count': 'Fahrstreifen',
  'lanes.width': 'Breite',
  'lanes.manner': 'Wie das nächste Stück weitergeht',
  'lanes.straight': 'Gerade',
  'lanes.arc': 'Bogen',
  'lanes.bend': 'Ausrundung',
  'lanes.oppose': 'Gegenverkehr',
  'lanes.hint': 'Die Taste / wechselt zwischen gerade und Bogen, auch mitten im Fahrstreifen',

  'gate.opens': 'Öffnet',
  'gate.swing': 'als Drehtor',
  'gate.slide': 'als Schiebetor',
  'gate.unknown': 'nicht angegeben',
  'gate.angle': 'Öffnungswinkel, nach links',
  'gate.travel': 'Schiebeweg, zur Spitze hin',

  'arrow.turn': 'Zeigt',
  'turn.ahead': 'geradeaus',
  'turn.left': 'links',
  'turn.right': 'rechts',
  'turn.ahead-left': 'geradeaus und links',
  'turn.ahead-right': 'geradeaus und rechts',
  'turn.left-right': 'links und rechts',
  'turn.back': 'zurück',

  'marks.text': 'Text',
  'marks.x': 'Lage x',
  'marks.y': 'Lage y',
  'marks.length': 'Länge',
  'marks.direction': 'Richtung',
  'marks.offset': 'Maßlinie versetzt um',
  'marks.run': '{length} lang',
  'marks.round': '{count} Ecken, Umfang {round}'
} as const satisfies Partial<Translation>;

import type { Translation } from '../message';

/** Tools that draw, and what they say. */
export const drawing = {
  'tool.kerb': 'Bordstein',
  'tool.kerb.tip': 'Einen Bordstein zeichnen, Punkt für Punkt',
  'tool.island': 'Insel',
  'tool.island.tip': 'Eine Verkehrsinsel zeichnen, Ecke für Ecke',
  'tool.arrow': 'Pfeil',
  'tool.arrow.tip': 'Einen Richtungspfeil auf die Fahrbahn setzen',
  'tool.gate': 'Tor',
  'tool.gate.tip': 'Einen Torflügel vom Drehpunkt oder Pfosten bis zur Spitze zeichnen',
  'tool.cover': 'Deckel',
  'tool.cover.tip': 'Einen Deckel in der Fahrbahn zeichnen, Ecke für Ecke',
  'tool.joint': 'Belagfuge',
  'tool.joint.tip': 'Eine Fuge im Belag zeichnen',
  'tool.conduit': 'Leerrohr',
  'tool.conduit.tip': 'Ein Leerrohr zeichnen, Punkt für Punkt',
  'tool.note': 'Notiz',
  'tool.note.tip': 'Eine Notiz auf den Plan schreiben',
  'tool.dimension': 'Maß',
  'tool.dimension.tip': 'Ein Maß zwischen zwei Punkten zeichnen',
  'tool.calibrate': 'Einpassen',
  'tool.calibrate.tip': 'Das Bild über zwei Punkte einpassen'
} as const satisfies Partial<Translation>;

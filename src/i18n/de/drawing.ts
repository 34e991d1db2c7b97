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
  'command.toggle-arc': 'Fahrstreifen in Bögen oder gerade zeichnen',

  'lane.numbered': 'Fahrstreifen {number}',

  'step.lanes': { one: 'Fahrstreifen zeichnen', other: '{count} Fahrstreifen zeichnen' },
  'step.path': 'Fahrweg zeichnen',
  'step.vehicle': '{name} aufstellen',
  'step.aVehicle': 'Fahrzeug',
  'step.steel.mat': 'Bewehrungsmatte zeichnen',
  'step.steel.plate': 'Stahlplatte zeichnen',
  'step.mark.stop-line': 'Haltlinie zeichnen',
  'step.mark.kerb': 'Bordstein zeichnen',
  'step.mark.gate': 'Tor zeichnen',
  'step.mark.cover': 'Deckel zeichnen',
  'step.mark.joint': 'Belagfuge zeichnen',
  'step.mark.note': 'Notiz schreiben',
  'step.mark.pull-box': 'Schacht setzen',
  'step.mark.cabinet': 'Schaltschrank setzen',
  'step.mark.conduit': 'Leerrohr zeichnen',
  'step.mark.island': 'Verkehrsinsel zeichnen',
  'step.mark.arrow': 'Pfeil zeichnen',
  'step.mark.dimension': 'Maß zeichnen',

  'drawing.noRoom': 'die Anlage hat keinen Platz dafür',
  'drawing.noLane': 'diesen Fahrstreifen gibt es nicht',
  'drawing.noPath': 'diesen Fahrweg gibt es nicht',
  'drawing.crosses': 'ein Umriss, der sich selbst kreuzt',
  'drawing.noArc': 'ein Bogen kann nicht dorthin zurückführen',
  'drawing.tooTight': 'eine zu enge Kurve für diese Fahrstreifen nebeneinander',

  'measure.parts': '{across} quer, {along} längs',
  'measure.angle': '{angle} dazwischen',
  'measure.total': '{total} insgesamt',

  'note.field': 'Text der Notiz',
  'note.hint': 'Enter behält sie, Esc nimmt die Notiz zurück',

  'tool.calibrate': 'Einpassen',
  'tool.calibrate.tip': 'Das Bild über zwei Punkte einpassen'
} as const satisfies Partial<Translation>;

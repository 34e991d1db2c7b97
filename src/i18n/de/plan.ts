import type { Translation } from '../message';

/** The plan, its tools and its outline. */
export const plan = {
  'tools.title': 'Werkzeuge',
  'tool.select': 'Auswahl',
  'tool.pan': 'Ansicht',
  'tool.rectangle': 'Rechteck',
  'tool.quadrupole': 'Quadrupol',
  'tool.diagonal': 'Diagonale',
  'tool.circle': 'Kreis',
  'tool.polygon': 'Vieleck',
  'tool.lane': 'Streifen',
  'tool.stop-line': 'Haltlinie',
  'tool.path': 'Fahrweg',
  'tool.steel': 'Stahl',
  'tool.pull-box': 'Schacht',
  'tool.cabinet': 'Schrank',
  'tool.vehicle': 'Fahrzeug',
  'tool.measure': 'Messen',
  'tool.select.tip': 'Auswählen, bewegen, drehen und in der Größe ändern',
  'tool.pan.tip': 'Ansicht ziehen; die Leertaste tut dasselbe mit jedem Werkzeug',
  'tool.rectangle.tip': 'Eine rechteckige Schleife von Ecke zu Ecke zeichnen',
  'tool.quadrupole.tip': 'Eine Schleife mit dritter Fuge in der Mitte zeichnen, als Acht gewickelt',
  'tool.diagonal.tip': 'Eine Schleife mit einer Fuge von Ecke zu Ecke zeichnen, als Acht gewickelt',
  'tool.circle.tip': 'Eine runde Schleife zeichnen',
  'tool.polygon.tip': 'Eine Schleife mit beliebigem Umriss zeichnen, Punkt für Punkt',
  'tool.lane.tip': 'Einen Fahrstreifen entlang seiner Mitte zeichnen, in Fahrtrichtung',
  'tool.stop-line.tip': 'Eine Haltlinie quer über einen Fahrstreifen zeichnen',
  'tool.path.tip':
    'Einen Weg zeichnen, den Fahrzeuge nehmen und der kein Fahrstreifen ist: Abbiegen, Kurve schneiden, Fahrstreifenwechsel',
  'tool.steel.tip':
    'Eine Bewehrungsmatte oder Platte im Belag zeichnen: ein Rechteck ziehen oder die Ecken des Umrisses anklicken',
  'tool.pull-box.tip': 'Den Schacht setzen, zu dem die Anschlussenden geführt werden',
  'tool.cabinet.tip': 'Den Schaltschrank setzen, zu dem die Zuleitungen laufen',
  'tool.vehicle.tip': 'Ein Fahrzeug aufstellen und sehen, wie jeder Schleifenkreis reagiert',
  'tool.measure.tip': 'Eine Strecke messen',

  'plan.turns': { one: '{count} Windung', other: '{count} Windungen' },
  'plan.call': 'belegt {times}×',
  'key.control': 'Strg',
  'key.shift': 'Umschalt',
  'key.escape': 'Esc',
  'key.delete': 'Entf',
  'key.backspace': 'Rücktaste',

  'plan.title': 'Lageplan',
  'plan.name': {
    one: 'Lageplan von {site}: {count} Schleife, {lanes} Fahrstreifen, {vehicles} Fahrzeuge. Die Gliederung führt alles darauf auf.',
    other:
      'Lageplan von {site}: {count} Schleifen, {lanes} Fahrstreifen, {vehicles} Fahrzeuge. Die Gliederung führt alles darauf auf.'
  },
  'plan.role': 'Zeichnung',
  'hint.title': 'Erste Schritte',
  'hint.done': 'Erste Schritte verbergen; die Einstellungen holen sie zurück',
  'hint.dragVehicle': 'Fahrzeug über eine Schleife ziehen.',
  'hint.placeVehicle': 'Fahrzeug setzen und über eine Schleife ziehen.',
  'hint.dragCorner': 'Schleife wählen und an ihrer Ecke ziehen.',
  'hint.drawLoop': 'Schleife aus den Werkzeugen nehmen und zeichnen.',
  'hint.typeSize': 'Maß in beliebiger Einheit eingeben: 1,8m, 6ft, 72in.',

  'plan.back': 'Zurück zur Zeichnung',
  'plan.view': 'Ansicht',
  'plan.zoomIn': 'Vergrößern',
  'plan.zoomOut': 'Verkleinern',
  'plan.fit': 'Alles zeigen',
  'plan.grid': 'Raster',
  'plan.snapGrid': 'Am Raster fangen',
  'plan.snapObjects': 'An Fahrstreifen und Schleifen fangen',
  'plan.outline': 'Gliederung',

  'announce.step': '{step}. Befunde: {problems}, {cautions}.',

  'outline.title': 'Gliederung des Plans',
  'outline.intro':
    'Die Eingabetaste wählt aus, noch einmal führt sie zu den Feldern. Die Pfeiltasten bewegen das Ausgewählte, Entf entfernt es.',
  'outline.at': 'bei {position}',
  'outline.none': 'Auf dem Plan ist noch nichts.',

  'strip.title': 'Verstimmung durch das Fahrzeug auf dem Plan',
  'strip.vehicle': 'Fahrzeug',
  'strip.place': 'Fahrzeug aufstellen',
  'strip.call': 'belegt',
  'strip.noCall': 'frei',
  'strip.select': 'Die Schleifen dieses Schleifenkreises auswählen',
  'strip.noVehicle':
    'Kein Fahrzeug auf dem Plan: Stellen Sie eines auf und ziehen Sie es über die Schleifen.',
  'strip.waiting': 'Wird berechnet …',

  'mark.stop-line': 'Haltlinie',
  'mark.kerb': 'Bordstein',
  'mark.gate': 'Tor',
  'mark.cover': 'Deckel',
  'mark.joint': 'Belagfuge',
  'mark.note': 'Notiz',
  'mark.pull-box': 'Schacht',
  'mark.cabinet': 'Schaltschrank',
  'mark.conduit': 'Leerrohr',
  'mark.island': 'Verkehrsinsel',
  'mark.arrow': 'Pfeil',
  'mark.dimension': 'Maß'
} as const satisfies Partial<Translation>;

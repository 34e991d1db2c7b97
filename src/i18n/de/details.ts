import type { Translation } from '../message';

/** Fields of what is selected. */
export const details = {
  'details.title': 'Angaben',
  'details.width': 'Breite der Angaben',
  'details.site': 'Anlage',
  'details.loop': 'Schleife',
  'details.circuit': 'Schleifenkreis',
  'details.sides': 'Schleife oder ihr Schleifenkreis',
  'details.oneLoop': '{name}',
  'details.loops': { one: '{count} Schleife', other: '{count} Schleifen' },
  'details.lane': '{name}',
  'details.path': '{name}',
  'details.several': { one: '{count} Objekt', other: '{count} Objekte' },
  'details.giveCircuit': 'In einen Schleifenkreis legen',

  'field.mixed': 'verschieden',
  'field.usual': '{value}, üblich',
  'field.outOfRange': 'muss zwischen {least} und {most} liegen',
  'field.refusedKept': '„{text}“ wurde nicht übernommen: {reason}',
  'field.shapeProblem': 'gefunden {found}, erwartet {expected}',
  'field.impossible': 'die Anlage kann diesen Wert nicht fassen',

  'loop.name': 'Bezeichnung',
  'loop.turns': 'Windungen',
  'loop.wire': 'Draht',
  'loop.slotDepth': 'Fugentiefe',
  'loop.slotWidth': 'Fugenbreite',
  'loop.tail': 'Ende, Länge',
  'loop.added': 'Zusatzwiderstand',

  'shape.width': 'Breite',
  'shape.length': 'Länge',
  'shape.diameter': 'Durchmesser',
  'shape.rotation': 'Drehung',
  'shape.cornerCut': 'Eckschnitt',
  'shape.x': 'Mitte x',
  'shape.y': 'Mitte y',

  'circuit.name': 'Name des Kreises',
  'circuit.askedFor': 'Muss erkennen',

  'channel.unit': 'Gerät',
  'channel.notConnected': 'nicht angeschlossen',
  'channel.unitFull': '{name} – kein Kanal frei',
  'channel.number': 'Kanal',
  'channel.takenBy': '{number} – {name}',
  'channel.setting': 'Frequenzstufe',
  'channel.frequency': 'Frequenz, fest',
  'channel.fromSetting': 'aus der Stufe',
  'channel.threshold': 'Ansprechschwelle',
  'channel.release': 'Abfall, zur Schwelle',
  'channel.none': 'An kein Gerät angeschlossen: Es gibt keine Schwelle zum Vergleich.',
  'channel.connect': 'An einen freien Kanal anschließen',

  'path.name': 'Bezeichnung',
  'path.explain':
    'Ein Weg, den Fahrzeuge nehmen und der kein Fahrstreifen ist. Die Ansicht Überfahrt lässt Fahrzeuge ihn entlangfahren; Schleifen darunter reagieren wie unter einem Fahrstreifen.',
  'lane.name': 'Bezeichnung',
  'lane.width': 'Fahrstreifenbreite',
  'lane.largestVehicle': 'Größtes Fahrzeug darauf',
  'lane.usualVehicle': 'nicht angegeben',

  'vehicle.kind': 'Fahrzeug',
  'vehicle.heading': 'Richtung',

  'site.subject': 'Anlage',
  'site.name': 'Name der Anlage',
  'site.units': 'Angezeigte Einheiten',
  'site.temperature': 'Drahttemperatur',
  'site.pavement': 'Belag',
  'site.permittivity': 'Relative Permittivität',
  'site.liveFigure': 'Wert an den Schleifen',

  'figure.inductance': 'Induktivität',
  'figure.quality': 'Güte',
  'figure.frequency': 'Frequenz',
  'figure.response': 'Verstimmung durch das Fahrzeug',
  'figure.none': 'Keiner'
} as const satisfies Partial<Translation>;

import type { Translation } from '../message';

/** The printed sheet: its frame, its parts, and the sentence for a scale that does not fit. */
export const sheet = {
  'sheet.site': 'Anlage',
  'sheet.client': 'Auftraggeber',
  'sheet.scale': 'Maßstab',
  'sheet.noScale': 'wie angegeben',
  'sheet.scaleOn': '1:{scale} auf {paper}',
  'sheet.units': 'Einheiten',
  'sheet.units.metric': 'Meter, Millimeter',
  'sheet.units.imperial': 'Fuß und Zoll; Tabellen in Dezimalfuß',
  'sheet.content': 'Inhalt',
  'sheet.drawnBy': 'Gezeichnet',
  'sheet.checkedBy': 'Geprüft',
  'sheet.date': 'Datum',
  'sheet.number': 'Blatt-Nr.',
  'sheet.revision': 'Stand',
  'sheet.page': 'Seite',
  'sheet.pageOf': '{number} von {count}',
  'sheet.actualSize':
    'In Originalgröße drucken (100 %), nicht einpassen: Dieser Balken ist dann 100 mm lang.',
  'sheet.northSign': 'N',
  'sheet.continued': '{title} (Fortsetzung)',

  'sheet.paper.A4': 'A4',
  'sheet.paper.A3': 'A3',
  'sheet.paper.letter': 'Letter',
  'sheet.paper.tabloid': 'Tabloid',
  'sheet.portrait': '{paper} hoch',
  'sheet.landscape': '{paper} quer',

  'sheet.unfit.both':
    'Bei 1:{scale} passt der Plan nicht auf {paper}: Er braucht {larger}, oder 1:{smaller} auf diesem Papier.',
  'sheet.unfit.paper': 'Bei 1:{scale} passt der Plan nicht auf {paper}: Er braucht {larger}.',
  'sheet.unfit.scale': 'Bei 1:{scale} passt der Plan auf keines der Papiere: Er braucht 1:{smaller}.',
  'sheet.unfit.together':
    'Bei 1:{scale} passt der Plan auf keines der Papiere: Auf {larger} passt er bei 1:{smaller}.',
  'sheet.unfit.neither':
    'Der Plan, {width} breit und {height} hoch, passt bis 1:{scale} in keinem Maßstab auf {paper}. Lassen Sie den Plan weg, oder zeichnen Sie weit Auseinanderliegendes als eigene Anlagen.',
  'sheet.unfit.neitherHere':
    'Der Plan, {width} breit und {height} hoch, passt bis 1:{scale} in keinem Maßstab auf {paper}: Er braucht {larger}.',
  'sheet.nothing': 'Noch ist nichts gezeichnet.',

  'sheet.size': '{width} × {length}',
  'sheet.diameter': '⌀ {diameter}',
  'sheet.plan': 'Plan',
  'sheet.markName': '{kind} {number}',
  'sheet.baseline': 'Messlinie: {name}',
  'sheet.start': '0',

  'sheet.wiring': 'Verdrahtung',
  'sheet.terminals': '{unit}, Kanal {number}',
  'sheet.string': 'Strang {number}: {loops}',
  'sheet.reversedLoop': '{name} (umgepolt)',

  'sheet.designs.leftOut': 'Entwürfe, die nicht auf dieser Seite stehen',
  'sheet.designs.later':
    'Die Entwürfe wurden noch berechnet, als gedruckt wurde. Öffnen Sie die Vorschau des Blatts, warten Sie sie ab, und drucken Sie noch einmal.',

  'sheet.record': 'Gemessen am Schaltschrank',
  'sheet.record.insulation': 'Isolation (MΩ)',
  'sheet.record.temperature': 'Wetter, Temperatur',
  'sheet.record.by': 'Datum, Zeichen',
  'sheet.quantities': 'Mengen',
  'sheet.rangeNote':
    'In Klammern: wo ein Messwert plausibel liegt, in neunzehn von zwanzig Fällen, wenn alle Toleranzen wie angegeben sind.',
  'sheet.range': '{value} ({from}–{to})',

  'sheet.section': 'Fuge im Schnitt',
  'sheet.sectionScale':
    'Draht mit Isolierung {wires} dick. Vor dem Verguss: Fuge sauber und trocken, Drähte am Grund.',
  'sheet.scaleOf': 'Maßstab {scale}',

  'sheet.cutting': 'Schnitte je Schleife',
  'sheet.cuttingHint':
    'Die Nummern sind die Reihenfolge beim Sägen; wo die Enden liegen, steht in der Tabelle der Schnitte. Pfeile zeigen vom Anfang zum Ende.',
  'sheet.notPlaced': 'Außerdem zu sägen und zu beachten',
  'sheet.homeRun':
    'Fuge von {name} zum Schacht: {length}, {depth} tief. Nur ihre Länge ist angegeben, der Plan zeigt bloß, wohin sie führt; ihren Weg vor Ort abstimmen.',

  'sheet.remarks': 'Bemerkungen',
  'sheet.cautions': 'Hinweise zur Sicherheit',
  'sheet.caution.codes':
    'Örtliche Vorschriften, die Regeln des Straßenbaulastträgers und das Urteil zugelassener Fachleute gehen vor, wo sie von diesem Blatt abweichen.',
  'sheet.caution.safety':
    'Eine Schleife meldet, dass ein Fahrzeug da ist. Sie ist nie die einzige Schutzeinrichtung: Bewegte Tore, Schranken und Türen brauchen eigenen Schutz, vor allem für Menschen.',
  'sheet.caution.services':
    'Vor dem Sägen klären, was in der Fahrbahn liegt: Leitungen, Bewehrung, Spannglieder, Heizungen. Nicht tiefer sägen als angegeben.',
  'sheet.caution.traffic':
    'Auf der Straße nur hinter der dafür angeordneten Verkehrssicherung und in Warnkleidung arbeiten.',
  'sheet.caution.dust':
    'Sägen: Augen, Ohren, Hände und Lunge schützen; nass oder mit Absaugung schneiden, den Schlamm von Abläufen fernhalten.',
  'sheet.caution.mains':
    'Schaltschrank: Arbeiten am Netz nur durch dafür zugelassene Fachkräfte, freigeschaltet, gegen Wiedereinschalten gesichert, Spannungsfreiheit festgestellt.',
  'sheet.caution.test':
    'Isolationsprüfung: die Schleife vorher vom Gerät trennen, niemand berührt die Drähte, danach entladen.',
  'sheet.caution.measure':
    'Alle Längen sind die der Zeichnung. Vor dem Schneiden vor Ort messen; wo es abweicht, zuerst die Zeichnung ändern.'
} as const satisfies Partial<Translation>;

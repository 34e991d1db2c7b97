import type { Translation } from '../message';

/** What the command palette, the context menu, layers, steps and the arranging dialog say. */
export const arranging = {
  'palette.search': 'Was möchten Sie tun?',
  'palette.count': { one: '{count} Befehl', other: '{count} Befehle' },
  'palette.none': 'Kein Befehl hat diese Wörter.',
  'palette.notNow': 'jetzt nicht',
  'palette.how': 'Pfeiltasten wählen, die Eingabetaste führt aus.',

  'action.new': 'Neue Anlage',
  'action.open': 'Anlage oder Datei öffnen',
  'action.save': 'In eine Datei sichern',
  'action.save-copy': 'Kopie in eine Datei sichern',
  'action.share': 'Mit einem Link teilen',
  'action.import': 'Linien (DXF) oder Schleifen (CSV) importieren',
  'action.export': 'Dateien für andere exportieren',
  'action.print': 'Drucken',
  'action.settings': 'Einstellungen',
  'action.help': 'Hilfe und Tasten',
  'action.glossary': 'Fachwörter',
  'action.ideas': 'Ideen zum Ausprobieren',
  'action.lessons': 'Lektionen',
  'action.keep-variant': 'Den jetzigen Entwurf unter einem Namen behalten …',
  'action.palette': 'Alle Befehle',
  'action.steps': 'Mehrere Schritte rückgängig machen',
  'action.layers': 'Ebenen',
  'action.unit-system': 'Zwischen Meter und Fuß wechseln',
  'action.view': 'Tabelle zeigen: {view}',
  'action.sample': 'Beispiel öffnen: {sample}',

  'sample.advance-loops': 'Vorgelagerte Schleifen',
  'sample.bicycle-stop-line': 'Fahrräder an der Haltlinie',
  'sample.calls-that-miscount': 'Anforderungen, die falsch zählen',
  'sample.car-park-counting-pair': 'Zählpaar eines Parkplatzes',
  'sample.check-after-four-winters': 'Prüfung nach vier Wintern',
  'sample.driveway-gate': 'Tor einer Einfahrt',
  'sample.exit-lanes-that-beat': 'Ausfahrten mit Schwebung',
  'sample.loading-bay-on-steel': 'Laderampe auf Stahl',
  'sample.stop-line-two-lanes': 'Haltlinie mit zwei Fahrstreifen',
  'sample.two-ways-to-guard-a-gate': 'Zwei Arten, ein Tor zu sichern',

  'layers.intro': 'Ausgeblendete Ebenen zählen weiter in jeder Angabe; gesperrte bleiben, wie sie sind.',
  'layers.shown': '{layer} zeigen',
  'layers.locked': '{layer} sperren',
  'layers.show': 'Sichtbar',
  'layers.lock': 'Gesperrt',
  'layers.layer': 'Ebene',

  'steps.title': 'Mehrere Schritte rückgängig machen',
  'steps.intro':
    'Nimmt den gewählten Schritt und alles danach zurück; Wiederholen bringt es wieder. Ein Neuladen der Seite beendet diese Liste.',
  'steps.none': 'Es gibt nichts rückgängig zu machen.',
  'steps.count': { one: 'der letzte Schritt', other: 'die letzten {count} Schritte' },

  'gap.title': 'Abstand genau setzen',
  'gap.intro':
    'Gemeint ist der Abstand zwischen den Kanten, die einander zugewandt sind. Gesperrtes bleibt, sonst bleibt das erste.',
  'gap.row': 'Entlang',
  'gap.x': 'Von links nach rechts',
  'gap.y': 'Von unten nach oben',
  'gap.lane': 'Fahrstreifen {name}',
  'gap.gap': 'Abstand',
  'gap.set': 'Abstand setzen',
  'gap.same': 'Sie haben diesen Abstand schon.',
  'repeat.title': 'Entlang eines Fahrstreifens wiederholen',
  'repeat.intro':
    'Die Kopien folgen dem Fahrstreifen, drehen sich mit ihm und sind untereinander wie die Vorlagen verdrahtet. Sie enden, wo der Fahrstreifen endet.',
  'repeat.lane': 'Fahrstreifen',
  'repeat.count': 'Kopien',
  'repeat.pitch': 'Teilung, von einer zur nächsten',
  'repeat.back': 'Eine negative Teilung geht gegen die Fahrtrichtung.',
  'repeat.make': 'Kopien machen',

  'several.align': 'Ausrichten und verteilen',
  'several.layer': 'Ebene',
  'several.counts': 'Ausgewählt'
} as const satisfies Partial<Translation>;

import type { Translation } from '../message';

/** Key list, first steps, ideas. */
export const help = {
  'help.title': 'Hilfe und Tasten',
  'help.intro':
    'Zeichnen Sie Schleifen mit den Werkzeugen, ziehen Sie sie und geben Sie unter Angaben genaue Maße ein. Jeder Wert folgt sofort; wer auf einen Wert drückt, erfährt, wie er berechnet wurde.',
  'help.fields':
    "Ein Feld nimmt jede Einheit: 1,8 m, 180 cm, 6', 6'-6\", 78in. Die Pfeiltasten stellen es schrittweise, mit Umschalt zehnmal so weit. Enter übernimmt die Eingabe, Escape verwirft sie.",
  'help.keys': 'Tasten',
  'help.none': 'keine Taste',
  'help.model': 'Was die Werte nicht enthalten',
  'help.modelText':
    'Ein Fahrzeug ist ein Satz ebener Platten und geschlossener Ringe aus vollkommenem Leiter in wirksamer Höhe. Eisen, das an den Rädern die Induktivität etwas hebt, und die Lücken eines echten Fahrzeugbodens sind nicht nachgebildet. Messen Sie vor Ort, ehe Sie sich auf eine knappe Reserve verlassen.',
  'legend.title': 'Linien auf dem Plan',
  'legend.sawCut': 'Schleife: ihr Fugenschnitt; der Pfeil ist der Wickelsinn',
  'legend.sharedCut': 'Fuge, die sich zwei Hälften einer Schleife teilen',
  'legend.tail': 'Anschlussende, verdrillt, von der Schleife zum Schacht',
  'legend.leadIn': 'Zuleitungskabel, vom Schacht zum Schaltschrank',
  'legend.mat': 'Bewehrungsmatte',
  'legend.plate': 'Stahlplatte',
  'help.version': 'Version {version}',

  'help.draw':
    'Während ein Werkzeug zeichnet, öffnet eine Ziffer das Maß: Tab geht zum nächsten, Enter übernimmt, Escape verwirft. Alt setzt den Fang aus.',
  'help.undo':
    'Rückgängig nimmt je eine Geste oder ein Feld zurück, zweihundert Schritte weit. Ein Neuladen der Seite übersteht es nicht: Ihre Zeichnung schon.',
  'help.hand':
    'Zwei Finger verschieben und vergrößern den Plan, ein ruhender Finger öffnet das Menü. Nach dem ersten Stiftstrich zeichnet der Stift, und ein Finger verschiebt die Ansicht; die Einstellungen ändern das.',
  'help.search': 'In den Befehlen suchen',
  'help.nothing': 'Kein Befehl enthält das im Namen oder in seinen Tasten.',
  'help.spaceDrag': 'Ansicht mit jedem Werkzeug verschieben: halten und ziehen',
  'help.space': 'Leertaste',
  'help.middle': 'mittlere Maustaste',
  'help.wheel': 'Am Zeiger vergrößern',
  'help.turn': 'Mausrad',
  'help.suspend': 'Fang aussetzen: beim Zeichnen oder Bewegen halten',
  'help.group.file': 'Dateien und Hilfe',
  'help.group.edit': 'Bearbeiten',
  'help.group.move': 'Bewegen und Anordnen',
  'help.group.tools': 'Werkzeuge',
  'help.group.insert': 'Einfügen ohne Zeiger',
  'help.group.wiring': 'Verschaltung',
  'help.group.view': 'Ansicht und Fang',

  'ideas.title': 'Ideen',
  'ideas.open': 'Ideen zum Ausprobieren',
  'ideas.intro':
    'Für jeden Zweck eine fertige Anlage und drei Dinge zum Ausprobieren. Sie öffnet sich als eigene Anlage; die jetzige bleibt unter Öffnen.',
  'ideas.start': 'Diese Anlage öffnen',
  'ideas.more': 'Weitere fertige Anlagen',
  'ideas.failed': 'Das Beispiel ließ sich nicht laden. Gehen Sie einmal online und versuchen Sie es wieder.',
  'ideas.designer': 'Eine Haltlinie entwerfen',
  'ideas.designer.1': 'Ziehen Sie eine Schleife zum anderen Fahrstreifen und beobachten Sie die Befunde.',
  'ideas.designer.2':
    'Wählen Sie eine Schleife und geben Sie eine andere Windungszahl ein: L, Güte und Frequenz folgen.',
  'ideas.designer.3':
    'Wählen Sie unter Frequenzen „Frequenzen planen“ und sehen Sie, welche Stufen die Kanäle trennen.',
  'ideas.estimator': 'Einen Auftrag schätzen',
  'ideas.estimator.1':
    'Öffnen Sie unter Mengen eine Zeile: Sie sagt, wie sie zustande kommt, und der Plan zeigt wo. Die Preise hier sind erfunden.',
  'ideas.estimator.2':
    'Ziehen Sie den Schaltschrank: Die Zuleitungen sind gezeichnet, also folgen Längen und Summen.',
  'ideas.estimator.3': 'Machen Sie eine Schleife länger, oder kopieren Sie sie, und vergleichen Sie.',
  'ideas.instructor': 'Einer Klasse zeigen, warum',
  'ideas.instructor.1':
    'Ziehen Sie das Fahrrad über die Diagonalschleife, dann über den Quadrupol, und vergleichen Sie die Verstimmungen über dem Plan.',
  'ideas.instructor.2':
    'Wählen Sie unter Überfahrt „Quer“ und legen Sie die Verstimmungskarte unter die Schleifen.',
  'ideas.instructor.3':
    'Wählen Sie eine Schleife, öffnen Sie ihre Verluste und ihren Querschnitt, und drücken Sie auf einen Wert für seine Formel.',
  'ideas.technician': 'Mit dem Messgerät vergleichen',
  'ideas.technician.1':
    'Öffnen Sie die Prüfung vor Ort und sehen Sie, was ein Messgerät am Schrank je Schleifenkreis zeigen soll.',
  'ideas.technician.2':
    'Wählen Sie unter Ursachen „Left, rear“: der Kanal, der nie anspricht, und wie weit weg sein Fehler liegt.',
  'ideas.technician.3':
    'Wählen Sie „Right, front“: was der Regen getan hat und welche Messung Gewissheit gäbe.',
  'ideas.car-park-counting-pair': 'Zählpaar eines Parkplatzes: in welche Richtung ein Auto fuhr',
  'ideas.driveway-gate': 'Einfahrtstor: eine freie Ausfahrt und zwei Schutzschleifen',
  'ideas.calls-that-miscount': 'Anforderungen, die sich verzählen: was Verkehr mit den Ausgängen macht',
  'ideas.loading-bay-on-steel': 'Ladeplatz auf Stahl: was eine bewehrte Platte wegnimmt',
  'ideas.two-ways-to-guard-a-gate': 'Zwei Arten, ein Tor zu sichern: behaltene Entwürfe nebeneinander',
  'ideas.advance-loops': 'Vorfeldschleifen: schneller Verkehr und der Entscheidungsbereich'
} as const satisfies Partial<Translation>;

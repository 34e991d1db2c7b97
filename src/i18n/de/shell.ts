import type { Translation } from '../message';

/** The page around the plan: files, undo, dialogs, notices. */
export const shell = {
  'page.title': '{site} – Kerfline',

  'file.group': 'Anlagendatei',
  'file.new': 'Neu',
  'file.open': 'Öffnen',
  'file.save': 'Sichern',
  'file.saveTitle': 'Anlage in eine Datei sichern (Strg+S)',
  'file.saveTo': 'In {name} sichern (Strg+S); Strg+Umschalt+S sichert eine Kopie',
  'file.tooLarge': '{size} MB',
  'file.atMost': 'eine Anlagendatei von höchstens {size} MB',
  'file.unreadable': 'eine Datei, die der Browser nicht lesen kann: {reason}',
  'file.readable': 'eine lesbare Datei',
  'file.chosen': 'Die Datei',
  'file.dropHere': 'Anlagendatei hier ablegen, um sie zu öffnen',

  'undo.group': 'Rückgängig und Wiederholen',
  'undo.none': 'Nichts rückgängig zu machen',
  'undo.step': 'Rückgängig: {step}',
  'redo.none': 'Nichts zu wiederholen',
  'redo.step': 'Wiederholen: {step}',
  'step.change': '{subject}: {field} ändern',

  'saving.saved': 'Gesichert',
  'saving.saving': 'Sichert …',
  'saving.notSaved': 'Nicht gesichert',
  'saving.where':
    'Ihre Arbeit wird laufend in diesem Browser aufbewahrt. Sichern Sie sie in eine Datei, um sie anderswo zu haben.',

  'theme.title': 'Farben',
  'theme.system': 'Farben wie im System',
  'theme.light': 'Helle Farben',
  'theme.dark': 'Dunkle Farben',

  'units.metric': 'Metrisch',
  'units.imperial': 'Fuß und Zoll',
  'units.metricShort': 'm',
  'units.imperialShort': 'ft',

  'help.open': 'Hilfe und Tasten',
  'help.title': 'Hilfe und Tasten',
  'help.intro':
    'Zeichnen Sie Schleifen mit den Werkzeugen links, ziehen Sie sie und geben Sie rechts unter Angaben genaue Maße ein. Jeder Wert folgt sofort.',
  'help.fields':
    "Ein Feld nimmt jede Einheit: 1,8 m, 180 cm, 6', 6'-6\", 78in. Die Pfeiltasten stellen es schrittweise, mit Umschalt zehnmal so weit. Enter übernimmt die Eingabe, Escape verwirft sie.",
  'help.command': 'Befehl',
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

  'dialog.close': 'Schließen',

  'caution.title': 'Ehe jemand die Fahrbahn schneidet',
  'caution.traffic': 'Arbeit im fließenden Verkehr braucht eigene Sicherung und Genehmigung.',
  'caution.mains': 'Geräte und Schaltschränke führen Netzspannung: Überlassen Sie sie Elektrofachkräften.',
  'caution.dust': 'Sägen macht Lärm und gefährlichen Staub: nass schneiden, Augen, Ohren und Lunge schützen.',
  'caution.gates': 'Abstand halten von Toren und Schranken, die sich von selbst bewegen können.',
  'caution.codes':
    'Örtliche Vorschriften und befugte Fachleute entscheiden; diese Werte liefern ihnen Grundlagen.',
  'caution.device':
    'Eine Schleife ist nie die einzige Sicherheitseinrichtung eines Tors oder einer Schranke.',

  'new.title': 'Neue Anlage',
  'new.intro':
    'Wählen Sie die Lage, die Ihrer am nächsten kommt. Was jetzt offen ist, bleibt unter Öffnen, in diesem Browser aufbewahrt.',

  'open.title': 'Anlage öffnen',
  'open.file': 'Datei öffnen …',
  'open.drop': 'Sie können auch eine Datei irgendwo auf der Seite ablegen.',
  'open.kept': 'In diesem Browser aufbewahrt',
  'open.looking': 'Wird gesucht …',
  'open.nothingKept': 'Noch nichts: Eine Anlage wird hier ab ihrer ersten Änderung aufbewahrt.',
  'open.cannotLook': 'Dieser Browser lässt die Seite nicht in seinen Speicher sehen.',

  'refused.title': 'Die Datei wurde nicht geöffnet',
  'refused.intro': '{name} enthält keine brauchbare Anlage. Die offene Anlage blieb unberührt.',
  'refused.path': 'Wo',
  'refused.found': 'Gefunden',
  'refused.expected': 'Erwartet',
  'refused.whole': 'die ganze Datei',

  'banner.full':
    'Nicht gesichert: Der Speicher dieses Browsers ist voll. Ihre Arbeit ist nur sicher, solange diese Seite offen ist.',
  'banner.forbidden':
    'Nicht gesichert: Dieser Browser lässt die Seite nichts speichern. Ihre Arbeit ist nur sicher, solange diese Seite offen ist.',
  'banner.failed':
    'Nicht gesichert: Der Speicher des Browsers hat versagt. Ihre Arbeit ist nur sicher, solange diese Seite offen ist.',
  'banner.saveToFile': 'In eine Datei sichern',
  'banner.calculation':
    'Die Berechnung ist zweimal stehen geblieben. Die gezeigten Werte gehören nicht zu dieser Zeichnung.',
  'banner.retry': 'Neu berechnen',
  'banner.salvage': {
    one: 'Etwas in diesem Browser Aufbewahrtes ließ sich nicht lesen. Es wurde unverändert beiseitegelegt; nichts wurde darüber geschrieben.',
    other:
      '{count} in diesem Browser aufbewahrte Dinge ließen sich nicht lesen. Sie wurden unverändert beiseitegelegt; nichts wurde darüber geschrieben.'
  },
  'banner.downloadSalvage': 'Herunterladen',
  'banner.recovered': 'Wiederhergestellt, wie es um {time} war. Ältere Zustände stehen unter Öffnen.',
  'banner.update': 'Eine neue Version liegt bereit.',
  'banner.useUpdate': 'Neu laden und benutzen',
  'banner.dismiss': 'Ausblenden'
} as const satisfies Partial<Translation>;

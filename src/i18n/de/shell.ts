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
  'file.dropHere':
    'Anlagendatei ablegen, um sie zu öffnen, Bild, PDF oder DXF, um es unter den Plan zu legen, Tabelle (CSV) für ihre Schleifen',

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

  'units.metric': 'Metrisch',
  'units.imperial': 'Fuß und Zoll',
  'units.metricShort': 'm',
  'units.imperialShort': 'ft',

  'help.open': 'Hilfe und Tasten',
  'settings.open': 'Einstellungen',

  'dialog.close': 'Schließen',

  'sheet.title': 'Unter dem Plan',
  'sheet.taller': 'Hierfür mehr Platz',
  'sheet.lower': 'Mehr Platz für den Plan',

  'term.explain': 'Was ist das: {term}',

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
    'Wählen Sie die Situation, die Ihrer am nächsten kommt. Was jetzt offen ist, bleibt unter Öffnen, in diesem Browser aufbewahrt.',

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
  'banner.silent':
    'Nicht gesichert: Der Speicher des Browsers antwortet nicht. Ihre Arbeit ist nur sicher, solange diese Seite offen ist.',
  'banner.saveToFile': 'In eine Datei sichern',
  'banner.changedFile':
    '{name} wurde anderswo geändert, seit die Datei hier zuletzt gelesen oder gesichert wurde. Es wurde nichts hineingeschrieben.',
  'banner.saveCopy': 'Kopie sichern',
  'banner.replaceFile': 'Inhalt ersetzen',
  'banner.calculation':
    'Die Berechnung ist zweimal stehen geblieben. Die gezeigten Werte gehören nicht zu dieser Zeichnung.',
  'banner.retry': 'Neu berechnen',
  'banner.salvage': {
    one: 'Etwas in diesem Browser Aufbewahrtes ließ sich nicht lesen. Es wurde unverändert beiseitegelegt; nichts wurde darüber geschrieben.',
    other:
      '{count} in diesem Browser aufbewahrte Dinge ließen sich nicht lesen. Sie wurden unverändert beiseitegelegt; nichts wurde darüber geschrieben.'
  },
  'banner.downloadSalvage': 'Herunterladen',
  'banner.recovered': 'Wiederhergestellt, wie es um {time} war. Ältere Stände stehen unter Öffnen.',
  'banner.update': 'Eine neue Version liegt bereit.',
  'banner.useUpdate': 'Neu laden und benutzen',
  'banner.dismiss': 'Ausblenden'
} as const satisfies Partial<Translation>;

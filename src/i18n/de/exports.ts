import type { Translation } from '../message';

/** Making files for others. */
export const exports = {
  // parts of file names: plain letters
  'exports.file.takeoff': 'mengen',
  'exports.file.readings': 'messwerte',
  'exports.file.measured': 'gemessen',
  'exports.file.record': 'abnahmeprotokoll',
  'exports.file.form': 'messformular',
  'exports.file.cutting': 'schnittplan',
  'exports.file.designs': 'entwuerfe-im-vergleich',
  'exports.file.report': 'bericht',
  'exports.file.plan': 'plan',
  'exports.file.sheet': 'blatt',

  'exports.title': 'Exportieren',
  'exports.intro':
    'Dateien für andere, in diesem Browser aus der Anlage gemacht, wie sie jetzt gezeichnet ist.',
  'exports.noPictures': {
    one: 'Das Bild unter dem Plan ist in keiner davon; in der gesicherten Anlage ist es.',
    other: 'Die {count} Bilder unter dem Plan sind in keiner davon; in der gesicherten Anlage sind sie.'
  },
  'exports.sheet': 'Blatt',
  'exports.sheetFor':
    'Zum Drucken und zum Mitnehmen auf die Straße: Plan im Maßstab, Tabellen, Verdrahtung, Vorsichtsmaßnahmen.',
  'exports.plan': 'Plan',
  'exports.planFor':
    'SVG und PNG für ein Dokument, DXF in wahren Einheiten mit benannten Ebenen für ein Zeichenprogramm.',
  'exports.takeoff': 'Mengenermittlung',
  'exports.takeoffFor': 'Mengen Zeile für Zeile, wie jede zustande kam, was zu kaufen ist und was es kostet.',
  'exports.readings': 'Messwerte und Einstellungen',
  'exports.readingsFor':
    'Was ein Messgerät an Schleife und Schaltschrank zeigen soll, in welchen Grenzen, und wie die Kanäle einzustellen sind.',
  'exports.measured': 'Gemessene Werte',
  'exports.measuredFor':
    'Was die Messgeräte anzeigten, mit Sollwert, Urteil und Drift seit der Inbetriebnahme.',
  'exports.record': 'Abnahmeprotokoll',
  'exports.recordFor':
    'Kreis für Kreis: Sollwert, Messwert, Urteil, Einstellungen, Abnahme, und Linien zum Unterschreiben.',
  'exports.form': 'Leeres Formular',
  'exports.formFor': 'Für die Straße: Felder zum Ausfüllen, und neben jedem, was zu messen sein sollte.',
  'exports.cutting': 'Schnittplan',
  'exports.cuttingFor':
    'Schnitte in ihrer Reihenfolge, mit Station und Abstand ihrer Enden, Überschnitten und Tiefen.',
  'exports.designs': 'Entwürfe im Vergleich',
  'exports.designsFor':
    'Jedes Ergebnis, in dem sich die behaltenen Entwürfe unterscheiden, mit besser und schlechter, und was in der Zeichnung anders ist.',
  'exports.oneDesign':
    'Es gibt nur einen Entwurf: Behalten Sie den jetzigen unter einem Namen und ändern Sie die Zeichnung, dann sind es zwei.',
  'exports.report': 'Bericht',
  'exports.reportFor': 'Alles, was berechnet wurde, in SI-Einheiten, so wie die Befehlszeile es ausgibt.',
  'exports.make': '{what} als {format}',
  'exports.resolution': 'Auflösung des PNG',
  'exports.dotsPerInch': '{dots} Punkte je Zoll',
  'exports.forSpreadsheet': 'CSV für eine Tabellenkalkulation',
  'exports.forSpreadsheetHint':
    'Mit einer Marke am Anfang, an der Tabellenkalkulationen die Buchstaben erkennen. Immer: Semikolon, Dezimalkomma, Einheiten im Tabellenkopf.',

  'exports.take': 'Mitnehmen: {what}',
  'exports.takeSvg': 'Bild (SVG)',
  'exports.takePng': 'Bild (PNG)',
  'exports.takeCsv': 'Tabelle (CSV)',

  'exports.waiting': '{file}: wartet auf Werte, die noch unterwegs sind …',
  'exports.making': '{file}: wird gemacht …',
  'exports.progress': 'Fortschritt von {file}',
  'exports.cancel': 'Abbrechen',
  'exports.made': '{name} ist gemacht und liegt bei den Downloads des Browsers.',
  'exports.ended': '{file}: abgebrochen, nichts wurde aufgehoben.',
  'exports.unfit': '{file} wurde nicht gemacht. {message}',
  'exports.failed': '{file} konnte nicht gemacht werden: {reason}',
  'exports.changedMeanwhile': 'Die Zeichnung wurde inzwischen geändert: Bitte noch einmal anstoßen.',
  'exports.noFigures': 'Die Werte dieser Zeichnung konnten nicht berechnet werden.',
  'exports.tooLarge':
    'Mit {dots} Punkten je Zoll hätte das Bild {width} × {height} Pixel, mehr als Browser malen. Das größte mögliche hat {most} Punkte je Zoll, {mostWidth} × {mostHeight} Pixel: weniger Punkte wählen, oder SVG, das keine Grenze hat.',
  'exports.noCanvas': 'Der Browser hat für ein Bild dieser Größe keinen Speicher; SVG braucht keinen.'
} as const satisfies Partial<Translation>;

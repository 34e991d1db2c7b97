import type { Translation } from '../message';

/** Lines and loops from other files. */
export const imports = {
  'imports.title': 'Linien oder Schleifen importieren',
  'imports.intro':
    'Linien einer Zeichnung (DXF) werden unter den Plan gelegt; aus einer Tabelle (CSV) werden Schleifen. Bevor Sie es gesehen haben, ändert sich nichts.',
  'imports.choose': 'Datei wählen …',
  'imports.another': 'Andere Datei …',
  'imports.orDrop': 'Sie können eine .dxf- oder .csv-Datei auch auf dem Plan fallen lassen.',
  'imports.template': 'Tabelle von Schleifen',
  'imports.templateIntro':
    'Eine Zeile je Schleife. Spaltenköpfe deutsch oder englisch, mit Einheit oder mit Einheiten in den Zellen; was leer bleibt, ist wie üblich.',
  'imports.downloadTemplate': 'Beispiel herunterladen',
  'imports.downloadLoops': 'Schleifen dieser Anlage herunterladen',
  'imports.file.template': 'schleifen-beispiel',
  'imports.file.loops': 'schleifen',
  'imports.readOnly': 'Diese Anlage ist nur zum Lesen offen; es kann nichts importiert werden.',
  'imports.reading': '{name} wird gelesen …',
  'imports.progress': 'Fortschritt des Lesens',
  'imports.cancel': 'Abbrechen',
  'imports.refused': '{name} ist nicht zu gebrauchen: {reason}',
  'imports.preview': 'Was hereinkommt',

  'imports.why.binary':
    'Es ist eine binäre DXF-Datei. Speichern Sie sie als DXF in Textform (ASCII) und nehmen Sie diese.',
  'imports.why.sealed':
    'Es ist eine DWG-Datei, die nur ihr eigenes Programm liest. Speichern Sie sie dort als DXF (ASCII) und nehmen Sie diese.',
  'imports.why.none': 'Es ist keine DXF-Datei.',
  'imports.why.damaged': 'Es ist keine DXF-Datei oder eine beschädigte.',
  'imports.why.cut': 'Sie endet vor ihrer Endmarke; ein Teil fehlt.',
  'imports.why.empty': 'Es ist keine Linie darin, die sich zeigen ließe.',
  'imports.why.tooMuch':
    'Es ist zu viel darin. Gelesen werden höchstens 50 MB, zweihunderttausend Linien und eine Million Punkte; Blöcke in Blöcken zählen so oft, wie sie gesetzt sind.',
  'imports.why.unreadable': 'Der Browser kann die Datei nicht lesen ({detail}).',

  'imports.unit': 'Einheit der Zeichnung',
  'imports.unit.m': 'Meter',
  'imports.unit.cm': 'Zentimeter',
  'imports.unit.mm': 'Millimeter',
  'imports.unit.ft': 'Fuß',
  'imports.unit.in': 'Zoll',
  'imports.unit.file': 'wie die Datei sagt',
  'imports.unitSize': '{unit}: {width} × {height}',
  'imports.unitSaid': 'Die Datei sagt: {unit}.',
  'imports.unitOther': 'Die Datei sagt: eine Einheit von {length}.',
  'imports.unitUnsaid': 'Die Datei nennt keine Einheit. Wählen Sie die, deren Größe stimmt.',
  'imports.unitChoose': 'wählen …',
  'imports.odd': 'Das sind {size} an der längeren Seite. Stimmt die Einheit?',
  'imports.place': 'Lage',
  'imports.place.file': 'wo ihre Koordinaten liegen',
  'imports.place.view': 'in die Mitte des Sichtbaren',
  'imports.far':
    'Ihre Koordinaten liegen {distance} von diesem Plan entfernt, wie in einem Landesnetz; sie wird hierher gerückt, ihre Längen bleiben.',
  'imports.layers': 'Ebenen',
  'imports.layer': 'Ebene',
  'imports.layerHidden': '{name} (in der Zeichnung ausgeschaltet)',
  'imports.paths': 'Linien',
  'imports.points': 'mindestens drei Punkte, etwa 0 0 | 2 0 | 1 2',
  'imports.pointCount': 'Punkte',
  'imports.all': 'Alle Ebenen',
  'imports.chosen': { one: '{count} Linie', other: '{count} Linien' },
  'imports.chosenSize': '{lines}, {width} × {height}',
  'imports.tooMany':
    'Gewählt sind {paths} Linien mit {points} Punkten; ein Plan nimmt {mostPaths} Linien und {mostPoints} Punkte einer Zeichnung. Lassen Sie Ebenen weg.',
  'imports.tooLarge': 'In dieser Einheit wäre sie {size} lang, mehr als ein Plan fassen kann.',
  'imports.tooSmall': 'In dieser Einheit wäre sie nur {size} lang.',
  'imports.noLayer': 'Wählen Sie mindestens eine Ebene.',
  'imports.leftOut': 'Weggelassen: {list}.',
  'imports.left.text': { one: '{count} Text', other: '{count} Texte' },
  'imports.left.fill': { one: '{count} gefüllte Fläche', other: '{count} gefüllte Flächen' },
  'imports.left.dimension': { one: '{count} Bemaßung', other: '{count} Bemaßungen' },
  'imports.left.surface': {
    one: '{count} Körper oder Fläche im Raum',
    other: '{count} Körper und Flächen im Raum'
  },
  'imports.left.point': { one: '{count} einzelner Punkt', other: '{count} einzelne Punkte' },
  'imports.left.picture': { one: '{count} Bild', other: '{count} Bilder' },
  'imports.left.sheet': { one: '{count} Objekt auf einem Blatt', other: '{count} Objekte auf Blättern' },
  'imports.left.tilted': {
    one: '{count} Objekt in schräger Ebene',
    other: '{count} Objekte in schrägen Ebenen'
  },
  'imports.left.damaged': { one: '{count} Objekt ohne Sinn', other: '{count} Objekte ohne Sinn' },
  'imports.left.other': { one: '{count} anderes Objekt', other: '{count} andere Objekte' },
  'imports.lay': 'Unter den Plan legen',
  'imports.laid': '{name} liegt unter dem Plan: {lines}, gesperrt.',
  'imports.full': 'höchstens {most} Schleifen in einer Anlage',
  'imports.underlaysFull': 'Die Anlage hat {count} Bilder und Zeichnungen, mehr kann sie nicht fassen.',
  'imports.step.lines': 'Linien unter den Plan legen',
  'imports.linesPreview': {
    one: '{count} Linie, {width} mal {height}',
    other: '{count} Linien, {width} mal {height}'
  },

  'imports.why.noHeads':
    'Keine Spalte hat einen bekannten Namen. Die erste Zeile muss sie nennen: id, Form, x, y, Breite, Länge, Durchmesser, Windungen …',
  'imports.why.noRows': 'Unter den Spaltenköpfen steht keine Zeile.',
  'imports.why.twice': 'Mehr als eine Spalte ist mit „{detail}“ gemeint.',
  'imports.why.tooLarge': 'Von einer Tabelle werden höchstens 5 MB gelesen.',
  'imports.unitless': 'Zahlen ohne Einheit sind {unit}, die von Fugen {small}.',
  'imports.unknown': {
    one: 'Eine Spalte ist nicht bekannt und wird weggelassen: {list}.',
    other: '{count} Spalten sind nicht bekannt und werden weggelassen: {list}.'
  },
  'imports.beyond': 'Nur die ersten Zeilen werden angesehen; {count} weitere bleiben weg.',
  'imports.rows': 'Zeilen der Datei',
  'imports.line': 'Zeile',
  'imports.loop': 'Schleife',
  'imports.shape': 'Form und Größe',
  'imports.position': 'Lage',
  'imports.turns': 'Windungen',
  'imports.state': 'Was geschieht',
  'imports.comesIn': 'kommt herein',
  'imports.renamed': 'kommt als {id} herein: {taken} ist vergeben',
  'imports.wrong': '{column}: gefunden {found}, erwartet {expected}',
  'imports.summary': '{sound} von {rows} Zeilen können herein.',
  'imports.someWrong': {
    one: '{count} Zeile kann es nicht und sagt, warum.',
    other: '{count} Zeilen können es nicht und sagen, warum.'
  },
  'imports.onlyWrong': 'Nur Zeilen zeigen, die nicht hereinkönnen',
  'imports.more': { one: '{count} weitere Zeile', other: '{count} weitere Zeilen' },
  'imports.wired': 'Jeder Schleife einen eigenen Kreis und Kanal geben',
  'imports.bring': { one: '{count} Schleife importieren', other: '{count} Schleifen importieren' },
  'imports.brought': {
    one: '{count} Schleife liegt auf dem Plan.',
    other: '{count} Schleifen liegen auf dem Plan.'
  },
  'imports.step.loops': { one: '{count} Schleife importieren', other: '{count} Schleifen importieren' },
  'imports.loopsPreview': {
    one: '{count} Schleife aus der Datei zwischen denen, die da sind',
    other: '{count} Schleifen aus der Datei zwischen denen, die da sind'
  },

  'imports.closedQuote':
    'ein Anführungszeichen, das am Ende seiner Zelle geschlossen wird; bis dahin ist unter dieser Zeile nichts lesbar',
  'imports.lastCell': {
    one: 'keine weitere Zelle: die erste Zeile nennt {count} Spalte (eine Zahl mit Dezimalkomma gehört in Anführungszeichen, oder Semikolons zwischen die Zellen)',
    other:
      'keine weitere Zelle: die erste Zeile nennt {count} Spalten (eine Zahl mit Dezimalkomma gehört in Anführungszeichen, oder Semikolons zwischen die Zellen)'
  },
  'imports.nothing': 'nichts',
  'imports.aLength': 'eine Länge, etwa 1,8 m oder 6 ft',
  'imports.aCount': 'eine ganze Zahl',
  'imports.anAngle': 'ein Winkel, etwa 30°',
  'imports.aNumber': 'eine Zahl',
  'imports.because': '{expected} ({reason})',
  'imports.between': 'zwischen {least} und {most}',
  'imports.shortName': 'höchstens {most} Zeichen',
  'imports.plainId': 'höchstens 80 gewöhnliche Zeichen'
} as const satisfies Partial<Translation>;

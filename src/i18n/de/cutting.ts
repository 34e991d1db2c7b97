/** Order of cuts and setting out. */
export const cutting = {
  'cutting.none': 'Noch nichts zu schneiden: Zeichnen Sie eine Schleife.',
  'cutting.baseline': 'Schnitte gemessen von',
  'cutting.from':
    'Station: entlang {name} ab dem Anfang, der 0 im Plan. Abstand: rechtwinklig dazu, nach links positiv.',
  'cutting.noBaseline':
    'Es gibt keine Linie, ab der gemessen wird: Zeichnen Sie einen Fahrstreifen, einen Bordstein oder eine Haltlinie.',
  'cutting.cuts': 'Schnitte',
  'cutting.withHoles': { one: 'und {count} Kernbohrung', other: 'und {count} Kernbohrungen' },
  'cutting.blade': 'Weg des Sägeblatts',
  'cutting.ofDepth': '{depth} tief, {width} breit',
  'cutting.ofOvercuts': 'davon {length} über die Enden hinaus',
  'cutting.unplaced': 'In den Summen, aber nicht im Plan, weil nur die Länge angegeben ist: {homeRuns}.',
  'cutting.unplacedOne': 'Weg zum Schacht von {loop}, {length}',
  'cutting.unplacedMany': {
    one: '{count} Weg zum Schacht, {length}',
    other: '{count} Wege zum Schacht, zusammen {length}'
  },
  'cutting.caption': 'Schnitte in der Reihenfolge des Sägens',
  'cutting.cut': 'Schnitt',
  'cutting.loop': 'Schleife',
  'cutting.sharedWith': 'mit {loops}',
  'cutting.startStation': 'Anfang, Station ({unit})',
  'cutting.startOffset': 'Abstand ({unit})',
  'cutting.endStation': 'Ende, Station ({unit})',
  'cutting.endOffset': 'Abstand ({unit})',
  'cutting.length': 'Länge',
  'cutting.overcut': 'Über Anfang, Ende',
  'cutting.beyond': '{from}, {to}',
  'cutting.beyondBoth': 'je {length}',
  'cutting.depth': 'Tiefe',
  'cutting.round': 'Mitte; Radius {radius}',
  'cutting.kind.side': 'Seite',
  'cutting.kind.shared': 'gemeinsame Seite',
  'cutting.kind.corner': 'Eckschnitt',
  'cutting.kind.round': 'rund',
  'cutting.kind.homeRun': 'Weg zum Schacht',
  'cutting.showAll': 'Alle {count} Schnitte zeigen',
  'cutting.holes': 'Kernbohrungen, vor dem Sägen',
  'cutting.hole': 'Kernbohrung',
  'cutting.holeNumber': 'Kernbohrung {number}',
  'cutting.reference': 'Bezugspunkt',
  'cutting.references':
    'Bezugspunkte: sie zeigen, wo die Linie beginnt und ob die Zeichnung zur Örtlichkeit passt',
  'cutting.station': 'Station ({unit})',
  'cutting.offset': 'Abstand ({unit})',
  'cutting.diameter': 'Durchmesser'
} as const;

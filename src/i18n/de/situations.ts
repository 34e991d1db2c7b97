import type { Translation } from '../message';

/** Anlagen, mit denen eine neue Anlage beginnen kann, und die Namen dessen, was darin liegt. */
export const situations = {
  'situation.driveway-gate': 'Tor an einer Einfahrt',
  'situation.driveway-gate.gist':
    'Ein Schiebetor mit einer Ausfahrtschleife innen und je einer Schutzschleife auf beiden Seiten des Tores.',
  'situation.car-park-lane': 'Einfahrt eines Parkplatzes',
  'situation.car-park-lane.gist':
    'Ein Einfahrtstreifen mit Schranke: eine Ankunftsschleife vor der Schranke und eine Schließschleife dahinter.',
  'situation.stop-line': 'Haltlinie mit zwei Streifen',
  'situation.stop-line.gist':
    'Zwei Fahrstreifen nebeneinander, jeder mit zwei Anwesenheitsschleifen in Reihe hinter der Haltlinie.',
  'situation.advance-loops': 'Vorfeldschleifen',
  'situation.advance-loops.gist':
    'Eine schnelle Zufahrt mit einer Schleife an jedem Ende des Bereichs, in dem man sich zum Halten oder Weiterfahren entscheidet.',
  'situation.counting-pair': 'Zählpaar',
  'situation.counting-pair.gist':
    'Zwei kurze Schleifen hintereinander, die ein- und ausfahrende Fahrzeuge eines Parkplatzes zählen.',
  'situation.bicycle-stop-line': 'Haltlinie mit Radstreifen',
  'situation.bicycle-stop-line.gist':
    'Ein Radfahrstreifen mit einer Diagonalschleife neben einem Fahrstreifen mit einer Quadrupolschleife.',
  'situation.blank': 'Leer',
  'situation.blank.gist': 'Nichts als die Straße: Zeichnen Sie alles selbst.',

  'named.approach': 'Zufahrt',
  'named.arrival': 'Ankunft',
  'named.barrierUnit': 'Schrankengerät',
  'named.bicycles': 'Radverkehr',
  'named.cabinetUnit': 'Gerät im Schaltschrank',
  'named.closing': 'Schließen',
  'named.countingUnit': 'Zählgerät',
  'named.driveway': 'Einfahrt',
  'named.entry': 'Einfahrt',
  'named.far': 'Fern',
  'named.first': 'Erste',
  'named.freeExit': 'Freie Ausfahrt',
  'named.gateUnit': 'Torgerät',
  'named.inAndOut': 'Ein und aus',
  'named.left': 'Links',
  'named.leftLane': 'Linker Streifen',
  'named.near': 'Nah',
  'named.protecting': 'Schutz',
  'named.protectingInside': 'Schutz, innen',
  'named.protectingOutside': 'Schutz, außen',
  'named.right': 'Rechts',
  'named.rightLane': 'Rechter Streifen',
  'named.second': 'Zweite',
  'named.traffic': 'Kraftverkehr'
} as const satisfies Partial<Translation>;

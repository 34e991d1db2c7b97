import type { Translation } from '../message';

/** Wie Neues heißt, bis ihm jemand einen Namen gibt; steht dann in der Anlage. */
export const naming = {
  'site.untitled': 'Anlage ohne Namen',
  'unit.numbered': 'Gerät {number}',
  'path.numbered': 'Fahrweg {number}',

  'named.leftFront': 'Links, vorn',
  'named.leftRear': 'Links, hinten',
  'named.rightFront': 'Rechts, vorn',
  'named.rightRear': 'Rechts, hinten',

  'demo.name': 'Ostervaler Straße / Pennickweg, Haltlinie',
  'demo.aheadLeft': 'Geradeaus und links',
  'demo.aheadRight': 'Geradeaus und rechts',
  'demo.cover': 'Schleifen halten mindestens 0,6 m Abstand vom Deckel.',
  'demo.dryDay':
    'An einem trockenen Tag über 5 °C schneiden und vergießen; jede Schleife prüfen, bevor die Fuge gefüllt wird.',
  'demo.leftUnit': 'Gerät linker Streifen',
  'demo.rightUnit': 'Gerät rechter Streifen',
  'demo.notes':
    'Anwesenheit an der Haltlinie und dahinter eine Rückstauschleife, Streifen für Streifen. Arbeiten auf der Straße folgen den örtlichen Regeln für das Sperren des Fahrstreifens; Fugenschnitt, Verbindungen und Schaltschrank sind Sache von Leuten, die dafür zugelassen sind.'
} as const satisfies Partial<Translation>;

import type { Translation } from '../message';

/** Warum die Form einer Schleife unmöglich ist. */
export const shapes = {
  'finding.shape.width': 'die Breite',
  'finding.shape.length': 'die Länge',
  'finding.shape.diameter': 'der Durchmesser',
  'finding.shape.rotation': 'die Drehung',
  'finding.shape.points': 'der Umriss',
  'finding.shape.cornerCut': 'der Eckschnitt',

  'shape.size': '{size} m',
  'shape.sizes': 'eine Länge von {min} m bis {max} m',
  'shape.points': '{count} Punkte',
  'shape.pointsRange': '{least} bis {most} Punkte',
  'shape.pointTwice': 'der Punkt {point} zweimal hintereinander',
  'shape.pointsApart': 'jeder Punkt abseits des vorigen',
  'shape.side': 'eine Seite von {length} m',
  'shape.sides': 'Seiten von höchstens {most} m',
  'shape.crossing': 'Seite {a} kreuzt oder berührt Seite {b}',
  'shape.simple': 'ein Umriss, der sich weder kreuzt noch berührt',
  'shape.empty': 'ein Umriss, der nichts umschließt',
  'shape.area': 'eine Fläche von mindestens {least}',
  'shape.cut': 'ein Schnitt von 0 bis unter die halbe kürzere Seite, hier {room} m'
} as const satisfies Partial<Translation>;

import type { Translation } from '../message';

/** Warum die Berechnung keine Antwort gab. */
export const calculation = {
  'calculation.restarted': 'die Berechnung wurde neu gestartet',
  'calculation.silent': 'keine Antwort binnen {seconds} s',
  'calculation.notLoaded': 'die Berechnung ließ sich nicht laden',
  'calculation.unreadable': 'eine Antwort war nicht lesbar'
} as const satisfies Partial<Translation>;

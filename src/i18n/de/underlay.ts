import type { Translation } from '../message';

/** Bilder unter dem Plan: was die Zeichnung selbst über sie sagt. */
export const underlay = {
  'underlay.missing': 'Bild fehlt: {name}',
  'underlay.broken': 'Nicht darstellbar: {name}',
  'underlay.notToScale': 'Nicht maßstäblich',
  'underlay.outside': 'außerhalb des Bildes',
  'underlay.none': 'kein Bild zum Einpassen',
  'underlay.missingHere': {
    one: 'Ein Bild dieser Anlage fehlt: {names}. Sein Platz bleibt erhalten; eine Datei, die das Bild enthält, verliert es beim Speichern nicht.',
    other:
      '{count} Bilder dieser Anlage fehlen: {names}. Ihre Plätze bleiben erhalten; eine Datei, die die Bilder enthält, verliert sie beim Speichern nicht.'
  },
  'underlay.brokenHere': {
    one: 'Die Daten eines Bildes dieser Anlage lassen sich nicht darstellen: {names}. Sie bleiben erhalten, wie sie sind.',
    other:
      'Die Daten von {count} Bildern dieser Anlage lassen sich nicht darstellen: {names}. Sie bleiben erhalten, wie sie sind.'
  },
  'underlay.step.recovered': 'Bilder aus der Datei übernehmen',
  'underlay.show': 'Platz zeigen'
} satisfies Partial<Translation>;

import type { Translation } from '../message';

/** The lower panel. */
export const views = {
  'view.title': 'Tabellen',
  'view.circuits': 'Schleifenkreise',
  'view.frequencies': 'Frequenzen',
  'view.units': 'Auswertegeräte',
  'view.passing': 'Überfahrt',
  'view.vehicles': 'Fahrzeuge',
  'view.quantities': 'Mengen',
  'view.compare': 'Vergleich',
  'view.field-check': 'Prüfung vor Ort',
  'view.sheet': 'Blatt',
  'view.height': 'Höhe der Tabellen',
  'view.open': 'Tabellen zeigen',
  'view.close': 'Tabellen verbergen',
  'view.waiting': 'Wird berechnet …',
  'view.loading': 'Wird geladen …',
  'view.cancel': 'Abbrechen',
  'view.missing':
    'Dieser Teil des Programms ließ sich nicht laden. Laden Sie die Seite neu; Ihre Anlage bleibt erhalten.',

  'circuits.caption': 'Alle Schleifenkreise, wie das Gerät sie sieht',
  'circuits.circuit': 'Schleifenkreis',
  'circuits.loops': 'Schleifen',
  'circuits.setting': 'Frequenz aus',
  'circuits.given': 'vorgegeben',
  'circuits.settingNumber': 'Stufe {number}',
  'circuits.noChannel': 'angenommen',
  'circuits.threshold': 'Schwelle',
  'circuits.vehicle': '{vehicle} −ΔL/L',
  'circuits.none': 'Noch kein Schleifenkreis: Zeichnen Sie eine Schleife.',

  'quantities.wire': 'Draht, mit Anschlussenden',
  'quantities.sawCut': 'Fugenschnitt',
  'quantities.loopWire': 'Draht in der Schleife',
  'quantities.tailWire': 'Draht im Anschlussende',
  'quantities.loopSawCut': 'Fugenschnitt der Schleife',
  'quantities.homeRun': 'Fugenschnitt zum Schacht'
} as const satisfies Partial<Translation>;

import type { Translation } from '../message';

/** The response map under the plan. */
export const map = {
  'map.title': 'Verstimmungskarte',
  'map.show': 'Verstimmungskarte auf dem Plan',
  'map.vehicle': 'Mitte von',
  'map.heading': 'Richtung',
  'map.usualHeading': 'wie der Fahrstreifen, {heading}',
  'map.circuits': 'Schleifenkreise der Karte',
  'map.all': 'Alle Schleifenkreise',
  'map.selected': 'Der gewählten Schleifen',
  'map.lines': 'Linien von −ΔL/L:',
  'map.trip': 'Ansprechen {value}',
  'map.tripOwn': 'Ansprechen',
  'map.tripWords': 'Innerhalb der kräftigen Linie löst das Fahrzeug eine Anforderung aus.',
  'map.tripOwnWords':
    'Innerhalb der kräftigen Linie löst das Fahrzeug eine Anforderung aus; jeder Schleifenkreis hat seine eigene Schwelle.',
  'map.tripNever': 'Nirgends auf der Karte löst das Fahrzeug eine Anforderung aus.',
  'map.noThreshold': 'Kein Schleifenkreis hat eine Schwelle.',
  'map.working': 'Wird berechnet …',
  'map.refining': 'Bisher grob …',
  'map.nothing': 'Keine Schleife ist in Sicht.',
  'map.failed': 'Die Karte ließ sich nicht berechnen: {reason}.'
} as const satisfies Partial<Translation>;

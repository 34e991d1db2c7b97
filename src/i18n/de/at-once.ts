import type { Translation } from '../message';

/** What the first page says of views that come later. */
export const atOnce = {
  'advice.open': 'Windungen vorschlagen …',
  'explain.open': 'Wie das berechnet wurde',
  'section.title': 'Querschnitt',
  'calls.onPlan': 'Simulierter Verkehr wird gezeigt.',
  'calls.showPlan': 'Lageplan zeigen',
  'underlay.refused': '{name} wurde nicht unter den Plan gelegt: {reason}',
  'underlay.step.replace': 'Bild ersetzen',
  'underlay.full': 'Die Anlage hat {count} Bilder, mehr kann sie nicht aufnehmen.',
  'underlay.step.insert': 'Bild einfügen'
} as const satisfies Partial<Translation>;

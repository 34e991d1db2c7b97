import type { Translation } from '../message';

/** What a person likes, apart from any site. */
export const settings = {
  'settings.title': 'Einstellungen',
  'settings.looks': 'Aussehen und Sprache',
  'settings.theme': 'Seite',
  'settings.theme.system': 'wie das System',
  'settings.theme.light': 'hell',
  'settings.theme.dark': 'dunkel',
  'settings.drawing': 'Lageplan',
  'settings.drawing.page': 'wie die Seite',
  'settings.drawing.light': 'immer hell',
  'settings.drawing.dark': 'immer dunkel',
  'settings.looksNote':
    'Diagramme folgen der Seite. Gedrucktes ist immer hell. Texte folgen der Schriftgröße Ihres Browsers.',
  'settings.units': 'Einheiten',
  'settings.unitsNote': 'Nur die Anzeige ändert sich: Die Anlage behält jeden Wert genau.',
  'settings.hand': 'Maus, Stift und Finger',
  'settings.wheel': 'Das Mausrad',
  'settings.wheel.zoom': 'vergrößert am Zeiger',
  'settings.wheel.pan': 'verschiebt die Ansicht',
  'settings.wheelNote':
    'Mit Strg vergrößert es immer, ebenso zwei Finger, die sich spreizen. Die mittlere Taste und die Leertaste verschieben die Ansicht.',
  'settings.pen': 'Nach dem ersten Stiftstrich zeichnet der Stift, und ein Finger verschiebt die Ansicht',
  'settings.snapping': 'Raster und Fang',
  'settings.gridStep': 'Rasterschritt, in diesem Tab',
  'settings.tolerance': 'Fangweite, Pixel',
  'settings.nudge': 'Pfeiltasten rücken die Auswahl um {step}, mit Umschalt um {far}.',
  'settings.help': 'Hilfe',
  'settings.hints': 'Die ersten Schritte über dem Plan zeigen',
  'settings.kept': 'Einstellungen bleiben in diesem Browser, für alle Anlagen.'
} as const satisfies Partial<Translation>;

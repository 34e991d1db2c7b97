import type { Translation } from '../message';

/** The switches of snapping. */
export const snapMenu = {
  'snapMenu.showGrid': 'Raster zeigen',
  'snapMenu.grid': 'Am Raster einrasten',
  'snapMenu.objects': 'An Objekten einrasten',
  'snapMenu.corners': 'Ecken',
  'snapMenu.centres': 'Mitten',
  'snapMenu.lanes': 'Fahrstreifen: Mitte und Ränder',
  'snapMenu.edges': 'Kanten',
  'snapMenu.gaps': 'Gleiche Abstände',
  'snapMenu.tolerance': 'Zieht an innerhalb von',
  'snapMenu.pixels': { one: '{count} Pixel', other: '{count} Pixeln' },
  'snapMenu.alt': 'Solange Alt gehalten wird, rastet nichts ein.',
  'snapMenu.steps':
    'Ein Schritt des Rasters ist {grid}; eine Pfeiltaste rückt um {nudge}, mit Umschalt um {far}.'
} as const satisfies Partial<Translation>;

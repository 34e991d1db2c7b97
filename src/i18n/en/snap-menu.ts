/** The switches of snapping. */
export const snapMenu = {
  'snapMenu.showGrid': 'Show the grid',
  'snapMenu.grid': 'Snap to the grid',
  'snapMenu.objects': 'Snap to objects',
  'snapMenu.corners': 'Corners',
  'snapMenu.centres': 'Centres',
  'snapMenu.lanes': 'Lanes: middle and edges',
  'snapMenu.edges': 'Edges',
  'snapMenu.gaps': 'Equal gaps',
  'snapMenu.tolerance': 'Attracts within',
  'snapMenu.pixels': { one: '{count} pixel', other: '{count} pixels' },
  'snapMenu.alt': 'Nothing snaps while Alt is held.',
  'snapMenu.steps': 'A step of the grid is {grid}; an arrow key moves by {nudge}, with Shift by {far}.'
} as const;

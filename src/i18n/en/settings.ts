/** What a person likes, apart from any site. */
export const settings = {
  'settings.title': 'Settings',
  'settings.looks': 'Looks and language',
  'settings.theme': 'Page',
  'settings.theme.system': 'as the system',
  'settings.theme.light': 'light',
  'settings.theme.dark': 'dark',
  'settings.drawing': 'Plan',
  'settings.drawing.page': 'as the page',
  'settings.drawing.light': 'always light',
  'settings.drawing.dark': 'always dark',
  'settings.looksNote':
    'Charts follow the page. What is printed is always light. Texts follow the size that your browser is set to.',
  'settings.units': 'Units',
  'settings.unitsNote': 'Only what is shown changes: the site keeps every value exactly.',
  'settings.hand': 'Mouse, pen and fingers',
  'settings.wheel': 'Turning the wheel',
  'settings.wheel.zoom': 'zooms at the pointer',
  'settings.wheel.pan': 'moves the view',
  'settings.wheelNote':
    'With Ctrl it always zooms, and so do two fingers that pinch. The middle button and the space bar move the view.',
  'settings.pen': 'Once a pen was used, it draws and a finger moves the view',
  'settings.snapping': 'Grid and snapping',
  'settings.gridStep': 'Grid step, in this tab',
  'settings.tolerance': 'Snaps within, pixels',
  'settings.nudge': 'Arrow keys move what is selected by {step}, with Shift by {far}.',
  'settings.help': 'Help',
  'settings.hints': 'Show the first steps above the plan',
  'settings.kept': 'Settings are kept in this browser, for every site.'
} as const;

/** Designs side by side, and what a change would do. */
export const compare = {
  'compare.title': 'Look at',
  'compare.mode.designs': 'Designs',
  'compare.mode.sweep': 'Sweep',
  'compare.mode.goal': 'Goal',
  'compare.mode.field': 'Field',
  'compare.lessons': 'Lessons'
} as const;

/** Designs side by side, and what a change would do. */
export const compare = {
  'compare.title': 'Ansehen',
  'compare.mode.designs': 'Entwürfe',
  'compare.mode.sweep': 'Durchlauf',
  'compare.mode.goal': 'Ziel',
  'compare.mode.field': 'Feld',
  'compare.lessons': 'Lektionen'
} as const;

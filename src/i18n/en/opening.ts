/** What is said before anything is loaded; part of the first code in every language. */
export const opening = {
  'page.opening': 'Opening …',
  'page.cannotOpen': 'The page could not open: {reason}',
  'page.openSafely': 'Open without reading what is stored in this browser'
} as const;

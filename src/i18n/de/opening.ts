/** What is said before anything is loaded; part of the first code in every language. */
export const opening = {
  'page.opening': 'Wird geöffnet …',
  'page.cannotOpen': 'Die Seite ließ sich nicht öffnen: {reason}',
  'page.openSafely': 'Öffnen, ohne zu lesen, was in diesem Browser gespeichert ist'
} as const;

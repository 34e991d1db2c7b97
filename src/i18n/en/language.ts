/** The choice of the language itself. */
export const language = {
  'language.label': 'Language',
  'language.system': 'As the browser',
  'language.failed': 'This language could not be loaded. Connect to the network and choose it again.'
} as const;

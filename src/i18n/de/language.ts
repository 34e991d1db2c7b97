/** The choice of the language itself. */
export const language = {
  'language.label': 'Sprache',
  'language.system': 'Wie der Browser',
  'language.failed':
    'Diese Sprache ließ sich nicht laden. Stellen Sie eine Verbindung zum Netz her und wählen Sie sie noch einmal.'
} as const;

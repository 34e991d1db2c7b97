/** Which language to speak. */
import { LANGUAGES, type Language } from './message';

/** `'system'`: the first of the person's languages that there are messages in, else English. */
export function languageOf(choice: Language | 'system', preferred: readonly string[]): Language {
  if (choice !== 'system') return choice;
  const known = preferred.flatMap((tag) => {
    const [primary] = tag.toLowerCase().split('-');
    return LANGUAGES.find((language) => language === primary) ?? [];
  });
  return known[0] ?? 'en';
}

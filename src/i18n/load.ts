/** Brings the messages of a language, bundle by bundle: a page must not wait for what only a later view says. */
import { speak, type Language, type Translation } from './message';

export type Bundle = 'page' | 'views' | 'analysis';

type Load = () => Promise<{ readonly messages: Partial<Translation> }>;

const BUNDLES: Readonly<Record<Language, Readonly<Record<Bundle, Load>>>> = {
  en: {
    page: () => import('./en/bundles/page'),
    views: () => import('./en/bundles/views'),
    analysis: () => import('./en/bundles/analysis')
  },
  de: {
    page: () => import('./de/bundles/page'),
    views: () => import('./de/bundles/views'),
    analysis: () => import('./de/bundles/analysis')
  }
};

const open = new Map<string, Promise<{ readonly messages: Partial<Translation> }>>();

/** Once each, however often they are asked for. */
function bring(language: Language, bundle: Bundle) {
  const key = `${language} ${bundle}`;
  const known = open.get(key) ?? BUNDLES[language][bundle]();
  open.set(key, known);
  return known;
}

/** All of them, then all at once: nobody sees half a language. */
export async function loadMessages(language: Language, bundles: readonly Bundle[]): Promise<void> {
  const loaded = await Promise.all(bundles.map((bundle) => bring(language, bundle)));
  for (const { messages } of loaded) speak(language, messages);
}

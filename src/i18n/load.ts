/** Brings the messages of a language, bundle by bundle: a page must not wait for what only a later view says. */
import { speak, spokenLanguage, type Language, type Translation } from './message';

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

const open = new Map<string, ReturnType<Load>>();

/** Once each, however often they are asked for; again after a failure. */
function bring(language: Language, bundle: Bundle): ReturnType<Load> {
  const key = `${language} ${bundle}`;
  const known = open.get(key);
  if (known) return known;
  const brought = BUNDLES[language][bundle]();
  open.set(key, brought);
  brought.catch(() => open.delete(key));
  return brought;
}

const bringAll = (language: Language, bundles: readonly Bundle[]) =>
  Promise.all(bundles.map((bundle) => bring(language, bundle)));

let wished: Language | null = null;
/** What `speak` was told of the spoken language. */
let told = new Set<string>();

function tell(
  language: Language,
  bundles: readonly Bundle[],
  loaded: readonly { readonly messages: Partial<Translation> }[]
): void {
  if (language !== spokenLanguage()) told = new Set();
  loaded.forEach(({ messages }, k) => {
    const key = `${language} ${bundles[k]!}`;
    if (!told.has(key)) speak(language, messages);
    told.add(key);
  });
}

/**
 * Speaks a language from now on: all of these bundles, then all at once, so that nobody sees half a language. Of several
 * wishes the last one counts. Rejects, and leaves the language as it is, when a bundle cannot be had.
 */
export async function speakLanguage(language: Language, bundles: readonly Bundle[]): Promise<void> {
  wished = language;
  const loaded = await bringAll(language, bundles);
  if (wished === language) tell(language, bundles, loaded);
}

/** More of a language, unless another one is spoken by the time that it is there: whoever changed brought its own. */
export async function loadMessages(language: Language, bundles: readonly Bundle[]): Promise<void> {
  const loaded = await bringAll(language, bundles);
  if (language === spokenLanguage()) tell(language, bundles, loaded);
}

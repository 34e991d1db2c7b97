/** All messages of a language at once, for what runs without a page. */
import { messages as analysis } from './de/bundles/analysis';
import { messages as page } from './de/bundles/page';
import { messages as views } from './de/bundles/views';
import { en } from './en';
import { speak, type Language } from './message';

export function speakWhole(language: Language): void {
  speak(language, language === 'de' ? { ...analysis, ...page, ...views } : en);
}

/** The few words that cannot wait for their bundle: that the page is opening, or why it could not. */
import { opening as german } from './de/opening';
import { opening as english } from './en/opening';
import { speak, type Language } from './message';

export function speakFirstWords(language: Language): void {
  speak(language, language === 'de' ? german : english);
}

/** The real transport: a module worker that holds one assessor. */
import { proxy, wrap } from 'comlink';
import type { QuestionKind } from '#analysis/questions';
import { spokenLanguage, t } from '#i18n/message';
import type { CalculationApi } from './calc.worker';
import type { Connect, Question, Reply } from './transport';

export const connectWorker: Connect = (onCrash) => {
  const worker = new Worker(new URL('./calc.worker.ts', import.meta.url), { type: 'module', name: 'assess' });
  worker.addEventListener('error', (event) => {
    event.preventDefault();
    onCrash(event.message || t('calculation.notLoaded'));
  });
  worker.addEventListener('messageerror', () => {
    onCrash(t('calculation.unreadable'));
  });
  const api = wrap<CalculationApi>(worker);
  return {
    assess: (site, revision, prepare) => api.assess(site, revision, prepare, spokenLanguage()),
    ask: <K extends QuestionKind>(
      question: Question<K>,
      revision: number,
      onShare: (share: number) => void
    ) =>
      // the wrapped method has lost its type parameter
      api.ask(question, revision, spokenLanguage(), proxy(onShare)) as Promise<Reply<K> | null>,
    drop: (kind, desk) => void api.drop(kind, desk),
    close() {
      worker.terminate();
    }
  };
};

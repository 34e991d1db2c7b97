/** The real transport: a module worker that holds one assessor. */
import { wrap } from 'comlink';
import type { CalculationApi } from './calc.worker';
import type { Connect } from './transport';

export const connectWorker: Connect = (onCrash) => {
  const worker = new Worker(new URL('./calc.worker.ts', import.meta.url), { type: 'module', name: 'assess' });
  worker.addEventListener('error', (event) => {
    event.preventDefault();
    onCrash(event.message || 'the calculation could not be loaded');
  });
  worker.addEventListener('messageerror', () => {
    onCrash('an answer could not be read');
  });
  const api = wrap<CalculationApi>(worker);
  return {
    assess: (site, revision, prepare) => api.assess(site, revision, prepare),
    advise: (question, revision) => api.advise(question, revision),
    close() {
      worker.terminate();
    }
  };
};

/** A print while its figures are waited for. One at a time: a newer wish ends an older one. */
import type { Job } from '#exchange/job';
import { t } from '#i18n/message';

/** Seconds before anybody is told: what comes at once needs no words. */
const SOON = 0.4;

class Printing {
  /** 0 to 1; null while nobody knows. */
  #share = $state.raw<number | null>(null);
  #isBusy = $state.raw(false);
  #control: AbortController | null = null;

  get share() {
    return this.#share;
  }
  /** For longer than a moment. */
  get isBusy() {
    return this.#isBusy;
  }

  /** `print` rejects with the signal's reason when it was ended; any other failure is said. Never rejects. */
  async start(print: (job: Job) => Promise<void>, say: (text: string) => void): Promise<void> {
    this.cancel();
    const own = (this.#control = new AbortController());
    const { signal } = own;
    const timer = setTimeout(() => {
      this.#isBusy = true;
      say(t('sheetView.preparing'));
    }, SOON * 1000);
    const onShare = (share: number) => {
      if (!signal.aborted) this.#share = share;
    };
    signal.addEventListener('abort', () => {
      clearTimeout(timer);
    });
    try {
      await print({ signal, onShare });
    } catch {
      if (!signal.aborted) say(t('sheetView.notPrinted'));
    }
    clearTimeout(timer);
    if (this.#control === own) this.#rest();
  }

  /** Nothing is printed any more. */
  cancel(): void {
    this.#control?.abort();
    this.#rest();
  }

  #rest(): void {
    this.#control = null;
    this.#isBusy = false;
    this.#share = null;
  }
}

/** One for the page, from wherever it was asked for. */
export const printing = new Printing();

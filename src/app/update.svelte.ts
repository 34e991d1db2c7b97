/** A new release that the service worker has fetched waits until the person asks for it: never under an edit. */
import { listen } from './listen';

export class ReleaseWatch {
  #waiting = $state.raw<ServiceWorker | null>(null);

  get hasUpdate(): boolean {
    return this.#waiting !== null;
  }

  async start(): Promise<void> {
    if (!('serviceWorker' in navigator)) return;
    const registration = await navigator.serviceWorker.ready;
    const follow = () => {
      this.#look(registration);
      const { installing } = registration;
      if (!installing) return;
      listen(installing, 'statechange', () => {
        this.#look(registration);
      });
    };
    listen(registration, 'updatefound', follow);
    // One that the browser began to fetch before the page was there is not announced again.
    follow();
  }

  /** Resolves when the new release is in charge: then the page must be loaded again. */
  async activate(): Promise<void> {
    const { serviceWorker } = navigator;
    // Another tab has asked for it already: what was waiting then is in charge, and nothing will change any more.
    if (this.#waiting?.state !== 'installed') return;
    const inCharge = new Promise<void>((resolve) => {
      listen(serviceWorker, 'controllerchange', () => {
        resolve();
      });
    });
    this.#waiting.postMessage({ type: 'activate' });
    await inCharge;
  }

  /** Without a controller this is the first visit, not an update. */
  #look({ waiting }: ServiceWorkerRegistration): void {
    if (waiting && navigator.serviceWorker.controller) this.#waiting = waiting;
  }
}

/** Putting the page among the programs of the system, where the browser offers that. */
import { listen } from './listen';

interface InstallPrompt extends Event {
  prompt(): Promise<unknown>;
}

export class InstallOffer {
  #offer = $state.raw<InstallPrompt | null>(null);

  get isThere(): boolean {
    return this.#offer !== null;
  }

  watch(): void {
    listen(window, 'beforeinstallprompt', (event) => {
      // Asked when the person wants it, not when the browser does.
      event.preventDefault();
      this.#offer = event as InstallPrompt;
    });
    listen(window, 'appinstalled', () => {
      this.#offer = null;
    });
  }

  /** An offer can be used once. */
  async take(): Promise<void> {
    const offer = this.#offer;
    this.#offer = null;
    await offer?.prompt();
  }
}

/**
 * The sheet as it is now: composed anew after each edit, once the hand rests, and never while a gesture is in hand. What
 * is shown stays until the next is there.
 */
import type { Sheet } from '#exchange/sheet/page';
import type { Bench } from '../bench';

/** Seconds after an edit: typing and arrow keys come in rows. */
const REST = 0.25;

type Composing = Pick<Bench, 'composeSheet'>;

export class SheetDesk {
  readonly #bench: Composing;
  #sheet = $state.raw<Sheet | null>(null);
  #isBusy = $state.raw(true);
  #failure = $state.raw<string | null>(null);
  #control: AbortController | null = null;
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(bench: Composing) {
    this.#bench = bench;
  }

  /** The newest there is, also while a newer one is composed. */
  get sheet(): Sheet | null {
    return this.#sheet;
  }
  /** What is shown may be of an earlier drawing. */
  get isBusy(): boolean {
    return this.#isBusy;
  }
  get failure(): string | null {
    return this.#failure;
  }

  /** The drawing has changed: ends what is composed of the earlier one. `isHeld`: a gesture is in hand. */
  follow(isHeld: boolean): void {
    this.end();
    this.#isBusy = true;
    if (isHeld) return;
    this.#timer = setTimeout(() => void this.#compose(), this.#sheet === null ? 0 : REST * 1000);
  }

  end(): void {
    clearTimeout(this.#timer);
    this.#control?.abort();
    this.#control = null;
  }

  async #compose(): Promise<void> {
    const control = (this.#control = new AbortController());
    try {
      const sheet = await this.#bench.composeSheet({ signal: control.signal, onShare: () => {} });
      if (control.signal.aborted) return;
      this.#sheet = sheet;
      this.#failure = null;
    } catch (problem) {
      if (control.signal.aborted) return;
      this.#failure = problem instanceof Error ? problem.message : String(problem);
    }
    this.#isBusy = false;
  }
}

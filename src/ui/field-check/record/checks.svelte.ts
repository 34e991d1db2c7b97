/**
 * Readings held against what is expected of them, of the drawing as it is: asked for anew after each edit. What is shown
 * stays until the next is there.
 */
import type { CheckedCircuit } from '#analysis/fault-finding/checked';
import type { Bench } from '../../bench';

type Asking = Pick<Bench, 'checkReadings'>;

export class Checks {
  readonly #bench: Asking;
  #checked = $state.raw<readonly CheckedCircuit[] | null>(null);
  #isBusy = $state.raw(true);
  #failure = $state.raw<string | null>(null);
  /** Of the newest question. */
  #number = 0;

  constructor(bench: Asking) {
    this.#bench = bench;
  }

  /** The newest there is, also while a newer one is asked for. */
  get checked(): readonly CheckedCircuit[] | null {
    return this.#checked;
  }
  get isBusy(): boolean {
    return this.#isBusy;
  }
  get failure(): string | null {
    return this.#failure;
  }

  /** The drawing has changed, or somebody tries again. */
  async follow(): Promise<void> {
    const number = ++this.#number;
    this.#isBusy = true;
    try {
      const checked = await this.#bench.checkReadings();
      if (number !== this.#number || checked === null) return;
      this.#checked = checked;
      this.#failure = null;
    } catch (problem) {
      if (number !== this.#number) return;
      this.#failure = problem instanceof Error ? problem.message : String(problem);
    }
    this.#isBusy = false;
  }

  end(): void {
    this.#number++;
  }
}

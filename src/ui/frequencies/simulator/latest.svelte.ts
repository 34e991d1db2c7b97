/**
 * One simulation after the other: while one runs, the newest wish waits, so that a slider that moves all the time still
 * gets its pictures. What is shown stays until the next is there.
 */
import type { BeatSimulation, SimulationWish } from '#analysis/beat-simulation/simulation';
import type { Outcome } from '../../bench';

type Ask = (wish: SimulationWish) => Promise<Outcome<'simulate-beat'>>;

export class LatestSimulation {
  readonly #ask: Ask;
  #waiting: SimulationWish | null = null;
  #isBusy = false;
  #answer = $state.raw<BeatSimulation | null>(null);
  #state = $state.raw<'asking' | 'there' | 'none' | { readonly reason: string }>('asking');

  constructor(ask: Ask) {
    this.#ask = ask;
  }

  /** The newest there is, also while a newer one is asked for; null before the first and where nothing can be shown. */
  get answer(): BeatSimulation | null {
    return this.#answer;
  }

  get state(): 'asking' | 'there' | 'none' | { readonly reason: string } {
    return this.#state;
  }

  want(wish: SimulationWish): void {
    this.#waiting = wish;
    if (!this.#isBusy) void this.#run();
  }

  /** Lets go of what waits. */
  drop(): void {
    this.#waiting = null;
  }

  async #run(): Promise<void> {
    this.#isBusy = true;
    for (let wish = this.#next(); wish; wish = this.#next()) this.#take(await this.#ask(wish));
    this.#isBusy = false;
  }

  #next(): SimulationWish | null {
    const wish = this.#waiting;
    this.#waiting = null;
    return wish;
  }

  #take(outcome: Outcome<'simulate-beat'>): void {
    if (outcome.kind === 'superseded') return;
    if (outcome.kind === 'failed') {
      this.#state = { reason: outcome.reason };
      return;
    }
    this.#answer = outcome.answer;
    this.#state = outcome.answer ? 'there' : 'none';
  }
}

/**
 * One question after the other: while one is being answered the newest wish waits, so that a hand that moves all the
 * time still gets its pictures. What is shown stays until the next is there.
 */
import type { AnswerTo, Asked, QuestionKind } from '#analysis/questions';
import type { Outcome } from '../bench';

type State = 'asking' | 'there' | 'none' | { readonly reason: string };

export class Latest<K extends QuestionKind> {
  readonly #ask: (wish: Asked<K>) => Promise<Outcome<K>>;
  #waiting: Asked<K> | null = null;
  #isBusy = $state.raw(false);
  #answer = $state.raw<AnswerTo<K> | null>(null);
  #state = $state.raw<State>('asking');

  constructor(ask: (wish: Asked<K>) => Promise<Outcome<K>>) {
    this.#ask = ask;
  }

  /** The newest there is, also while a newer one is asked for; null before the first and where nothing can be shown. */
  get answer(): AnswerTo<K> | null {
    return this.#answer;
  }

  get state(): State {
    return this.#state;
  }

  /** A question is open: what is shown may be of an earlier drawing. */
  get isBusy(): boolean {
    return this.#isBusy;
  }

  want(wish: Asked<K>): void {
    this.#waiting = wish;
    if (!this.#isBusy) void this.#run();
  }

  /** Lets go of what waits. */
  drop(): void {
    this.#waiting = null;
  }

  async #run(): Promise<void> {
    this.#isBusy = true;
    for (let wish = this.#next(); wish !== null; wish = this.#next()) this.#take(await this.#ask(wish));
    this.#isBusy = false;
  }

  #next(): Asked<K> | null {
    const wish = this.#waiting;
    this.#waiting = null;
    return wish;
  }

  #take(outcome: Outcome<K>): void {
    if (outcome.kind === 'superseded') return;
    if (outcome.kind === 'failed') {
      this.#state = { reason: outcome.reason };
      return;
    }
    this.#answer = outcome.answer;
    this.#state = outcome.answer === null ? 'none' : 'there';
  }
}

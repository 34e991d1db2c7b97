/**
 * A question that is asked again after edits, with a pause: an answer that takes longer than a gesture may must not be asked
 * for at every step of one. The newest wish replaces the open one; what is shown stays until the next is there.
 */
import type { AnswerTo, Asked, QuestionKind } from '#analysis/questions';
import type { Outcome } from '../bench';

/** Milliseconds without another wish. */
const PAUSE = 250;

type State = 'nothing' | 'asking' | 'there' | 'none' | 'ended' | { readonly reason: string };

export interface Line<K extends QuestionKind> {
  readonly ask: (wish: Asked<K>, onShare: (share: number) => void) => Promise<Outcome<K>>;
  readonly drop: () => void;
}

export class Asking<K extends QuestionKind> {
  readonly #line: Line<K>;
  #timer: ReturnType<typeof setTimeout> | undefined;
  /** Counts what was asked, so that late answers are known. */
  #count = 0;
  #answer = $state.raw<AnswerTo<K> | null>(null);
  #state = $state.raw<State>('nothing');
  #share = $state.raw(0);

  constructor(line: Line<K>) {
    this.#line = line;
  }

  /** The newest there is, also while another is asked for. */
  get answer(): AnswerTo<K> | null {
    return this.#answer;
  }

  get state(): State {
    return this.#state;
  }

  get isBusy(): boolean {
    return this.#state === 'asking';
  }

  /** How much is done, 0 to 1. */
  get share(): number {
    return this.#share;
  }

  want(wish: Asked<K>, pause = PAUSE): void {
    clearTimeout(this.#timer);
    this.#state = 'asking';
    this.#share = 0;
    this.#count++;
    this.#timer = setTimeout(() => void this.#run(wish), pause);
  }

  /** Gives up the open question; what is shown stays. */
  end(): void {
    if (this.#state !== 'asking') return;
    this.#close();
    this.#state = 'ended';
  }

  /** Forgets everything. */
  close(): void {
    this.#close();
    this.#answer = null;
    this.#state = 'nothing';
  }

  #close(): void {
    clearTimeout(this.#timer);
    this.#count++;
    this.#line.drop();
  }

  async #run(wish: Asked<K>): Promise<void> {
    const count = this.#count;
    const outcome = await this.#line.ask(wish, (share) => {
      if (count === this.#count) this.#share = share;
    });
    if (count !== this.#count) return;
    if (outcome.kind === 'answer') {
      this.#answer = outcome.answer;
      this.#state = outcome.answer === null ? 'none' : 'there';
    } else this.#state = outcome.kind === 'failed' ? { reason: outcome.reason } : 'ended';
  }
}

/**
 * A response map in two goes: coarse at once, then fine. While a hand moves only coarse ones are asked for, one at a time
 * with the newest wish waiting; a fine one is given up as soon as something newer is wanted.
 */
import type { MapWish, ResponseMap } from '#analysis/map/results';
import { net } from './area';

/** Nodes along the side of a square. */
const SIDE = { coarse: 26, fine: 100 };

export type AreaWish = Omit<MapWish, 'columns' | 'rows'>;

type Outcome =
  | { readonly kind: 'answer'; readonly answer: ResponseMap | null }
  | { readonly kind: 'superseded' }
  | { readonly kind: 'failed'; readonly reason: string };

export interface Asker {
  ask(wish: MapWish): Promise<Outcome>;
  /** Ends the question that is open, as superseded. */
  drop(): void;
}

export interface ShownMap {
  readonly map: ResponseMap;
  readonly isFine: boolean;
}

export class RefiningMap {
  readonly #asker: Asker;
  #waiting: AreaWish | null = null;
  #isRunning = false;
  #isRefining = false;
  #shown = $state.raw<ShownMap | null>(null);
  #reason = $state.raw<string | null>(null);
  #isBusy = $state.raw(false);

  constructor(asker: Asker) {
    this.#asker = asker;
  }

  /** The newest there is; null before the first, and where nothing can be mapped. */
  get shown(): ShownMap | null {
    return this.#shown;
  }

  /** Why there is none, if something went wrong. */
  get reason(): string | null {
    return this.#reason;
  }

  get isBusy(): boolean {
    return this.#isBusy;
  }

  want(wish: AreaWish): void {
    this.#waiting = wish;
    if (this.#isRefining) this.#asker.drop();
    if (!this.#isRunning) void this.#run();
  }

  /** Nobody looks any more. */
  stop(): void {
    this.#waiting = null;
    this.#shown = null;
    if (this.#isRunning) this.#asker.drop();
  }

  async #run(): Promise<void> {
    this.#isRunning = true;
    this.#isBusy = true;
    for (let wish = this.#next(); wish; wish = this.#next()) {
      const first = await this.#asker.ask({ ...wish, ...net(wish.box, SIDE.coarse) });
      this.#take(first, false);
      if (this.#waiting || first.kind !== 'answer' || !first.answer) continue;
      this.#isRefining = true;
      const second = await this.#asker.ask({ ...wish, ...net(wish.box, SIDE.fine) });
      this.#isRefining = false;
      this.#take(second, true);
    }
    this.#isRunning = false;
    this.#isBusy = false;
  }

  #next(): AreaWish | null {
    const wish = this.#waiting;
    this.#waiting = null;
    return wish;
  }

  #take(outcome: Outcome, isFine: boolean): void {
    if (outcome.kind === 'superseded') return;
    this.#reason = outcome.kind === 'failed' ? outcome.reason : null;
    if (outcome.kind === 'answer') this.#shown = outcome.answer && { map: outcome.answer, isFine };
  }
}

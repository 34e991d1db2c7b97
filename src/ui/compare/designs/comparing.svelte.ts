/**
 * The question about designs, asked anew as edits go on: after a pause, never while a gesture is in hand, and given up when
 * the next edit comes. What is shown stays until the next answer is there.
 */
import type { DesignResults, DesignsWish } from '#analysis/designs/results';
import type { Site } from '#plan/schema';
import type { Bench } from '../../bench';

/** Milliseconds without an edit. */
const PAUSE = 350;
/** Another choice of designs, vehicle or way waits for nothing but a slider that moves on. */
const SHORT_PAUSE = 40;
const DESK = 'designs';

interface Asked {
  readonly site: Site;
  readonly wish: DesignsWish;
}

export class Comparing {
  readonly #bench: Bench;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #last: Asked | null = null;
  #results = $state.raw<readonly DesignResults[] | null>(null);
  /** That the results are of: names are looked up in it. */
  #site = $state.raw<Site | null>(null);
  #share = $state.raw<number | null>(null);
  #isBusy = $state.raw(false);
  #reason = $state.raw<string | null>(null);

  constructor(bench: Bench) {
    this.#bench = bench;
  }

  /** The newest there are; null before the first. */
  get results(): readonly DesignResults[] | null {
    return this.#results;
  }
  get site(): Site | null {
    return this.#site;
  }
  /** How much is done, 0 to 1; null while nobody has said. */
  get share(): number | null {
    return this.#share;
  }
  /** What is shown is of an earlier drawing or choice. */
  get isBusy(): boolean {
    return this.#isBusy;
  }
  get reason(): string | null {
    return this.#reason;
  }

  /** `isHeld`: a gesture is in hand. */
  follow(site: Site, wish: DesignsWish, isHeld: boolean): void {
    const last = this.#last;
    if (last?.site === site && last.wish === wish && !isHeld) return;
    const isEdit = last !== null && last.site !== site;
    this.#last = isHeld ? null : { site, wish };
    this.end();
    this.#isBusy = true;
    if (isHeld) return;
    this.#timer = setTimeout(() => void this.#ask({ site, wish }), isEdit ? PAUSE : SHORT_PAUSE);
  }

  /** Gives up what waits and what is open. */
  end(): void {
    clearTimeout(this.#timer);
    this.#bench.dropQuestion('compare-designs', DESK);
  }

  async #ask({ site, wish }: Asked): Promise<void> {
    this.#share = null;
    const outcome = await this.#bench.ask(
      'compare-designs',
      wish,
      (share) => {
        this.#share = share;
      },
      { site, desk: DESK }
    );
    if (outcome.kind === 'superseded') return;
    this.#isBusy = false;
    this.#share = null;
    this.#reason = outcome.kind === 'failed' ? outcome.reason : null;
    if (outcome.kind === 'failed') return;
    this.#results = outcome.answer;
    this.#site = site;
  }
}

/** Which way is being gone for each circuit, and what was answered: kept with the site where it outlives the tab. */
import type { Bench } from '../../bench';
import { waysFrom, type Going, type Ways } from './ways';

const NAME = 'walk-through';

export class WalkDesk {
  readonly #bench: Bench;
  #slot: string;
  #ways: Ways;

  constructor(bench: Bench) {
    this.#bench = bench;
    this.#slot = bench.keeping.slot;
    this.#ways = $state.raw(waysFrom(bench.drafts.read(NAME)));
  }

  /** Another site has ways of its own. */
  follow(slot: string): void {
    if (slot === this.#slot) return;
    this.#slot = slot;
    this.#ways = waysFrom(this.#bench.drafts.read(NAME));
  }

  of(circuit: string): Going | null {
    return this.#ways[circuit] ?? null;
  }

  go(circuit: string, going: Going): void {
    this.#keep({ ...this.#ways, [circuit]: going });
  }

  leave(circuit: string): void {
    this.#keep(Object.fromEntries(Object.entries(this.#ways).filter(([id]) => id !== circuit)));
  }

  #keep(ways: Ways): void {
    this.#ways = ways;
    if (Object.keys(ways).length === 0) this.#bench.drafts.drop(NAME);
    else this.#bench.drafts.keep(NAME, ways);
  }
}

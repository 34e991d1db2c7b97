/**
 * What the outline lists. The editor's state is another object at every move of a hand: what of it counts here is told apart
 * first, so that only what has changed is written anew, and a gesture in hand changes none of it.
 */
import { outlineOf, type OutlineItem } from '#editor/outline';
import type { Bench } from '../bench';
import { figuresOf, keyOf, keysOf, layerTexts, NO_FIGURES, textOf } from './texts';

export class Listed {
  readonly #bench: Pick<Bench, 'state' | 'assessment'>;
  /** As committed. */
  readonly #site = $derived.by(() => this.#bench.state.site);
  readonly #selection = $derived.by(() => this.#bench.state.selection);
  readonly #isBusy = $derived.by(() => this.#bench.state.busy);
  readonly #selected = $derived(keysOf(this.#selection));
  #lastRead = NO_FIGURES;
  /** Not while a hand is at work. */
  readonly #figures = $derived.by(() => {
    if (!this.#isBusy) this.#lastRead = figuresOf(this.#bench.assessment, this.#site.displayUnits);
    return this.#lastRead;
  });

  readonly items = $derived(outlineOf(this.#site));
  readonly layers = $derived(layerTexts(this.#site));

  constructor(bench: Pick<Bench, 'state' | 'assessment'>) {
    this.#bench = bench;
  }

  isSelected(item: OutlineItem): boolean {
    return this.#selected.has(keyOf(item));
  }

  textOf(item: OutlineItem): string {
    return textOf(item, this.#site, this.#figures);
  }
}

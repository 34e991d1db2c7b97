/** Which line, group or cut somebody looks at: its places are highlighted on the plan, and what it is about is selected. */
import type { Place } from '#analysis/takeoff/results';
import { boxAround, boxCentre, boxHolds } from '#editor/geometry/box';
import { visibleBox } from '#editor/viewport';
import { reachOf } from '#scenes/places';
import type { Bench } from '../bench';
import { refsOf } from '../details/subject';

export class Looking {
  readonly #bench: Bench;
  #key = $state.raw<string | null>(null);

  constructor(bench: Bench) {
    this.#bench = bench;
  }

  get key(): string | null {
    return this.#key;
  }

  /** Looks at it, or away from it where it is looked at already; the view goes there if its middle is out of sight. */
  toggle(key: string, subjects: readonly string[], places: readonly Place[]): void {
    if (this.#key === key) {
      this.#key = null;
      return;
    }
    this.#key = key;
    const { editor, state } = this.#bench;
    const refs = refsOf(state.site, subjects);
    if (refs.length > 0) editor.select(refs);
    const box = boxAround(reachOf(places));
    const { viewport } = editor.state;
    if (box && !boxHolds(visibleBox(viewport), boxCentre(box)))
      editor.setViewport({ ...viewport, centre: boxCentre(box) });
  }

  away(): void {
    this.#key = null;
  }
}

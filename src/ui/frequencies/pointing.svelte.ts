/** Which pair a person looks at: under the pointer, with the focus, or chosen; the plan highlights it. */
import type { Beat } from '#analysis/results';
import { includesRef } from '#editor/selection';
import type { Ref } from '#editor/types';
import type { Bench } from '../bench';
import { refsOf } from '../details/subject';
import { pairKey } from './pairs';

export class PairPointing {
  readonly #bench: Bench;
  readonly #beats: () => readonly Beat[];
  #hovered = $state.raw<string | null>(null);
  #focused = $state.raw<string | null>(null);
  #picked = $state.raw<string | null>(null);

  constructor(bench: Bench, beats: () => readonly Beat[]) {
    this.#bench = bench;
    this.#beats = beats;
  }

  readonly hovered: Beat | null = $derived.by(() => this.#find(this.#hovered));
  readonly focused: Beat | null = $derived.by(() => this.#find(this.#focused));
  /** Chosen for as long as the loops of both are what is selected. */
  readonly chosen: Beat | null = $derived.by(() => {
    const beat = this.#find(this.#picked);
    return beat && this.#isSelected(beat) ? beat : null;
  });
  readonly shown: Beat | null = $derived(this.hovered ?? this.focused ?? this.chosen);

  enter(beat: Beat): void {
    this.#hovered = pairKey(beat);
  }
  leave(): void {
    this.#hovered = null;
  }
  focus(beat: Beat): void {
    this.#focused = pairKey(beat);
  }
  blur(): void {
    this.#focused = null;
  }

  /** Selects the loops of both circuits. */
  choose(beat: Beat): void {
    this.#picked = pairKey(beat);
    this.#bench.editor.select(this.#refs(beat));
  }

  #find(key: string | null): Beat | null {
    return key === null ? null : (this.#beats().find((beat) => pairKey(beat) === key) ?? null);
  }

  #refs({ a, b }: Beat): readonly Ref[] {
    return refsOf(this.#bench.state.site, [a, b]);
  }

  #isSelected(beat: Beat): boolean {
    const { selection } = this.#bench.state;
    const refs = this.#refs(beat);
    return refs.length === selection.length && refs.every((ref) => includesRef(selection, ref));
  }
}

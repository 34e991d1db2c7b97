/** What need not follow every move of a hand: hundreds of rows written anew would take the frame. */
import { untrack } from 'svelte';

/** Milliseconds. */
const PAUSE = 250;

/** The value itself, or while `isSlow` what it was a moment ago. Within a component. */
export function paced<T>(value: () => T, isSlow: () => boolean): { readonly current: T } {
  let kept = $state.raw(untrack(value));
  let timer: ReturnType<typeof setTimeout> | undefined;
  $effect(() => {
    if (!isSlow()) return;
    kept = untrack(value);
    timer = setInterval(() => {
      kept = untrack(value);
    }, PAUSE);
    return () => {
      clearInterval(timer);
    };
  });
  return {
    get current() {
      return isSlow() ? kept : value();
    }
  };
}

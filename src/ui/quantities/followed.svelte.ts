/**
 * What follows from the drawing and is worked out on the page itself. A gesture in hand is followed a little late and not at
 * every step, so that no frame waits for it, and where a frame would, as with hundreds of rows, only when the hand rests.
 * Whatever is committed is followed at once, unless that takes long.
 */
import { tick, untrack } from 'svelte';
import type { Site } from '#plan/schema';
import type { Bench } from '../bench';

/** What a take-off and a cutting plan depend on; vehicles, pictures and readings are not among it. */
const DEPENDS_ON = [
  'loops',
  'circuits',
  'marks',
  'conduits',
  'lanes',
  'wires',
  'cables',
  'estimate',
  'sheet',
  'displayUnits'
] as const satisfies readonly (keyof Site)[];

const isSame = (a: Site, b: Site): boolean => DEPENDS_ON.every((key) => a[key] === b[key]);

/** Milliseconds: work that takes longer than a frame leaves is done later even after an edit. */
const AT_ONCE = 8;
/** Milliseconds, with what the page does about it: more than that a moving hand would feel. */
const FELT = 16;
/** Milliseconds between two answers to a gesture, and as a multiple of the work for one. */
const PAUSE = 100;
const SHARE = 12;

export interface Followed<T> {
  readonly current: T;
  /** Of the drawing that `current` is of. */
  readonly site: Site;
  /** The drawing has changed since, and the next answer is on its way. */
  readonly isLate: boolean;
}

/** To be called while a component is made. */
export function follow<T>(bench: Bench, of: (site: Site) => T): Followed<T> {
  /** Milliseconds: the work, and the work with the page that shows it. */
  let worked = 0;
  let took = 0;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const answer = (site: Site): { readonly site: Site; readonly value: T } => {
    const start = performance.now();
    const value = of(site);
    worked = performance.now() - start;
    return { site, value };
  };
  let now = $state.raw(untrack(() => answer(bench.shown)));
  let isLate = $state(false);

  function catchUp(): void {
    timer = undefined;
    isLate = false;
    if (isSame(now.site, bench.shown)) return;
    const start = performance.now();
    now = answer(bench.shown);
    void tick().then(() => {
      took = performance.now() - start;
    });
  }

  $effect(() => {
    const { shown } = bench;
    const isInHand = bench.state.draft !== null;
    untrack(() => {
      if (isSame(now.site, shown)) return;
      if (!isInHand && worked <= AT_ONCE) {
        clearTimeout(timer);
        catchUp();
        return;
      }
      isLate = true;
      if (isInHand && took > FELT) clearTimeout(timer);
      else if (timer !== undefined) return;
      timer = setTimeout(catchUp, Math.max(PAUSE, SHARE * worked));
    });
  });
  $effect(() => () => {
    clearTimeout(timer);
  });

  return {
    get current() {
      return now.value;
    },
    get site() {
      return now.site;
    },
    get isLate() {
      return isLate;
    }
  };
}

/** Lists of things with ids, changed without touching what stays the same. */

interface Identified {
  readonly id: string;
}

/** A list in which every element may have changed; the same list if none has. */
export function mapped<T>(list: readonly T[], change: (element: T, index: number) => T): readonly T[] {
  let changed = false;
  const next = list.map((element, index) => {
    const result = change(element, index);
    if (result !== element) changed = true;
    return result;
  });
  return changed ? next : list;
}

/** The same list if nothing is dropped. */
export function kept<T>(list: readonly T[], keep: (element: T, index: number) => boolean): readonly T[] {
  const next = list.filter(keep);
  return next.length === list.length ? list : next;
}

/** "L5": the prefix with the first number after the list's length that is not taken. */
export function freeId(list: readonly Identified[], prefix: string): string {
  const taken = new Set(list.map((element) => element.id));
  let number = list.length + 1;
  while (taken.has(`${prefix}${number}`)) number += 1;
  return `${prefix}${number}`;
}

/** New values of some fields; undefined takes an optional field away. */
export type Patch<T> = {
  readonly [K in keyof T]?: Record<never, never> extends Pick<T, K> ? T[K] | undefined : T[K];
};

/** The element with the patch applied; the same object if the patch changes nothing. */
export function patched<T extends object>(element: T, patch: Patch<NoInfer<T>>): T {
  const fields = Object.entries(patch);
  if (fields.every(([key, value]) => Object.is(element[key as keyof T], value))) return element;
  const removed = new Set(fields.filter(([, value]) => value === undefined).map(([key]) => key));
  const next = Object.entries({ ...element, ...patch }).filter(([key]) => !removed.has(key));
  return Object.fromEntries(next) as T;
}

/** The object with one list replaced; the same object if it is the same list. */
export function withList<T extends object, K extends keyof T>(whole: T, key: K, list: T[K]): T {
  return whole[key] === list ? whole : { ...whole, [key]: list };
}

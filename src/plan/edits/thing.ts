/** One thing on the plan that edits work on. A probe has no id in the document, so its `id` is its index as text. */
export interface Thing {
  readonly kind: 'loop' | 'lane' | 'mark' | 'steel' | 'path' | 'probe' | 'underlay';
  readonly id: string;
}

export const idsOf = (things: readonly Thing[], kind: Thing['kind']): ReadonlySet<string> =>
  new Set(things.filter((thing) => thing.kind === kind).map((thing) => thing.id));

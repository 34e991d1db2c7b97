/** Edges or middles of things on one line. */
import type { Site } from '../../schema';
import { extentAlong, shiftAlong, shiftEach, type Extent, type Item, type PlanAxis } from './item';

export type Alignment = 'left' | 'centre' | 'right' | 'top' | 'middle' | 'bottom';

const HOW: Readonly<
  Record<Alignment, { readonly axis: PlanAxis; readonly of: (extent: Omit<Extent, 'isFixed'>) => number }>
> = {
  left: { axis: 'x', of: ({ from }) => from },
  centre: { axis: 'x', of: ({ from, to }) => (from + to) / 2 },
  right: { axis: 'x', of: ({ to }) => to },
  top: { axis: 'y', of: ({ to }) => to },
  middle: { axis: 'y', of: ({ from, to }) => (from + to) / 2 },
  bottom: { axis: 'y', of: ({ from }) => from }
};

/** To the fixed things, all of them together, or without any to the whole of what is aligned. */
export function alignThings(site: Site, items: readonly Item[], how: Alignment): Site {
  const { axis, of } = HOW[how];
  const extents = items.map((item) => extentAlong(item, axis));
  const fixed = extents.filter(({ isFixed }) => isFixed);
  const reference = fixed.length > 0 ? fixed : extents;
  const line = of({
    from: Math.min(...reference.map(({ from }) => from)),
    to: Math.max(...reference.map(({ to }) => to))
  });
  return shiftEach(
    site,
    items,
    extents.map((extent) => shiftAlong(axis, line - of(extent)))
  );
}

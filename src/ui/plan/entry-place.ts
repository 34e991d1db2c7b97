/** Where the box of the sizes lies: beside the pointer, wholly inside the view. */
export interface Extent {
  readonly width: number;
  readonly height: number;
}

/** Pixels between the pointer and the box, so that neither the hand nor its text lies under it. */
const ASIDE = { x: 18, y: 22 } as const;
const MARGIN = 8;

/** To the right of the pointer and below it where there is room, else on the other side; pixels from the upper left. */
export function entryPlace(
  [x, y]: readonly [number, number],
  box: Extent,
  view: Extent
): { readonly left: number; readonly top: number } {
  const right = x + ASIDE.x;
  const below = y + ASIDE.y;
  const left = right + box.width <= view.width - MARGIN ? right : x - ASIDE.x - box.width;
  const top = below + box.height <= view.height - MARGIN ? below : y - ASIDE.y - box.height;
  const within = (at: number, size: number, room: number): number =>
    Math.max(MARGIN, Math.min(at, room - MARGIN - size));
  return { left: within(left, box.width, view.width), top: within(top, box.height, view.height) };
}

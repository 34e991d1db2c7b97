/** How large a page is shown: 1 shows the whole of it. */
export const ZOOM = { least: 1, most: 12 } as const;

/** Round the paper, pixels on each side. */
const MARGIN = 12;
const FACTOR = Math.SQRT2;

/** Pixels to a millimetre at which the whole page is seen. */
export function fitted(
  page: { readonly width: number; readonly height: number },
  width: number,
  height: number
): number {
  const room = (whole: number): number => Math.max(1, whole - 2 * MARGIN);
  return Math.min(room(width) / page.width, room(height) / page.height);
}

export const stepZoom = (zoom: number, direction: 1 | -1): number =>
  Math.min(ZOOM.most, Math.max(ZOOM.least, zoom * FACTOR ** direction));

/** How large a picture of pixels may be. */

/**
 * Common limits of browsers, below what any of the present ones refuses or silently leaves blank: pixels along a side, and
 * in all.
 */
export const MOST_PIXELS = { side: 16_384, area: 100e6 } as const;

const INCH = 25.4;

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** Pixels of a picture so many millimetres large. */
export const pixelsAt = ({ width, height }: Size, dotsPerInch: number): Size => ({
  width: Math.round((width / INCH) * dotsPerInch),
  height: Math.round((height / INCH) * dotsPerInch)
});

export const isPaintable = ({ width, height }: Size): boolean =>
  width >= 1 &&
  height >= 1 &&
  Math.max(width, height) <= MOST_PIXELS.side &&
  width * height <= MOST_PIXELS.area;

/** The most whole dots an inch at which a picture so many millimetres large can be painted. */
export function finest(size: Size): number {
  const [width, height] = [size.width / INCH, size.height / INCH];
  const about = Math.min(
    MOST_PIXELS.side / Math.max(width, height),
    Math.sqrt(MOST_PIXELS.area / (width * height))
  );
  // rounding to whole pixels may make room for one more, or for one less
  let dots = Math.floor(about) + 1;
  while (dots > 1 && !isPaintable(pixelsAt(size, dots))) dots--;
  return dots;
}

/**
 * A round blade leaves a slope at the end of a cut. With diameter D and depth d it has its full depth at its lowest point,
 * and meets the road's surface half a chord further on: √(d·(D − d)), the circle's own geometry. A cut that needs full
 * depth at its end therefore runs on by half a chord, and leaves half of the circle's segment there to be sealed.
 *
 * A blade's spindle stays above the road, so that no blade cuts as deep as its radius (the flanges beside it take off a
 * little more, which is left out): there is no overcut then, and whoever asks must say so.
 */

/** True for a blade that reaches down to `depth`; metres. */
export const bladeReaches = (diameter: number, depth: number): boolean => depth < diameter / 2;

/** Metres along the surface beyond the point that has full depth; null for a blade that does not reach. */
export const overcutLength = (diameter: number, depth: number): number | null =>
  bladeReaches(diameter, depth) ? Math.sqrt(depth * (diameter - depth)) : null;

/** Square metres, seen from the side: half of the segment of height `depth`; null for a blade that does not reach. */
export const overcutArea = (diameter: number, depth: number): number | null => {
  const run = overcutLength(diameter, depth);
  if (run === null) return null;
  const radius = diameter / 2;
  const sector = radius * radius * Math.acos(1 - depth / radius);
  return (sector - (radius - depth) * run) / 2;
};

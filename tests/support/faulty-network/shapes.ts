/** Where a loop's wire runs in plan: the shapes of the document, walked corner by corner. */
import type { Shape } from '#plan/schema';
import type { Cell, XY } from './built';

const turned = ([x, y]: XY, degrees: number, [cx, cy]: XY): XY => {
  const angle = (degrees * Math.PI) / 180;
  return [cx + x * Math.cos(angle) - y * Math.sin(angle), cy + x * Math.sin(angle) + y * Math.cos(angle)];
};

const plain = (corners: readonly XY[]): Cell => ({ corners, shared: corners.map(() => false) });

/** Counter-clockwise; the halves of a quadrupole and of a diagonal run the same way where they share a slot. */
export const cellsOf = (shape: Shape): Cell[] => {
  if (shape.kind === 'polygon') return [plain(shape.points)];
  if (shape.kind === 'circle') throw new Error('a circle is a polygon here');
  const [x, y] = [shape.width / 2, shape.length / 2];
  const place = (corners: readonly XY[]): XY[] =>
    corners.map((each) => turned(each, shape.rotation, shape.centre));
  if (shape.kind === 'quadrupole')
    return [
      { corners: place([[-x, -y], [0, -y], [0, y], [-x, y]]), shared: [false, true, false, false] }, // prettier-ignore
      { corners: place([[0, -y], [0, y], [x, y], [x, -y]]), shared: [true, false, false, false] } // prettier-ignore
    ];
  if (shape.kind === 'diagonal')
    return [
      { corners: place([[-x, -y], [x, y], [-x, y]]), shared: [true, false, false] }, // prettier-ignore
      { corners: place([[-x, -y], [x, y], [x, -y]]), shared: [true, false, false] } // prettier-ignore
    ];
  const cut = shape.cornerCut;
  if (cut === 0) return [plain(place([[-x, -y], [x, -y], [x, y], [-x, y]]))]; // prettier-ignore
  return [
    plain(
      place([[cut - x, -y], [x - cut, -y], [x, cut - y], [x, y - cut], [x - cut, y], [cut - x, y], [-x, y - cut], [-x, cut - y]]) // prettier-ignore
    )
  ];
};

/** Every side longer by `by` metres; a free polygon grows about its middle by `by` over the side of the square of its area. */
export const grown = (shape: Shape, by: number): Shape => {
  if (shape.kind === 'circle') return { ...shape, diameter: shape.diameter + by };
  if (shape.kind !== 'polygon') return { ...shape, width: shape.width + by, length: shape.length + by };
  const { points } = shape;
  let [area, mx, my] = [0, 0, 0];
  points.forEach(([x, y], k) => {
    const [u, v] = points[(k + 1) % points.length]!;
    area += (x * v - u * y) / 2;
    mx += ((x + u) * (x * v - u * y)) / 6;
    my += ((y + v) * (x * v - u * y)) / 6;
  });
  const factor = 1 + by / Math.sqrt(Math.abs(area));
  const middle: XY = [mx / area, my / area];
  return {
    ...shape,
    points: points.map(([x, y]): XY => [
      middle[0] + factor * (x - middle[0]),
      middle[1] + factor * (y - middle[1])
    ])
  };
};

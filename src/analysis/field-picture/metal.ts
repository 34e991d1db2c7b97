/** What a picture's plane shows of a vehicle's metal: cuts on a section, outlines on a plan. */
import type { Placement } from '#physics/field/filaments';
import type { Part, PlatePart, RingPart } from '#physics/vehicle/parts';
import type { Point } from '#plan/schema';
import { clipLine } from './clip';
import { seenFrom, type Frame } from './frame';

type Vector = readonly [number, number, number];

const POINTS = 48;
/** Of a conductor that is cut across. */
const FEW_POINTS = 12;

/** From the vehicle's own frame onto the plan. */
const onPlan =
  ({ x, y, heading }: Placement) =>
  ([px, py, pz]: Vector): Vector => {
    const turn = ((heading - 90) * Math.PI) / 180;
    const [cosine, sine] = [Math.cos(turn), Math.sin(turn)];
    return [x + px * cosine - py * sine, y + px * sine + py * cosine, pz];
  };

const cornersOf = ({ x, y, width, length, height }: PlatePart): readonly Vector[] =>
  [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1]
  ].map(([a, b]) => [x + (a! * width) / 2, y + (b! * length) / 2, height]);

const circle = (count: number, at: (cosine: number, sine: number) => Vector): Vector[] =>
  Array.from({ length: count + 1 }, (_, k) => {
    const angle = (2 * Math.PI * (k % count)) / count;
    return at(Math.cos(angle), Math.sin(angle));
  });

const ringOf = ({ x, y, height, radius, axis }: RingPart): Vector[] => {
  const size = Math.hypot(...axis);
  const [nx, ny, nz] = [axis[0] / size, axis[1] / size, axis[2] / size];
  // two unit vectors across the axis, the first of them level
  const level = Math.hypot(nx, ny);
  const [ax, ay] = level > 0 ? [-ny / level, nx / level] : [1, 0];
  const [bx, by, bz] = [-nz * ay, nz * ax, nx * ay - ny * ax];
  return circle(POINTS, (cosine, sine) => [
    x + radius * (cosine * ax + sine * bx),
    y + radius * (cosine * ay + sine * by),
    height + radius * sine * bz
  ]);
};

/** Where the sides of a closed line pass through the plane, each at most once. */
const crossings = (corners: readonly Vector[]): Point[] =>
  corners.flatMap((from, k): Point[] => {
    const to = corners[(k + 1) % corners.length]!;
    if (from[2] < 0 === to[2] < 0) return [];
    const share = from[2] / (from[2] - to[2]);
    return [[from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])]];
  });

const cutRing = (part: RingPart, seen: readonly Vector[]): Point[][] => {
  const thickness = part.conductorRadius;
  if (seen.every(([, , aside]) => Math.abs(aside) <= thickness)) return [seen.map(([u, v]): Point => [u, v])];
  return crossings(seen.slice(0, -1)).map(([u, v]) =>
    circle(FEW_POINTS, (cosine, sine) => [u + thickness * cosine, v + thickness * sine, 0]).map(
      ([a, b]): Point => [a, b]
    )
  );
};

const flat = (seen: readonly Vector[]): Point[] => seen.map(([u, v]) => [u, v]);

const shownOf = (part: Part, isPlan: boolean, seen: (at: Vector) => Vector): Point[][] => {
  if (part.kind === 'ring') {
    const points = ringOf(part).map(seen);
    return isPlan ? [flat(points)] : cutRing(part, points);
  }
  const corners = cornersOf(part).map(seen);
  if (isPlan) return [flat([...corners, corners[0]!])];
  const cut = crossings(corners);
  return cut.length === 2 ? [cut] : [];
};

/** As much of it as lies in the picture. */
export const metalIn = (
  parts: readonly Part[],
  placement: Placement,
  frame: Frame,
  isPlan: boolean
): Point[][] => {
  const place = onPlan(placement);
  return parts
    .flatMap((part) => shownOf(part, isPlan, (at) => seenFrom(frame, place(at))))
    .flatMap((line) => clipLine(line, frame));
};

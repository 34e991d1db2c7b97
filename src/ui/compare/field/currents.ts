/** Currents in a vehicle as lines, in its own frame: x to the right, y ahead, metres. */
import type { CurrentsPicture, PlateCurrents } from '#analysis/field-picture/results';
import type { CatalogueVehicle } from '#plan/catalogue/vehicles';
import { rotate, subtract } from '#plan/geometry/points';
import type { Point, Probe, VehiclePart } from '#plan/schema';
import { roundStep } from './levels';
import { areasOver } from './rings';

/** Lines between the rim and where the most current goes round, about. */
const LINES = 8;

/** The most that goes round anywhere in a plate, amperes per ampere. */
export const mostAround = ({ psi }: Pick<PlateCurrents, 'psi'>): number =>
  psi.reduce((most, value) => Math.max(most, Math.abs(value)), 0);

/** What flows between two lines: the same for every plate, so that dense lines mean much current. */
export const lineStep = ({ plates }: CurrentsPicture): number =>
  roundStep(Math.max(0, ...plates.map(mostAround)), LINES);

const doubleArea = (ring: readonly Point[]): number =>
  ring.reduce((sum, [x, y], k) => {
    const [nextX, nextY] = ring[(k + 1) % ring.length]!;
    return sum + x * nextY - nextX * y;
  }, 0);

/** Between two entries of a list. */
const between = (values: readonly number[], at: number): number => {
  const low = Math.min(values.length - 2, Math.max(0, Math.floor(at)));
  return values[low]! + (at - low) * (values[low + 1]! - values[low]!);
};

/** Current goes round counter-clockwise where the stream function is positive. */
function linesOf(plate: PlateCurrents, sign: 1 | -1, step: number): readonly (readonly Point[])[] {
  const { xs, ys, psi } = plate;
  const values = Array.from(psi, (value) => sign * value);
  const most = Math.max(0, ...values);
  const levels = Array.from({ length: Math.floor(most / step) }, (_, n) => (n + 1) * step).filter(
    (level) => level < most
  );
  return levels.flatMap((level) =>
    areasOver({ columns: xs.length, rows: ys.length }, values, level, (column, row) => [
      between(xs, column),
      between(ys, row)
    ]).flatMap((area) =>
      area.map((ring, n) => {
        const isCounterClockwise = (n === 0) === sign > 0;
        return doubleArea(ring) > 0 === isCounterClockwise ? ring : [...ring].reverse();
      })
    )
  );
}

/** Closed lines, each in the direction of its current, with `step` amperes per ampere between two. */
export const currentLines = (plate: PlateCurrents, step: number): readonly (readonly Point[])[] =>
  step > 0 ? [...linesOf(plate, 1, step), ...linesOf(plate, -1, step)] : [];

/** A place of the plan in the vehicle's frame. */
export const inVehicle = ({ at, heading }: Probe, point: Point): Point =>
  rotate(subtract(point, at), 90 - heading);

/** Ahead to the right: a vehicle is longer than wide, and so is a screen. */
export const lyingDown = ([x, y]: Point): Point => [y, -x];

/** Edges of plates, and rings as they are seen from above. */
export function partOutline(part: VehiclePart): readonly Point[] {
  const [x, y] = part.centre;
  if (part.kind === 'plate') {
    const [dx, dy] = [part.width / 2, part.length / 2];
    return [[x - dx, y - dy], [x + dx, y - dy], [x + dx, y + dy], [x - dx, y + dy]]; // prettier-ignore
  }
  const [ax, ay, az] = part.axis;
  const across = Math.hypot(ax, ay);
  const size = Math.hypot(across, az);
  // a circle seen askew is an ellipse whose short half is the cosine of its tilt
  const tilt = Math.abs(az) / size;
  const [ux, uy] = across > 1e-9 ? [-ay / across, ax / across] : [1, 0];
  return Array.from({ length: 37 }, (_, k): Point => {
    const turn = (k * Math.PI) / 18;
    const [a, b] = [part.radius * Math.cos(turn), part.radius * tilt * Math.sin(turn)];
    return [x + a * ux - b * uy, y + a * uy + b * ux];
  });
}

/** Of the vehicle's body, corner by corner. */
export const bodyOutline = ({ bodyWidth, bodyLength }: CatalogueVehicle): readonly Point[] => {
  const [x, y] = [bodyWidth / 2, bodyLength / 2];
  return [[-x, -y], [x, -y], [x, y], [-x, y]]; // prettier-ignore
};

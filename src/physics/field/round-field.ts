/** The field of circular wires in any plane. */
import { circleField } from './circle-field';
import type { Field, Points } from './points';

export interface RoundWire {
  /** Of its middle, metres. */
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly radius: number;
  /** Radius of the conductor, metres, more than 0. */
  readonly thickness: number;
  /** Unit vector; the current runs counter-clockwise about it. */
  readonly axis: readonly [number, number, number];
  /** Amperes. */
  readonly current: number;
}

/** Adds the field of one of them, tesla. */
export const addRoundField = (wire: RoundWire, points: Points, field: Field): void => {
  const { x, y, z, radius, thickness, current } = wire;
  const [ax, ay, az] = wire.axis;
  for (let k = 0; k < points.x.length; k++) {
    const px = points.x[k]! - x;
    const py = points.y[k]! - y;
    const pz = points.z[k]! - z;
    const above = px * ax + py * ay + pz * az;
    const qx = px - above * ax;
    const qy = py - above * ay;
    const qz = pz - above * az;
    const rho = Math.sqrt(qx * qx + qy * qy + qz * qz);
    const { outwards, upwards } = circleField(radius, thickness, rho, above);
    const aside = rho > 0 ? (current * outwards) / rho : 0;
    const along = current * upwards;
    field.x[k]! += aside * qx + along * ax;
    field.y[k]! += aside * qy + along * ay;
    field.z[k]! += aside * qz + along * az;
  }
};

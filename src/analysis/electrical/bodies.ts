/**
 * Vehicles as factored matrices, built once and kept. Two finenesses: the coarse one finds where along a pass the response
 * is strongest, and serves loops far away; every figure that is shown for a near loop comes from the fine one.
 */
import { buildBody, type Body } from '#physics/vehicle/body';
import type { Part, RingPart } from '#physics/vehicle/parts';
import type { Vehicle } from '#plan/schema';

/** The two meshes of a vehicle. */
export interface Meshes {
  readonly fine: Body;
  readonly coarse: Body;
}

export interface VehicleBody extends Meshes {
  /** Number of this set of parts, for caches. */
  readonly key: number;
  readonly parts: readonly Part[];
  /** Over a conducting plane, metres below the road. */
  over(depth: number): Meshes;
}

const COARSE = 0.42;

type RingOfVehicle = Extract<Vehicle['parts'][number], { kind: 'ring' }>;

/** Without a resistivity the rim is perfect, whatever its permeability. */
const metalOf = ({
  resistivity_ohm_m: resistivity,
  relativePermeability = 1
}: RingOfVehicle): Pick<RingPart, 'resistivity' | 'relativePermeability'> =>
  resistivity === undefined ? {} : { resistivity, relativePermeability };

export const partsOf = ({ parts }: Vehicle): Part[] =>
  parts.map((part) =>
    part.kind === 'plate'
      ? {
          kind: 'plate',
          x: part.centre[0],
          y: part.centre[1],
          height: part.height,
          width: part.width,
          length: part.length
        }
      : {
          kind: 'ring',
          x: part.centre[0],
          y: part.centre[1],
          height: part.centre[2],
          radius: part.radius,
          conductorRadius: part.conductorRadius,
          axis: part.axis,
          ...metalOf(part)
        }
  );

/** Planes nearer to one another than this are one, metres. */
const SAME_PLANE = 0.01;
const MOST_PLANES = 24;

/** Over a plane each mesh is made when first asked for: most searches need the coarse one alone. */
const meshesOver = (parts: readonly Part[], depth: number): Meshes => {
  let fine: Body | null = null;
  let coarse: Body | null = null;
  return {
    get fine() {
      return (fine ??= buildBody(parts, 1, depth));
    },
    get coarse() {
      return (coarse ??= buildBody(parts, COARSE, depth));
    }
  };
};

const bodyOf = (parts: readonly Part[], key: number): VehicleBody => {
  const planes = new Map<number, Meshes>();
  const planeOf = (depth: number): number => Math.round(depth / SAME_PLANE);
  return {
    key,
    parts,
    fine: buildBody(parts),
    coarse: buildBody(parts, COARSE),
    over: (depth) => {
      const plane = planeOf(depth);
      const known = planes.get(plane);
      if (known) return known;
      const made = meshesOver(parts, plane * SAME_PLANE);
      if (planes.size >= MOST_PLANES) planes.delete(planes.keys().next().value!);
      planes.set(plane, made);
      return made;
    }
  };
};

export interface BodyStore {
  has(vehicle: Vehicle): boolean;
  get(vehicle: Vehicle): VehicleBody;
}

/** More than a site and the catalogue may hold together: with fewer, preparing one vehicle of a site would drop another. */
const MOST_BODIES = 120;

/** `firstKey`: of a store beside another, so that no two of their vehicles have one number. */
export const createBodyStore = (firstKey = 1): BodyStore => {
  const bodies = new Map<string, VehicleBody>();
  let nextKey = firstKey;
  /** What conducts alone: a part's name changes nothing. */
  const keyOf = (parts: readonly Part[]): string => JSON.stringify(parts);
  return {
    has: (vehicle) => bodies.has(keyOf(partsOf(vehicle))),
    get: (vehicle) => {
      const parts = partsOf(vehicle);
      const key = keyOf(parts);
      const known = bodies.get(key);
      if (known) return known;
      const body = bodyOf(parts, nextKey++);
      if (bodies.size >= MOST_BODIES) bodies.delete(bodies.keys().next().value!);
      bodies.set(key, body);
      return body;
    }
  };
};

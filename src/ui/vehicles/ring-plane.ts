/** How a ring stands, and what it is made of, as people choose it. */
import { MILD_STEEL } from '#plan/catalogue/metals';
import type { VehiclePart } from '#plan/schema';

export type Ring = Extract<VehiclePart, { kind: 'ring' }>;
type Axis = Ring['axis'];

export const STANDS = ['alongTravel', 'acrossTravel', 'flat', 'leaning'] as const;
export type Stand = (typeof STANDS)[number];

const AXES: Readonly<Record<Stand, Axis>> = {
  alongTravel: [1, 0, 0],
  acrossTravel: [0, 1, 0],
  flat: [0, 0, 1],
  /** Half way between a wheel and a lying ring: something to begin with. */
  leaning: [1, 0, 1]
};

/** An axis has no sense, only a direction. */
export function standOf([x, y, z]: Axis): Stand {
  const size = Math.hypot(x, y, z);
  const isAlong = (part: number): boolean => Math.abs(part) > (1 - 1e-12) * size;
  if (isAlong(x)) return 'alongTravel';
  if (isAlong(y)) return 'acrossTravel';
  return isAlong(z) ? 'flat' : 'leaning';
}

export const axisOf = (stand: Stand): Axis => AXES[stand];

export const METALS = ['lossless', 'mildSteel', 'stated'] as const;
export type Metal = (typeof METALS)[number];

export function metalOfRing({ resistivity_ohm_m, relativePermeability }: Ring): Metal {
  if (resistivity_ohm_m === undefined) return 'lossless';
  return resistivity_ohm_m === MILD_STEEL.resistivity &&
    relativePermeability === MILD_STEEL.relativePermeability
    ? 'mildSteel'
    : 'stated';
}

/** Aluminium, where somebody states a metal and nothing is known yet: 27 nΩ·m, not magnetic. */
const STATED = { resistivity_ohm_m: 2.7e-8, relativePermeability: 1 };

export const metalFields = (
  metal: Metal
): { readonly resistivity_ohm_m: number | undefined; readonly relativePermeability: number | undefined } =>
  metal === 'lossless'
    ? { resistivity_ohm_m: undefined, relativePermeability: undefined }
    : metal === 'stated'
      ? STATED
      : {
          resistivity_ohm_m: MILD_STEEL.resistivity,
          relativePermeability: MILD_STEEL.relativePermeability
        };

/** Undefined takes a metal's field away. */
export type RingPatch = {
  readonly [K in Exclude<keyof Ring, 'kind' | 'name'>]?: Ring[K] | undefined;
};

/** The ring with new values of some fields. */
export const withFields = (ring: Ring, patch: RingPatch): Ring =>
  Object.fromEntries(
    Object.entries({ ...ring, ...patch }).filter(([, value]) => value !== undefined)
  ) as Ring;

/**
 * Steel that nobody drew, under all loops of a circuit. Whether mat or plate, from a loop's distance it is a plane that
 * keeps the field out at an apparent depth, and its surface impedance Z shifts that depth by Z/(jωµ0), a little down and, for its
 * losses, a little sideways into the complex: ΔL(d − jρ) = ΔL(d) − jρ·ΔL′(d). So all that is not known of it is the depth of
 * the plane, and ρ = R/(ωµ0), R the resistance of the surface. For a mat R = pitch × resistance of a bar per metre.
 */
import { complex, type Complex } from '#physics/numeric/complex';
import { deepestColumn } from '../../electrical/winding-of';
import { throughImage } from '../../electrical/steel';
import type { Steps } from '../../steps';
import type { Added, Design } from './design';
import type { StandingVehicle } from './places';
import { shareOverPlane } from './vehicle-over-plane';

/** Of the plane below the lowest wire of all loops, metres. */
const CLEARANCES = Array.from({ length: 11 }, (_, k) => 0.025 * 1.45 ** k);

/**
 * ρ at 50 kHz, metres; it goes with one over the root of the frequency, as skin effect has it. Of a plate of mild steel
 * (ρ 1.7·10⁻⁷ Ω·m, µr 100); of mats from bars of 16 mm every 100 mm to bars of 6 mm every 200 mm, and between.
 */
export const LOSS_DEPTHS = [0.0046, 0.011, 0.022, 0.044] as const;
const AT = 50_000;

export interface NearSteel {
  /** Of the plane, metres below the road. */
  readonly depth: number;
  /** Place in `LOSS_DEPTHS`. */
  readonly losses: number;
}

export interface SteelNear {
  /** Metres below the road at which it was computed. */
  readonly depths: readonly number[];
  readonly at: (steel: NearSteel, frequency: number) => Added;
  /** What is left of a vehicle's change over such a plane. */
  readonly vehicleShare: (vehicle: string, depth: number) => number;
}

/** Loops coupled by less than this share do not see one another's image either. */
const FAINT = 1e-3;

/** Of the plane at one depth: H, row by row. */
const imagesAt = (design: Design, depth: number, forms: Map<string, number>): Float64Array => {
  const { loops } = design;
  const entries = new Float64Array(loops.length ** 2);
  loops.forEach(({ loop, model }, i) => {
    const { shape, turns, slot, wire } = loop;
    const size = shape.kind === 'polygon' ? shape : { ...shape, centre: null };
    const form = JSON.stringify([size, turns, slot.depth, wire, depth]);
    const own = forms.get(form) ?? throughImage(model.winding, model.winding, -depth);
    forms.set(form, own);
    entries[i * loops.length + i] = own;
    for (let j = 0; j < i; j++) {
      const other = loops[j]!.model;
      if (Math.abs(design.mutual(i, j)) < FAINT * Math.sqrt(model.external * other.external)) continue;
      const value = throughImage(model.winding, other.winding, -depth);
      entries[i * loops.length + j] = value;
      entries[j * loops.length + i] = value;
    }
  });
  return entries;
};

/** As a power of the distance where both have one sign. */
const between = (a: number, b: number, t: number): number => {
  if (a === b) return a;
  return a * b > 0 ? a * (b / a) ** t : a + (b - a) * t;
};

/** One step a depth. */
export function* steelNearInSteps(design: Design, vehicles: readonly StandingVehicle[]): Steps<SteelNear> {
  const lowest = Math.max(
    ...design.loops.map(({ loop, model }) =>
      Math.max(loop.slot.depth, deepestColumn(model.winding) * model.wire.insulatedDiameter)
    )
  );
  const forms = new Map<string, number>();
  const levels: Float64Array[] = [];
  for (const clearance of CLEARANCES) {
    levels.push(imagesAt(design, lowest + clearance, forms));
    yield;
  }
  const placeOf = (depth: number): number => {
    const clearance = Math.max(CLEARANCES[0]! / 2, depth - lowest);
    return Math.log(clearance / CLEARANCES[0]!) / Math.log(CLEARANCES[1]! / CLEARANCES[0]!);
  };
  const change = (entry: number, depth: number): number => {
    const place = placeOf(depth);
    const below = Math.min(levels.length - 2, Math.max(0, Math.floor(place)));
    return between(levels[below]![entry]!, levels[below + 1]![entry]!, place - below);
  };
  const depths = CLEARANCES.map((clearance) => lowest + clearance);
  const shares = new Map<string, readonly number[]>();
  for (const vehicle of vehicles) {
    const found: number[] = [];
    for (let k = 0; k < depths.length; k += 2) {
      found.push(shareOverPlane(design, vehicle, depths[k]!));
      yield;
    }
    shares.set(vehicle.id, found);
  }
  const size = design.loops.length;
  return {
    depths,
    at: ({ depth, losses }, frequency) => {
      const sideways = LOSS_DEPTHS[losses]! * Math.sqrt(AT / frequency);
      const step = 0.1 * (depth - lowest);
      return (i, j): Complex => {
        const entry = i * size + j;
        const slope = (change(entry, depth + step) - change(entry, depth - step)) / (2 * step);
        return complex(change(entry, depth), -sideways * slope);
      };
    },
    vehicleShare: (vehicle, depth) => {
      const found = shares.get(vehicle);
      if (!found) return 1;
      const place = Math.min(found.length - 1, Math.max(0, placeOf(depth) / 2));
      const below = Math.min(found.length - 2, Math.floor(place));
      return found[below]! + (place - below) * (found[below + 1]! - found[below]!);
    }
  };
}

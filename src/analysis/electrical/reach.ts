/**
 * How far beside a loop a vehicle still counts. From afar both are dipoles: the loop of moment m per ampere, and the vehicle
 * as conducting discs of its parts' areas, whose moment in a field B is (8/3)·a³·B/µ0 (a disc of radius a in a field along
 * its axis; any text on superconductors). At a distance d then ΔL = −(8/3)·a³·µ0·m²/(4π·d³)². Held against the mesh in
 * tests: what is left out is below 2·10⁻⁶ of L.
 */
import { MU0 } from '#physics/constants';
import { STRIDE, type Filaments, type Placement } from '#physics/field/filaments';
import type { Part } from '#physics/vehicle/parts';

/** A response that no threshold asks for. */
const FAINT = 2e-6;

/** What a set of parts covers in the vehicle's frame, metres, and the sum of a³ of its parts. */
export interface Footprint {
  readonly left: number;
  readonly right: number;
  readonly rear: number;
  readonly front: number;
  readonly strength: number;
  /** Length of its longest part. */
  readonly longest: number;
  /** Height of its lowest point above the road. */
  readonly lowest: number;
  /** Height of its largest part. */
  readonly main: number;
}

const spanOf = (part: Part): readonly [number, number, number] => {
  if (part.kind === 'plate') return [part.width / 2, part.length / 2, 0];
  const size = Math.hypot(...part.axis);
  const reach = (along: number): number =>
    part.radius * Math.sqrt(Math.max(0, 1 - (along / size) ** 2)) + part.conductorRadius;
  return [reach(part.axis[0]), reach(part.axis[1]), reach(part.axis[2])];
};

/** a³ of the disc that a part is from afar, m³. */
const strengthOf = (part: Part): number =>
  part.kind === 'plate' ? ((part.width * part.length) / Math.PI) ** 1.5 : part.radius ** 3;

export const footprintOf = (parts: readonly Part[]): Footprint => {
  const spans = parts.map(spanOf);
  const least = (value: (part: Part, k: number) => number): number => Math.min(...parts.map(value));
  return {
    left: least(({ x }, k) => x - spans[k]![0]),
    right: -least(({ x }, k) => -x - spans[k]![0]),
    rear: least(({ y }, k) => y - spans[k]![1]),
    front: -least(({ y }, k) => -y - spans[k]![1]),
    strength: parts.reduce((sum, part) => sum + strengthOf(part), 0),
    main: parts.reduce((largest, part) => (strengthOf(part) > strengthOf(largest) ? part : largest)).height,
    longest: Math.max(...spans.map(([, along]) => 2 * along)),
    lowest: least(({ height }, k) => height - spans[k]![2])
  };
};

/** What a loop's wires cover on the plan, and their moment per ampere if all turned one way, m². */
export interface LoopBox {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
  readonly moment: number;
}

export const boxOf = (filaments: Filaments): LoopBox => {
  let [left, right, bottom, top, wires] = [Infinity, -Infinity, Infinity, -Infinity, Infinity];
  for (let at = 0; at < filaments.length; at += STRIDE) {
    const [x, y, ux, uy, length] = filaments.subarray(at, at + 5);
    for (const along of [0, length!]) {
      left = Math.min(left, x! + along * ux!);
      right = Math.max(right, x! + along * ux!);
      bottom = Math.min(bottom, y! + along * uy!);
      top = Math.max(top, y! + along * uy!);
    }
    wires = Math.min(wires, filaments[at + 6]!);
  }
  return { left, right, bottom, top, moment: wires * (right - left) * (top - bottom) };
};

/** Loops of one circuit that may be as near as each other, and whose fields may add up. */
const MOST_TOGETHER = 3;

/**
 * What a loop far off adds to the response of another of its circuit falls as its field, d⁻³, and no longer as d⁻⁶: of
 * several loops each counts this many times further off, wherever one of them is within its reach.
 */
const FIELD_REACH = 3;

export interface Reach {
  /** Metres of free road between vehicle and loop beyond which its own response is left out. */
  readonly own: number;
  /** Beyond which it adds nothing to that of the other loops of its circuit either; `own` of a single loop. */
  readonly field: number;
}

/** Of one of the `loops` loops of a circuit; `inductance` at its terminals. */
export const reachOf = (box: LoopBox, footprint: Footprint, inductance: number, loops = 1): Reach => {
  const least = FAINT / Math.min(loops, MOST_TOGETHER) ** 2;
  const moments = footprint.strength * box.moment ** 2;
  const apart = (((8 / 3) * MU0 * moments) / (16 * Math.PI ** 2 * inductance * least)) ** (1 / 6);
  const narrow = (a: number, b: number): number => Math.min(a, b) / 2;
  const own = Math.max(
    LEAST_REACH,
    apart -
      narrow(box.right - box.left, box.top - box.bottom) -
      narrow(footprint.right - footprint.left, footprint.front - footprint.rear)
  );
  return { own, field: loops > 1 ? FIELD_REACH * own : own };
};

/** Near by neither is a dipole, metres. */
const LEAST_REACH = 0.5;

/** Metres of free road between them, 0 where they overlap; the loop as the box that it fills in the vehicle's frame. */
export const gapBetween = (box: LoopBox, footprint: Footprint, { x, y, heading }: Placement): number => {
  const turn = ((heading - 90) * Math.PI) / 180;
  const [cosine, sine] = [Math.cos(turn), Math.sin(turn)];
  const px = (box.left + box.right) / 2 - x;
  const py = (box.bottom + box.top) / 2 - y;
  const [width, length] = [(box.right - box.left) / 2, (box.top - box.bottom) / 2];
  const across = px * cosine + py * sine;
  const along = py * cosine - px * sine;
  const halfAcross = width * Math.abs(cosine) + length * Math.abs(sine);
  const halfAlong = width * Math.abs(sine) + length * Math.abs(cosine);
  return Math.hypot(
    Math.max(0, across - halfAcross - footprint.right, footprint.left - across - halfAcross),
    Math.max(0, along - halfAlong - footprint.front, footprint.rear - along - halfAlong)
  );
};

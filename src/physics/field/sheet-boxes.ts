/**
 * A sheet's current from afar. A patch of the sheet, the hats of a block of its nodes, looks from a distance like a lattice
 * of vertical dipoles: 1/r³ is interpolated over the patch by polynomials through SIDE × SIDE points, and each point has
 * the moment ∬ψ·ℓ that ψ gives to its polynomial (Legendre's points, where interpolation does best). Patches are halved
 * until they are small; the distance of a point decides which of them serve it (Barnes & Hut 1986). What is left out is
 * below a thousandth of the sheet's field there, and below 1e-5 of its strongest (tests).
 */
import { MU0 } from '../constants';
import { gaussLegendre } from '../numeric/gauss-legendre';
import { addCorners, cornersOf, type Corners } from './sheet-corners';

/** Points a side; and how far a point must be from a patch's middle, in half diagonals of the patch. */
const SIDE = 5;
const FAR = 2.2;
/** A patch with no more nodes than that is not halved. */
const FEW_NODES = 16;

export interface Patch {
  readonly x: number;
  readonly y: number;
  /** Square of the distance from which on the dipoles serve. */
  readonly far: number;
  readonly pointX: Float64Array;
  readonly pointY: Float64Array;
  /** A·m², over µ0/4π: T·m³. */
  readonly moments: Float64Array;
  readonly parts: readonly Patch[];
  /** Of a patch without parts. */
  readonly corners: Corners | null;
}

const RULE = gaussLegendre(SIDE);
const POINTS = Float64Array.from(RULE.nodes);
/** What makes each polynomial 1 at its own point. */
const SCALES = POINTS.map((own, i) =>
  POINTS.reduce((product, other, k) => (k === i ? product : product / (own - other)), 1)
);

/** Adds `weight` times the values at t in [−1, 1] of the SIDE polynomials, each 1 at its own point and 0 at the others. */
const addPolynomials = (t: number, weight: number, into: Float64Array, at: number): void => {
  for (let i = 0; i < SIDE; i++) {
    let product = weight * SCALES[i]!;
    for (let k = 0; k < SIDE; k++) if (k !== i) product *= t - POINTS[k]!;
    into[at + i]! += product;
  }
};

/** ∫hat·ℓ along one side: for each node of `from..to` (its neighbours are its hat's feet) SIDE numbers. */
const hatMoments = (nodes: Float64Array, from: number, to: number): Float64Array => {
  const low = nodes[from - 1]!;
  const high = nodes[to + 1]!;
  const moments = new Float64Array((to - from + 1) * SIDE);
  for (let n = from; n <= to; n++)
    for (let side = -1; side <= 1; side += 2) {
      const foot = nodes[n + side]!;
      const reach = nodes[n]! - foot;
      // exact for a hat times a polynomial
      for (let k = 0; k < SIDE; k++) {
        const share = (1 + POINTS[k]!) / 2;
        const t = (2 * (foot + share * reach) - low - high) / (high - low);
        addPolynomials(t, (RULE.weights[k]! / 2) * Math.abs(reach) * share, moments, (n - from) * SIDE);
      }
    }
  return moments;
};

type Block = readonly [pFrom: number, pTo: number, qFrom: number, qTo: number];

const dipolesOf = (
  xs: Float64Array,
  ys: Float64Array,
  psi: Float64Array,
  [pFrom, pTo, qFrom, qTo]: Block
): Float64Array => {
  const across = hatMoments(xs, pFrom, pTo);
  const along = hatMoments(ys, qFrom, qTo);
  const moments = new Float64Array(SIDE * SIDE);
  const row = new Float64Array(SIDE);
  for (let p = pFrom; p <= pTo; p++) {
    row.fill(0);
    for (let q = qFrom; q <= qTo; q++)
      for (let j = 0; j < SIDE; j++) row[j]! += psi[p * ys.length + q]! * along[(q - qFrom) * SIDE + j]!;
    for (let i = 0; i < SIDE; i++)
      for (let j = 0; j < SIDE; j++)
        moments[i * SIDE + j]! += (MU0 / (4 * Math.PI)) * across[(p - pFrom) * SIDE + i]! * row[j]!;
  }
  return moments;
};

const cornersIn = (
  xs: Float64Array,
  ys: Float64Array,
  psi: Float64Array,
  [pFrom, pTo, qFrom, qTo]: Block
): Corners => {
  const ownY = ys.subarray(qFrom - 1, qTo + 2);
  const own = new Float64Array((pTo - pFrom + 3) * ownY.length);
  for (let p = pFrom; p <= pTo; p++)
    for (let q = qFrom; q <= qTo; q++)
      own[(p - pFrom + 1) * ownY.length + q - qFrom + 1] = psi[p * ys.length + q]!;
  return cornersOf(xs.subarray(pFrom - 1, pTo + 2), ownY, own);
};

const patchOf = (xs: Float64Array, ys: Float64Array, psi: Float64Array, block: Block): Patch => {
  const [pFrom, pTo, qFrom, qTo] = block;
  const [left, right, near, far] = [xs[pFrom - 1]!, xs[pTo + 1]!, ys[qFrom - 1]!, ys[qTo + 1]!];
  const [x, y] = [(left + right) / 2, (near + far) / 2];
  const [halfX, halfY] = [(right - left) / 2, (far - near) / 2];
  const [across, along] = [pTo - pFrom + 1, qTo - qFrom + 1];
  const isFew = across * along <= FEW_NODES;
  const parts = (): Patch[] => {
    const alongIsLonger = along > 1 && (halfY >= halfX || across === 1);
    const blocks: readonly Block[] = alongIsLonger
      ? [
          [pFrom, pTo, qFrom, qFrom + (along >> 1) - 1],
          [pFrom, pTo, qFrom + (along >> 1), qTo]
        ]
      : [
          [pFrom, pFrom + (across >> 1) - 1, qFrom, qTo],
          [pFrom + (across >> 1), pTo, qFrom, qTo]
        ];
    return blocks.map((each) => patchOf(xs, ys, psi, each));
  };
  return {
    x,
    y,
    far: FAR * FAR * (halfX * halfX + halfY * halfY),
    pointX: Float64Array.from({ length: SIDE * SIDE }, (_, k) => x + halfX * POINTS[Math.floor(k / SIDE)]!),
    pointY: Float64Array.from({ length: SIDE * SIDE }, (_, k) => y + halfY * POINTS[k % SIDE]!),
    moments: dipolesOf(xs, ys, psi, block),
    parts: isFew ? [] : parts(),
    corners: isFew ? cornersIn(xs, ys, psi, block) : null
  };
};

/** Null for a sheet without an inner node: no current flows in it. */
export const patchesOf = (xs: Float64Array, ys: Float64Array, psi: Float64Array): Patch | null =>
  xs.length < 3 || ys.length < 3 ? null : patchOf(xs, ys, psi, [1, xs.length - 2, 1, ys.length - 2]);

const addDipoles = (
  { pointX, pointY, moments }: Patch,
  x: number,
  y: number,
  h: number,
  into: Float64Array
): void => {
  const square = h * h;
  let alongX = 0;
  let alongY = 0;
  let upwards = 0;
  for (let k = 0; k < moments.length; k++) {
    const px = x - pointX[k]!;
    const py = y - pointY[k]!;
    const beside = px * px + py * py;
    const all = beside + square;
    const shape = moments[k]! / (all * all * Math.sqrt(all));
    alongX += shape * px;
    alongY += shape * py;
    upwards += shape * (2 * square - beside);
  }
  into[0]! += 3 * h * alongX;
  into[1]! += 3 * h * alongY;
  into[2]! += upwards;
};

/** Adds the field of a patch at (x, y), `h` over the sheet, to the three numbers in `into`, tesla. */
export const addPatch = (patch: Patch, x: number, y: number, h: number, into: Float64Array): void => {
  const px = x - patch.x;
  const py = y - patch.y;
  if (px * px + py * py + h * h > patch.far) addDipoles(patch, x, y, h, into);
  else if (patch.corners) addCorners(patch.corners, x, y, h, into);
  else for (const part of patch.parts) addPatch(part, x, y, h, into);
};

/**
 * Flux per ampere of a loop through every unknown of a vehicle that stands over it: of plates ∬ ψ·Bz, of rings ∮ A·dl.
 * The sources are the loop's own wires, and the currents that it drives in steel below it.
 */
import { MU0 } from '../constants';
import { DIPOLE, dipoleField, dipolePotentialAlong, dipolesInFrame, type Dipoles } from '../field/dipoles';
import { inFrame, potentialAlong, verticalField, type Filaments, type Placement } from '../field/filaments';
import { FIELD, FIELD_AHEAD, HALF, room, SAMPLES, SAMPLES_AHEAD } from '../field/room';
import { chebyshevTo, type Interpolation } from '../numeric/chebyshev';
import type { Body } from './body';
import type { PlateMesh } from './plate-mesh';
import { reduceBlocks } from './symmetry';

/** ∬ ψ·Bz of every unknown of a plate, added from `first` on; `field` is Bz over µ0/4π at the plate's points. */
const gather = (plate: PlateMesh, field: Float64Array, flux: Float64Array, first: number): void => {
  const { pointIndex, pointWeight } = plate;
  for (let k = 0; k < pointIndex.length; k++) {
    const index = pointIndex[k]!;
    if (index >= 0) flux[first + index]! += (MU0 / (4 * Math.PI)) * pointWeight[k]! * field[k >> 2]!;
  }
};

/** φ of one plate, whose frame the wires are given in. */
export const plateFlux = (plate: PlateMesh, local: Filaments, end: number): Float64Array => {
  const flux = new Float64Array(plate.unknowns);
  const field = room(FIELD, plate.pointX.length);
  verticalField(local, end, plate.pointX, plate.pointY, plate.plate.height, field);
  gather(plate, field, flux, 0);
  return flux;
};

/** φ, webers per ampere in the wires, in the order of the body's unknowns. */
export const fluxThrough = (body: Body, filaments: Filaments, placement: Placement): Float64Array => {
  const local = inFrame(filaments, placement);
  const flux = new Float64Array(body.size);
  let first = 0;
  for (const plate of body.plates) {
    const field = room(FIELD, plate.pointX.length);
    verticalField(local, filaments.length, plate.pointX, plate.pointY, plate.plate.height, field);
    gather(plate, field, flux, first);
    first += plate.unknowns;
  }
  body.rings.forEach(({ x, y, z, dx, dy }, i) => {
    let sum = 0;
    for (let k = 0; k < x.length; k++)
      sum += potentialAlong(local, filaments.length, x[k]!, y[k]!, z[k]!, dx[k]!, dy[k]!);
    flux[first + i] = (MU0 / (4 * Math.PI)) * sum;
  });
  return flux;
};

/**
 * Chebyshev nodes along a side for the field of dipoles `clearance` metres below: four, and as many again as the field has
 * room to vary. Against every quadrature point the flux differs by under 1e-3 (tests).
 */
const nodesFor = (side: number, clearance: number): number => Math.ceil(4 + (1.7 * side) / clearance);

interface Sampling {
  readonly across: Interpolation;
  readonly along: Interpolation;
  readonly x: Float64Array;
  readonly y: Float64Array;
}

/** By plate and rounded clearance. */
const samplings = new WeakMap<Float64Array, Map<string, Sampling>>();

const samplingOf = ({ pointsAcross, pointsAlong, xs, ys }: PlateMesh, clearance: number): Sampling => {
  const known = samplings.get(pointsAcross) ?? new Map<string, Sampling>();
  samplings.set(pointsAcross, known);
  const [left, right] = [xs[0]!, xs[xs.length - 1]!];
  const [rear, front] = [ys[0]!, ys[ys.length - 1]!];
  const counts = [nodesFor(right - left, clearance), nodesFor(front - rear, clearance)] as const;
  const key = counts.join(' ');
  const made = known.get(key);
  if (made) return made;
  const across = chebyshevTo(pointsAcross, left, right, counts[0]);
  const along = chebyshevTo(pointsAlong, rear, front, counts[1]);
  const sampling = {
    across,
    along,
    x: Float64Array.from(
      { length: counts[0] * counts[1] },
      (_, k) => across.nodes[Math.floor(k / counts[1])]!
    ),
    y: Float64Array.from({ length: counts[0] * counts[1] }, (_, k) => along.nodes[k % counts[1]]!)
  };
  known.set(key, sampling);
  return sampling;
};

/** From the samples to all quadrature points. */
const spread = (samples: Float64Array, { across, along }: Sampling, field: Float64Array): void => {
  const [nx, ny] = [across.nodes.length, along.nodes.length];
  const [px, py] = [across.weights.length / nx, along.weights.length / ny];
  const half = room(HALF, nx * py);
  for (let k = 0; k < nx; k++)
    for (let q = 0; q < py; q++) {
      let sum = 0;
      for (let l = 0; l < ny; l++) sum += along.weights[q * ny + l]! * samples[k * ny + l]!;
      half[k * py + q] = sum;
    }
  for (let p = 0; p < px; p++)
    for (let q = 0; q < py; q++) {
      let sum = 0;
      for (let k = 0; k < nx; k++) sum += across.weights[p * nx + k]! * half[k * py + q]!;
      field[p * py + q] = sum;
    }
};

const dipolesField = (
  dipoles: Dipoles,
  plate: PlateMesh,
  fields: readonly [Float64Array, Float64Array]
): void => {
  const { height } = plate.plate;
  const clearance = height - highestOf(dipoles);
  const sampling = samplingOf(plate, clearance);
  const count = sampling.x.length;
  // few points, or dipoles so near that the field is not smooth: each point by itself
  if (count >= plate.pointX.length || clearance < NEAR_DIPOLES)
    return dipoleField(dipoles, plate.pointX, plate.pointY, height, ...fields);
  const samples = [room(SAMPLES, count), room(SAMPLES_AHEAD, count)] as const;
  dipoleField(dipoles, sampling.x, sampling.y, height, ...samples);
  fields.forEach((field, phase) => {
    spread(samples[phase]!, sampling, field);
  });
};

const NEAR_DIPOLES = 0.15;

const highestOf = (dipoles: Dipoles): number => {
  let highest = -Infinity;
  for (let at = 0; at < dipoles.length; at += DIPOLE) highest = Math.max(highest, dipoles[at + 2]!);
  return highest;
};

/** The same of dipoles: in phase, and a quarter period ahead. */
export const dipoleFluxThrough = (
  body: Body,
  dipoles: Dipoles,
  placement: Placement
): readonly [Float64Array, Float64Array] => {
  const local = dipolesInFrame(dipoles, placement);
  const fluxes = [new Float64Array(body.size), new Float64Array(body.size)] as const;
  let first = 0;
  for (const plate of body.plates) {
    const fields = [room(FIELD, plate.pointX.length), room(FIELD_AHEAD, plate.pointX.length)] as const;
    dipolesField(local, plate, fields);
    fields.forEach((field, phase) => gather(plate, field, fluxes[phase]!, first));
    first += plate.unknowns;
  }
  body.rings.forEach(({ x, y, z, dx, dy }, i) => {
    for (let k = 0; k < x.length; k++)
      dipolePotentialAlong(local, x[k]!, y[k]!, z[k]!, dx[k]!, dy[k]!).forEach((value, phase) => {
        fluxes[phase]![first + i]! += (MU0 / (4 * Math.PI)) * value;
      });
  });
  return fluxes;
};

/** y = L⁻¹φ; ΔL of two loops is minus the dot product of theirs (henries). */
export const reducedFlux = (body: Body, filaments: Filaments, placement: Placement): Float64Array =>
  reduceBlocks(body.blocks, fluxThrough(body, filaments, placement));

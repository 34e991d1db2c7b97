/**
 * Flux per ampere of a loop through every unknown of a vehicle that stands over it: of plates ∬ ψ·Bz, of rings ∮ A·dl.
 * The sources are the loop's own wires, and the currents that it drives in steel below it.
 */
import { MU0 } from '../constants';
import { dipoleFieldAt, dipolePotentialAlong, dipolesInFrame, type Dipoles } from '../field/dipoles';
import { fieldMapOf } from '../field/field-map';
import { inFrame, potentialAlong, verticalField, type Filaments, type Placement } from '../field/filaments';
import { FIELD, FIELD_AHEAD, room, VALUE } from '../field/room';
import type { Body } from './body';
import type { PlateMesh } from './plate-mesh';
import type { RingPath } from './ring';
import { reduceBlocks } from './symmetry';

/** ∬ ψ·Bz of every unknown of a plate, added from `first` on; `field` is Bz over µ0/4π at the plate's points. */
export const gather = (plate: PlateMesh, field: Float64Array, flux: Float64Array, first: number): void => {
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

/** Points of one height in the vehicle's frame. */
interface Points {
  readonly height: number;
  readonly pointX: Float64Array;
  readonly pointY: Float64Array;
}

/** Bz over µ0/4π of dipoles at points of a vehicle; `local`: the same dipoles in its frame. */
export const dipolesField = (
  dipoles: Dipoles,
  local: Dipoles,
  { height, pointX, pointY }: Points,
  { x, y, heading }: Placement,
  [inPhase, ahead]: readonly [Float64Array, Float64Array]
): void => {
  const map = fieldMapOf(dipoles, height);
  const turn = ((heading - 90) * Math.PI) / 180;
  const cosine = Math.cos(turn);
  const sine = Math.sin(turn);
  const value = room(VALUE, 2);
  for (let k = 0; k < pointX.length; k++) {
    const u = pointX[k]!;
    const v = pointY[k]!;
    if (map) map.at(x + u * cosine - v * sine, y + u * sine + v * cosine, value);
    else dipoleFieldAt(local, u, v, height, value);
    inPhase[k] = value[0]!;
    ahead[k] = value[1]!;
  }
};

/** Flux over µ0/4π through a ring of dipoles in its frame, both phases. */
export const dipolesThroughRing = (
  { x, y, z, dx, dy }: RingPath,
  local: Dipoles
): readonly [number, number] => {
  let inPhase = 0;
  let ahead = 0;
  for (let k = 0; k < x.length; k++) {
    const value = dipolePotentialAlong(local, x[k]!, y[k]!, z[k]!, dx[k]!, dy[k]!);
    inPhase += value[0];
    ahead += value[1];
  }
  return [inPhase, ahead];
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
    dipolesField(dipoles, local, { ...plate, height: plate.plate.height }, placement, fields);
    fields.forEach((field, phase) => gather(plate, field, fluxes[phase]!, first));
    first += plate.unknowns;
  }
  body.rings.forEach((ring, i) => {
    dipolesThroughRing(ring, local).forEach((value, phase) => {
      fluxes[phase]![first + i] = (MU0 / (4 * Math.PI)) * value;
    });
  });
  return fluxes;
};

/** y = L⁻¹φ; ΔL of two loops is minus the dot product of theirs (henries). */
export const reducedFlux = (body: Body, filaments: Filaments, placement: Placement): Float64Array =>
  reduceBlocks(body.blocks, fluxThrough(body, filaments, placement));

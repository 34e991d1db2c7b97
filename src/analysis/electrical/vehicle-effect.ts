/**
 * What a vehicle that stands somewhere does to the loops of a circuit, and to its terminals.
 *
 * Over steel the vehicle sees the loop with the currents that the loop drives in the steel, and its own currents have their
 * images in the steel. For the latter the steel is a conducting plane of its apparent depth, under the share of the vehicle
 * that stands over it; tests say how well that holds for mats of ordinary size.
 */
import { dot } from '#physics/numeric/cholesky';
import { complex, type Complex } from '#physics/numeric/complex';
import type { Dipoles } from '#physics/field/dipoles';
import type { Placement } from '#physics/field/filaments';
import type { Body } from '#physics/vehicle/body';
import { dipoleFluxThrough, fluxThrough, reducedFlux } from '#physics/vehicle/flux';
import { reduceBlocks } from '#physics/vehicle/symmetry';
import type { VehicleBody } from './bodies';
import type { SolvedCircuit } from './circuit-model';
import type { LoopModel } from './loop-model';
import { standing, type Standing } from './standing';

type Mesh = 'fine' | 'coarse';
export type Change = readonly (readonly (number | Complex)[])[];

const FILAMENTS = { fine: 'filaments', coarse: 'roughFilaments' } as const;

/** Without steel: real, and quick. */
const plainChange = (models: readonly LoopModel[], body: Body, mesh: Mesh, placement: Placement): Change => {
  const reduced = models.map((model) => reducedFlux(body, model[FILAMENTS[mesh]], placement));
  return reduced.map((a) => reduced.map((b) => -dot(a, b)));
};

/** Flux of each loop with the steel's currents as further sources: in phase, and a quarter period ahead. */
interface Fluxes {
  readonly inPhase: Float64Array;
  readonly ahead: Float64Array | null;
}

const fluxesOverSteel = (
  models: readonly LoopModel[],
  dipoles: readonly (Dipoles | null)[],
  body: Body,
  mesh: Mesh,
  placement: Placement
): Fluxes[] =>
  models.map((model, i) => {
    const inPhase = fluxThrough(body, model[FILAMENTS[mesh]], placement);
    const induced = dipoles[i] ? dipoleFluxThrough(body, dipoles[i], placement) : null;
    if (induced) for (let k = 0; k < inPhase.length; k++) inPhase[k]! += induced[0][k]!;
    return { inPhase, ahead: induced && induced[1] };
  });

/** What a loop's field drives in a vehicle, reduced so that −zᵢ·zⱼ is the change: in phase, and a quarter period ahead. */
export interface Reduced {
  readonly inPhase: Float64Array;
  readonly ahead: Float64Array | null;
}

/** The two phases make the change complex. */
export const complexChange = (reduced: readonly Reduced[]): Complex[][] =>
  reduced.map((a) =>
    reduced.map((b) =>
      complex(
        -dot(a.inPhase, b.inPhase) + (a.ahead && b.ahead ? dot(a.ahead, b.ahead) : 0),
        -(a.ahead ? dot(a.ahead, b.inPhase) : 0) - (b.ahead ? dot(b.ahead, a.inPhase) : 0)
      )
    )
  );

const changeBy = (body: Body, fluxes: readonly Fluxes[]): Complex[][] =>
  complexChange(
    fluxes.map(({ inPhase, ahead }) => ({
      inPhase: reduceBlocks(body.blocks, inPhase),
      ahead: ahead && reduceBlocks(body.blocks, ahead)
    }))
  );

const blend = (plain: Complex, over: Complex, share: number): Complex =>
  complex(plain.re + share * (over.re - plain.re), plain.im + share * (over.im - plain.im));

/** The change of a vehicle that stands over steel, from the change by its form with images, and by that without. */
export const blended = (
  stands: Standing | null,
  changeWith: (depth: number | null) => Complex[][]
): Complex[][] => {
  if (!stands) return changeWith(null);
  const { depth, shares } = stands;
  const over = changeWith(depth);
  if (shares.every((share) => share === 1)) return over;
  return changeWith(null).map((row, i) =>
    row.map((value, j) => blend(value, over[i]![j]!, shares[i]! * shares[j]!))
  );
};

/** What the vehicle adds to the inductances of the circuit's loops, H. */
export const changeOf = (
  circuit: SolvedCircuit,
  vehicle: VehicleBody,
  placement: Placement,
  mesh: Mesh = 'fine'
): Change => {
  const models = circuit.input.loops.map(({ model }) => model);
  const { steel } = circuit;
  if (!steel) return plainChange(models, vehicle[mesh], mesh, placement);
  const stands = standing(vehicle.parts, placement, steel.pieces, circuit.frequency);
  // with and without images a vehicle has the same mesh, and so the same fluxes
  const fluxes = fluxesOverSteel(models, steel.dipoles(), vehicle[mesh], mesh, placement);
  return blended(stands, (depth) =>
    changeBy(depth === null ? vehicle[mesh] : vehicle.over(depth)[mesh], fluxes)
  );
};

const terminalChange = ({ weights }: SolvedCircuit, change: Change): number =>
  change.reduce(
    (sum, row, i) =>
      row.reduce<number>(
        (part, value, j) => part + weights[i]![j]! * (typeof value === 'number' ? value : value.re),
        sum
      ),
    0
  );

/** ΔL/L at the terminals; exact. */
export const vehicleEffect = (circuit: SolvedCircuit, vehicle: VehicleBody, placement: Placement): number => {
  const change = changeOf(circuit, vehicle, placement);
  return circuit.inductanceWith((i, j) => change[i]![j]!) / circuit.inductance - 1;
};

/** The same to first order in ΔL, by the coarse mesh: for finding where it is largest. */
export const quickEffect = (circuit: SolvedCircuit, vehicle: VehicleBody, placement: Placement): number =>
  terminalChange(circuit, changeOf(circuit, vehicle, placement, 'coarse')) / circuit.inductance;

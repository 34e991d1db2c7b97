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
import { standing } from './standing';

type Mesh = 'fine' | 'coarse';
export type Change = readonly (readonly (number | Complex)[])[];

const FILAMENTS = { fine: 'filaments', coarse: 'roughFilaments' } as const;

/** Without steel: real, and quick. */
const plainChange = (models: readonly LoopModel[], body: Body, mesh: Mesh, placement: Placement): Change => {
  const reduced = models.map((model) => reducedFlux(body, model[FILAMENTS[mesh]], placement));
  return reduced.map((a) => reduced.map((b) => -dot(a, b)));
};

/** With the steel's currents as further sources; the two phases make the change complex. */
const changeOverSteel = (
  models: readonly LoopModel[],
  dipoles: readonly (Dipoles | null)[],
  body: Body,
  mesh: Mesh,
  placement: Placement
): Complex[][] => {
  const reduced = models.map((model, i) => {
    const flux = fluxThrough(body, model[FILAMENTS[mesh]], placement);
    const induced = dipoles[i] ? dipoleFluxThrough(body, dipoles[i], placement) : null;
    if (induced) for (let k = 0; k < flux.length; k++) flux[k]! += induced[0][k]!;
    return {
      inPhase: reduceBlocks(body.blocks, flux),
      ahead: induced && reduceBlocks(body.blocks, induced[1])
    };
  });
  return reduced.map((a) =>
    reduced.map((b) =>
      complex(
        -dot(a.inPhase, b.inPhase) + (a.ahead && b.ahead ? dot(a.ahead, b.ahead) : 0),
        -(a.ahead ? dot(a.ahead, b.inPhase) : 0) - (b.ahead ? dot(b.ahead, a.inPhase) : 0)
      )
    )
  );
};

const blend = (plain: Complex, over: Complex, share: number): Complex =>
  complex(plain.re + share * (over.re - plain.re), plain.im + share * (over.im - plain.im));

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
  const { depth, share } = standing(vehicle.parts, placement, steel.pieces, circuit.frequency);
  const dipoles = mesh === 'fine' ? steel.dipoles() : steel.fewDipoles();
  const on = (body: Body): Complex[][] => changeOverSteel(models, dipoles, body, mesh, placement);
  if (share === 0) return on(vehicle[mesh]);
  const over = on(vehicle.over(depth)[mesh]);
  if (share === 1) return over;
  return on(vehicle[mesh]).map((row, i) => row.map((value, j) => blend(value, over[i]![j]!, share)));
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

const times = (value: number | Complex, factor: number): number | Complex =>
  typeof value === 'number' ? factor * value : complex(factor * value.re, factor * value.im);

/**
 * Over steel, as fast as a dragged vehicle needs it: the coarse mesh, corrected by what the fine one makes of the same
 * vehicle without steel. Tests say how near that comes.
 */
export const briskChangeOf = (circuit: SolvedCircuit, vehicle: VehicleBody, placement: Placement): Change => {
  const models = circuit.input.loops.map(({ model }) => model);
  const fine = terminalChange(circuit, plainChange(models, vehicle.fine, 'fine', placement));
  const coarse = terminalChange(circuit, plainChange(models, vehicle.coarse, 'coarse', placement));
  const factor = coarse === 0 ? 1 : fine / coarse;
  return changeOf(circuit, vehicle, placement, 'coarse').map((row) =>
    row.map((value) => times(value, factor))
  );
};

/** ΔL/L at the terminals; exact. */
export const vehicleEffect = (circuit: SolvedCircuit, vehicle: VehicleBody, placement: Placement): number => {
  const change = changeOf(circuit, vehicle, placement);
  return circuit.inductanceWith((i, j) => change[i]![j]!) / circuit.inductance - 1;
};

/** The same to first order in ΔL, by the coarse mesh: for finding where it is largest. */
export const quickEffect = (circuit: SolvedCircuit, vehicle: VehicleBody, placement: Placement): number =>
  terminalChange(circuit, changeOf(circuit, vehicle, placement, 'coarse')) / circuit.inductance;

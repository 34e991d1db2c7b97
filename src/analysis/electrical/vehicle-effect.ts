/** What a vehicle that stands somewhere does to the loops of a circuit, and to its terminals. */
import { dot } from '#physics/numeric/cholesky';
import type { Body } from '#physics/vehicle/body';
import { type Placement } from '#physics/field/filaments';
import { reducedFlux } from '#physics/vehicle/flux';
import type { SolvedCircuit } from './circuit-model';

const changes = (
  circuit: SolvedCircuit,
  body: Body,
  placement: Placement,
  filaments: 'filaments' | 'roughFilaments'
): number[][] => {
  const reduced = circuit.input.loops.map(({ model }) => reducedFlux(body, model[filaments], placement));
  return reduced.map((a) => reduced.map((b) => -dot(a, b)));
};

/** ΔL/L at the terminals; exact. */
export const vehicleEffect = (circuit: SolvedCircuit, body: Body, placement: Placement): number => {
  const change = changes(circuit, body, placement, 'filaments');
  return circuit.inductanceWith((i, j) => change[i]![j]!) / circuit.inductance - 1;
};

/** The same to first order in ΔL: for finding where it is largest. */
export const quickEffect = (circuit: SolvedCircuit, body: Body, placement: Placement): number => {
  let sum = 0;
  changes(circuit, body, placement, 'roughFilaments').forEach((row, i) =>
    row.forEach((value, j) => (sum += circuit.weights[i]![j]! * value))
  );
  return sum / circuit.inductance;
};

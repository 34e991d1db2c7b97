/**
 * What not every drawing asks for: its own traffic simulated, what would clear circuits that beat, and the quantities of a
 * report. It is the larger part of the program, so that a page brings it when a drawing does ask; a report has it from the
 * start.
 */
import { remediesInSteps } from './beating/remedies/index';
import { callSimulatorOf, type CallSimulator } from './calls/simulate';
import type { Means } from './means';
import { quantitiesOf } from './takeoff/quantities';

export interface LaterMeans {
  readonly calls: CallSimulator;
  readonly remediesInSteps: typeof remediesInSteps;
  readonly quantitiesOf: typeof quantitiesOf;
}

export const laterMeans = (means: Means): LaterMeans => ({
  calls: callSimulatorOf(means),
  remediesInSteps,
  quantitiesOf
});

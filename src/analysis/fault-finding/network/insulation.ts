/**
 * What an insulation tester shows. A design says nothing of it; a leak says what it is. One leak at a time counts in full,
 * two lie in parallel.
 */
import type { MeasuringPlace } from '../results';
import type { Predicted } from '../forward/contract';
import { dcToShort } from './direct-current';
import type { Design } from './design';
import type { State } from './state';

const together = (leaks: readonly (number | null)[]): number | null => {
  const siemens = leaks.reduce<number>((sum, leak) => sum + (leak === null ? 0 : 1 / leak), 0);
  return siemens === 0 ? null : 1 / siemens;
};

const shown = (leak: number | null): Predicted => leak ?? 'sound';

/** Of the conductors to the ground. */
export const toGround = (design: Design, state: State, { testPoint, loop }: MeasuringPlace): Predicted => {
  if (testPoint === 'unit') return null;
  const leaks = state.loops.map(({ leak }) => leak);
  if (testPoint === 'loop') return shown(leaks[design.loops.findIndex(({ id }) => id === loop)] ?? null);
  // a loop whose string is open is still held by its other end
  if (testPoint === 'pull-box') return shown(together(leaks));
  // so is what lies behind a lead-in that is open: one conductor is parted, the other still leads there
  const isOtherCircuit = state.other !== null;
  return shown(together([state.leadIn.leak, ...(isOtherCircuit ? [] : leaks)]));
};

/**
 * Between the two wires of a lead-in whose far end was opened for it: a fault of the splice went with that, and may have
 * been mended by it.
 */
export const between = (
  design: Design,
  { leadIn }: State,
  { testPoint }: MeasuringPlace,
  temperature: number
): Predicted => {
  if (testPoint !== 'cabinet' && testPoint !== 'pull-box') return null;
  if (leadIn.short) return dcToShort(design, leadIn, temperature);
  return leadIn.isSpliceWet || leadIn.isSpliceShorted ? null : 'sound';
};

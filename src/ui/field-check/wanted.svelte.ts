/** A reading that another screen asks for: the form for readings takes it over once and lets go of it. */
import type { Quantity, TestPoint } from '#plan/schema';
import type { Bench } from '../bench';
import { chosen } from './parts/chosen.svelte';

export interface WantedReading {
  readonly circuit: string;
  readonly testPoint: TestPoint;
  /** Only at "loop". */
  readonly loop: string | null;
  readonly quantity: Quantity;
}

let open = $state.raw<WantedReading | null>(null);

/** What is asked for; null once it was taken. Reactive. */
export const wantedReading = (): WantedReading | null => open;

/** Shows the form for readings with these filled in. */
export function wantReading(bench: Bench, reading: WantedReading): void {
  open = reading;
  chosen.circuit = reading.circuit;
  bench.change({ fieldCheckMode: 'readings' });
}

/** What was asked for, once: whoever fills the form takes it. */
export function takeWanted(): WantedReading | null {
  const reading = open;
  open = null;
  return reading;
}

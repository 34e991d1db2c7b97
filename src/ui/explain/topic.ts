/** What a person can ask "how was this computed?" about. */
import { createContext } from 'svelte';

export const EXPLAINED = [
  'loop-inductance',
  'loop-apparent',
  'loop-dc',
  'loop-ac',
  'loop-q',
  'capacitance',
  'turn-capacitance',
  'ground-capacitance',
  'self-resonance',
  'wire',
  'saw-cut',
  'cover',
  'terminal-inductance',
  'terminal-magnetic',
  'terminal-resistance',
  'terminal-dc',
  'terminal-q',
  'frequency',
  'losses',
  'temperature',
  'moisture',
  'response',
  'response-inductance',
  'margin',
  'range',
  'class-margin',
  'steel-cost',
  'coupling',
  'sweep',
  'separation',
  'ripple',
  'next-lane',
  'path-response',
  'detection-zone',
  'detection-height',
  'calls'
] as const;

export type ExplainedId = (typeof EXPLAINED)[number];

/** The terminal figures that have a plausible range. */
export type RangedFigure = 'inductance_H' | 'resistance_ohm' | 'resistanceDc_ohm' | 'q' | 'frequency_Hz';

/** A readout, and the things on the plan that it is about. */
export interface Topic {
  readonly id: ExplainedId;
  readonly loop?: string;
  readonly circuit?: string;
  /** The other circuit of a pair. */
  readonly other?: string;
  readonly vehicle?: string;
  readonly lane?: string;
  /** Of a path to the right of the lane's middle, metres. */
  readonly offset?: number;
  /** Place of a vehicle on the plan in the document's list. */
  readonly probe?: number;
  readonly figure?: RangedFigure;
}

/** Opens the explanation. */
export const [useExplain, provideExplain] = createContext<(topic: Topic) => void>();

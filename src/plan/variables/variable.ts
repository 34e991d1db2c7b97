/** A number of a drawing that can be varied: what a sweep runs over, a goal is sought with, and a lesson plays with. SI. */
import type { Site } from '../schema';

export const VARIABLE_KINDS = [
  'turns',
  'width',
  'length',
  'rotation',
  'slotDepth',
  'slotWidth',
  'cornerCut',
  'wire',
  'tailLength',
  'leadInLength',
  'leadInCable',
  'gap',
  'vehicleHeight',
  'offset',
  'along',
  'shortedTurns',
  'steelDepth',
  'steelPitch',
  'measuringTime',
  'tripThreshold',
  'frequencySetting',
  'temperature',
  'permittivity'
] as const;
export type VariableKind = (typeof VARIABLE_KINDS)[number];

export interface Variable {
  readonly kind: VariableKind;
  /** The id of what it is a number of: a loop, circuit, vehicle, steel or unit; null for one of the whole site, and for `offset` and `along`. */
  readonly subject: string | null;
  /** Of a gap: the loop that is moved away from `subject`, along the line between them. */
  readonly other?: string;
}

/** What is varied: a drawing, where a vehicle is on its way, and a fault. */
export interface Experiment {
  readonly site: Site;
  /** To the right of the middle of the way, metres. */
  readonly offset_m: number;
  /** From the middle of the loops along the way, metres: where the vehicle stands for figures of a vehicle that stands. */
  readonly along_m: number;
  /** Turns of a loop that are shorted among themselves. */
  readonly shorted: { readonly loop: string; readonly turns: number } | null;
}

/** What a variable can be. */
export interface VariableRange {
  readonly least: number;
  readonly most: number;
  /** A step that people would take. */
  readonly step: number;
  readonly isWhole: boolean;
  /** Of a wire, a cable or a setting: the values are places in this list, counted from 0. */
  readonly choices: readonly string[] | null;
}

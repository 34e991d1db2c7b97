/** What differs between two designs, object by object and field by field: for whoever says it in words or draws it. */
import type { QuantityKind } from '#units/kind';

export type DifferingThing =
  | 'loop'
  | 'circuit'
  | 'unit'
  | 'lane'
  | 'mark'
  | 'steel'
  | 'path'
  | 'probe'
  | 'conduit'
  | 'wire'
  | 'cable'
  | 'vehicle'
  /** What is of no single object: temperature, pavement, tolerances, notes, traffic. */
  | 'site';

export type DifferingField =
  | 'name'
  | 'kind'
  | 'shape'
  | 'place'
  | 'course'
  | 'outline'
  | 'width'
  | 'length'
  | 'diameter'
  | 'rotation'
  | 'cornerCut'
  | 'turns'
  | 'wire'
  | 'slotDepth'
  | 'slotWidth'
  | 'slotPermittivity'
  | 'tailLength'
  | 'way'
  | 'addedResistance'
  | 'largestVehicle'
  | 'text'
  | 'depth'
  | 'pitch'
  | 'barRadius'
  | 'wiring'
  | 'cable'
  | 'leadInLength'
  | 'unit'
  | 'channelNumber'
  | 'frequencySetting'
  | 'frequency'
  | 'tripThreshold'
  | 'releaseRatio'
  | 'outputMode'
  | 'delay'
  | 'extension'
  | 'longestPresence'
  | 'vehicles'
  | 'channels'
  | 'scansInTurn'
  | 'measuringTime'
  | 'settings'
  | 'circuits'
  | 'parts'
  | 'vehicle'
  | 'heading'
  | 'temperature'
  | 'temperatureRange'
  | 'pavement'
  | 'permittivity'
  | 'conductivity'
  | 'tolerances'
  | 'steelCost'
  | 'notes'
  | 'traffic'
  /** Something about it that has no words of its own. */
  | 'more';

/**
 * What `before` and `after` are: a number of that quantity (SI), names or words of the user's, a word of the document (such
 * as the kind of a shape) that whoever shows it translates, yes or no; nothing at all where only a picture tells.
 */
export type DifferingKind = QuantityKind | 'text' | 'names' | 'word' | 'choice' | 'drawn';
export type DifferingValue = number | string | boolean | readonly string[] | null;

export interface FieldDifference {
  readonly field: DifferingField;
  readonly is: DifferingKind;
  /** Null where there is none, or for `drawn`. */
  readonly before: DifferingValue;
  readonly after: DifferingValue;
}

export interface Difference {
  readonly thing: DifferingThing;
  /** Of the document; a probe's is its place in the list of the design in which it stands, as text; empty for `site`. */
  readonly id: string;
  /** As people called it, in the later design where both have it; its id where it has no name, null for what never has one. */
  readonly name: string | null;
  readonly change: 'added' | 'removed' | 'changed';
  /** Of a changed one, always in the same order; empty for the others. */
  readonly fields: readonly FieldDifference[];
}

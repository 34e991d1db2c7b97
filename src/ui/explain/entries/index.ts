import type { Entry } from '../facts';
import type { ExplainedId } from '../topic';
import { circuitEntries } from './circuit';
import { loopEntries } from './loop';
import { neighbourEntries } from './neighbours';
import { passEntries } from './passes';
import { quantityEntries } from './quantities';
import { vehicleEntries } from './vehicles';

/** One entry a readout; a readout without one does not compile. */
export const ENTRIES: Readonly<Record<ExplainedId, Entry>> = {
  ...loopEntries,
  ...quantityEntries,
  ...circuitEntries,
  ...vehicleEntries,
  ...neighbourEntries,
  ...passEntries
};

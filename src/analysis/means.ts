/** What every answer about drawings is made with, and what is kept from one answer to the next: one of each in a worker. */
import { createBodyStore, type BodyStore } from './electrical/bodies';
import { createSurveyor, type Surveyor } from './survey';

export interface Means {
  readonly surveyor: Surveyor;
  readonly bodies: BodyStore;
}

export const createMeans = (): Means => ({ surveyor: createSurveyor(), bodies: createBodyStore() });

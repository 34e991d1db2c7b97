import type { Site } from '../schema';

/** A layout to start from: lanes, loops and circuits that follow the usual practice, ready to change. */
export interface Situation {
  readonly id: string;
  readonly title: string;
  readonly description: string;
  readonly build: () => Site;
}

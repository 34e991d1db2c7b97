/** What "New site" offers, in the order in which it is shown. */
import { advanceLoops } from './advance-loops';
import { bicycleStopLine } from './bicycle-stop-line';
import { blank } from './blank';
import { carParkLane } from './car-park-lane';
import { countingPair } from './counting-pair';
import { drivewayGate } from './driveway-gate';
import type { Situation } from './situation';
import { stopLine } from './stop-line';

export type { Situation } from './situation';

export const situations: readonly Situation[] = [
  drivewayGate,
  carParkLane,
  stopLine,
  advanceLoops,
  countingPair,
  bicycleStopLine,
  blank
];

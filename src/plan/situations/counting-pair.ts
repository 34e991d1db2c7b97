import { emptySite } from '../empty';
import { channelOf, laneAlong, loopOf, markOf, rectangleAt, seriesOf, unitOf } from './parts';
import type { Situation } from './situation';

/** Near enough that every car stands on both for a moment: the order of the two calls gives its direction. */
const OFFSET = 1.1;

export const countingPair: Situation = {
  id: 'counting-pair',
  title: 'Counting pair',
  description: 'Two short loops one after the other, which count vehicles in and out of a car park.',
  build: () => ({
    ...emptySite('Counting pair'),
    lanes: [{ ...laneAlong('lane1', 'In and out', 0, -10, 10, 3.2), largestVehicle: 'van' }],
    marks: [markOf('m1', 'pull-box', [[2.4, 0]]), markOf('m2', 'cabinet', [[2.4, 2]])],
    loops: [
      loopOf('L1', 'First', rectangleAt(0, -OFFSET, 1.8, 1.2), 3, 4),
      loopOf('L2', 'Second', rectangleAt(0, OFFSET, 1.8, 1.2), 3, 4)
    ],
    circuits: [
      seriesOf('C1', 'First', ['L1'], 4, channelOf('U1', 1, 1, 0.0025), ['car', 'van']),
      seriesOf('C2', 'Second', ['L2'], 4, channelOf('U1', 2, 2, 0.0025), ['car', 'van'])
    ],
    units: [unitOf('U1', 'Counting unit', 2)],
    probes: [{ vehicle: 'car', at: [0, 0], heading: 90 }]
  })
};

import { emptySite } from '../empty';
import { channelOf, laneAlong, loopOf, markOf, rectangleAt, seriesOf, unitOf } from './parts';
import type { Situation } from './situation';

export const carParkLane: Situation = {
  id: 'car-park-lane',
  title: 'Car-park lane',
  description:
    'One entry lane with a barrier arm: an arrival loop before the arm and a closing loop behind it.',
  build: () => ({
    ...emptySite('Car-park lane'),
    lanes: [{ ...laneAlong('lane1', 'Entry', 0, -12, 10, 3), largestVehicle: 'van' }],
    marks: [
      markOf('m1', 'gate', [
        [-1.5, 0],
        [1.5, 0]
      ]),
      markOf('m2', 'island', [
        [1.6, -3.5],
        [2.6, -3.5],
        [2.6, 2],
        [1.6, 2]
      ]),
      markOf('m3', 'pull-box', [[2.1, -1]]),
      markOf('m4', 'cabinet', [[2.1, 0]])
    ],
    loops: [
      loopOf('L1', 'Arrival', rectangleAt(0, -2.6, 1.8, 1.8), 3),
      loopOf('L2', 'Closing', rectangleAt(0, 1.9, 1.8, 1.8), 4, 4)
    ],
    circuits: [
      seriesOf('C1', 'Arrival', ['L1'], 3, channelOf('U1', 1, 1, 0.002), ['car', 'van']),
      seriesOf('C2', 'Closing', ['L2'], 3, channelOf('U1', 2, 2, 0.0015), ['car', 'van'])
    ],
    units: [unitOf('U1', 'Barrier unit', 2)],
    probes: [{ vehicle: 'car', at: [0, -2.6], heading: 90 }]
  })
};

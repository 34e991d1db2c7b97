import { emptySite } from '../empty';
import { channelOf, laneAlong, loopOf, markOf, rectangleAt, seriesOf, unitOf } from './parts';
import type { Situation } from './situation';

/** Protecting loops keep 1.2 m from the gate: steel that moves near a loop looks like a vehicle. */
const FROM_GATE = 1.2;
const LENGTH = 1.8;
const PROTECTING = FROM_GATE + LENGTH / 2;

export const drivewayGate: Situation = {
  id: 'driveway-gate',
  title: 'Driveway gate',
  description: 'A sliding gate with a free-exit loop inside and a protecting loop on each side of the gate.',
  build: () => ({
    ...emptySite('Driveway gate'),
    lanes: [{ ...laneAlong('lane1', 'Driveway', 0, -14, 8, 3.6), largestVehicle: 'van' }],
    marks: [
      markOf('m1', 'gate', [
        [-2, 0],
        [2, 0]
      ]),
      markOf('m2', 'pull-box', [[2.8, -1]]),
      markOf('m3', 'cabinet', [[4.5, -1]]),
      markOf('m4', 'conduit', [
        [2.8, -1],
        [4.5, -1]
      ])
    ],
    loops: [
      loopOf('L1', 'Free exit', rectangleAt(0, -8, 2.4, LENGTH), 8),
      loopOf('L2', 'Protecting, inside', rectangleAt(0, -PROTECTING, 2.4, LENGTH), 3),
      loopOf('L3', 'Protecting, outside', rectangleAt(0, PROTECTING, 2.4, LENGTH), 5)
    ],
    circuits: [
      seriesOf('C1', 'Free exit', ['L1'], 6, channelOf('U1', 1, 1, 0.002), ['car', 'van']),
      seriesOf('C2', 'Protecting', ['L2', 'L3'], 6, channelOf('U1', 2, 2, 0.0015), ['car', 'van'])
    ],
    units: [unitOf('U1', 'Gate unit', 2)],
    probes: [{ vehicle: 'car', at: [0, -8], heading: 90 }]
  })
};

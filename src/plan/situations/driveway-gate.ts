import { t } from '#i18n/message';
import { emptySite } from '../empty';
import { channelOf, laneAlong, loopOf, markOf, rectangleAt, seriesOf, unitOf } from './parts';
import { situation } from './situation';

/** Protecting loops keep 1.2 m from the gate: steel that moves near a loop looks like a vehicle. */
const FROM_GATE = 1.2;
const LENGTH = 1.8;
const PROTECTING = FROM_GATE + LENGTH / 2;

export const drivewayGate = situation('driveway-gate', () => ({
  ...emptySite(t('situation.driveway-gate')),
  lanes: [{ ...laneAlong('lane1', t('named.driveway'), 0, -14, 8, 3.6), largestVehicle: 'van' }],
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
    loopOf('L1', t('named.freeExit'), rectangleAt(0, -8, 2.4, LENGTH), 8),
    loopOf('L2', t('named.protectingInside'), rectangleAt(0, -PROTECTING, 2.4, LENGTH), 3),
    loopOf('L3', t('named.protectingOutside'), rectangleAt(0, PROTECTING, 2.4, LENGTH), 5)
  ],
  circuits: [
    seriesOf('C1', t('named.freeExit'), ['L1'], 6, channelOf('U1', 1, 1, 0.002), ['car', 'van']),
    seriesOf('C2', t('named.protecting'), ['L2', 'L3'], 6, channelOf('U1', 2, 2, 0.0015), ['car', 'van'])
  ],
  units: [unitOf('U1', t('named.gateUnit'), 2)],
  probes: [{ vehicle: 'car', at: [0, -8], heading: 90 }]
}));

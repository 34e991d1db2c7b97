import { t } from '#i18n/message';
import { emptySite } from '../empty';
import { channelOf, laneAlong, loopOf, markOf, rectangleAt, seriesOf, unitOf } from './parts';
import { situation } from './situation';

export const carParkLane = situation('car-park-lane', () => ({
  ...emptySite(t('situation.car-park-lane')),
  lanes: [{ ...laneAlong('lane1', t('named.entry'), 0, -12, 10, 3), largestVehicle: 'van' }],
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
    loopOf('L1', t('named.arrival'), rectangleAt(0, -2.6, 1.8, 1.8), 3),
    loopOf('L2', t('named.closing'), rectangleAt(0, 1.9, 1.8, 1.8), 4, 4)
  ],
  circuits: [
    seriesOf('C1', t('named.arrival'), ['L1'], 3, channelOf('U1', 1, 1, 0.002), ['car', 'van']),
    seriesOf('C2', t('named.closing'), ['L2'], 3, channelOf('U1', 2, 2, 0.0015), ['car', 'van'])
  ],
  units: [unitOf('U1', t('named.barrierUnit'), 2)],
  probes: [{ vehicle: 'car', at: [0, -2.6], heading: 90 }]
}));

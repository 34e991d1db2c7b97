import { t } from '#i18n/message';
import { emptySite } from '../empty';
import { channelOf, laneAlong, loopOf, markOf, rectangleAt, seriesOf, unitOf } from './parts';
import { situation } from './situation';

/** Near enough that every car stands on both for a moment: the order of the two calls gives its direction. */
const OFFSET = 1.1;

export const countingPair = situation('counting-pair', () => ({
  ...emptySite(t('situation.counting-pair')),
  lanes: [{ ...laneAlong('lane1', t('named.inAndOut'), 0, -10, 10, 3.2), largestVehicle: 'van' }],
  marks: [markOf('m1', 'pull-box', [[2.4, 0]]), markOf('m2', 'cabinet', [[2.4, 2]])],
  loops: [
    loopOf('L1', t('named.first'), rectangleAt(0, -OFFSET, 1.8, 1.2), 3, 4),
    loopOf('L2', t('named.second'), rectangleAt(0, OFFSET, 1.8, 1.2), 3, 4)
  ],
  circuits: [
    seriesOf('C1', t('named.first'), ['L1'], 4, channelOf('U1', 1, 1, 0.0025), ['car', 'van']),
    seriesOf('C2', t('named.second'), ['L2'], 4, channelOf('U1', 2, 2, 0.0025), ['car', 'van'])
  ],
  units: [unitOf('U1', t('named.countingUnit'), 2)],
  probes: [{ vehicle: 'car', at: [0, 0], heading: 90 }]
}));

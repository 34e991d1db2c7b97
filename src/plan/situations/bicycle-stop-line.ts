import { t } from '#i18n/message';
import { emptySite } from '../empty';
import { channelOf, laneAlong, loopOf, markOf, seriesOf, unitOf } from './parts';
import { situation } from './situation';

export const bicycleStopLine = situation('bicycle-stop-line', () => ({
  ...emptySite(t('situation.bicycle-stop-line')),
  lanes: [
    { ...laneAlong('lane1', t('named.traffic'), -1.75, -20, 3), largestVehicle: 'lorry' },
    { ...laneAlong('lane2', t('named.bicycles'), 1, -20, 3, 2), largestVehicle: 'bicycle' }
  ],
  marks: [
    markOf('m1', 'stop-line', [
      [-3.5, 0],
      [2, 0]
    ]),
    markOf('m2', 'pull-box', [[2.8, -3]]),
    markOf('m3', 'cabinet', [[4.5, 2]])
  ],
  loops: [
    loopOf(
      'L1',
      t('named.traffic'),
      { kind: 'quadrupole', centre: [-1.75, -3.6], width: 1.8, length: 6, rotation: 0 },
      6,
      2
    ),
    loopOf(
      'L2',
      t('named.bicycles'),
      { kind: 'diagonal', centre: [1, -1.8], width: 1.2, length: 1.8, rotation: 0 },
      3
    )
  ],
  circuits: [
    seriesOf('C1', t('named.traffic'), ['L1'], 15, channelOf('U1', 1, 2, 0.0015), ['car', 'van']),
    seriesOf('C2', t('named.bicycles'), ['L2'], 15, channelOf('U1', 2, 3, 0.0003), ['bicycle'])
  ],
  units: [unitOf('U1', t('named.cabinetUnit'), 2)],
  probes: [{ vehicle: 'bicycle', at: [1.3, -1.8], heading: 90 }]
}));

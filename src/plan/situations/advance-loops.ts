import { t } from '#i18n/message';
import { emptySite } from '../empty';
import { channelOf, laneAlong, loopOf, markOf, rectangleAt, seriesOf, unitOf } from './parts';
import { situation } from './situation';

/** Where drivers at about 90 km/h decide between stopping and going on: 5.5 s to 2.5 s before the line (NCHRP 812, exhibit 4-7). */
const FAR = -135;
const NEAR = -61;

export const advanceLoops = situation('advance-loops', () => ({
  ...emptySite(t('situation.advance-loops')),
  lanes: [laneAlong('lane1', t('named.approach'), 0, -160, 5, 3.6)],
  marks: [
    markOf('m1', 'stop-line', [
      [-1.8, 0],
      [1.8, 0]
    ]),
    markOf('m2', 'pull-box', [[3, FAR]]),
    markOf('m3', 'pull-box', [[3, NEAR]]),
    markOf('m4', 'cabinet', [[5, 3]]),
    markOf('m5', 'conduit', [
      [3, FAR],
      [3, NEAR],
      [3, 3],
      [5, 3]
    ])
  ],
  loops: [
    loopOf('L1', t('named.far'), rectangleAt(0, FAR, 1.8, 1.8), 3, 4),
    loopOf('L2', t('named.near'), rectangleAt(0, NEAR, 1.8, 1.8), 3)
  ],
  circuits: [
    seriesOf('C1', t('named.far'), ['L1'], 142, channelOf('U1', 1, 2, 0.0016, { extension_s: 1.5 }), [
      'car',
      'lorry'
    ]),
    seriesOf('C2', t('named.near'), ['L2'], 68, channelOf('U1', 2, 4, 0.0016, { extension_s: 1 }), [
      'car',
      'lorry'
    ])
  ],
  units: [unitOf('U1', t('named.cabinetUnit'), 2)],
  probes: [{ vehicle: 'car', at: [0, NEAR], heading: 90 }]
}));

import { t } from '#i18n/message';
import { emptySite } from '../empty';
import { channelOf, laneAlong, ledIn, ledOut, loopOf, markOf, rectangleAt, seriesOf, unitOf } from './parts';
import { followRoutes } from '../lead-out';
import type { Point } from '../schema';
import { situation } from './situation';

const SIDE = 1.8;
/** The first loop begins 0.6 m behind the line, the next after a gap of 2.6 m: usual stop-line arrays. */
const FIRST = -(0.6 + SIDE / 2);
const SECOND = FIRST - SIDE - 2.6;
/** The lead-ins' corner behind the kerb. */
const AROUND: readonly Point[] = [[12, -3.5]];

export const stopLine = situation('stop-line', () =>
  followRoutes({
    ...emptySite(t('situation.stop-line')),
    lanes: [
      laneAlong('lane1', t('named.left'), -1.75, -25, 3),
      laneAlong('lane2', t('named.right'), 1.75, -25, 3)
    ],
    marks: [
      markOf('m1', 'stop-line', [
        [-3.5, 0],
        [3.5, 0]
      ]),
      markOf('m2', 'pull-box', [[4.4, -3.5]]),
      markOf('m3', 'cabinet', [[12, 4]]),
      markOf('m4', 'conduit', [[4.4, -3.5], ...AROUND, [12, 4]])
    ],
    loops: [
      ledOut(loopOf('L1', t('named.leftFront'), rectangleAt(-1.75, FIRST, SIDE, SIDE), 7), 'm2', [
        [-0.45, -3.4]
      ]),
      ledOut(loopOf('L2', t('named.leftRear'), rectangleAt(-1.75, SECOND, SIDE, SIDE), 7), 'm2', [
        [-0.45, -3.7]
      ]),
      ledOut(loopOf('L3', t('named.rightFront'), rectangleAt(1.75, FIRST, SIDE, SIDE), 3), 'm2'),
      ledOut(loopOf('L4', t('named.rightRear'), rectangleAt(1.75, SECOND, SIDE, SIDE), 3), 'm2')
    ],
    circuits: [
      seriesOf('C1', t('named.leftLane'), ['L1', 'L2'], 20, channelOf('U1', 1, 2, 0.0016), [
        'car',
        'van',
        'lorry'
      ]),
      seriesOf('C2', t('named.rightLane'), ['L3', 'L4'], 20, channelOf('U1', 2, 4, 0.0016), [
        'car',
        'van',
        'lorry'
      ])
    ].map((circuit) => ledIn(circuit, 'm2', 'm3', AROUND)),
    units: [unitOf('U1', t('named.cabinetUnit'), 2)],
    probes: [{ vehicle: 'car', at: [1.75, -2.6], heading: 90 }]
  })
);

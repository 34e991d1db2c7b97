import { t } from '#i18n/message';
import { emptySite } from './empty';
import { followRoutes } from './lead-out';
import type { Point, Site } from './schema';
import {
  channelOf,
  laneAlong,
  ledIn,
  ledOut,
  loopOf,
  markOf,
  rectangleAt,
  seriesOf,
  unitOf
} from './situations/parts';

const SIDE = 1.8;
/** Middles of the lanes. */
const LEFT = -1.75;
const RIGHT = 1.75;
/** Middles of the loops: 0.6 m behind the line, and again after a gap of 2.6 m. */
const FRONT = -1.5;
const REAR = -5.9;
const BOX = 'm4';
const CABINET = 'm5';
/** The lead-ins' corner behind the kerb. */
const AROUND: readonly Point[] = [[12, -3.5]];
/** Replaced by the drawn length. */
const LEAD_IN = 20;
const TRIP = 0.0016;
const ASKED_FOR = ['car', 'van', 'lorry'];

const drawing = (): Site => ({
  ...emptySite(t('demo.name')),
  lanes: [
    laneAlong('lane1', t('demo.aheadLeft'), LEFT, -30, 6),
    laneAlong('lane2', t('demo.aheadRight'), RIGHT, -30, 6)
  ],
  marks: [
    markOf('m1', 'stop-line', [
      [-3.4, 0],
      [3.4, 0]
    ]),
    markOf('m2', 'kerb', [
      [-3.5, -30],
      [-3.5, 6]
    ]),
    markOf('m3', 'kerb', [
      [3.5, -30],
      [3.5, 6]
    ]),
    markOf('m4', 'pull-box', [[4.4, -3.5]]),
    markOf('m5', 'cabinet', [[12, 6]]),
    markOf('m6', 'conduit', [[4.4, -3.5], ...AROUND, [12, 6]]),
    markOf('m7', 'cover', [[0, -10.5]]),
    markOf('m8', 'note', [[5.2, -8]], t('demo.cover')),
    markOf('m9', 'note', [[5.2, -14]], t('demo.dryDay'))
  ],
  loops: [
    ledOut(loopOf('L1', t('named.leftFront'), rectangleAt(LEFT, FRONT, SIDE, SIDE), 7), BOX, [[-0.45, -3.4]]),
    ledOut(loopOf('L2', t('named.rightFront'), rectangleAt(RIGHT, FRONT, SIDE, SIDE), 3), BOX),
    ledOut(loopOf('L3', t('named.leftRear'), rectangleAt(LEFT, REAR, SIDE, SIDE), 7), BOX, [[-0.45, -3.7]]),
    ledOut(loopOf('L4', t('named.rightRear'), rectangleAt(RIGHT, REAR, SIDE, SIDE), 3), BOX)
  ],
  circuits: [
    seriesOf('C1', t('named.leftFront'), ['L1'], LEAD_IN, channelOf('U1', 1, 2, TRIP), ASKED_FOR),
    seriesOf('C2', t('named.rightFront'), ['L2'], LEAD_IN, channelOf('U2', 1, 4, TRIP), ASKED_FOR),
    seriesOf(
      'C3',
      t('named.leftRear'),
      ['L3'],
      LEAD_IN,
      channelOf('U1', 2, 1, TRIP, { extension_s: 1 }),
      ASKED_FOR
    ),
    seriesOf(
      'C4',
      t('named.rightRear'),
      ['L4'],
      LEAD_IN,
      channelOf('U2', 2, 3, TRIP, { extension_s: 1 }),
      ASKED_FOR
    )
  ].map((circuit) => ledIn(circuit, BOX, CABINET, AROUND)),
  units: [unitOf('U1', t('demo.leftUnit'), 2), unitOf('U2', t('demo.rightUnit'), 2)],
  probes: [{ vehicle: 'car', at: [RIGHT, -3.2], heading: 90 }],
  notes: t('demo.notes')
});

/** The finished site on which the page opens the first time; `samples/stop-line-two-lanes.kerfline.json` is the same as a file. */
export const demoSite = (): Site => followRoutes(drawing());

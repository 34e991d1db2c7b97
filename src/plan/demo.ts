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
  ...emptySite('Ostervale Road at Pennick Street, stop line'),
  lanes: [
    laneAlong('lane1', 'Ahead and left', LEFT, -30, 6),
    laneAlong('lane2', 'Ahead and right', RIGHT, -30, 6)
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
    markOf('m8', 'note', [[5.2, -8]], 'Loops keep 0.6 m and more from the cover.'),
    markOf(
      'm9',
      'note',
      [[5.2, -14]],
      'Cut and seal on a dry day above 5 °C; test every loop before the slot is filled.'
    )
  ],
  loops: [
    ledOut(loopOf('L1', 'Left, front', rectangleAt(LEFT, FRONT, SIDE, SIDE), 7), BOX, [[-0.45, -3.4]]),
    ledOut(loopOf('L2', 'Right, front', rectangleAt(RIGHT, FRONT, SIDE, SIDE), 3), BOX),
    ledOut(loopOf('L3', 'Left, rear', rectangleAt(LEFT, REAR, SIDE, SIDE), 7), BOX, [[-0.45, -3.7]]),
    ledOut(loopOf('L4', 'Right, rear', rectangleAt(RIGHT, REAR, SIDE, SIDE), 3), BOX)
  ],
  circuits: [
    seriesOf('C1', 'Left, front', ['L1'], LEAD_IN, channelOf('U1', 1, 2, TRIP), ASKED_FOR),
    seriesOf('C2', 'Right, front', ['L2'], LEAD_IN, channelOf('U2', 1, 4, TRIP), ASKED_FOR),
    seriesOf('C3', 'Left, rear', ['L3'], LEAD_IN, channelOf('U1', 2, 1, TRIP, { extension_s: 1 }), ASKED_FOR),
    seriesOf('C4', 'Right, rear', ['L4'], LEAD_IN, channelOf('U2', 2, 3, TRIP, { extension_s: 1 }), ASKED_FOR)
  ].map((circuit) => ledIn(circuit, BOX, CABINET, AROUND)),
  units: [unitOf('U1', 'Left lane unit', 2), unitOf('U2', 'Right lane unit', 2)],
  probes: [{ vehicle: 'car', at: [RIGHT, -3.2], heading: 90 }],
  notes:
    'Presence at the line and a queue loop behind it, lane by lane. Work on a road follows the local rules for ' +
    'closing the lane; saw cutting, splices and the cabinet are for people licensed to do them.'
});

/** The finished site on which the page opens the first time; `samples/stop-line-two-lanes.kerfline.json` is the same as a file. */
export const demoSite = (): Site => followRoutes(drawing());

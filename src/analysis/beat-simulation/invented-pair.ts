/**
 * Two equal loops side by side, for a drawing with no two channels that can run at the same time: squares of 1.8 m, a
 * metre between them, 1.1 kHz apart, each on a unit of its own.
 */
import { emptySite } from '#plan/empty';
import type { Circuit, Site } from '#plan/schema';
import { channelOf, loopOf, rectangleAt, seriesOf, unitOf } from '#plan/situations/parts';

const SIDE = 1.8;
const GAP = 1;
const LEAD_IN = 30;
const TAIL = 4;
const THRESHOLD = 0.0016;
const FREQUENCIES = [50_000, 51_100] as const;

const circuitOf = (n: 1 | 2): Circuit => {
  const channel = { ...channelOf(`U${n}`, 1, 1, THRESHOLD), frequency_Hz: FREQUENCIES[n - 1]! };
  return seriesOf(`C${n}`, '', [`L${n}`], LEAD_IN, channel, []);
};

export const inventedPair = (): { readonly site: Site; readonly circuits: readonly [string, string] } => ({
  site: {
    ...emptySite(''),
    loops: [
      loopOf('L1', '', rectangleAt(0, 0, SIDE, SIDE), TAIL),
      loopOf('L2', '', rectangleAt(SIDE + GAP, 0, SIDE, SIDE), TAIL)
    ],
    circuits: [circuitOf(1), circuitOf(2)],
    units: [unitOf('U1', '', 1), unitOf('U2', '', 1)]
  },
  circuits: ['C1', 'C2']
});

/** One channel's row of the timeline: where its parts lie, and what it draws. Pixels from the row's top. */
import type { CallsPicture, ChannelCalls, MistakeKind } from '#analysis/calls/results';
import type { Channel, Site } from '#plan/schema';
import { detectionsOf, type Stretch } from './stretches';

export const TRACE = 40;
const GAP = 3;
export const BAR = { there: 7, detected: 6, call: 8 } as const;
export const MARK = 13;

export interface ChannelRow {
  readonly circuit: string;
  readonly channel: Channel;
  readonly calls: ChannelCalls;
  readonly detections: readonly Stretch[];
  /** When vehicles were over the loops, lane by lane. */
  readonly lanes: readonly { readonly lane: string; readonly stays: readonly Stretch[] }[];
}

/** Upper edges of the parts, and the whole height. */
export interface RowLayout {
  readonly lanes: readonly number[];
  readonly trace: number;
  readonly detected: number;
  readonly call: number;
  readonly marks: number;
  readonly height: number;
}

/** In the order of the drawing's circuits; those that have no channel are left out. */
export function rowsOf(site: Site, picture: CallsPicture): readonly ChannelRow[] {
  return site.circuits.flatMap(({ id, channel }): ChannelRow[] => {
    const calls = picture.channels.find(({ summary }) => summary.circuit === id);
    if (!calls || !channel) return [];
    const laneOf = (vehicle: number) => picture.vehicles[vehicle]?.lane;
    const lanes = site.lanes.flatMap(({ id: lane }) => {
      const stays = calls.stays.filter(({ vehicle }) => laneOf(vehicle) === lane);
      return stays.length > 0 ? [{ lane, stays }] : [];
    });
    const detections = detectionsOf(calls, picture.duration_s);
    return [{ circuit: id, channel, calls, detections, lanes }];
  });
}

export function layoutOf({ lanes }: Pick<ChannelRow, 'lanes'>): RowLayout {
  const each = BAR.there + GAP;
  const there = Math.max(1, lanes.length);
  const trace = GAP + there * each;
  const detected = trace + TRACE + GAP;
  const call = detected + BAR.detected + GAP;
  const marks = call + BAR.call + 1;
  return {
    lanes: lanes.map((_, index) => GAP + index * each),
    trace,
    detected,
    call,
    marks,
    height: marks + MARK + GAP
  };
}

/** A sign of its own for each kind, since colour alone says nothing to many people. */
export const MISTAKE_SIGNS: Readonly<Record<MistakeKind, string>> = {
  missed: '✕',
  merged: '∪',
  split: '÷',
  false: '?'
};

/** The mistake whose mark is nearest to a place in the row, within a finger's width. */
export function mistakeAt(
  { calls }: Pick<ChannelRow, 'calls'>,
  at: number,
  x: (time: number) => number,
  reach = 10
): ChannelCalls['mistakes'][number] | null {
  let best: ChannelCalls['mistakes'][number] | null = null;
  let least = reach;
  for (const mistake of calls.mistakes) {
    const apart = Math.abs(x(mistake.time_s) - at);
    if (apart <= least) {
      least = apart;
      best = mistake;
    }
  }
  return best;
}

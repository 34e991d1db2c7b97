/** Where stepping stops: every time at which something begins or ends. */
import type { CallsPicture, ChannelEvent, Mistake } from '#analysis/calls/results';

export const stopsOf = ({ channels }: Pick<CallsPicture, 'channels'>): readonly number[] => {
  const times = channels.flatMap(({ events, mistakes }) => [
    ...events.map(({ time_s }) => time_s),
    ...mistakes.map(({ time_s }) => time_s)
  ]);
  return [...new Set(times)].sort((a, b) => a - b);
};

/** An event of a channel, as it stands in a list of all. */
export interface ListedEvent extends ChannelEvent {
  readonly circuit: string;
}

/** All events from one time to the other, in order. */
export const eventsWithin = (
  { channels }: Pick<CallsPicture, 'channels'>,
  from_s: number,
  to_s: number
): readonly ListedEvent[] =>
  channels
    .flatMap(({ summary: { circuit }, events }) =>
      events
        .filter(({ time_s }) => time_s >= from_s && time_s <= to_s)
        .map((event) => ({ ...event, circuit }))
    )
    .sort((a, b) => a.time_s - b.time_s);

/** A mistake with the circuit that made it. */
export interface ListedMistake {
  readonly circuit: string;
  readonly mistake: Mistake;
}

export const mistakesOf = ({ channels }: Pick<CallsPicture, 'channels'>): readonly ListedMistake[] =>
  channels
    .flatMap(({ summary: { circuit }, mistakes }) => mistakes.map((mistake) => ({ circuit, mistake })))
    .sort((a, b) => a.mistake.time_s - b.mistake.time_s);

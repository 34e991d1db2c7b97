/** The channels of a site in the order of their units, as the chart's rows and the table's lines. */
import type { ChannelReadout } from '#analysis/results';
import type { Channel, Circuit, Site, Unit } from '#plan/schema';

export interface ChannelRow {
  readonly readout: ChannelReadout;
  readonly circuit: Circuit;
  readonly channel: Channel;
  readonly unit: Unit;
}

/** Rows of one unit, which lie together. */
export interface UnitGroup {
  readonly unit: Unit;
  /** Of its first row. */
  readonly at: number;
  readonly count: number;
}

/** Without those that are no longer in the site: the figures may be a moment older than the drawing. */
export function rowsOf(site: Site, channels: readonly ChannelReadout[]): readonly ChannelRow[] {
  const readouts = new Map(channels.map((readout) => [readout.circuit, readout]));
  return site.units.flatMap((unit) =>
    site.circuits
      .flatMap((circuit): ChannelRow[] => {
        const readout = readouts.get(circuit.id);
        const { channel } = circuit;
        return readout && channel?.unit === unit.id ? [{ readout, circuit, channel, unit }] : [];
      })
      .sort((a, b) => a.channel.number - b.channel.number)
  );
}

export const groupsOf = (rows: readonly ChannelRow[]): readonly UnitGroup[] =>
  rows.flatMap(({ unit }, at) => {
    if (rows[at - 1]?.unit === unit) return [];
    return [{ unit, at, count: rows.filter((row) => row.unit === unit).length }];
  });

/** Hz: from the lowest to the highest frequency of any row, with a vehicle, and on any setting unless `isNear`. */
export function spanOf(rows: readonly ChannelRow[], isNear = false): readonly [low: number, high: number] {
  const frequencies = rows.flatMap(({ readout: { sweep, settings } }) => [
    sweep.low_Hz,
    sweep.high_Hz,
    ...(isNear ? [] : settings.flatMap(({ frequency_Hz }) => frequency_Hz ?? []))
  ]);
  return [Math.min(...frequencies), Math.max(...frequencies)];
}

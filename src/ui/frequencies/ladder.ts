/** The frequencies that a channel's settings offer, lowest first. */
import type { ChannelReadout } from '#analysis/results';

export interface Rung {
  readonly setting: number;
  readonly frequency_Hz: number;
}

/** Settings on which the channel would not oscillate are left out. */
export const ladderOf = ({ settings }: Pick<ChannelReadout, 'settings'>): readonly Rung[] =>
  settings
    .flatMap(({ setting, frequency_Hz }) => (frequency_Hz === null ? [] : [{ setting, frequency_Hz }]))
    .sort((a, b) => a.frequency_Hz - b.frequency_Hz || a.setting - b.setting);

/** The one whose frequency is nearest, Hz; null without any. */
export const nearestRung = (ladder: readonly Rung[], frequency_Hz: number): Rung | null =>
  ladder.reduce<Rung | null>(
    (nearest, rung) =>
      nearest === null ||
      Math.abs(rung.frequency_Hz - frequency_Hz) < Math.abs(nearest.frequency_Hz - frequency_Hz)
        ? rung
        : nearest,
    null
  );

/** Where a key leads from a setting: so many rungs up or down, and never beyond the ends. */
export const stepped = (ladder: readonly Rung[], setting: number, by: number): Rung | null => {
  const at = ladder.findIndex((rung) => rung.setting === setting);
  if (at < 0) return ladder[by < 0 ? 0 : ladder.length - 1] ?? null;
  return ladder[Math.min(ladder.length - 1, Math.max(0, at + by))] ?? null;
};

const WAYS: Readonly<Record<string, number>> = {
  ArrowUp: 1,
  ArrowRight: 1,
  ArrowDown: -1,
  ArrowLeft: -1,
  PageUp: Infinity,
  PageDown: -Infinity,
  End: Infinity,
  Home: -Infinity
};

/** Rungs that a key of a slider goes, or undefined for any other key. */
export const wayOf = (key: string): number | undefined => WAYS[key];

/** Channels, where they run, and which two disturb each other, for people. */
import { typed } from '#units/digits';
import type { Beat, ChannelReadout } from '#analysis/results';
import type { Say } from './report-text-model';
import { block } from './text-table';

export const channelBlock = (channels: readonly ChannelReadout[], say: Say): string[] =>
  block(
    'Channels and the frequencies that they sweep',
    [
      ['circuit', 'channel', 'setting', 'at rest', 'cold … hot', 'lowest … highest', 'moved most by'],
      ...channels.map(({ circuit, unit, number, setting, sweep }) => [
        circuit,
        `${unit} ${number}`,
        setting === null ? 'given' : String(setting),
        say(sweep.rest_Hz, 'frequency'),
        `${say(sweep.cold_Hz, 'frequency')} … ${say(sweep.hot_Hz, 'frequency')}`,
        `${say(sweep.low_Hz, 'frequency')} … ${say(sweep.high_Hz, 'frequency')}`,
        sweep.vehicle === null ? '–' : `${sweep.vehicle} (${say(sweep.deepest, 'ratio')})`
      ])
    ],
    'none'
  );

/** The worst first: what is wrong must not be looked for among what is not. */
export const beatBlock = (beats: readonly Beat[], say: Say): string[] =>
  block(
    'Channels that can run at the same time',
    [
      ['pair', 'k', 'of loops', 'of steel', 'of conduits', 'apart', 'ripple', 'over threshold', 'verdict'],
      ...[...beats]
        .sort((one, other) => other.ratio - one.ratio)
        .map(({ a, b, k, coupling, separation_Hz, ripple, ratio, verdict }) => [
          `${a} + ${b}`,
          typed(k.toExponential(2)),
          say(coupling.loops_H, 'inductance'),
          say(coupling.steel_H, 'inductance'),
          say(coupling.conduits_H, 'inductance'),
          say(separation_Hz, 'frequency'),
          say(ripple, 'ratio'),
          typed(ratio.toPrecision(2)),
          verdict
        ])
    ],
    'none'
  );

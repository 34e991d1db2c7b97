/** Channels without physics: what a worker's answer holds about them, made up. */
import type { Beat, ChannelReadout, Remedy, Sweep } from '#analysis/results';
import type { Site } from '#plan/schema';
import { readSite } from '#plan/read';

interface Wanted {
  readonly circuit: string;
  readonly unit: string;
  readonly number?: number;
  readonly setting?: number;
  readonly frequency_Hz?: number;
}

/** Units U1 (in turn) and U2 (all at once), each with four channels and three settings; a square loop a circuit. */
export function siteOf(wanted: readonly Wanted[]): Site {
  const unit = (id: string, name: string, scansInTurn: boolean) => ({
    id,
    name,
    channels: 4,
    scansInTurn,
    measuringTime_s: 0.005,
    settings_F: [2.2e-7, 1.5e-7, 1e-7],
    inductanceRange_H: [2e-5, 2e-3]
  });
  const reading = readSite(
    JSON.stringify({
      format: 'kerfline-site',
      version: 1,
      units: [unit('U1', 'Kerb unit', true), unit('U2', 'Gate unit', false)],
      loops: wanted.map((_, at) => ({
        id: `L${at + 1}`,
        name: `Loop ${at + 1}`,
        turns: 3,
        wire: 'awg14',
        slot: { depth: 0.05, width: 0.008 },
        shape: { kind: 'rectangle', centre: [4 * at, 0], width: 1.8, length: 1.8 }
      })),
      circuits: wanted.map(({ circuit, unit: id, number, setting = 1, frequency_Hz = null }, at) => ({
        id: circuit,
        name: `Lane ${circuit}`,
        strings: [[{ loop: `L${at + 1}` }]],
        leadIn: { cable: 'pair-14', length: 20 },
        channel: {
          unit: id,
          number: number ?? at + 1,
          frequencySetting: setting,
          frequency_Hz,
          tripThreshold: 0.001
        }
      }))
    })
  );
  if (!reading.ok) throw new Error(reading.problems.map(({ message }) => message).join('\n'));
  return reading.site;
}

export const sweepOf = (rest_Hz: number, more: Partial<Sweep> = {}): Sweep => ({
  rest_Hz,
  cold_Hz: rest_Hz + 10,
  hot_Hz: rest_Hz - 10,
  deepest: -0.04,
  vehicle: 'car',
  low_Hz: rest_Hz - 10,
  high_Hz: (rest_Hz + 10) * 1.02,
  ...more
});

export const channelOf = (
  circuit: string,
  rest_Hz: number,
  more: Partial<ChannelReadout> = {}
): ChannelReadout => ({
  circuit,
  unit: 'U1',
  number: 1,
  setting: 1,
  sweep: sweepOf(rest_Hz),
  settings: [
    { setting: 1, frequency_Hz: 40_000 },
    { setting: 2, frequency_Hz: 50_000 },
    { setting: 3, frequency_Hz: 60_000 }
  ],
  ...more
});

export const beatOf = (a: string, b: string, ratio: number, remedies: Beat['remedies'] = null): Beat => ({
  a,
  b,
  k: -0.004,
  coupling: { loops_H: -4e-7, steel_H: 0, conduits_H: 0 },
  separation_Hz: 250,
  lockingRange_Hz: 200,
  ripple: ratio * 0.001,
  ratio,
  verdict: ratio > 1 ? 'false calls likely' : ratio >= 0.25 ? 'watch' : 'clear',
  sides: [
    { circuit: a, ripple: ratio * 0.001, tripThreshold: 0.001, ratio, measuringTime_s: 0.005 },
    { circuit: b, ripple: ratio * 0.001, tripThreshold: 0.001, ratio, measuringTime_s: 0.005 }
  ],
  remedies
});

export const leaving = (
  ratio: number,
  spoils: readonly string[] = []
): Pick<Remedy, 'ratio' | 'verdict' | 'worstRatio' | 'spoils'> => ({
  ratio,
  verdict: ratio < 0.25 ? 'clear' : 'watch',
  worstRatio: ratio,
  spoils
});

/** Two channels that run at the same time and disturb each other. */
import { loopsIn } from '#plan/wiring';
import type { Beat, Remedy } from '../results';
import { USUAL_BAND } from '../band';
import { WATCH_FROM } from '../beating/rate';
import { called, type FindingContext, type FindingRule } from './finding';

/** So many ways out are enough for one sentence. */
const MOST_REMEDIES = 2;

export const beating: FindingRule = (context) =>
  context.result.beats
    .filter(({ verdict }) => verdict !== 'clear')
    .map((beat) => {
      const { site, say } = context;
      const [a, b] = [beat.a, beat.b].map((id) => site.circuits.find((circuit) => circuit.id === id)!);
      return {
        severity: beat.verdict === 'watch' ? ('caution' as const) : ('problem' as const),
        code: 'beating',
        subject: `${beat.a} + ${beat.b}`,
        selects: [...loopsIn(a!), ...loopsIn(b!)],
        message:
          `${called(a!)} and ${called(b!)} run at the same time, ${distanceOf(beat, say)}, ` +
          `coupled by k = ${say(beat.k, 'ratio', { digits: 2 })}: a ripple of ${say(beat.ripple, 'ratio')}, ` +
          `${times(beat.ratio)} the trip threshold (${beat.verdict}).`,
        advice: adviceOn(beat, context)
      };
    });

const distanceOf = ({ separation_Hz, lockingRange_Hz }: Beat, say: FindingContext['say']): string =>
  separation_Hz > 0
    ? `at least ${hertz(separation_Hz, say)} apart` +
      (separation_Hz < lockingRange_Hz ? ` (they may lock nearer than ${hertz(lockingRange_Hz, say)})` : '')
    : 'on frequencies that overlap when vehicles pass or the temperature changes';

/** Separations are told in hertz as long as they are small. */
const hertz = (separation: number, say: FindingContext['say']): string =>
  say(separation, 'frequency', separation < 1_000 ? { unit: 'Hz', digits: 3 } : { digits: 3 });

/** Two figures, and never a power of ten: that is for machines. */
const times = (ratio: number): string => {
  const text = ratio.toPrecision(2);
  return `${text.includes('e+') ? Number(text) : text} times`;
};

/**
 * How far apart the two would be clear, Hz: out of reach of locking, and of each side that is not clear so far that
 * averaging leaves a quarter of its threshold.
 */
const apartAtLeast = ({ separation_Hz, lockingRange_Hz, sides }: Beat): number =>
  Math.max(
    lockingRange_Hz,
    ...sides
      .filter(({ ratio }) => ratio >= WATCH_FROM)
      .map(({ ratio, measuringTime_s }) => {
        const start = 1 / (Math.PI * measuringTime_s);
        // what is not averaged yet, or not at all, has the whole way before it
        const from = separation_Hz < lockingRange_Hz ? start : Math.max(separation_Hz, start);
        return (from * ratio) / WATCH_FROM;
      })
  );

/** Further than the usual band is wide no two can be. */
const keepApart = (beat: Beat, { say }: FindingContext): string | null => {
  const apart = apartAtLeast(beat);
  const [lowest, highest] = USUAL_BAND;
  return apart < highest - lowest ? `Keep their frequencies at least ${hertz(apart, say)} apart` : null;
};

const adviceOn = (beat: Beat, context: FindingContext): string => {
  const apart = keepApart(beat, context);
  const before = apart ?? 'No separation within the usual band is enough';
  if (beat.remedies === null)
    return apart === null
      ? `${before}. Move the loops apart, or connect both to one unit that scans its channels in turn.`
      : `${before} by other frequency settings, move the loops apart, or connect both to one unit that scans its channels in turn.`;
  const clearing = beat.remedies.filter(({ verdict }) => verdict === 'clear');
  const ways = (list: readonly Remedy[]): string =>
    list
      .slice(0, MOST_REMEDIES)
      .map((remedy) => wayOf(remedy, context))
      .join('; ');
  if (clearing.length > 0) return `Any of these clears it: ${ways(clearing)}.`;
  if (beat.remedies.length === 0) return `${before}. No other single change helps.`;
  return `${before}. None of these clears it by itself, but they help: ${ways(beat.remedies)}.`;
};

/** In words, with the ratio that it leaves. */
const wayOf = (remedy: Remedy, { site, say }: FindingContext): string => {
  const nameOf = (id: string): string => called(site.circuits.find((circuit) => circuit.id === id)!);
  const unitOf = (id: string): string => called(site.units.find((unit) => unit.id === id)!);
  const but =
    remedy.spoils.length > 0 ? `, but ${remedy.spoils.map(nameOf).join(' and ')} would beat more` : '';
  const ratio = `${times(remedy.ratio)} the threshold${but}`;
  switch (remedy.kind) {
    case 'setting': {
      const frequency = say(remedy.frequency_Hz, 'frequency');
      return `setting ${remedy.setting} (${frequency}) for ${nameOf(remedy.circuit)}: ${ratio}`;
    }
    case 'distance':
      return `the loops ${say(remedy.by_m, 'length')} further apart: ${ratio}`;
    case 'winding': {
      const loop = called(site.loops.find(({ id }) => id === remedy.loop)!);
      return `${loop} wound the other way: ${ratio}`;
    }
    case 'scanning': {
      const unit = remedy.unit === null ? 'one unit' : unitOf(remedy.unit);
      return `both on ${unit}, scanned in turn: never at the same time${but}`;
    }
    case 'threshold': {
      const raised = remedy.circuits
        .map(({ circuit, tripThreshold }) => `${say(tripThreshold, 'ratio')} for ${nameOf(circuit)}`)
        .join(' and ');
      const isLossy = remedy.circuits.some(({ lost }) => lost.length > 0);
      const cost = isLossy ? ', which loses vehicles that are asked for' : '';
      return `a trip threshold of ${raised}: ${ratio}${cost}`;
    }
    case 'measuring-time': {
      const time = say(remedy.measuringTime_s, 'time');
      return `${remedy.units.map(unitOf).join(' and ')} measuring for ${time}: ${ratio}`;
    }
    case 'conduit':
      return `a conduit of its own for one of the lead-ins: ${ratio}`;
  }
};

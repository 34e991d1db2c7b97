/** Two channels that run at the same time and disturb each other. */
import { t } from '#i18n/message';
import { typeset } from '#units/digits';
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
        message: t('finding.beating', {
          a: called(a!),
          b: called(b!),
          distance: distanceOf(beat, say),
          k: say(beat.k, 'ratio', { digits: 2 }),
          ripple: say(beat.ripple, 'ratio'),
          times: times(beat.ratio),
          verdict: t(beat.verdict === 'watch' ? 'finding.beating.watch' : 'finding.beating.falseCalls')
        }),
        advice: adviceOn(beat, context)
      };
    });

const distanceOf = ({ separation_Hz, lockingRange_Hz }: Beat, say: FindingContext['say']): string => {
  if (separation_Hz <= 0) return t('finding.beating.overlapping');
  const separation = hertz(separation_Hz, say);
  return separation_Hz < lockingRange_Hz
    ? t('finding.beating.apartLocking', { separation, lockingRange: hertz(lockingRange_Hz, say) })
    : t('finding.beating.apart', { separation });
};

/** Separations are told in hertz as long as they are small. */
const hertz = (separation: number, say: FindingContext['say']): string =>
  say(separation, 'frequency', separation < 1_000 ? { unit: 'Hz', digits: 3 } : { digits: 3 });

/** Two figures, and never a power of ten: that is for machines. */
const times = (ratio: number): string => {
  const text = ratio.toPrecision(2);
  return t('finding.beating.times', { ratio: typeset(text.includes('e+') ? String(Number(text)) : text) });
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
  return apart < highest - lowest ? t('finding.beating.keepApart', { separation: hertz(apart, say) }) : null;
};

const adviceOn = (beat: Beat, context: FindingContext): string => {
  const apart = keepApart(beat, context);
  const before = apart ?? t('finding.beating.noSeparation');
  if (beat.remedies === null)
    return t(apart === null ? 'finding.beating.orMove' : 'finding.beating.bySettings', { before });
  const clearing = beat.remedies.filter(({ verdict }) => verdict === 'clear');
  const ways = (list: readonly Remedy[]): string =>
    list
      .slice(0, MOST_REMEDIES)
      .map((remedy) => wayOf(remedy, context))
      .join('; ');
  if (clearing.length > 0) return t('finding.beating.clearing', { ways: ways(clearing) });
  if (beat.remedies.length === 0) return t('finding.beating.nothingElse', { before });
  return t('finding.beating.helping', { before, ways: ways(beat.remedies) });
};

/** In words, with the ratio that it leaves. */
const wayOf = (remedy: Remedy, { site, say }: FindingContext): string => {
  const nameOf = (id: string): string => called(site.circuits.find((circuit) => circuit.id === id)!);
  const unitOf = (id: string): string => called(site.units.find((unit) => unit.id === id)!);
  const and = t('finding.and');
  const but =
    remedy.spoils.length > 0 ? t('finding.beating.but', { names: remedy.spoils.map(nameOf).join(and) }) : '';
  const left = t('finding.beating.left', { times: times(remedy.ratio), but });
  switch (remedy.kind) {
    case 'setting': {
      const frequency = say(remedy.frequency_Hz, 'frequency');
      const circuit = nameOf(remedy.circuit);
      return t('finding.beating.way.setting', { setting: remedy.setting, frequency, circuit, left });
    }
    case 'distance':
      return t('finding.beating.way.distance', { distance: say(remedy.by_m, 'length'), left });
    case 'winding': {
      const loop = called(site.loops.find(({ id }) => id === remedy.loop)!);
      return t('finding.beating.way.winding', { loop, left });
    }
    case 'scanning': {
      const unit = remedy.unit === null ? t('finding.beating.oneUnit') : unitOf(remedy.unit);
      return t('finding.beating.way.scanning', { unit, but });
    }
    case 'threshold': {
      const raised = remedy.circuits
        .map(({ circuit, tripThreshold }) =>
          t('finding.beating.raised', { threshold: say(tripThreshold, 'ratio'), circuit: nameOf(circuit) })
        )
        .join(and);
      const isLossy = remedy.circuits.some(({ lost }) => lost.length > 0);
      const cost = isLossy ? t('finding.beating.loses') : '';
      return t('finding.beating.way.threshold', { raised, left, cost });
    }
    case 'measuring-time': {
      const units = remedy.units.map(unitOf).join(and);
      return t('finding.beating.way.measuringTime', {
        units,
        time: say(remedy.measuringTime_s, 'time'),
        left
      });
    }
    case 'conduit':
      return t('finding.beating.way.conduit', { left });
  }
};

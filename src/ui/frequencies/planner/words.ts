/** What a frequency plan says, in sentences. */
import { listed } from '#i18n/locale';
import type {
  ExcludedSetting,
  FrequencyPlan,
  KeptReason,
  PlannedChannel,
  PlannedPair,
  PlanAim,
  Tuning
} from '#analysis/frequency-plan/plan';
import { BEAT_VERDICTS, type BeatVerdict } from '#analysis/results';
import { t } from '#i18n/message';
import type { Site } from '#plan/schema';
import { format } from '#units/format';
import { frequencyText } from '../channel-words';
import { pairName, VERDICT_WORDS } from '../pairs';
import { times } from '../remedies';

export const isChanged = ({ before, after }: PlannedChannel): boolean => before.setting !== after.setting;

const COUNTED = {
  clear: 'planner.clear',
  watch: 'planner.watch',
  'false calls likely': 'planner.falseCalls'
} as const satisfies Record<BeatVerdict, string>;

/** "False calls likely: 5 → 0", the worst verdict first. */
export const countLines = ({ before, after }: FrequencyPlan): { verdict: BeatVerdict; text: string }[] =>
  [...BEAT_VERDICTS].reverse().map((verdict) => {
    const [from, to] = [before.verdicts[verdict], after.verdicts[verdict]];
    const values = { verdict: t(COUNTED[verdict]), before: from, after: to };
    return { verdict, text: from === to ? t('planner.countStays', values) : t('planner.counts', values) };
  });

const KEPT_COUNTS = {
  pinned: 'planner.kept.pinned',
  given: 'planner.kept.given',
  'one setting': 'planner.kept.one',
  'no oscillation': 'planner.kept.silent'
} as const satisfies Record<KeptReason, string>;

const keptCounts = (channels: readonly PlannedChannel[]): string =>
  listed(
    Object.entries(KEPT_COUNTS).flatMap(([reason, key]) => {
      const count = channels.filter(({ kept }) => kept === reason).length;
      return count > 0 ? [t(key, { count })] : [];
    })
  );

/** Why a plan changes nothing; nothing for one that changes something. */
function nothingLines(plan: FrequencyPlan, aim: PlanAim): string[] {
  const { channels, after, isProven } = plan;
  if (channels.some(isChanged)) return [];
  if (after.worst.length === 0) return [t('planner.nothing.noPairs')];
  const has = (reason: KeptReason): boolean => channels.some(({ kept }) => kept === reason);
  if (channels.every(({ kept }) => kept !== null))
    return [
      t('planner.nothing.kept', { reasons: keptCounts(channels) }),
      ...(has('pinned') ? [t('planner.nothing.unpin')] : []),
      ...(has('one setting') ? [t('planner.nothing.moreSettings')] : [])
    ];
  if (aim === 'fewest changes' && after.changeable !== plan.smallest) return [t('planner.nothing.clear')];
  return [t(isProven ? 'planner.nothing.best' : 'planner.nothing.found')];
}

function proofWords({ after, smallest, lowerBound, isProven }: FrequencyPlan): string[] {
  if (after.changeable === null) return [];
  const share = format(1 - lowerBound / smallest, 'ratio', 'metric', { digits: 2 }).text;
  const values = { smallest: times(smallest), bound: times(lowerBound), share };
  const more = after.changeable > smallest ? [t('planner.couldBe', values)] : [];
  return [...more, t(isProven ? 'planner.proven' : 'planner.notProven', values)];
}

function rippleWords({ before, after }: FrequencyPlan, isUnchanged: boolean): string[] {
  if (after.changeable === null) return [];
  const ratio = times(after.changeable);
  if (isUnchanged || before.changeable === null) return [t('planner.stays', { ratio })];
  return [t('planner.goes', { before: times(before.changeable), after: ratio })];
}

/** What the plan improves, and how sure it is that nothing is better; of the pairs that settings can change. */
export function resultLines(plan: FrequencyPlan, aim: PlanAim): string[] {
  const nothing = nothingLines(plan, aim);
  const { watch, 'false calls likely': falseCalls } = plan.before.verdicts;
  const isNeedless = nothing.length === 0 && watch + falseCalls === 0;
  const needless = isNeedless ? [t('planner.alreadyClear')] : [];
  return [...needless, ...nothing, ...rippleWords(plan, nothing.length > 0), ...proofWords(plan)];
}

/** The worst pairs that are not clear after the plan. */
export const remaining = ({ after }: FrequencyPlan): readonly PlannedPair[] =>
  after.worst.filter(({ verdict }) => verdict !== 'clear');

export const remainsWords = (site: Pick<Site, 'circuits'>, pair: PlannedPair): string =>
  t(pair.isKept ? 'planner.remainsKept' : 'planner.remains', {
    pair: pairName(site, pair),
    ratio: times(pair.ratio),
    verdict: t(VERDICT_WORDS[pair.verdict])
  });

export function tuningWords(site: Pick<Site, 'displayUnits'>, { setting, frequency_Hz }: Tuning): string {
  const frequency = frequency_Hz === null ? '' : frequencyText(site, frequency_Hz);
  if (setting === null) return t('planner.given', { frequency });
  return frequency_Hz === null
    ? t('planner.silent', { setting })
    : t('planner.tuned', { setting, frequency });
}

const KEPT_NOTES = {
  pinned: 'planner.note.pinned',
  given: 'planner.note.given',
  'one setting': 'planner.note.one',
  'no oscillation': 'planner.note.silent'
} as const satisfies Record<KeptReason, string>;

const EXCLUDED_NOTES = {
  'outside the usual band': 'planner.note.outside',
  'no oscillation': 'planner.note.mute'
} as const satisfies Record<ExcludedSetting['why'], string>;

/** Why a channel stays, and which settings were not offered to it. */
export function noteWords({ kept, excluded }: PlannedChannel): string {
  const notes = kept === null ? [] : [t(KEPT_NOTES[kept])];
  // that it oscillates on none says it all
  const left = kept === 'no oscillation' ? [] : Object.entries(EXCLUDED_NOTES);
  for (const [why, key] of left) {
    const settings = excluded.filter((each) => each.why === why).map(({ setting }) => String(setting));
    if (settings.length > 0) notes.push(t(key, { count: settings.length, settings: listed(settings) }));
  }
  return notes.join('; ');
}

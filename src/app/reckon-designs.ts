/**
 * Designs side by side for a file or a sheet, from the worker: what was found of a drawing is known as long as it is shown.
 * Whoever wants what is being reckoned already waits for that; it ends when nobody waits any more.
 */
import type { DesignResults, DesignsWish } from '#analysis/designs/results';
import { Unfit } from '#exchange/files/exported';
import type { Job } from '#exchange/job';
import { spokenLanguage, t } from '#i18n/message';
import type { Site } from '#plan/schema';
import type { Bench } from '#ui/bench';

type Asking = Pick<Bench, 'ask' | 'dropQuestion' | 'shown'>;

interface Running {
  readonly site: Site;
  readonly answer: Promise<readonly DesignResults[]>;
  readonly waiting: Set<Job>;
}

const known = new WeakMap<Site, Map<string, readonly DesignResults[]>>();

/** Findings are in the language that was spoken when they were made. */
const keyOf = (wish: DesignsWish): string => JSON.stringify([spokenLanguage(), wish]);

/** Of each wish the newest. */
const running = new Map<string, Running>();

/** Nobody else asks from here, so that a screen that compares designs too keeps its own question. */
const deskOf = (key: string): string => `files ${key}`;

/** What is known of this very drawing without asking; null for nothing. */
export const knownDesigns = (site: Site, wish: DesignsWish): readonly DesignResults[] | null =>
  known.get(site)?.get(keyOf(wish)) ?? null;

async function asked(
  bench: Asking,
  wish: DesignsWish,
  site: Site,
  waiting: ReadonlySet<Job>
): Promise<readonly DesignResults[]> {
  const key = keyOf(wish);
  const onShare = (share: number) => {
    for (const job of waiting) job.onShare(share);
  };
  const outcome = await bench.ask('compare-designs', wish, onShare, { site, desk: deskOf(key) });
  if (outcome.kind === 'failed') throw new Unfit(t('exports.noFigures'));
  if (outcome.kind === 'superseded') throw new Unfit(t('exports.changedMeanwhile'));
  const answers = known.get(site) ?? new Map<string, readonly DesignResults[]>();
  known.set(site, answers.set(key, outcome.answer));
  return outcome.answer;
}

/** The one that is under way for this drawing, or a new one in the place of an older drawing's. */
function joined(bench: Asking, wish: DesignsWish, site: Site): Running {
  const key = keyOf(wish);
  const open = running.get(key);
  if (open?.site === site) return open;
  const waiting = new Set<Job>();
  const own: Running = { site, waiting, answer: asked(bench, wish, site, waiting) };
  running.set(key, own);
  const over = () => {
    if (running.get(key) === own) running.delete(key);
  };
  own.answer.then(over, over);
  return own;
}

/** Rejects with `Unfit` where they cannot be had, with the signal's reason for a job that was ended. */
export async function reckonDesigns(
  bench: Asking,
  wish: DesignsWish,
  site: Site,
  job: Job
): Promise<readonly DesignResults[]> {
  const found = knownDesigns(site, wish);
  if (found) return found;
  const { signal } = job;
  signal.throwIfAborted();
  if (bench.shown !== site) throw new Unfit(t('exports.changedMeanwhile'));
  const key = keyOf(wish);
  const own = joined(bench, wish, site);
  own.waiting.add(job);
  return new Promise((resolve, reject) => {
    const leave = () => {
      reject(signal.reason as Error);
      own.waiting.delete(job);
      if (own.waiting.size > 0 || running.get(key) !== own) return;
      running.delete(key);
      bench.dropQuestion('compare-designs', deskOf(key));
    };
    signal.addEventListener('abort', leave, { once: true });
    own.answer.then(resolve, reject).finally(() => {
      signal.removeEventListener('abort', leave);
    });
  });
}

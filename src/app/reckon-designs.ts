/** Designs side by side for a file or a sheet, from the worker: what was found of a drawing is known as long as it is shown. */
import type { DesignResults, DesignsWish } from '#analysis/designs/results';
import { Unfit } from '#exchange/files/exported';
import type { Job } from '#exchange/job';
import { t } from '#i18n/message';
import type { Site } from '#plan/schema';
import type { Bench } from '#ui/bench';

type Asking = Pick<Bench, 'ask' | 'dropQuestion' | 'shown'>;

/** Nobody else asks from here, so that a screen that compares designs too keeps its own question. */
const DESK = 'files';

const known = new WeakMap<Site, Map<string, readonly DesignResults[]>>();

/** What is known of this very drawing without asking; null for nothing. */
export const knownDesigns = (site: Site, wish: DesignsWish): readonly DesignResults[] | null =>
  known.get(site)?.get(JSON.stringify(wish)) ?? null;

/** Rejects with `Unfit` where they cannot be had, with the signal's reason for a job that was ended. */
export async function reckonDesigns(
  bench: Asking,
  wish: DesignsWish,
  site: Site,
  { signal, onShare }: Job
): Promise<readonly DesignResults[]> {
  const found = knownDesigns(site, wish);
  if (found) return found;
  const drop = () => {
    bench.dropQuestion('compare-designs', DESK);
  };
  signal.addEventListener('abort', drop, { once: true });
  try {
    signal.throwIfAborted();
    if (bench.shown !== site) throw new Unfit(t('exports.changedMeanwhile'));
    const outcome = await bench.ask('compare-designs', wish, onShare, { site, desk: DESK });
    signal.throwIfAborted();
    if (outcome.kind === 'failed') throw new Unfit(t('exports.noFigures'));
    // somebody made another file meanwhile
    if (outcome.kind === 'superseded') throw new Unfit(t('exports.changedMeanwhile'));
    const answers = known.get(site) ?? new Map<string, readonly DesignResults[]>();
    known.set(site, answers.set(JSON.stringify(wish), outcome.answer));
    return outcome.answer;
  } finally {
    signal.removeEventListener('abort', drop);
  }
}

/** Figures of the drawing as it is now, with nothing that still follows: what goes on paper or into a file. */
import { Unfit, type ExportSource } from '#exchange/files/exported';
import type { Job } from '#exchange/job';
import { t } from '#i18n/message';
import type { Bench } from '#ui/bench';

/** Milliseconds between two looks at whether the figures are there. */
const PATIENCE = 40;

type Watched = Pick<Bench, 'assessment' | 'isStale' | 'shown' | 'fileName' | 'calculation'>;

/**
 * The site shown with figures of this very site. Rejects with `Unfit` where they cannot be had, with the signal's reason for a
 * job that was ended.
 */
export async function settled(bench: Watched, { signal }: Pick<Job, 'signal'>): Promise<ExportSource> {
  for (;;) {
    signal.throwIfAborted();
    const { assessment, isStale, shown, fileName, calculation } = bench;
    if (assessment && !isStale && !assessment.pending && !assessment.isFollowed)
      return { site: shown, assessment, file: fileName ?? shown.name };
    if (calculation.kind === 'failed') throw new Unfit(t('exports.noFigures'));
    await new Promise((resolve) => setTimeout(resolve, PATIENCE));
  }
}

/** What the worker gets of a drawing: a copy at every step, so that it holds only what an answer depends on. */
import type { QuestionKind } from '#analysis/questions';
import type { Site } from '#plan/schema';
import { withoutPictures } from '#plan/underlays';
import { withoutVariants } from '#plan/variants';

/** Questions about other designs than the present one. */
const OF_VARIANTS: ReadonlySet<QuestionKind> = new Set<QuestionKind>(['compare-designs', 'sweep']);

/** Without a kind: to be assessed. */
export const toWorker = (site: Site, kind?: QuestionKind): Site =>
  kind !== undefined && OF_VARIANTS.has(kind)
    ? withoutPictures(site)
    : withoutVariants(withoutPictures(site));

import { t } from '#i18n/message';
import type { Site } from '#plan/schema';
import type { Bench } from '../../bench';
import { commitField } from '../../details/commit';

/** Makes one undo step of a field of the price book; why the value cannot be taken, if so. */
export const changeField = (
  bench: Bench,
  about: { readonly field: string; readonly subject?: string },
  edit: (site: Site) => Site,
  isStep = false
): string | undefined => {
  const { field, subject = t('estimate.subject') } = about;
  return commitField(bench, { field, subject }, edit, isStep) ? undefined : t('field.impossible');
};

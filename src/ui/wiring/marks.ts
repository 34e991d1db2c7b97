import { t } from '#i18n/message';
import type { Mark, MarkKind, Site } from '#plan/schema';

const markName = (mark: Mark): string =>
  mark.text?.trim() || t('way.mark', { kind: t(`mark.${mark.kind}`), id: mark.id });

/** Marks to choose from; one that a file has chosen counts whatever it is. */
export const markOptions = (
  site: Site,
  kind: MarkKind,
  chosen?: string
): readonly { readonly value: string; readonly label: string }[] =>
  site.marks
    .filter((mark) => mark.kind === kind || mark.id === chosen)
    .map((mark) => ({ value: mark.id, label: markName(mark) }));

import { t } from '#i18n/message';
import type { Mark, MarkKind, Site } from '#plan/schema';

const isUnnamed = ({ text }: Mark): boolean => (text ?? '').trim() === '';

/** Without a text of its own it is called by its kind, and counted where there are more such. */
export function markName(mark: Mark, marks: readonly Mark[]): string {
  if (!isUnnamed(mark)) return mark.text!.trim();
  const kind = t(`mark.${mark.kind}`);
  const alike = marks.filter((other) => other.kind === mark.kind && isUnnamed(other));
  return alike.length === 1 ? kind : t('way.mark', { kind, number: alike.indexOf(mark) + 1 });
}

/** Marks to choose from; one that a file has chosen counts whatever it is. */
export const markOptions = (
  site: Site,
  kind: MarkKind,
  chosen?: string
): readonly { readonly value: string; readonly label: string }[] =>
  site.marks
    .filter((mark) => mark.kind === kind || mark.id === chosen)
    .map((mark) => ({ value: mark.id, label: markName(mark, site.marks) }));

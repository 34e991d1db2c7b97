import type { Mark, Site } from '#plan/schema';

/** What the fields of a mark are given: the mark, and how to change it; what comes back is why it cannot be. */
export interface MarkFieldProps {
  readonly mark: Mark;
  readonly change: (field: string, edit: (site: Site) => Site, isStep?: boolean) => string | undefined;
}

/** How one field of a kind of object is compared, and how it is told. */
import { isAlike } from '../alike';
import type { Site } from '../schema';
import type { DifferingField, DifferingKind, DifferingValue, FieldDifference } from './difference';

export interface Rule<T> {
  readonly field: DifferingField;
  readonly is: DifferingKind;
  /** What is compared. */
  readonly of: (thing: T) => unknown;
  /** What is told of it; of a drawn field nothing is. */
  readonly told: (thing: T, site: Site) => DifferingValue;
}

type Plain = number | string | boolean | null | undefined;

/** Told as it is compared. */
export const value = <T>(field: DifferingField, is: DifferingKind, of: (thing: T) => Plain): Rule<T> => ({
  field,
  is,
  of,
  told: (thing) => of(thing) ?? null
});

/** Compared by ids, told by names, which only the design itself knows. */
export const named = <T>(
  field: DifferingField,
  is: 'text' | 'names',
  of: (thing: T) => unknown,
  told: (thing: T, site: Site) => string | readonly string[] | null
): Rule<T> => ({ field, is, of, told });

/** Only a picture tells it. */
export const drawn = <T>(field: DifferingField, of: (thing: T) => unknown): Rule<T> => ({
  field,
  is: 'drawn',
  of,
  told: () => null
});

export function fieldDifferences<T>(
  rules: readonly Rule<T>[],
  [before, after]: readonly [T, T],
  [a, b]: readonly [Site, Site]
): readonly FieldDifference[] {
  return rules.flatMap(({ field, is, of, told }) =>
    isAlike(of(before), of(after)) ? [] : [{ field, is, before: told(before, a), after: told(after, b) }]
  );
}

/** The variants of a file as far as they can be told before the schema has seen them. */
import { idsOf } from './lists';

type Raw = Readonly<Record<string, unknown>>;

const isObject = (value: unknown): value is Raw =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

export interface RawVariant {
  readonly index: number;
  readonly id: string | null;
  /** Null for one that has none to look into. */
  readonly design: object | null;
}

export function rawVariants(document: object): readonly RawVariant[] {
  const { variants } = document as Raw;
  if (!Array.isArray(variants)) return [];
  return variants.map((raw: unknown, index) => {
    const { id, design } = isObject(raw) ? raw : {};
    return { index, id: typeof id === 'string' ? id : null, design: isObject(design) ? design : null };
  });
}

/** Ids of circuits that any of them has. */
export const rawCircuits = (document: object): readonly string[] =>
  rawVariants(document).flatMap(({ design }) => (design ? [...idsOf(design, 'circuits').keys()] : []));

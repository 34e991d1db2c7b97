/**
 * From older documents to today's. The list only ever grows at its end: migration i turns version i + 1 into
 * version i + 2, and the current version follows from its length. A migration gets plain JSON and returns a new
 * object; it must not assume that the document is sound, because the schema looks at it only afterwards. It is applied to the
 * design of every variant as well, which has the drawing's fields and no others.
 */

export type JsonObject = Readonly<Record<string, unknown>>;

export interface Migration {
  /** What changed its meaning, for the reader of this list. */
  readonly what: string;
  readonly apply: (document: JsonObject) => JsonObject;
}

export const migrations: readonly Migration[] = [];

export const newestVersion = (chain: readonly Migration[] = migrations): number => chain.length + 1;

/** The document at the chain's newest version; `version` must lie between 1 and that. */
const isObject = (value: unknown): value is JsonObject =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** A design that is kept is drawn in the same fields as the document, so that whatever moves these moves those as well. */
function applied({ apply }: Migration, older: JsonObject): JsonObject {
  const next = apply(older);
  const { variants } = next;
  if (!Array.isArray(variants)) return next;
  const moved = variants.map((variant: unknown) =>
    isObject(variant) && isObject(variant['design'])
      ? { ...variant, design: apply(variant['design']) }
      : variant
  );
  return { ...next, variants: moved };
}

export const migrate = (
  document: JsonObject,
  version: number,
  chain: readonly Migration[] = migrations
): JsonObject =>
  chain
    .slice(version - 1)
    .reduce<JsonObject>(
      (older, migration, index) => ({ ...applied(migration, older), version: version + index + 1 }),
      document
    );

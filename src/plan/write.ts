/** A site as the text of its file: declared fields in the schema's order, then the ones that it does not know. */
import { type Lines, type Picture, type Site, type Underlay, site } from './schema';

/** Stands for a picture's bytes, or the paths of lines, while the rest is written. */
const BYTES = Symbol('bytes');
/** What is written for it at first: JSON never holds this character as it is. */
const PLACE = '\u0000';

const isPlain = (value: unknown): boolean => typeof value !== 'object' || value === null;

/** JSON with two spaces a level; lists of plain values stay on one line, which keeps a point readable as a point. */
function print(value: unknown, indent: string): string {
  if (value === BYTES) return PLACE;
  if (isPlain(value)) return JSON.stringify(value) ?? 'null';
  const inner = `${indent}  `;
  if (Array.isArray(value)) {
    if (value.length === 0) return '[]';
    const items = value.map((each) => print(each, inner));
    if (value.every(isPlain)) return `[${items.join(', ')}]`;
    return `[\n${items.map((item) => inner + item).join(',\n')}\n${indent}]`;
  }
  const fields = Object.entries(value as object).filter(([, each]) => each !== undefined);
  if (fields.length === 0) return '{}';
  const lines = fields.map(([key, each]) => `${inner}${JSON.stringify(key)}: ${print(each, inner)}`);
  return `{\n${lines.join(',\n')}\n${indent}}`;
}

const WRITTEN = new WeakMap<Picture | Lines, string>();

/** Megabytes of text that never change while the picture is the same: written once, not at every save. */
function written(heavy: Picture | Lines): string {
  const known = WRITTEN.get(heavy) ?? JSON.stringify('data' in heavy ? heavy.data : heavy.paths);
  WRITTEN.set(heavy, known);
  return known;
}

const withBulk = <Data, Paths>(document: Site, data: Data, paths: Paths) => ({
  ...document,
  underlays: document.underlays.map((underlay) => ({
    ...underlay,
    picture: underlay.picture && { ...underlay.picture, data },
    ...(underlay.lines ? { lines: { ...underlay.lines, paths } } : {})
  }))
});

/** What is written last of an underlay, in the order in which its fields stand. */
const bulkOf = (order: object, { picture, lines }: Underlay): (Picture | Lines)[] =>
  Object.keys(order).flatMap((key): (Picture | Lines)[] => {
    if (key === 'picture' && picture) return [picture];
    return key === 'lines' && lines ? [lines] : [];
  });

/**
 * The file's text in pieces: each picture's bytes, and each drawing's paths, are one of them, the same string at every
 * save. They are put in last: every check and every joining of lines would go through megabytes again.
 */
export function writePieces(document: Site): readonly string[] {
  const bare = withBulk(document, '', []);
  const ordered = site.safeParse(bare);
  // A drawing that is impossible at the moment is still the user's work and is written as it stands.
  const whole = withBulk((ordered.success ? ordered.data : bare) as Site, BYTES, BYTES);
  const text = `${print(whole, '')}\n`;
  const heavy = document.underlays.flatMap((underlay, index) => bulkOf(whole.underlays[index]!, underlay));
  return text
    .split(PLACE)
    .flatMap((part, index) => (index === 0 ? [part] : [written(heavy[index - 1]!), part]));
}

/** Added up and not joined: the engine then copies nothing until somebody reads it. */
export const joined = (pieces: readonly string[]): string => pieces.reduce((all, piece) => all + piece, '');

export const writeSite = (document: Site): string => joined(writePieces(document));

/** A site as the text of its file: declared fields in the schema's order, then the ones that it does not know. */
import { type Picture, type Site, site } from './schema';

/** Stands for a picture's bytes while the rest is written. */
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

const WRITTEN = new WeakMap<Picture, string>();

/** Megabytes of text that never change while the picture is the same: written once, not at every save. */
function written(picture: Picture): string {
  const known = WRITTEN.get(picture) ?? JSON.stringify(picture.data);
  WRITTEN.set(picture, known);
  return known;
}

const withPictureData = <Data>(document: Site, data: Data) => ({
  ...document,
  underlays: document.underlays.map((underlay) =>
    underlay.picture ? { ...underlay, picture: { ...underlay.picture, data } } : underlay
  )
});

/**
 * The file's text in pieces: each picture's bytes are one of them, the same string at every save. They are put in last:
 * every check and every joining of lines would go through megabytes again.
 */
export function writePieces(document: Site): readonly string[] {
  const bare = withPictureData(document, '');
  const ordered = site.safeParse(bare);
  // A drawing that is impossible at the moment is still the user's work and is written as it stands.
  const text = `${print(withPictureData(ordered.success ? ordered.data : bare, BYTES), '')}\n`;
  const pictures = document.underlays.flatMap(({ picture }) => (picture ? [picture] : []));
  return text
    .split(PLACE)
    .flatMap((part, index) => (index === 0 ? [part] : [written(pictures[index - 1]!), part]));
}

/** Added up and not joined: the engine then copies nothing until somebody reads it. */
export const joined = (pieces: readonly string[]): string => pieces.reduce((all, piece) => all + piece, '');

export const writeSite = (document: Site): string => joined(writePieces(document));

/** A site as the text of its file: declared fields in the schema's order, then the ones that it does not know. */
import { type Picture, type Site, site } from './schema';

/** Text that is in the file as it stands. */
class Written {
  constructor(readonly json: string) {}
}

const isPlain = (value: unknown): boolean =>
  typeof value !== 'object' || value === null || value instanceof Written;

/** JSON with two spaces a level; lists of plain values stay on one line, which keeps a point readable as a point. */
function print(value: unknown, indent: string): string {
  if (value instanceof Written) return value.json;
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

const WRITTEN = new WeakMap<Picture, Written>();

/** Megabytes of text that never change while the picture is the same: written once, not at every save. */
function written(picture: Picture): Written {
  const known = WRITTEN.get(picture) ?? new Written(JSON.stringify(picture.data));
  WRITTEN.set(picture, known);
  return known;
}

/** The pictures' bytes are left out while fields are put in order: checking megabytes takes as long as all the rest. */
function inOrder(document: Site): unknown {
  const underlays = document.underlays.map(({ picture, ...rest }) => ({
    ...rest,
    picture: picture && { ...picture, data: '' }
  }));
  const ordered = site.safeParse({ ...document, underlays });
  // A drawing that is impossible at the moment is still the user's work and is written as it stands.
  const { underlays: places, ...rest } = ordered.success ? ordered.data : { ...document, underlays };
  const filled = places.map((place, index) => {
    const picture = document.underlays[index]?.picture;
    return picture ? { ...place, picture: { ...place.picture, data: written(picture) } } : place;
  });
  const fields = Object.entries({ ...rest, underlays: filled });
  // In the place that the list has in the schema.
  const names = Object.keys(ordered.success ? ordered.data : document);
  return Object.fromEntries(fields.sort(([a], [b]) => names.indexOf(a) - names.indexOf(b)));
}

export function writeSite(document: Site): string {
  return `${print(inOrder(document), '')}\n`;
}

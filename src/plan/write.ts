/** A site as the text of its file: declared fields in the schema's order, then the ones that it does not know. */
import { type Site, site } from './schema';

const isPlain = (value: unknown): boolean => typeof value !== 'object' || value === null;

/** JSON with two spaces a level; lists of plain values stay on one line, which keeps a point readable as a point. */
function print(value: unknown, indent: string): string {
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

export function writeSite(document: Site): string {
  const ordered = site.safeParse(document);
  // A drawing that is impossible at the moment is still the user's work and is written as it stands.
  return `${print(ordered.success ? ordered.data : document, '')}\n`;
}

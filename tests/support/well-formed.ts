/** Whether a text is well-formed XML of the plain kind that we write: declaration, elements, attributes, texts (XML 1.0, sections 2 and 3). */

const NAME = '[A-Za-z_][\\w.:-]*';
const TEXT =
  '(?:[^<&\\u0000-\\u0008\\u000B\\u000C\\u000E-\\u001F\\uFFFE\\uFFFF]|&(?:amp|lt|gt|quot|apos|#\\d+|#x[\\da-fA-F]+);)';
const ATTRIBUTE = `\\s+(${NAME})="(?:(?!")${TEXT})*"`;
const TOKEN = new RegExp(`<(/?)(${NAME})((?:${ATTRIBUTE})*)\\s*(/?)>|${TEXT}+?(?=<|$)`, 'y');

export function wellFormed(xml: string): boolean {
  const body = xml.replace(/^<\?xml version="1\.0" encoding="UTF-8"\?>\s*/, '').trimEnd();
  if (!xml.isWellFormed()) return false;
  const open: string[] = [];
  let at = 0;
  for (let roots = 0; at < body.length; at = TOKEN.lastIndex) {
    TOKEN.lastIndex = at;
    const found = TOKEN.exec(body);
    if (!found) return false;
    const [, closes, name, attributes = '', , empty] = found;
    if (name === undefined) {
      if (open.length === 0) return false;
      continue;
    }
    if (open.length === 0 && !closes && ++roots > 1) return false;
    const names = [...attributes.matchAll(new RegExp(`(${NAME})="`, 'g'))].map(([, each]) => each);
    if (new Set(names).size < names.length) return false;
    if (closes && open.pop() !== name) return false;
    if (!closes && !empty) open.push(name);
  }
  return open.length === 0;
}

/** Takes the time of making out of a PDF: the same sheet must give the same bytes tomorrow. */

/** The entry is optional. Blanks of the same length keep every offset of the file true. */
const CREATED = /\/CreationDate \(D:[^)]*\)/;

/** From a text with one character a byte. */
export function untimed(file: string): Uint8Array<ArrayBuffer> {
  // the entry stands behind all content
  const from = file.lastIndexOf('/CreationDate (D:');
  const tail = from < 0 ? '' : file.slice(from).replace(CREATED, (entry) => ' '.repeat(entry.length));
  const bytes = new Uint8Array(file.length);
  const end = file.length - tail.length;
  for (let at = 0; at < end; at++) bytes[at] = file.charCodeAt(at);
  for (let at = 0; at < tail.length; at++) bytes[end + at] = tail.charCodeAt(at);
  return bytes;
}

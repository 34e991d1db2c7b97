/**
 * How a text that holds pictures is kept. As one string the browser would pack all of it anew at every save, on the path
 * that a gesture waits for; as a file that is put together from pieces, those that did not change are only pointed at.
 */

/** Characters from which a piece is worth it. */
const LONG = 50_000;

/** Of the long pieces that were stored last. */
let files: ReadonlyMap<string, Blob> = new Map();

/** What goes into the database for a text in pieces. */
export function storedText(pieces: readonly string[]): string | Blob {
  if (!pieces.some(({ length }) => length >= LONG)) return pieces.join('');
  const used = new Map<string, Blob>();
  const parts = pieces.map((piece) => {
    if (piece.length < LONG) return piece;
    const file = files.get(piece) ?? new Blob([piece]);
    used.set(piece, file);
    return file;
  });
  files = used;
  return new Blob(parts);
}

/** The text again; what cannot be read is as if it were not there. */
export async function textFrom(stored: unknown): Promise<unknown> {
  if (!(stored instanceof Blob)) return stored;
  try {
    return await stored.text();
  } catch {
    return undefined;
  }
}

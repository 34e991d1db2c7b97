/** The typeface inside a PDF: the characters that are used, embedded, so that every reader shows and copies the same. */
import type { jsPDF } from 'jspdf';

/** Names of the two faces; each is a family of its own, since readers tell fonts apart by name. */
const FACES = { regular: 'DejaVuSans', bold: 'DejaVuSans-Bold' } as const;
export type FaceName = keyof typeof FACES;

/** In place of a character that the typeface does not have. */
const REPLACEMENT = '\uFFFD';

/** Longer than any line on any paper: what lies beyond could not be read. */
const MOST = 4000;

interface Metrics {
  readonly cmap: { readonly unicode: { readonly codeMap: Readonly<Record<number, number>> } };
}

export interface Face {
  readonly name: string;
  /** The text with nothing in it that the face cannot write. */
  readonly writable: (text: string) => string;
}

/** The library takes a file as a text with one character a byte. */
function binary(bytes: Uint8Array): string {
  const PART = 0x8000;
  const parts: string[] = [];
  for (let at = 0; at < bytes.length; at += PART)
    parts.push(String.fromCharCode(...bytes.subarray(at, at + PART)));
  return parts.join('');
}

function writable(text: string, has: (code: number) => boolean): string {
  let written = '';
  // composed, since accents that stand alone are not put over their letters
  for (const character of text.slice(0, MOST).normalize('NFC')) {
    // what only turns or joins others is not seen when it is there, and must not turn what stands beside it
    if (/\p{Cf}/u.test(character)) continue;
    if (/\p{Cc}/u.test(character)) written += ' ';
    else if (character.length === 1 && has(character.charCodeAt(0))) written += character;
    else written += /\s/u.test(character) ? ' ' : REPLACEMENT;
  }
  return written;
}

/** Throws when the bytes are no typeface. */
export function embedded(file: jsPDF, face: FaceName, bytes: Uint8Array): Face {
  const name = FACES[face];
  file.addFileToVFS(`${name}.ttf`, binary(bytes));
  file.addFont(`${name}.ttf`, name, 'normal', 'normal', 'Identity-H');
  file.setFont(name, 'normal');
  const { codeMap } = (file.getFont().metadata as Metrics).cmap.unicode;
  return { name, writable: (text) => writable(text, (code) => (codeMap[code] ?? 0) > 0) };
}

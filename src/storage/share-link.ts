/**
 * A text as the end of an address: `#site=1.<length>.<checksum>.<payload>`.
 *
 * The payload is the text in UTF-8, compressed (raw deflate) and written in base64url; its length in characters stands
 * first, so that a link that was cut is told from one that was changed. The checksum (CRC-32, which tells every change
 * of up to 32 bits in a row) covers everything else. A `-` before the length: pictures were left out.
 */
import { crc32 } from './crc';
import { LARGEST_FILE } from './files';

/** Characters of the whole address: longer ones are cut by programs that people send them with. */
export const LONGEST_LINK = 8000;

const START = '#site=';
const VERSION = '1';

export type ReadLink =
  | { readonly kind: 'text'; readonly text: string; readonly isWithoutPictures: boolean }
  | { readonly kind: 'none' | 'cut' | 'damaged' | 'newer' };

async function through(
  bytes: Uint8Array,
  stream: CompressionStream | DecompressionStream,
  most: number
): Promise<Uint8Array | null> {
  const source = new Blob([bytes as Uint8Array<ArrayBuffer>]).stream();
  const reader = source.pipeThrough(stream).getReader() as ReadableStreamDefaultReader<Uint8Array>;
  const parts: Uint8Array[] = [];
  let size = 0;
  for (;;) {
    const { done, value } = await reader.read();
    if (done) break;
    size += value.length;
    if (size > most) {
      // A few thousand characters can unfold to gigabytes.
      await reader.cancel();
      return null;
    }
    parts.push(value);
  }
  const whole = new Uint8Array(size);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

function toBase64Url(bytes: Uint8Array): string {
  let binary = '';
  for (const byte of bytes) binary += String.fromCharCode(byte);
  return btoa(binary).replace(/\+/g, '-').replace(/\//g, '_').replace(/=+$/, '');
}

/** Null unless the text is exactly what `toBase64Url` would write. */
function fromBase64Url(text: string): Uint8Array | null {
  try {
    const binary = atob(text.replace(/-/g, '+').replace(/_/g, '/'));
    const bytes = Uint8Array.from(binary, (character) => character.charCodeAt(0));
    return toBase64Url(bytes) === text ? bytes : null;
  } catch {
    return null;
  }
}

const checksum = (length: string, payload: string): string =>
  crc32(new TextEncoder().encode(`${VERSION}.${length}.${payload}`))
    .toString(16)
    .padStart(8, '0');

export async function writeLink(text: string, isWithoutPictures: boolean): Promise<string> {
  const packed = await through(
    new TextEncoder().encode(text),
    new CompressionStream('deflate-raw'),
    Infinity
  );
  const payload = toBase64Url(packed!);
  const length = (isWithoutPictures ? '-' : '') + String(payload.length);
  return `${START}${VERSION}.${length}.${checksum(length, payload)}.${payload}`;
}

/** Anything that begins like a link of ours; the rest of an address's end may be anchors within the page. */
export const looksLikeLink = (hash: string): boolean => /^#site\b/i.test(hash) || hash.length > 60;

/** Never rejects. */
export async function readLink(hash: string): Promise<ReadLink> {
  if (!looksLikeLink(hash)) return { kind: 'none' };
  if (!hash.startsWith(START)) return { kind: START.startsWith(hash) ? 'cut' : 'damaged' };
  const [version = '', length = '', sum = '', payload = '', ...rest] = hash.slice(START.length).split('.');
  if (version !== VERSION && hash.includes('.'))
    return { kind: /^[1-9]\d*$/.test(version) ? 'newer' : 'damaged' };
  const promised = /^-?([1-9]\d{0,8})$/.exec(length)?.[1];
  const isWhole = promised !== undefined && sum.length === 8 && rest.length === 0;
  if (!isWhole) return { kind: payload === '' ? 'cut' : 'damaged' };
  if (payload.length < Number(promised)) return { kind: 'cut' };
  if (payload.length > Number(promised) || sum !== checksum(length, payload)) return { kind: 'damaged' };
  const packed = fromBase64Url(payload);
  if (!packed) return { kind: 'damaged' };
  try {
    const bytes = await through(packed, new DecompressionStream('deflate-raw'), LARGEST_FILE);
    if (!bytes) return { kind: 'damaged' };
    const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    return { kind: 'text', text, isWithoutPictures: length.startsWith('-') };
  } catch {
    return { kind: 'damaged' };
  }
}

/** A ZIP archive by the platform's own compression, off the page's thread: no worker of anybody else's is needed for it. */

interface Entry {
  /** In plain letters. */
  readonly name: string;
  readonly text: string;
}

interface Packed {
  readonly name: Uint8Array<ArrayBuffer>;
  readonly content: Uint8Array<ArrayBuffer>;
  readonly crc: number;
  readonly size: number;
}

const DEFLATED = 8;
const VERSION = 20;
/** The first of January 1980, the oldest date that there is: the same content gives the same archive. */
const DATE = 0x21;
const GZIP = { head: 10, crc: 8, size: 4 } as const;

/** RFC 1952: a head of ten bytes, the deflated content, its CRC-32 and its length. */
async function packed({ name, text }: Entry): Promise<Packed> {
  const stream = new Blob([text]).stream().pipeThrough(new CompressionStream('gzip'));
  const bytes = new Uint8Array(await new Response(stream).arrayBuffer());
  if (bytes[3] !== 0) throw new Error('compressed with a head of unknown length');
  const view = new DataView(bytes.buffer);
  return {
    name: new TextEncoder().encode(name),
    content: bytes.slice(GZIP.head, -GZIP.crc),
    crc: view.getUint32(bytes.length - GZIP.crc, true),
    size: view.getUint32(bytes.length - GZIP.size, true)
  };
}

type Sized = readonly [value: number, bytes: 2 | 4];

/** Numbers of two and four bytes, the lowest byte first. */
function numbers(...values: readonly Sized[]): Uint8Array<ArrayBuffer> {
  const view = new DataView(new ArrayBuffer(values.reduce((sum, [, bytes]) => sum + bytes, 0)));
  let at = 0;
  for (const [value, bytes] of values) {
    if (bytes === 2) view.setUint16(at, value, true);
    else view.setUint32(at, value, true);
    at += bytes;
  }
  return new Uint8Array(view.buffer);
}

/** What the head of an entry and its line in the directory share. */
const about = ({ name, content, crc, size }: Packed): readonly Sized[] => [
  [VERSION, 2],
  [0, 2],
  [DEFLATED, 2],
  [0, 2],
  [DATE, 2],
  [crc, 4],
  [content.length, 4],
  [size, 4],
  [name.length, 2],
  [0, 2]
];

function joined(parts: readonly Uint8Array[]): Uint8Array<ArrayBuffer> {
  const all = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
}

const lengthOf = (parts: readonly Uint8Array[]): number => parts.reduce((sum, { length }) => sum + length, 0);

/** As in PKWARE's APPNOTE 6.3.10, 4.3: entries, their directory, its end. */
export async function zipOf(entries: readonly Entry[]): Promise<Uint8Array<ArrayBuffer>> {
  const files: Uint8Array[] = [];
  const directory: Uint8Array[] = [];
  for (const entry of entries) {
    const file = await packed(entry);
    const start = lengthOf(files);
    files.push(numbers([0x04034b50, 4], ...about(file)), file.name, file.content);
    directory.push(
      numbers([0x02014b50, 4], [VERSION, 2], ...about(file), [0, 2], [0, 2], [0, 2], [0, 4], [start, 4]),
      file.name
    );
  }
  const end = numbers(
    [0x06054b50, 4],
    [0, 2],
    [0, 2],
    [entries.length, 2],
    [entries.length, 2],
    [lengthOf(directory), 4],
    [lengthOf(files), 4],
    [0, 2]
  );
  return joined([...files, ...directory, end]);
}

/** What stands in front of a JPEG's pixels: which way up it is, and what a camera knew about place and time. */

const SOI = 0xd8;
const APP1 = 0xe1;
const START_OF_SCAN = 0xda;
const ORIENTATION = 0x0112;

interface Segment {
  readonly marker: number;
  /** Of the marker, and behind the segment. */
  readonly from: number;
  readonly to: number;
}

/** The segments before the pixels; empty when the bytes are no JPEG. */
function segmentsOf(view: DataView): Segment[] {
  if (view.byteLength < 4 || view.getUint16(0) !== 0xff00 + SOI) return [];
  const segments: Segment[] = [];
  let at = 2;
  while (at + 4 <= view.byteLength && view.getUint8(at) === 0xff) {
    const marker = view.getUint8(at + 1);
    if (marker === START_OF_SCAN) break;
    const to = at + 2 + view.getUint16(at + 2);
    if (to > view.byteLength) break;
    segments.push({ marker, from: at, to });
    at = to;
  }
  return segments;
}

function orientationIn(view: DataView, { from, to }: Segment): number | null {
  const tiff = from + 10;
  const isExif = to - from > 18 && view.getUint32(from + 4) === 0x45786966;
  if (!isExif) return null;
  const isLittle = view.getUint16(tiff) === 0x4949;
  const directory = tiff + view.getUint32(tiff + 4, isLittle);
  if (directory + 2 > to) return null;
  const count = view.getUint16(directory, isLittle);
  for (let entry = directory + 2; entry < directory + 2 + 12 * count && entry + 12 <= to; entry += 12)
    if (view.getUint16(entry, isLittle) === ORIENTATION) return view.getUint16(entry + 8, isLittle);
  return null;
}

/** From 1 (upright) to 8, as EXIF counts the turns and mirrorings; 1 when nothing is said. */
export function orientationOf(bytes: ArrayBuffer): number {
  const view = new DataView(bytes);
  const found = segmentsOf(view)
    .filter(({ marker }) => marker === APP1)
    .map((segment) => orientationIn(view, segment))
    .find((orientation) => orientation !== null);
  return found !== undefined && found !== null && found >= 1 && found <= 8 ? found : 1;
}

/** The same pixels without the camera's notes: a site that is handed on must not tell where a photographer stood. */
export function withoutNotes(bytes: ArrayBuffer): BlobPart[] {
  const notes = segmentsOf(new DataView(bytes)).filter(({ marker }) => marker === APP1);
  const starts = [0, ...notes.map(({ to }) => to)];
  const ends = [...notes.map(({ from }) => from), bytes.byteLength];
  return starts.map((start, index) => bytes.slice(start, ends[index]));
}

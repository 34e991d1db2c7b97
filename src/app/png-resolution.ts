/** Says in a PNG how many pixels an inch of it has, so that a document shows it in its real size. */

/** The signature and the header, which comes first (PNG, third edition, sections 5.2 and 11.2.1). */
const HEAD = 8 + 25;
const METRE = 1 / 0.0254;
/** Polynomial of the checksum (the same, annex D). */
const POLYNOMIAL = 0xedb88320;

function checksum(bytes: Uint8Array): number {
  let rest = 0xffffffff;
  for (const byte of bytes) {
    rest ^= byte;
    for (let bit = 0; bit < 8; bit++) rest = rest & 1 ? (rest >>> 1) ^ POLYNOMIAL : rest >>> 1;
  }
  return (rest ^ 0xffffffff) >>> 0;
}

/** The chunk `pHYs` (the same, section 11.3.4.3): pixels per metre, across and down. */
function resolution(dotsPerInch: number): Uint8Array {
  const chunk = new Uint8Array(4 + 4 + 9 + 4);
  const view = new DataView(chunk.buffer);
  const perMetre = Math.round(dotsPerInch * METRE);
  view.setUint32(0, 9);
  chunk.set(new TextEncoder().encode('pHYs'), 4);
  view.setUint32(8, perMetre);
  view.setUint32(12, perMetre);
  view.setUint8(16, 1);
  view.setUint32(17, checksum(chunk.subarray(4, 17)));
  return chunk;
}

/** `png`: as a browser makes it, without a resolution of its own. */
export function withResolution(png: Uint8Array, dotsPerInch: number): Uint8Array<ArrayBuffer> {
  const chunk = resolution(dotsPerInch);
  const bytes = new Uint8Array(png.length + chunk.length);
  bytes.set(png.subarray(0, HEAD));
  bytes.set(chunk, HEAD);
  bytes.set(png.subarray(HEAD), HEAD + chunk.length);
  return bytes;
}

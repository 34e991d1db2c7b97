/** CRC-32 as in ISO 3309 and Ethernet: reflected, polynomial 0x04C11DB7. */
const REFLECTED = 0xedb88320;

const TABLE = Uint32Array.from({ length: 256 }, (_, byte) => {
  let rest = byte;
  for (let bit = 0; bit < 8; bit++) rest = rest & 1 ? (rest >>> 1) ^ REFLECTED : rest >>> 1;
  return rest;
});

export function crc32(bytes: Uint8Array): number {
  let rest = 0xffffffff;
  for (const byte of bytes) rest = TABLE[(rest ^ byte) & 0xff]! ^ (rest >>> 8);
  return (rest ^ 0xffffffff) >>> 0;
}

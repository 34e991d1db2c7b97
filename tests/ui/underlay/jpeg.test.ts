import { describe, expect, it } from 'vitest';
import { kindOfBytes } from '#ui/underlay/file-kind';
import { orientationOf, withoutNotes } from '#ui/underlay/jpeg';

const u16 = (value: number, isLittle: boolean): number[] =>
  isLittle ? [value & 255, value >> 8] : [value >> 8, value & 255];
const u32 = (value: number, isLittle: boolean): number[] => {
  const bytes = [value >>> 24, (value >> 16) & 255, (value >> 8) & 255, value & 255];
  return isLittle ? bytes.reverse() : bytes;
};

/** Camera notes with one entry beside the orientation, as the standard lays them out. */
function exif(orientation: number, isLittle: boolean): number[] {
  const tiff = [
    ...(isLittle ? [0x49, 0x49] : [0x4d, 0x4d]),
    ...u16(42, isLittle),
    ...u32(8, isLittle),
    ...u16(2, isLittle),
    ...[...u16(0x010f, isLittle), ...u16(2, isLittle), ...u32(4, isLittle), 65, 66, 67, 0],
    ...[
      ...u16(0x0112, isLittle),
      ...u16(3, isLittle),
      ...u32(1, isLittle),
      ...u16(orientation, isLittle),
      0,
      0
    ],
    ...u32(0, isLittle)
  ];
  const body = [0x45, 0x78, 0x69, 0x66, 0, 0, ...tiff];
  return [0xff, 0xe1, ...u16(body.length + 2, false), ...body];
}

const SOI = [0xff, 0xd8];
const TABLE = [0xff, 0xdb, 0, 4, 7, 7];
const SCAN = [0xff, 0xda, 0, 4, 1, 2, 0xff, 0xe1, 0, 3, 9, 0xff, 0xd9];
const buffer = (...parts: number[][]): ArrayBuffer => new Uint8Array(parts.flat()).buffer;

async function bytesOf(parts: BlobPart[]): Promise<number[]> {
  return [...new Uint8Array(await new Blob(parts).arrayBuffer())];
}

describe('a JPEG', () => {
  it('says which way up it is, in either order of bytes', () => {
    for (const isLittle of [true, false])
      for (const orientation of [1, 3, 6, 8])
        expect(orientationOf(buffer(SOI, exif(orientation, isLittle), TABLE, SCAN))).toBe(orientation);
  });

  it('counts as upright when it says nothing, or nothing that means anything', () => {
    expect(orientationOf(buffer(SOI, TABLE, SCAN))).toBe(1);
    expect(orientationOf(buffer(SOI, exif(77, true), SCAN))).toBe(1);
    expect(orientationOf(buffer(SOI, exif(6, true).slice(0, 20)))).toBe(1);
    expect(orientationOf(buffer([1, 2, 3]))).toBe(1);
    expect(orientationOf(new ArrayBuffer(0))).toBe(1);
  });

  it('loses the camera’s notes and nothing else', async () => {
    const parts = withoutNotes(buffer(SOI, exif(1, true), TABLE, exif(1, false), SCAN));
    expect(await bytesOf(parts)).toEqual([...SOI, ...TABLE, ...SCAN]);
    const plain = buffer(SOI, TABLE, SCAN);
    expect(await bytesOf(withoutNotes(plain))).toEqual([...SOI, ...TABLE, ...SCAN]);
  });
});

describe('the kind of a file', () => {
  const of = (text: string) => kindOfBytes(Uint8Array.from(text, (each) => each.charCodeAt(0)));

  it('is told by its bytes', () => {
    expect(of('\u0089PNG\r\n\u001a\n')).toBe('png');
    expect(of('\u00ff\u00d8\u00ff\u00e0')).toBe('jpeg');
    expect(of('RIFF\0\0\0\0WEBPVP8 ')).toBe('webp');
    expect(of('\n%PDF-1.7')).toBe('pdf');
    expect(of('<?xml version="1.0"?><svg width="3">')).toBe('svg');
    expect(of('GIF89a')).toBe('other');
    expect(of('RIFF\0\0\0\0WAVE')).toBe('other');
    expect(of('')).toBe('other');
  });
});

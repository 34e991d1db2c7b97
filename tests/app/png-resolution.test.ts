import { createCanvas, loadImage } from '@napi-rs/canvas';
import { crc32 } from 'node:zlib';
import { expect, test } from 'vitest';
import { withResolution } from '#app/png-resolution';

test('a PNG says its resolution, and is still the same picture', async () => {
  const canvas = createCanvas(30, 20);
  const context = canvas.getContext('2d');
  context.fillStyle = '#c00000';
  context.fillRect(0, 0, 30, 20);
  const plain = new Uint8Array(canvas.toBuffer('image/png'));
  const file = Buffer.from(withResolution(plain, 300));
  const at = file.indexOf('pHYs');
  expect(at).toBe(8 + 25 + 4);
  // 300 dots in 0.0254 m
  expect(file.readUInt32BE(at + 4)).toBe(11_811);
  expect(file.readUInt32BE(at + 8)).toBe(11_811);
  expect(file.readUInt8(at + 12)).toBe(1);
  expect(file.readUInt32BE(at + 13)).toBe(crc32(file.subarray(at, at + 13)));
  const picture = await loadImage(file);
  expect([picture.width, picture.height]).toEqual([30, 20]);
  context.clearRect(0, 0, 30, 20);
  context.drawImage(picture, 0, 0);
  expect([...context.getImageData(7, 7, 1, 1).data]).toEqual([192, 0, 0, 255]);
});

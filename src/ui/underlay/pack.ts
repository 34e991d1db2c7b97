/** Pictures as a document holds them: not larger than it may hold, upright, as base64. */
import { COUNTS } from '#plan/bounds';
import type { Picture } from '#plan/schema';

/** Pixels along the longer side: finer than any road is traced from. */
export const LARGEST_SIDE = 4_096;
/** Bytes that a document holds for a picture; base64 makes four characters of three. */
export const MOST_BYTES = Math.floor(COUNTS.pictureText / 4) * 3;
const QUALITY = 0.9;
/** Each further attempt has that share of the side. */
const SMALLER = 0.8;
const MOST_ATTEMPTS = 10;

export type MediaType = Picture['mediaType'];

export interface Packed {
  readonly blob: Blob;
  readonly mediaType: MediaType;
  readonly width: number;
  readonly height: number;
}

const isKnown = (type: string): type is MediaType =>
  type === 'image/png' || type === 'image/jpeg' || type === 'image/webp';

async function encoded(canvas: OffscreenCanvas, type: MediaType): Promise<Packed | null> {
  const blob = await canvas.convertToBlob({ type, quality: QUALITY });
  // A browser that cannot write a type gives PNG instead.
  if (!isKnown(blob.type) || blob.size > MOST_BYTES) return null;
  return { blob, mediaType: blob.type, width: canvas.width, height: canvas.height };
}

async function drawn(bitmap: ImageBitmap, side: number, isOpaque: boolean): Promise<OffscreenCanvas> {
  const share = Math.min(1, side / Math.max(bitmap.width, bitmap.height));
  const resizeWidth = Math.max(1, Math.round(bitmap.width * share));
  const resizeHeight = Math.max(1, Math.round(bitmap.height * share));
  const sized =
    share < 1
      ? await createImageBitmap(bitmap, { resizeWidth, resizeHeight, resizeQuality: 'high' })
      : bitmap;
  const canvas = new OffscreenCanvas(resizeWidth, resizeHeight);
  const context = canvas.getContext('2d');
  if (!context) throw new Error('no canvas');
  if (isOpaque) {
    context.fillStyle = '#ffffff';
    context.fillRect(0, 0, resizeWidth, resizeHeight);
  }
  context.drawImage(sized, 0, 0);
  if (sized !== bitmap) sized.close();
  return canvas;
}

/**
 * The bitmap in the type asked for, else in one that packs more tightly, as large as the bound on bytes allows. Rejects
 * when the browser cannot write pictures at all.
 */
export async function pack(bitmap: ImageBitmap, type: MediaType): Promise<Packed> {
  const types = [...new Set<MediaType>([type, 'image/webp', 'image/jpeg'])];
  let side = Math.min(LARGEST_SIDE, Math.max(bitmap.width, bitmap.height));
  for (let attempt = 0; attempt < MOST_ATTEMPTS; attempt++) {
    for (const each of types) {
      const packed = await encoded(await drawn(bitmap, side, each === 'image/jpeg'), each);
      if (packed) return packed;
    }
    side = Math.round(side * SMALLER);
  }
  throw new Error('too many bytes');
}

/** As the document holds it. */
export function pictureOf({ blob, mediaType, width, height }: Packed): Promise<Picture> {
  return new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.onerror = () => {
      reject(reader.error ?? new Error('unreadable'));
    };
    reader.onload = () => {
      const address = typeof reader.result === 'string' ? reader.result : '';
      resolve({ mediaType, data: address.slice(address.indexOf(',') + 1), width, height });
    };
    reader.readAsDataURL(blob);
  });
}

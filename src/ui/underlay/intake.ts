/** From a file to a picture that a document can hold, or to the reason why not. Rejects nothing. */
import { t } from '#i18n/message';
import type { Picture } from '#plan/schema';
import { kindOfFile } from './file-kind';
import { orientationOf, withoutNotes } from './jpeg';
import { LARGEST_SIDE, MOST_BYTES, pack, pictureOf, type MediaType, type Packed } from './pack';
import type { Pages } from './pages';

/** Bytes; a slip of the hand onto a film must not fill the memory. */
const LARGEST_FILE = 150_000_000;

const megabytes = (bytes: number): string => (bytes / 1e6).toFixed(1);

export type Intake =
  /** `notice`: what had to be done to it, in words; empty for nothing. */
  | { readonly kind: 'picture'; readonly name: string; readonly picture: Picture; readonly notice: string }
  | { readonly kind: 'pages'; readonly name: string; readonly pages: Pages }
  | { readonly kind: 'refused'; readonly name: string; readonly reason: string };

const TYPES = { png: 'image/png', jpeg: 'image/jpeg', webp: 'image/webp' } as const;

const nameOf = (file: File): string => file.name.replace(/\.[^.]+$/, '') || file.name;

function noticeOf(name: string, from: Packed, to: Packed): string {
  if (to.width !== from.width)
    return t('underlay.shrunk', {
      name,
      fromWidth: from.width,
      fromHeight: from.height,
      toWidth: to.width,
      toHeight: to.height
    });
  if (from.blob.size <= MOST_BYTES) return '';
  return t('underlay.packed', { name, from: megabytes(from.blob.size), to: megabytes(to.blob.size) });
}

/** A bitmap as the document holds it; one whose bytes can stay as they are keeps them. */
async function packed(
  name: string,
  bitmap: ImageBitmap,
  from: { readonly blob: Blob; readonly mediaType: MediaType; readonly isUpright: boolean }
): Promise<Intake> {
  const original: Packed = { ...from, width: bitmap.width, height: bitmap.height };
  const fits = Math.max(bitmap.width, bitmap.height) <= LARGEST_SIDE && from.blob.size <= MOST_BYTES;
  const kept = fits && from.isUpright ? original : await pack(bitmap, from.mediaType);
  return {
    kind: 'picture',
    name,
    picture: await pictureOf(kept),
    notice: kept === original ? '' : noticeOf(name, original, kept)
  };
}

async function fromPicture(file: File, mediaType: MediaType): Promise<Intake> {
  const name = nameOf(file);
  const bytes = mediaType === 'image/jpeg' ? await file.arrayBuffer() : null;
  const blob = bytes ? new Blob(withoutNotes(bytes), { type: mediaType }) : file;
  // The browser turns a photograph upright as it reads it.
  const bitmap = await createImageBitmap(file, { imageOrientation: 'from-image' });
  try {
    return await packed(name, bitmap, { blob, mediaType, isUpright: !bytes || orientationOf(bytes) === 1 });
  } finally {
    bitmap.close();
  }
}

/** A page of a PDF, drawn in the size that is wanted: there is nothing that it was made smaller from. */
export async function takePage(name: string, pages: Pages, page: number): Promise<Intake> {
  const title = pages.count === 1 ? name : t('underlay.named', { name, number: page });
  try {
    const bitmap = await pages.draw(page, LARGEST_SIDE);
    const from = { blob: new Blob(), mediaType: 'image/png', isUpright: false } as const;
    const intake = await packed(title, bitmap, from);
    bitmap.close();
    return intake;
  } catch {
    return { kind: 'refused', name: title, reason: t('underlay.damagedPdf') };
  }
}

/** Of several pages somebody has to choose one. */
async function fromPdf(file: File): Promise<Intake> {
  const { openPages } = await import('./pages');
  const opened = await openPages(file);
  const name = nameOf(file);
  if (!opened.ok) return { kind: 'refused', name: file.name, reason: opened.reason };
  if (opened.pages.count > 1) return { kind: 'pages', name, pages: opened.pages };
  const intake = await takePage(name, opened.pages, 1);
  opened.pages.close();
  return intake;
}

export async function takeIn(file: File): Promise<Intake> {
  const refused = (reason: string): Intake => ({ kind: 'refused', name: file.name, reason });
  if (file.size > LARGEST_FILE)
    return refused(t('underlay.huge', { size: megabytes(file.size), most: megabytes(LARGEST_FILE) }));
  try {
    const kind = await kindOfFile(file);
    if (kind === 'pdf') return await fromPdf(file);
    if (kind === 'svg') return refused(t('underlay.svg'));
    if (kind === 'other') return refused(t('underlay.kind'));
    return await fromPicture(file, TYPES[kind]);
  } catch {
    return refused(t('underlay.damaged'));
  }
}

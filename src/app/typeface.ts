/** The typeface of papers, as assets of the build: kept with the release, so that it is there without a network. */
import bold from 'dejavu-fonts-ttf/ttf/DejaVuSans-Bold.ttf?url';
import regular from 'dejavu-fonts-ttf/ttf/DejaVuSans.ttf?url';
import type { Typeface } from '#exchange/files/exported';

async function bytesOf(address: string): Promise<Uint8Array<ArrayBuffer>> {
  const response = await fetch(address);
  if (!response.ok) throw new Error(`${response.status} ${response.statusText}`);
  return new Uint8Array(await response.arrayBuffer());
}

let kept: Promise<Typeface> | undefined;

/** Fetched once; rejects where it cannot be had, and is tried again the next time. */
export function typeface(): Promise<Typeface> {
  kept ??= Promise.all([bytesOf(regular), bytesOf(bold)]).then(([plain, strong]) => ({
    regular: plain,
    bold: strong
  }));
  kept.catch(() => {
    kept = undefined;
  });
  return kept;
}

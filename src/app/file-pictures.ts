/** A site that misses pictures is not saved over a file that has them. */
import { readSite } from '#plan/read';
import type { Site } from '#plan/schema';
import { missingPictures, withPicturesOf } from '#plan/underlays';
import { readContent, type FileHandle } from '#storage/files';

/** The site with the pictures that only the file has; the same site if there is none. Never rejects. */
export async function withPicturesOfFile(site: Site, handle: FileHandle | null): Promise<Site> {
  if (!handle || missingPictures(site).length === 0) return site;
  try {
    const content = await readContent(await handle.getFile(), handle);
    const reading = content.kind === 'opened' ? readSite(content.text) : null;
    return reading?.ok ? withPicturesOf(site, reading.site) : site;
  } catch {
    // A file that cannot be read has no picture to be lost.
    return site;
  }
}

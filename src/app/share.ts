/** A site as the end of an address, and back. Loaded when first asked for. */
import { readSite, type Problem } from '#plan/read';
import type { Site } from '#plan/schema';
import { LONGEST_LINK, readLink, writeLink } from '#storage/share-link';
import type { LinkNotice, MadeLink } from '#ui/keeping';

export async function makeLink(site: Site): Promise<MadeLink> {
  const pictures = site.underlays.length;
  const text = JSON.stringify({ ...site, underlays: [] });
  const address = new URL(location.pathname, location.origin).href + (await writeLink(text, pictures > 0));
  if (address.length > LONGEST_LINK) return { kind: 'too long', length: address.length, most: LONGEST_LINK };
  return { kind: 'link', address, pictures };
}

export type Shared =
  | { readonly kind: 'none' | 'cut' | 'damaged' | 'newer' }
  | { readonly kind: 'site'; readonly site: Site; readonly notice: LinkNotice }
  | { readonly kind: 'refused'; readonly problems: readonly Problem[] };

/** Looked at as strictly as a file. */
export async function readShared(hash: string): Promise<Shared> {
  const link = await readLink(hash);
  if (link.kind !== 'text') return link;
  const reading = readSite(link.text);
  if (!reading.ok) return { kind: 'refused', problems: reading.problems };
  return {
    kind: 'site',
    site: reading.site,
    notice: link.isWithoutPictures ? 'opened without pictures' : 'opened'
  };
}

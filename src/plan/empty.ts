import { type Site, site } from './schema';

/** A site with nothing on it, every default filled in. */
export const emptySite = (name = 'Untitled site'): Site =>
  site.parse({ format: 'kerfline-site', version: 1, name });

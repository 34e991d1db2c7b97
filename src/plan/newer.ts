/** A document of a version that this release does not know, as far as it is understood all the same: to be looked at. */
import { newestVersion } from './migrations/index';
import { readSite } from './read';
import type { Site } from './schema';

/** Null for anything but a sound document but for its newer version. */
export function readNewer(text: string): Site | null {
  try {
    const found: unknown = JSON.parse(text);
    if (typeof found !== 'object' || found === null || Array.isArray(found)) return null;
    const { version } = found as { version?: unknown };
    if (typeof version !== 'number' || !Number.isInteger(version) || version <= newestVersion()) return null;
    const reading = readSite(JSON.stringify({ ...found, version: newestVersion() }));
    return reading.ok ? reading.site : null;
  } catch {
    return null;
  }
}

/** Names of files that every system accepts. */

/** Letters may take four bytes each; 255 bytes is what the strictest systems allow. */
const LONGEST = 50;

/**
 * `file`: name of the file that the site is kept in, or the site's own name. `part`: what the file holds, in plain letters;
 * it also keeps the name from being one that a system reserves. `ending` without a dot.
 */
export function fileNameFor(file: string, part: string, ending: string): string {
  const plain = file
    .replace(/(\.kerfline)?\.json$/i, '')
    .normalize('NFC')
    .replace(/[^\p{L}\p{N}]+/gu, '-');
  const short = [...plain]
    .slice(0, LONGEST)
    .join('')
    .replace(/^-+|-+$/g, '');
  return `${short || 'site'}-${part}.${ending}`;
}

/** Short texts beside the pointer, in the units that the document shows. */
import type { Site } from '#plan/schema';
import { format } from '#units/format';

export const lengthText = (site: Site, metres: number): string =>
  format(metres, 'length', site.displayUnits).text;

export const angleText = (site: Site, degrees: number): string =>
  format(degrees, 'angle', site.displayUnits).text;

export const sizeText = (site: Site, width: number, length: number): string =>
  `${lengthText(site, width)} × ${lengthText(site, length)}`;

/** The parts that say something, with a dot between them. */
export const joinedText = (...parts: readonly string[]): string =>
  parts.filter((part) => part !== '').join(' · ');

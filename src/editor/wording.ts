/** Short texts beside the pointer, in the units that the document shows. */
import { t } from '#i18n/message';
import type { Site } from '#plan/schema';
import { format } from '#units/format';

export const lengthText = (site: Site, metres: number): string =>
  format(metres, 'length', site.displayUnits).text;

/** Below the road surface, or above it for a plate that lies on it. */
export const depthText = (site: Site, depth: number): string =>
  t(depth < 0 ? 'depth.above' : 'depth.below', {
    depth: format(Math.abs(depth), 'smallLength', site.displayUnits).text
  });

export const angleText = (site: Site, degrees: number): string =>
  format(degrees, 'angle', site.displayUnits).text;

export const sizeText = (site: Site, width: number, length: number): string =>
  `${lengthText(site, width)} × ${lengthText(site, length)}`;

/** The parts that say something, with a dot between them. */
export const joinedText = (...parts: readonly string[]): string =>
  parts.filter((part) => part !== '').join(' · ');

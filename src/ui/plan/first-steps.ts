/** What to try first on the site that is shown. */
import type { PlainMessageKey } from '#i18n/message';
import type { Site } from '#plan/schema';

/** Three steps that can be taken with what is on the plan. */
export function firstSteps({ loops, probes }: Pick<Site, 'loops' | 'probes'>): readonly PlainMessageKey[] {
  const drive = probes.length > 0 ? 'hint.dragVehicle' : 'hint.placeVehicle';
  return loops.length > 0
    ? [drive, 'hint.dragCorner', 'hint.typeSize']
    : ['hint.drawLoop', drive, 'hint.typeSize'];
}

/** Marks with an outline: islands and covers. */
import { t } from '#i18n/message';
import { crossingSides } from '#plan/geometry/polygons';
import type { MarkKind } from '#plan/schema';
import { areaTool } from './area';
import { markStep } from './mark-step';
import type { ToolState } from './tool';

export const areaMarkTool = (kind: Extract<MarkKind, 'island' | 'cover'>): ToolState =>
  areaTool({
    name: kind,
    step: (site, outline) => (crossingSides(outline) ? null : markStep(site, kind, outline)),
    refusal: () => t('drawing.crosses')
  });

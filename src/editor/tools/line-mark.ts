/** Marks that run through points: kerbs, joints, conduits. */
import { t } from '#i18n/message';
import { COUNTS } from '#plan/bounds';
import type { MarkKind } from '#plan/schema';
import { chainTool } from './chain';
import { markStep } from './mark-step';
import type { ToolState } from './tool';

export const lineMarkTool = (kind: Extract<MarkKind, 'kerb' | 'joint' | 'conduit'>): ToolState =>
  chainTool({
    name: kind,
    least: 2,
    most: COUNTS.points,
    closes: false,
    draw(points, { site }) {
      const step = markStep(site, kind, points);
      return step ? { step, tool: 'select' } : t('drawing.noRoom');
    }
  });

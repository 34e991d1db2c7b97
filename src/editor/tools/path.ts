import { t } from '#i18n/message';
import { saying } from '#i18n/saying';
import { COUNTS } from '#plan/bounds';
import { addPath, newPath } from '#plan/edits/index';
import { chainTool } from './chain';

/** In the direction of travel, point by point. */
export const pathTool = chainTool({
  name: 'path',
  least: 2,
  most: COUNTS.points,
  closes: false,
  draw(points, { site }) {
    const path = newPath(site, points);
    const next = addPath(site, path);
    if (next === site) return t('drawing.noPath');
    return {
      step: { label: saying('step.path'), site: next, selection: [{ kind: 'path', id: path.id }] },
      tool: 'select'
    };
  }
});

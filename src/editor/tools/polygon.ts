import { COUNTS } from '#plan/bounds';
import type { Shape } from '#plan/schema';
import { problemOf } from '#plan/shapes/index';
import { chainTool } from './chain';
import { loopStep } from './loop-step';

export const polygonTool = chainTool({
  name: 'polygon',
  least: 3,
  most: COUNTS.points,
  closes: true,
  draw(points, { site }) {
    const shape: Shape = { kind: 'polygon', points };
    return problemOf(shape)?.found ?? loopStep(site, shape);
  }
});

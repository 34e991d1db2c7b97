/** Marks from one point to another, with what their kind holds beside the points. */
import { distance } from '#plan/geometry/points';
import type { MarkKind, Point } from '#plan/schema';
import type { Scene } from '../scene';
import type { Step } from '../types';
import { joinedText, lengthText } from '../wording';
import { markStep, type MarkFields } from './mark-step';
import type { ToolState } from './tool';
import { twoPointTool } from './two-points';

/** Metres: a shorter one is a slip of the hand. */
const SHORTEST = 0.2;

export type FieldsOf = (points: readonly [Point, Point], scene: Scene) => MarkFields;

export function segmentStep(
  kind: MarkKind,
  points: readonly [Point, Point],
  scene: Scene,
  fields: FieldsOf
): Step | null {
  return distance(...points) < SHORTEST ? null : markStep(scene.site, kind, points, fields(points, scene));
}

export const segmentMarkTool = (kind: MarkKind, fields: FieldsOf = () => ({})): ToolState =>
  twoPointTool({
    name: kind,
    show({ from, to, snap }, scene) {
      const step = segmentStep(kind, [from, to], scene, fields);
      const text = joinedText(lengthText(scene.site, distance(from, to)), snap.text);
      const overlay = { guides: snap.guides, label: { at: to, text }, cursor: 'crosshair' };
      return { draft: step?.site ?? null, overlay };
    },
    finish({ from, to }, scene) {
      const step = segmentStep(kind, [from, to], scene, fields);
      return step && { step, tool: 'select' };
    }
  });

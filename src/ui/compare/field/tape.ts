/** The two ends of a tape that lies on the plan: its first side. */
import { distance } from '#plan/geometry/points';
import type { Point } from '#plan/schema';
import type { EditorState } from '#editor/types';

/** Metres: a shorter one is only about to be drawn. */
const SHORTEST = 0.05;

export function tapeOn({
  tool,
  overlay
}: Pick<EditorState, 'tool' | 'overlay'>): readonly [Point, Point] | null {
  const side = tool === 'measure' ? overlay.guides.find(({ label }) => label !== '') : undefined;
  return side && distance(side.from, side.to) > SHORTEST ? [side.from, side.to] : null;
}

/** What to do with the tool in hand. Of scaling a picture the bar over the plan says it. */
import type { EditorState, ToolName } from '#editor/types';
import type { PlainMessageKey } from '#i18n/message';

const HINTS: Readonly<Record<Exclude<ToolName, 'select' | 'pan' | 'calibrate'>, PlainMessageKey>> = {
  rectangle: 'toolHint.corners',
  quadrupole: 'toolHint.corners',
  diagonal: 'toolHint.corners',
  circle: 'toolHint.circle',
  polygon: 'toolHint.outline',
  lane: 'toolHint.points',
  'stop-line': 'toolHint.inLane',
  steel: 'toolHint.area',
  kerb: 'toolHint.points',
  island: 'toolHint.area',
  arrow: 'toolHint.inLane',
  gate: 'toolHint.gate',
  cover: 'toolHint.area',
  joint: 'toolHint.points',
  'pull-box': 'toolHint.place',
  cabinet: 'toolHint.place',
  conduit: 'toolHint.points',
  note: 'toolHint.place',
  dimension: 'toolHint.dimension',
  path: 'toolHint.points',
  vehicle: 'toolHint.place',
  measure: 'toolHint.measure'
};

/** Tools that have no sizes. */
const PLACING = new Set<ToolName>(['pull-box', 'cabinet', 'note', 'vehicle', 'measure']);

/** In the order of reading; none for the tools that only select and move the view. */
export function toolHints({ tool, entry, keyboardPoint }: EditorState): readonly PlainMessageKey[] {
  if (entry && entry.active !== null) return ['toolHint.type'];
  if (keyboardPoint) return ['toolHint.keys', ...(entry ? (['toolHint.sizes'] as const) : [])];
  if (entry) return ['toolHint.sizes', 'toolHint.alt'];
  if (tool === 'select' || tool === 'pan') return [];
  if (tool === 'calibrate') return ['toolHint.orKeys'];
  return [HINTS[tool], ...(PLACING.has(tool) ? [] : (['toolHint.sizes'] as const)), 'toolHint.orKeys'];
}

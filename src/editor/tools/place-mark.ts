/** Things of one point: they follow the pointer, and a press puts them down where it is released. */
import type { MarkKind } from '#plan/schema';
import type { Scene } from '../scene';
import { createSnapper } from '../snapping/snapper';
import { markStep } from './mark-step';
import type { Outcome, ToolState } from './tool';

export type PlacedMark = Extract<MarkKind, 'pull-box' | 'cabinet' | 'note'>;

export function placeMarkTool(kind: PlacedMark): ToolState {
  const tool = (held: boolean): ToolState => {
    const state: ToolState = {
      name: `${kind}: ${held ? 'placing' : 'ready'}`,
      busy: held,
      on(input, scene: Scene): Outcome | null {
        if (input.type === 'key' || input.type === 'double') return null;
        const snap = createSnapper(scene).point(input.at, input);
        const step = markStep(scene.site, kind, [snap.at]);
        if (input.type === 'up')
          return held ? { next: tool(false), ...(step ? { step, tool: 'select' } : {}) } : null;
        const label = snap.text === '' ? null : { at: snap.at, text: snap.text };
        const overlay = { guides: snap.guides, label, cursor: 'copy' };
        return { next: input.type === 'down' ? tool(true) : state, draft: step?.site ?? null, overlay };
      }
    };
    return state;
  };
  return tool(false);
}

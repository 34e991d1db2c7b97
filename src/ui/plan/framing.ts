import { boxOf } from '#editor/things';
import type { Editor, Ref } from '#editor/types';
import { fitted } from '#editor/viewport';

/** Pixels beside the work for the labels of the loops, and above and below it. */
const BESIDE = 110;
const ABOVE = 24;

const framed = new WeakSet<Editor>();

/** Once, when the size of the surface is known: a page that is drawn anew in another language keeps its view. */
export function frameFirst(editor: Editor): void {
  if (framed.has(editor)) return;
  framed.add(editor);
  frameWork(editor);
}

/** Shows where the work is: the loops and the vehicles, not the whole length of the lanes. */
export function frameWork(editor: Editor): void {
  const { site, viewport } = editor.state;
  const refs: Ref[] = [
    ...site.loops.map(({ id }): Ref => ({ kind: 'loop', id })),
    ...site.probes.map((_, index): Ref => ({ kind: 'probe', id: String(index) }))
  ];
  const box = boxOf(site, refs);
  if (!box) {
    editor.fit('all');
    return;
  }
  const { width, height } = viewport;
  const inner = {
    ...viewport,
    width: Math.max(width - 2 * BESIDE, 1),
    height: Math.max(height - 2 * ABOVE, 1)
  };
  editor.setViewport({ ...fitted(inner, box), width, height });
}

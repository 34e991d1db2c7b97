/** A shape from the pointer as a loop with its circuit: shown as a draft, then left as one step. */
import { saying } from '#i18n/saying';
import { addWiredLoop, newLoop } from '#plan/edits/index';
import type { Shape, Site } from '#plan/schema';
import type { Ref, Step } from '../types';

export function withLoop(site: Site, shape: Shape): { readonly site: Site; readonly selection: Ref[] } {
  const loop = newLoop(site, shape);
  return { site: addWiredLoop(site, loop), selection: [{ kind: 'loop', id: loop.id }] };
}

/** The step that draws the loop; the hand goes back to selecting with the new loop in it. */
export function loopStep(site: Site, shape: Shape): { readonly step: Step; readonly tool: 'select' } {
  return { step: { label: saying(`step.loop.${shape.kind}`), ...withLoop(site, shape) }, tool: 'select' };
}

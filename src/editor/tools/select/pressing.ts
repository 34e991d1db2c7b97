/** The button is down and the hand has not moved yet: a click or the start of something. */
import { opensEntry } from '../../entry/typing';
import type { PlanHandle } from '../../handles';
import { whyStill } from '../../locks';
import { pickAll, type Pick } from '../../picking';
import { hasMoved, tolerance } from '../../reach';
import type { Scene } from '../../scene';
import { includesRef, sameRef, toggled, united } from '../../selection';
import type { Ref } from '../../types';
import type { Outcome, ToolPointer, ToolState } from '../tool';
import { boxing } from './boxing';
import { idle } from './idle';
import { moving } from './moving';
import { resizing } from './resizing';
import { rotating } from './rotating';
import { routing } from './routing';
import { staying } from './staying';

export interface Press {
  readonly start: ToolPointer;
  readonly handle: PlanHandle | null;
  readonly pick: Pick | null;
}

function gesture({ start, handle, pick }: Press, scene: Scene): ToolState {
  const { selection } = scene;
  const why = handle ? whyStill(scene, selection) : null;
  if (why !== null) return staying(why);
  if (handle?.kind === 'via' || handle?.kind === 'between') return routing(start, handle, scene);
  if (handle) return handle.kind === 'rotate' ? rotating(start, scene) : resizing(start, handle, scene);
  if (!pick || (pick.surface && !includesRef(selection, pick.ref))) return boxing(start);
  const refs = includesRef(selection, pick.ref)
    ? selection
    : start.shift
      ? united(selection, [pick.ref])
      : [pick.ref];
  const whyNone = whyStill(scene, refs);
  return whyNone === null ? moving(start, refs, scene) : staying(whyNone);
}

/** Alt looks through the heap: each click selects what lies under what is selected now. */
function below(input: ToolPointer, { site, selection, viewport }: Scene): Ref | null {
  const heap = pickAll(site, input.at, tolerance(input.pointer, viewport));
  const [only] = selection;
  const at = only && selection.length === 1 ? heap.findIndex(({ ref }) => sameRef(ref, only)) : -1;
  return heap[(at + 1) % heap.length]?.ref ?? null;
}

function clicked({ start, handle, pick }: Press, scene: Scene): readonly Ref[] {
  const { selection } = scene;
  if (handle) return selection;
  const beneath = start.alt && !start.shift ? below(start, scene) : null;
  if (beneath) return [beneath];
  if (!pick) return start.shift ? selection : [];
  return start.shift ? toggled(selection, pick.ref) : [pick.ref];
}

export function pressing(press: Press): ToolState {
  const state: ToolState = {
    name: 'pressing',
    busy: true,
    on(input, scene): Outcome | null {
      // A size that is typed begins the gesture as well as a movement does.
      if (input.type === 'key') return opensEntry(input.key) ? gesture(press, scene).on(input, scene) : null;
      if (input.type === 'move')
        return hasMoved(press.start, input) ? gesture(press, scene).on(input, scene) : { next: state };
      return input.type === 'up' ? { next: idle, selection: clicked(press, scene) } : null;
    }
  };
  return state;
}

/**
 * Tools that need two points: press and drag, or click and click again; sizes can be typed instead of the second one.
 * What they draw between the points differs, how the hand gives them does not.
 */
import type { Point } from '#plan/schema';
import type { SizeOffer, TypedSizes } from '../dimension-entry';
import { hasTyped, stretchSizes, stretchTo } from '../entry/placing';
import { opensEntry } from '../entry/typing';
import { hasMoved } from '../reach';
import type { Scene } from '../scene';
import { createSnapper, type Snapper } from '../snapping/snapper';
import { NO_SNAP, type Snap } from '../snapping/snap';
import type { Outcome, ToolPointer, ToolState } from './tool';

export interface Stretch {
  readonly from: Point;
  readonly to: Point;
  /** What the second point snapped to. */
  readonly snap: Snap;
  readonly input: ToolPointer;
}

/** What can be typed instead of the second point. */
export interface Sizing {
  /** Where the second point goes: typed sizes hold, the pointer decides about the rest. */
  to(from: Point, pointer: Point, typed: TypedSizes, input: ToolPointer): Point;
  sizes(stretch: Stretch, scene: Scene): readonly SizeOffer[];
}

export interface TwoPointTool {
  readonly name: string;
  /** Length and angle unless told. */
  readonly sizing?: Sizing;
  /** What is shown while the second point is still in the hand. */
  show(stretch: Stretch, scene: Scene): Omit<Outcome, 'next'>;
  /** What is left behind; null when the points are too near to each other to mean anything. */
  finish(stretch: Stretch, scene: Scene): (Omit<Outcome, 'next'> & { readonly next?: ToolState }) | null;
}

const BY_STRETCH: Sizing = { to: stretchTo, sizes: ({ from, to }) => stretchSizes(from, to) };

export function twoPointTool(tool: TwoPointTool): ToolState {
  const sizing = tool.sizing ?? BY_STRETCH;

  const ready: ToolState = {
    name: `${tool.name}: ready`,
    busy: false,
    on(input, scene): Outcome | null {
      if (input.type !== 'move' && input.type !== 'down') return null;
      const snapper = createSnapper(scene);
      const snap = snapper.point(input.at, input);
      if (input.type === 'down')
        return stretching({ from: snap.at, start: input, snapper, held: true }, input).on(input, scene);
      const label = snap.text === '' ? null : { at: snap.at, text: snap.text };
      return { next: ready, overlay: { guides: snap.guides, label, cursor: 'crosshair' } };
    }
  };

  interface Begun {
    readonly from: Point;
    readonly start: ToolPointer;
    readonly snapper: Snapper;
    /** The button that began it is still down. */
    readonly held: boolean;
  }

  function stretchOf({ from, snapper }: Begun, input: ToolPointer): Stretch {
    const snap = snapper.point(input.at, input);
    if (!hasTyped(input.typed)) return { from, to: snap.at, snap, input };
    return { from, to: sizing.to(from, snap.at, input.typed, input), snap: NO_SNAP, input };
  }

  function shown(stretch: Stretch, scene: Scene): Omit<Outcome, 'next'> {
    const entry = { of: tool.name, fields: sizing.sizes(stretch, scene), takesPlace: true };
    return { entry, ...tool.show(stretch, scene) };
  }

  /** `last`: where the pointer was when it was last heard of. */
  function stretching(begun: Begun, last: ToolPointer): ToolState {
    const state: ToolState = {
      name: `${tool.name}: stretching`,
      busy: true,
      on(input, scene): Outcome | null {
        if (input.type === 'double') return null;
        if (input.type === 'key') return keyed(input.key, scene);
        const stretch = stretchOf(begun, input);
        if (input.type === 'up' && begun.held && !hasMoved(begun.start, input) && !hasTyped(input.typed))
          return { next: stretching({ ...begun, held: false }, input), ...shown(stretch, scene) };
        const ends = input.type === 'up' ? begun.held : input.type === 'down' && !begun.held;
        if (!ends) return { next: stretching(begun, input), ...shown(stretch, scene) };
        return { next: ready, ...tool.finish(stretch, scene) };
      }
    };

    function keyed(key: string, scene: Scene): Outcome | null {
      const stretch = stretchOf(begun, last);
      if (key === 'Enter') return { next: ready, ...tool.finish(stretch, scene) };
      if (key === 'Backspace' && !begun.held) return { next: ready };
      return opensEntry(key) ? { next: state, ...shown(stretch, scene) } : null;
    }
    return state;
  }

  return ready;
}

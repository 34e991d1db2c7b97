/** Two points, then how far beside them the dimension's line lies: a third place, or a length that is typed. */
import { BOUNDS } from '#plan/bounds';
import { distance } from '#plan/geometry/points';
import { tidyLength } from '#plan/edits/tidy';
import type { Point } from '#plan/schema';
import type { TypedSizes } from '../dimension-entry';
import { hasTyped, signed, sizeOffer } from '../entry/placing';
import { opensEntry } from '../entry/typing';
import { offsetFrom } from '../geometry/marks';
import { hasMoved } from '../reach';
import type { Scene } from '../scene';
import { createSnapper } from '../snapping/snapper';
import type { Step } from '../types';
import { joinedText, lengthText } from '../wording';
import { markStep } from './mark-step';
import type { Outcome, ToolPointer, ToolState } from './tool';
import { twoPointTool } from './two-points';

/** Metres: nearer points have nothing between them to measure. */
const SHORTEST = 0.01;
/** Pixels from the measured points to the line while nothing has been said about it. */
const USUAL_OFFSET = 24;

type Ends = readonly [Point, Point];

function stepAt(ends: Ends, offset: number, scene: Scene): Step | null {
  const { min, max } = BOUNDS.dimensionOffset;
  const kept = tidyLength(Math.min(max, Math.max(min, offset)));
  return distance(...ends) < SHORTEST ? null : markStep(scene.site, 'dimension', ends, { offset: kept });
}

/** Where it lies until the pointer says otherwise. */
const usualStep = (ends: Ends, scene: Scene): Step | null =>
  stepAt(ends, USUAL_OFFSET / scene.viewport.scale, scene);

/** To the side where the pointer is, as far as was typed. */
function offsetAt(ends: Ends, at: Point, { aside }: TypedSizes): number {
  const offset = offsetFrom(ends, at);
  return aside === undefined ? offset : signed(offset, aside);
}

interface Begun {
  readonly ends: Ends;
  /** The press that ended the second point, while its button is still down. */
  readonly held: ToolPointer | null;
  /** Where the pointer was when it was last heard of, and whether it has gone anywhere since. */
  readonly last: ToolPointer;
  readonly isUsual: boolean;
}

function offsetting(begun: Begun): ToolState {
  const { ends, held, last, isUsual } = begun;
  const state: ToolState = {
    name: 'dimension: offsetting',
    busy: true,
    on(input, scene): Outcome | null {
      if (input.type === 'double') return null;
      if (input.type === 'key') return keyed(input.key, scene);
      const isRelease = input.type === 'up' && held !== null && !hasMoved(held, input);
      if (isRelease) return { next: offsetting({ ...begun, held: null }), ...usual(scene) };
      if (input.type === 'move')
        return { next: offsetting({ ...begun, last: input, isUsual: false }), ...shown(input, scene) };
      return left(stepAt(ends, offsetOf(input, scene), scene));
    }
  };

  const offsetOf = (input: ToolPointer, scene: Scene): number =>
    offsetAt(ends, createSnapper(scene).point(input.at, input).at, input.typed);

  function shown(input: ToolPointer, scene: Scene): Omit<Outcome, 'next'> {
    const snap = createSnapper(scene).point(input.at, input);
    const offset = offsetAt(ends, snap.at, input.typed);
    const text = joinedText(lengthText(scene.site, Math.abs(offset)), snap.text);
    const overlay = { guides: snap.guides, label: { at: snap.at, text }, cursor: 'crosshair' };
    const most = { min: 0, max: BOUNDS.dimensionOffset.max };
    const fields = [sizeOffer('aside', Math.abs(offset), most)];
    const entry = { of: 'dimension offset', fields, takesPlace: false };
    return { draft: stepAt(ends, offset, scene)?.site ?? null, overlay, entry };
  }

  function keyed(key: string, scene: Scene): Outcome | null {
    if (opensEntry(key)) return { next: state, ...shown(last, scene) };
    if (key !== 'Enter') return null;
    return left(
      isUsual && !hasTyped(last.typed) ? usualStep(ends, scene) : stepAt(ends, offsetOf(last, scene), scene)
    );
  }
  return state;

  function usual(scene: Scene): Omit<Outcome, 'next'> {
    return { draft: usualStep(ends, scene)?.site ?? null, overlay: { cursor: 'crosshair' } };
  }
}

const left = (step: Step | null): Outcome => ({
  next: dimensionTool,
  ...(step ? { step, tool: 'select' } : {})
});

export const dimensionTool: ToolState = twoPointTool({
  name: 'dimension',
  show({ from, to, snap }, scene) {
    const text = joinedText(lengthText(scene.site, distance(from, to)), snap.text);
    const overlay = { guides: snap.guides, label: { at: to, text }, cursor: 'crosshair' };
    return { draft: usualStep([from, to], scene)?.site ?? null, overlay };
  },
  finish({ from, to, input }, scene) {
    const ends: Ends = [from, to];
    const step = usualStep(ends, scene);
    if (!step) return null;
    const held = input.type === 'down' ? input : null;
    const next = offsetting({ ends, held, last: { ...input, typed: {} }, isUsual: true });
    return { next, draft: step.site, overlay: { cursor: 'crosshair' } };
  }
});

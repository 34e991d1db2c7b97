/** Snapping for one gesture: the targets of its beginning, the switches and the zoom of its beginning. */
import type { Point } from '#plan/schema';
import { format } from '#units/format';
import { pointBox, type Box } from '../geometry/box';
import { snapReach } from '../reach';
import type { Scene } from '../scene';
import { sameSelection } from '../selection';
import type { PointerInput, Ref } from '../types';
import { visibleBox } from '../viewport';
import { NO_SNAP, snapBox, type Snap } from './snap';
import { collectTargets, type Targets } from './targets';

const BOTH = [true, true] as const;
const NOTHING: Targets = { axes: [[], []], points: [], lines: [], boxes: [] };

export interface Snapper {
  /** With alt held, nothing snaps. */
  box(box: Box, input: SnapInput, axes?: readonly [boolean, boolean]): Snap;
  point(at: Point, input: SnapInput, axes?: readonly [boolean, boolean]): Snap & { readonly at: Point };
}

type SnapInput = Pick<PointerInput, 'alt' | 'pointer'>;

interface Collected extends Pick<Scene, 'site' | 'viewport' | 'snap'> {
  readonly moving: readonly Ref[];
  readonly targets: Targets;
}
/** The last ones: a pointer that hovers asks for the same at every movement. */
let collected: Collected | null = null;

function targetsFor({ site, viewport, snap }: Scene, moving: readonly Ref[], lanesOnly: boolean): Targets {
  const isSame =
    collected?.site === site &&
    collected.viewport === viewport &&
    collected.snap === snap &&
    sameSelection(collected.moving, moving);
  if (collected && isSame) return collected.targets;
  const targets = collectTargets(site, moving, visibleBox(viewport), { attraction: snap, lanesOnly });
  collected = { site, viewport, snap, moving, targets };
  return targets;
}

export function createSnapper(scene: Scene, moving: readonly Ref[] = []): Snapper {
  const { snap, site } = scene;
  // A vehicle must glide, so that the response is seen everywhere: it only finds the middle of a lane.
  const vehiclesOnly = moving.length > 0 && moving.every((ref) => ref.kind === 'probe');
  const targets = snap.objects ? targetsFor(scene, moving, vehiclesOnly) : NOTHING;
  const grid = snap.grid && !vehiclesOnly ? snap.gridStep : null;
  const length = (metres: number): string => format(metres, 'length', site.displayUnits).text;

  const box: Snapper['box'] = (moved, input, axes = BOTH) =>
    input.alt
      ? NO_SNAP
      : snapBox(moved, targets, { grid, axes, length, tolerance: snapReach(input.pointer, scene) });

  return {
    box,
    point(at, input, axes) {
      const found = box(pointBox(at), input, axes);
      return { ...found, at: [at[0] + found.by[0], at[1] + found.by[1]] };
    }
  };
}

/** The ways that vehicles can be driven along. */
import type { WayRef } from '#analysis/passing/results';
import { laneAt } from '#editor/geometry/lanes';
import type { Ref } from '#editor/types';
import type { Point, Site } from '#plan/schema';
import { centreOf } from '#plan/shapes/index';
import { nameOf } from '../names';

export interface OfferedWay {
  /** For a list of choices. */
  readonly key: string;
  readonly ref: WayRef;
  readonly name: string;
}

/** What tells which way is meant. */
interface Looked {
  readonly chosen: WayRef | null;
  readonly selection: readonly Ref[];
  /** Where the watched vehicle stands. */
  readonly watched?: Point | undefined;
}

type Drawn = Pick<Site, 'lanes' | 'paths' | 'loops'>;

/** Metres to either side of a drawn path, which has no width of its own. */
const BESIDE_PATH = 2;

export const waysOf = (site: Drawn): readonly OfferedWay[] => [
  ...site.lanes.map((lane): OfferedWay => ({
    key: `lane ${lane.id}`,
    ref: { kind: 'lane', id: lane.id },
    name: nameOf(lane)
  })),
  ...site.paths.map((path): OfferedWay => ({
    key: `path ${path.id}`,
    ref: { kind: 'path', id: path.id },
    name: nameOf(path)
  }))
];

/**
 * What is chosen, else what is selected, the lane of a selected loop, of the watched vehicle, or of the first loop. Null
 * where nothing is drawn to drive along.
 */
export function wayShown(site: Drawn, { chosen, selection, watched }: Looked): OfferedWay | null {
  const ways = waysOf(site);
  const find = (ref: { readonly kind: string; readonly id: string } | null | undefined) =>
    ref ? ways.find((way) => way.ref.kind === ref.kind && way.ref.id === ref.id) : undefined;
  const isSelected = (id: string) => selection.some((ref) => ref.kind === 'loop' && ref.id === id);
  const places = [
    ...site.loops.filter(({ id }) => isSelected(id)).map(({ shape }) => centreOf(shape)),
    ...(watched ? [watched] : []),
    ...site.loops.map(({ shape }) => centreOf(shape))
  ];
  const ofPlaces = places.map((place) => {
    const lane = laneAt(site.lanes, place)?.lane;
    return lane && find({ kind: 'lane', id: lane.id });
  });
  return (
    find(chosen) ??
    find(selection.find((ref) => find(ref))) ??
    ofPlaces.find((way) => way !== undefined) ??
    ways[0] ??
    null
  );
}

/** Metres to the left and to the right that are worth looking at. */
export function offsetLimit(site: Drawn, ref: WayRef): number {
  const lane = ref.kind === 'lane' ? site.lanes.find(({ id }) => id === ref.id) : undefined;
  return lane ? lane.width / 2 : BESIDE_PATH;
}

/** Where the things of a plan lie, for picking, boxes and handles. */
import { withinSentence } from '#i18n/locale';
import { t } from '#i18n/message';
import { add, rotate } from '#plan/geometry/points';
import { vehicleOf } from '#plan/catalogue/vehicles';
import type { Lane, Loop, Mark, Path, Point, Probe, Site, Steel, Underlay } from '#plan/schema';
import { centreOf, outlineOf } from '#plan/shapes/index';
import { underlayOutline } from '#plan/underlays';
import { boxAround, boxCentre, type Box } from './geometry/box';
import { laneOutline } from './geometry/lanes';
import { seenLine } from './geometry/marks';
import type { Ref } from './types';

export const loopOf = (site: Site, id: string): Loop | undefined => site.loops.find((loop) => loop.id === id);
export const laneOf = (site: Site, id: string): Lane | undefined => site.lanes.find((lane) => lane.id === id);
export const markOf = (site: Site, id: string): Mark | undefined => site.marks.find((mark) => mark.id === id);
export const steelOf = (site: Site, id: string): Steel | undefined =>
  site.steel.find((steel) => steel.id === id);
export const pathOf = (site: Site, id: string): Path | undefined => site.paths.find((path) => path.id === id);
export const underlayOf = (site: Site, id: string): Underlay | undefined =>
  site.underlays.find((underlay) => underlay.id === id);
export const probeOf = (site: Site, id: string): Probe | undefined => site.probes[Number(id)];

/** From the vehicle's own frame (x to its right, y ahead) to the plan. */
export const onPlan = (probe: Probe, local: Point): Point => add(probe.at, rotate(local, probe.heading - 90));

/** Corners of the vehicle's body from rear left, clockwise. */
export function bodyOf(site: Site, probe: Probe): Point[] {
  const vehicle = vehicleOf(probe.vehicle, site);
  const x = (vehicle?.bodyWidth ?? 0) / 2;
  const y = (vehicle?.bodyLength ?? 0) / 2;
  const corners: Point[] = [[-x, -y], [-x, y], [x, y], [x, -y]]; // prettier-ignore
  return corners.map((corner) => onPlan(probe, corner));
}

/** Outline of an area or points of a line; empty for a thing that is not there. */
export function pointsOf(site: Site, { kind, id }: Ref): readonly Point[] {
  switch (kind) {
    case 'loop': {
      const loop = loopOf(site, id);
      return loop ? outlineOf(loop.shape) : [];
    }
    case 'lane': {
      const lane = laneOf(site, id);
      return lane ? laneOutline(lane) : [];
    }
    case 'mark': {
      const mark = markOf(site, id);
      return mark ? seenLine(mark) : [];
    }
    case 'steel':
      return steelOf(site, id)?.outline ?? [];
    case 'path':
      return pathOf(site, id)?.points ?? [];
    case 'underlay': {
      const underlay = underlayOf(site, id);
      return underlay ? underlayOutline(underlay) : [];
    }
    case 'probe': {
      const probe = probeOf(site, id);
      return probe ? bodyOf(site, probe) : [];
    }
  }
}

export const boxOf = (site: Site, refs: readonly Ref[]): Box | null =>
  boxAround(refs.flatMap((ref) => pointsOf(site, ref)));

/** What a rotation turns about: a thing's own centre, or the middle of several things. */
export function pivotOf(site: Site, refs: readonly Ref[]): Point | null {
  const [ref] = refs;
  if (refs.length === 1 && ref) {
    if (ref.kind === 'probe') return probeOf(site, ref.id)?.at ?? null;
    const loop = ref.kind === 'loop' ? loopOf(site, ref.id) : undefined;
    if (loop) return centreOf(loop.shape);
  }
  const box = boxOf(site, refs);
  return box && boxCentre(box);
}

const whatMark = (mark: Mark | undefined): string | null =>
  mark ? withinSentence(t(`mark.${mark.kind}`)) : null;

/** What the user calls it. */
export function nameOf(site: Site, { kind, id }: Ref): string {
  switch (kind) {
    case 'loop':
      return loopOf(site, id)?.name || id;
    case 'lane':
      return laneOf(site, id)?.name || id;
    case 'mark':
      return whatMark(markOf(site, id)) ?? id;
    case 'steel':
      return t(`outline.steel.${steelOf(site, id)?.kind ?? 'mat'}`);
    case 'path':
      return pathOf(site, id)?.name || id;
    case 'underlay':
      return underlayOf(site, id)?.name || id;
    case 'probe':
      return vehicleOf(probeOf(site, id)?.vehicle ?? '', site)?.name ?? t('outline.vehicle');
  }
}

/** The plan as a list that can be read and walked through without seeing the drawing. */
import { withinSentence } from '#i18n/locale';
import { t } from '#i18n/message';
import { perimeter } from '#plan/geometry/polygons';
import { vehicleOf } from '#plan/catalogue/vehicles';
import { steelBox } from '#plan/edits/index';
import type { Lane, Loop, Point, Shape, Site, Steel } from '#plan/schema';
import { centreOf } from '#plan/shapes/index';
import { pixelsOf } from '#plan/underlays';
import { laneAt, stationOf } from './geometry/lanes';
import { boxOf, nameOf } from './things';
import type { Ref } from './types';
import { angleText, depthText, lengthText, sizeText } from './wording';

export interface OutlineItem {
  readonly ref: Ref;
  readonly name: string;
  /** "lane", "rectangle loop", "stop line", "vehicle". */
  readonly what: string;
  /** In the units that the document shows; empty where a thing has none. */
  readonly size: string;
  /** Centre on the plan. */
  readonly position: string;
  /** Id of the lane that a loop or a vehicle lies in. */
  readonly lane: string | null;
}

/** Whole order of reading: each lane from left to right with its loops in the direction of travel, then the rest. */
export function outlineOf(site: Site): OutlineItem[] {
  const lanes = [...site.lanes].sort((a, b) => leftOf(a) - leftOf(b));
  const byLane = new Map<string | null, Loop[]>();
  for (const loop of site.loops) {
    const lane = laneAt(site.lanes, centreOf(loop.shape))?.lane.id ?? null;
    byLane.set(lane, [...(byLane.get(lane) ?? []), loop]);
  }
  const loopItems = (lane: string | null, order: (loop: Loop) => number): OutlineItem[] =>
    [...(byLane.get(lane) ?? [])]
      .sort((a, b) => order(a) - order(b))
      .map((loop) => loopItem(site, loop, lane));

  return [
    ...lanes.flatMap((lane) => [
      item(site, { kind: 'lane', id: lane.id }, t('outline.lane'), laneSize(site, lane), null),
      ...loopItems(lane.id, (loop) => stationOf(lane, centreOf(loop.shape))?.along ?? 0)
    ]),
    ...loopItems(null, (loop) => -centreOf(loop.shape)[1]),
    ...site.marks.map(({ id, kind }) => {
      const ref: Ref = { kind: 'mark', id };
      return item(site, ref, withinSentence(t(`mark.${kind}`)), '', null);
    }),
    ...site.steel.map((steel) => {
      const ref: Ref = { kind: 'steel', id: steel.id };
      return item(site, ref, t(`outline.steel.${steel.kind}`), steelSize(site, steel), null);
    }),
    ...site.paths.map(({ id, points }) => {
      const ref: Ref = { kind: 'path', id };
      return item(
        site,
        ref,
        t('outline.path'),
        t('outline.long', { length: lengthText(site, runOf(points)) }),
        null
      );
    }),
    ...site.probes.map((probe, index) => {
      const lane = laneAt(site.lanes, probe.at)?.lane.id ?? null;
      const vehicle = vehicleOf(probe.vehicle, site);
      const body = vehicle ? sizeText(site, vehicle.bodyWidth, vehicle.bodyLength) : '';
      const size = t('outline.heading', { size: body, angle: angleText(site, probe.heading) });
      return item(site, { kind: 'probe', id: String(index) }, t('outline.vehicle'), size, lane);
    }),
    ...site.underlays.map((underlay) => {
      const { width, height } = pixelsOf(underlay);
      const size = sizeText(site, width * underlay.metresPerPixel, height * underlay.metresPerPixel);
      const what = t(underlay.lines ? 'outline.lines' : 'outline.picture');
      return item(site, { kind: 'underlay', id: underlay.id }, what, size, null);
    })
  ];
}

const leftOf = ({ centreline }: Lane): number => Math.min(...centreline.map(([x]) => x));

function laneSize(site: Site, lane: Lane): string {
  const length = lengthText(site, runOf(lane.centreline));
  return t('outline.wide', { width: lengthText(site, lane.width), length });
}

/** Metres from end to end: the way there and back is twice that. */
const runOf = (points: readonly Point[]): number => perimeter([...points, ...[...points].reverse()]) / 2;

const roundText = (site: Site, points: readonly Point[]): string =>
  t('outline.round', { corners: points.length, length: lengthText(site, perimeter(points)) });

function steelSize(site: Site, { outline, depth }: Steel): string {
  const box = steelBox(outline);
  const size = box ? sizeText(site, box.width, box.length) : roundText(site, outline);
  return `${size}, ${depthText(site, depth)}`;
}

function loopItem(site: Site, { id, shape, turns }: Loop, lane: string | null): OutlineItem {
  const size = `${loopSize(site, shape)}, ${t('plan.turns', { count: turns })}`;
  return item(site, { kind: 'loop', id }, t(`outline.loop.${shape.kind}`), size, lane);
}

function loopSize(site: Site, shape: Shape): string {
  if (shape.kind === 'circle') return t('outline.acrossIt', { diameter: lengthText(site, shape.diameter) });
  if (shape.kind === 'polygon') return roundText(site, shape.points);
  const size = sizeText(site, shape.width, shape.length);
  return shape.rotation === 0 ? size : t('outline.turned', { size, angle: angleText(site, shape.rotation) });
}

function item(site: Site, ref: Ref, what: string, size: string, lane: string | null): OutlineItem {
  const centre = centreOfRef(site, ref);
  const position = centre ? `${lengthText(site, centre[0])}, ${lengthText(site, centre[1])}` : '';
  return { ref, name: nameOf(site, ref), what, size, position, lane };
}

function centreOfRef(site: Site, ref: Ref): Point | null {
  const loop = ref.kind === 'loop' ? site.loops.find(({ id }) => id === ref.id) : undefined;
  if (loop) return centreOf(loop.shape);
  const box = boxOf(site, [ref]);
  return box && [(box.left + box.right) / 2, (box.bottom + box.top) / 2];
}

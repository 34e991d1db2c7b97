/** What the plan is made of, by kind and in metres: for programs that measure it, not for eyes. */
import { t } from '#i18n/message';
import { visibleSite } from '#plan/layers';
import { centroid } from '#plan/geometry/polygons';
import { between, distance } from '#plan/geometry/points';
import { leadInPath, tailPath } from '#plan/lead-out';
import type { DisplayUnits, Loop, Mark, Point, Site, Steel } from '#plan/schema';
import { centreOf, outlineOf, pathOf } from '#plan/shapes/index';
import { laneOutline } from '#editor/geometry/lanes';
import { dimensionLine, isClosedMark } from '#editor/geometry/marks';
import { lengthText } from './tape';
import { NOTE_WIDTH, wrapped } from './writing';

export const PLAN_KINDS = [
  'lanes',
  'lane-centres',
  'marks',
  'saw-cut',
  'home-run',
  'lead-in',
  'conduits',
  'steel',
  'boxes',
  'dimensions',
  'text'
] as const;
export type PlanKind = (typeof PLAN_KINDS)[number];

type Figure =
  | { readonly kind: 'way'; readonly points: readonly Point[]; readonly closed: boolean }
  | { readonly kind: 'circle'; readonly at: Point; readonly radius: number }
  /** Something with no size of its own. */
  | { readonly kind: 'place'; readonly at: Point }
  /** `at`: the middle of the first line, or where it begins; `size`: metres. */
  | {
      readonly kind: 'text';
      readonly at: Point;
      readonly lines: readonly string[];
      readonly size: number;
      readonly align: 'left' | 'center';
    };

export interface PlanThing {
  readonly of: PlanKind;
  readonly figure: Figure;
}

/** Metres. */
const TEXT = { name: 0.25, small: 0.18 } as const;

const way = (of: PlanKind, points: readonly Point[], closed = false): PlanThing => ({
  of,
  figure: { kind: 'way', points, closed }
});
const text = (at: Point, words: string, size: number, of: PlanKind = 'text'): PlanThing[] =>
  words.trim() === '' ? [] : [{ of, figure: { kind: 'text', at, lines: [words], size, align: 'center' } }];
/** In the lines that it has on the plan. */
const writing = (at: Point, words: string, align: 'left' | 'center'): PlanThing[] =>
  words.trim() === ''
    ? []
    : [
        {
          of: 'text',
          figure: { kind: 'text', at, lines: wrapped(words, NOTE_WIDTH), size: TEXT.small, align }
        }
      ];

/** Slots as they are sawn, one that two runs share once. */
function cuts({ shape }: Loop): PlanThing[] {
  if (shape.kind === 'circle')
    return [{ of: 'saw-cut', figure: { kind: 'circle', at: shape.centre, radius: shape.diameter / 2 } }];
  const seen = new Set<string>();
  const common = pathOf(shape).cells.flatMap((cell) =>
    cell.kind === 'circle'
      ? []
      : cell.edges.flatMap(({ from, to, shared }) => {
          const key = [String(from), String(to)].sort().join(' ');
          if (!shared || seen.has(key)) return [];
          seen.add(key);
          return [way('saw-cut', [from, to])];
        })
  );
  return [way('saw-cut', outlineOf(shape), true), ...common];
}

function loopThings(site: Site, loop: Loop): PlanThing[] {
  const tail = tailPath(site, loop);
  const [x, y] = centreOf(loop.shape);
  return [
    ...cuts(loop),
    ...(tail ? [way('home-run', tail)] : []),
    ...text([x, y], loop.name || loop.id, TEXT.name),
    ...text([x, y - 1.6 * TEXT.name], t('plan.turns', { count: loop.turns }), TEXT.small)
  ];
}

const kindOf = ({ kind }: Mark): PlanKind =>
  kind === 'conduit' ? 'conduits' : kind === 'pull-box' || kind === 'cabinet' ? 'boxes' : 'marks';

function dimensionThings(mark: Mark, units: DisplayUnits): PlanThing[] {
  const own = dimensionLine(mark);
  const [from, to] = mark.points;
  if (!own || !from || !to) return [];
  const said = lengthText(distance(from, to), units);
  const words = mark.text ? `${mark.text} ${said}` : said;
  const ends: readonly (readonly [Point, Point])[] = [[from, own[0]], [to, own[1]]]; // prettier-ignore
  return [
    way('dimensions', own),
    ...ends.filter(([a, b]) => distance(a, b) > 0).map((each) => way('dimensions', each)),
    ...text(between(...own), words, TEXT.small, 'dimensions')
  ];
}

function markThings(mark: Mark, units: DisplayUnits): PlanThing[] {
  const { kind, points } = mark;
  if (kind === 'dimension') return dimensionThings(mark, units);
  const [first] = points;
  if (first && points.length === 1) {
    if (kind === 'note') return writing(first, mark.text ?? '', 'left');
    const words = mark.text || t(`mark.${kind}`);
    return [{ of: kindOf(mark), figure: { kind: 'place', at: first } }, ...writing(first, words, 'center')];
  }
  const middle = Math.floor((points.length - 1) / 2);
  const at = isClosedMark(mark) ? centroid(points) : between(points[middle]!, points[middle + 1]!);
  return [way(kindOf(mark), points, isClosedMark(mark)), ...writing(at, mark.text ?? '', 'center')];
}

const steelThing = ({ outline }: Steel): PlanThing => way('steel', outline, true);

/** What is hidden is left out, and so are vehicles and what is only traced. */
export function planGeometry(whole: Site): readonly PlanThing[] {
  const site = visibleSite(whole);
  return [
    ...site.lanes.flatMap((lane) => [
      way('lanes', laneOutline(lane), true),
      way('lane-centres', lane.centreline)
    ]),
    ...site.steel.map(steelThing),
    ...site.marks.flatMap((mark) => markThings(mark, site.displayUnits)),
    ...site.circuits.flatMap((circuit) => {
      const path = leadInPath(site, circuit);
      return path ? [way('lead-in', path)] : [];
    }),
    ...site.loops.flatMap((loop) => loopThings(site, loop))
  ];
}

/** What the library says of one thing, as points in the frame that it stands in, or as a block that is set there. */
import type { RawEntity } from 'dxf';
import type { Point } from '#plan/schema';
import type { LeftOut } from './drawing';
import { bulgePoints, ellipsePoints, splinePoints } from './curves';

export interface PathThing {
  readonly kind: 'path';
  readonly layer: string;
  readonly points: readonly Point[];
  /** Two points that may be the continuation of the line before. */
  readonly isLine: boolean;
}

export interface BlockThing {
  readonly kind: 'block';
  readonly layer: string;
  readonly name: string;
  readonly at: Point;
  readonly scale: Point;
  /** Degrees. */
  readonly rotation: number;
  readonly isMirrored: boolean;
  readonly rows: number;
  readonly columns: number;
  readonly spacing: Point;
}

export type Thing = PathThing | BlockThing;
export type Read = Thing | LeftOut;

/** Names of things that become lines; everything else is only counted. */
export const DRAWN: ReadonlySet<string> = new Set([
  'LINE',
  'LWPOLYLINE',
  'POLYLINE',
  'CIRCLE',
  'ARC',
  'ELLIPSE',
  'SPLINE',
  'INSERT'
]);

const KINDS: Readonly<Record<string, LeftOut>> = {
  TEXT: 'text',
  MTEXT: 'text',
  ATTRIB: 'text',
  ATTDEF: 'text',
  MULTILEADER: 'text',
  HATCH: 'fill',
  SOLID: 'fill',
  TRACE: 'fill',
  MPOLYGON: 'fill',
  DIMENSION: 'dimension',
  LEADER: 'dimension',
  TOLERANCE: 'dimension',
  '3DFACE': 'surface',
  '3DSOLID': 'surface',
  MESH: 'surface',
  SURFACE: 'surface',
  BODY: 'surface',
  REGION: 'surface',
  POINT: 'point',
  IMAGE: 'picture',
  OLEFRAME: 'picture',
  OLE2FRAME: 'picture',
  WIPEOUT: 'picture',
  VIEWPORT: 'sheet'
};

/** Null for what only closes something else. */
export const leftOutKind = (type: string): LeftOut | null => {
  if (type === 'SEQEND' || type === 'VERTEX') return null;
  return Object.hasOwn(KINDS, type) ? KINDS[type]! : 'other';
};

const number = (value: unknown, usual = NaN): number => (typeof value === 'number' ? value : usual);
const pointOf = (from: unknown): Point => {
  const { x, y } = (from ?? {}) as { readonly x?: unknown; readonly y?: unknown };
  return [number(x), number(y)];
};
const list = (value: unknown): readonly unknown[] => (Array.isArray(value) ? (value as unknown[]) : []);

const ALMOST = 1e-6;

/** Whether its plane is the drawing's, seen from above or from below; null for any other. */
function seenFrom({ extrusionX, extrusionY, extrusionZ }: RawEntity): 'above' | 'below' | null {
  if (Math.hypot(number(extrusionX, 0), number(extrusionY, 0)) > ALMOST) return null;
  return number(extrusionZ, 1) < 0 ? 'below' : 'above';
}

const mirrored = ([x, y]: Point): Point => [-x, y];

function cornersOf({ vertices, closed }: RawEntity, unit: number | null): Point[] {
  const corners = list(vertices).map((vertex) => ({
    at: pointOf(vertex),
    bulge: number((vertex as { readonly bulge?: unknown }).bulge, 0)
  }));
  const [first] = corners;
  if (!first) return [];
  const next = closed === true ? [...corners.slice(1), first] : corners.slice(1);
  return [
    first.at,
    ...next.flatMap(({ at }, index) => bulgePoints(corners[index]!.at, at, corners[index]!.bulge, unit))
  ];
}

/** `axis`: angles count from the longer axis of an ellipse, from x of a circle. */
function roundOf(entity: RawEntity, unit: number | null): Point[] {
  const centre = pointOf(entity);
  const from = number(entity['startAngle'], 0);
  const to = number(entity['endAngle'], 2 * Math.PI);
  if (entity.type === 'ELLIPSE') {
    const major: Point = [number(entity['majorX']), number(entity['majorY'])];
    const isBelow = number(entity['extrusionZ'], 1) < 0;
    const ratio = number(entity['axisRatio']) * (isBelow ? -1 : 1);
    return ellipsePoints({ centre, major, ratio, from, to }, unit);
  }
  const radius = number(entity['r']);
  const sweep = entity.type === 'CIRCLE' ? { from: 0, to: 2 * Math.PI } : { from, to };
  return ellipsePoints({ centre, major: [radius, 0], ratio: 1, ...sweep }, unit);
}

function splineOf(entity: RawEntity): Point[] | null {
  const weights = list(entity['weights']).map((weight) => number(weight));
  return splinePoints({
    degree: number(entity['degree']),
    knots: list(entity['knots']).map((knot) => number(knot)),
    controls: list(entity['controlPoints']).map(pointOf),
    weights: weights.length > 0 ? weights : null
  });
}

function blockOf(entity: RawEntity, layer: string, isMirrored: boolean): Read {
  const name = entity['block'];
  const count = (value: unknown): number => Math.max(1, number(value, 1));
  const thing: BlockThing = {
    kind: 'block',
    layer,
    name: typeof name === 'string' ? name : '',
    at: pointOf(entity),
    scale: [number(entity['scaleX'], 1), number(entity['scaleY'], 1)],
    rotation: number(entity['rotation'], 0),
    isMirrored,
    rows: count(entity['rowCount']),
    columns: count(entity['columnCount']),
    spacing: [number(entity['columnSpacing'], 0), number(entity['rowSpacing'], 0)]
  };
  const numbers = [...thing.at, ...thing.scale, thing.rotation, ...thing.spacing];
  return numbers.every(Number.isFinite) ? thing : 'damaged';
}

function pointsOf(entity: RawEntity, unit: number | null): readonly Point[] | null {
  switch (entity.type) {
    case 'LINE':
      return [pointOf(entity['start']), pointOf(entity['end'])];
    case 'LWPOLYLINE':
    case 'POLYLINE':
      return cornersOf(entity, unit);
    case 'SPLINE':
      return splineOf(entity);
    default:
      return roundOf(entity, unit);
  }
}

/** Where a plane of its own counts: lines, ellipses and splines say their places in the drawing's. */
const IN_OWN_PLANE: ReadonlySet<string> = new Set(['LWPOLYLINE', 'POLYLINE', 'CIRCLE', 'ARC', 'INSERT']);

/** `unit`: metres of one, null where nobody knows. */
export function thingOf(entity: RawEntity, unit: number | null): Read {
  const { type, layer = '0' } = entity;
  if (entity['paperSpace'] === 1) return 'sheet';
  if (entity['polygonMesh'] === true || entity['polyfaceMesh'] === true) return 'surface';
  const side = type === 'LINE' || type === 'SPLINE' ? 'above' : seenFrom(entity);
  if (side === null) return 'tilted';
  const isMirrored = side === 'below' && IN_OWN_PLANE.has(type);
  if (type === 'INSERT') return blockOf(entity, layer, isMirrored);
  const found = pointsOf(entity, unit);
  if (!found || found.length < 2 || !found.every((point) => point.every(Number.isFinite))) return 'damaged';
  return {
    kind: 'path',
    layer,
    points: isMirrored ? found.map(mirrored) : found,
    isLine: type === 'LINE'
  };
}

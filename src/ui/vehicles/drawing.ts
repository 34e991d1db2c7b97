/**
 * A vehicle to scale in pixels: from its right side above the road, and below that from above, both with the front to the
 * right. Heights are measured from the road surface.
 */
import type { CatalogueVehicle } from '#plan/catalogue/vehicles';
import type { VehiclePart } from '#plan/schema';

/** Seen along one of its axes a ring is an ellipse; edge on, a line. `turn` of its long axis, degrees clockwise. */
export interface DrawnRing {
  readonly cx: number;
  readonly cy: number;
  readonly rx: number;
  readonly ry: number;
  readonly turn: number;
}

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export type DrawnPart =
  | { readonly kind: 'plate'; readonly index: number; readonly side: Box; readonly plan: Box }
  | {
      readonly kind: 'ring';
      readonly index: number;
      readonly side: DrawnRing;
      readonly plan: DrawnRing;
      /** Of the conductor. */
      readonly thickness: number;
    };

/** A height that some part has, with the place where it is written and the nearest part of it. */
interface Level {
  readonly height: number;
  readonly y: number;
  readonly wordsY: number;
  readonly to: number;
}

/** From one end to the other; of a horizontal one `a` and `b` are x, of an upright one y. */
export interface Dimension {
  readonly metres: number;
  readonly a: number;
  readonly b: number;
  /** Where its line lies across that. */
  readonly at: number;
}

export interface VehicleDrawing {
  readonly width: number;
  readonly height: number;
  /** Pixels per metre, the same in both views. */
  readonly scale: number;
  readonly road: number;
  readonly outline: Box;
  readonly parts: readonly DrawnPart[];
  readonly levels: readonly Level[];
  readonly overallLength: Dimension;
  readonly overallWidth: Dimension;
}

/** Pixels around the drawing: heights stand to the left, the part's own width to the right. */
const MARGIN = { left: 70, right: 58, top: 22, bottom: 10 } as const;
/** Between the road and the view from above: the length is written there. */
const BETWEEN = 46;
/** Pixels that both views may take together, without margins. */
const MOST_HEIGHT = 150;
/** Metres that the view from the side shows at least. */
const LEAST_TALL = 0.6;
/** Between two lines of small text. */
export const LINE = 13;
/** A sheet has no thickness; this one can be seen. */
const SHEET = 4;

const half = (part: VehiclePart): number => (part.kind === 'plate' ? part.length / 2 : part.radius);
const heightOf = (part: VehiclePart): number => (part.kind === 'plate' ? part.height : part.centre[2]);
const topOf = (part: VehiclePart): number => heightOf(part) + (part.kind === 'plate' ? 0 : part.radius);
const reachOf = (part: VehiclePart): number =>
  Math.abs(part.centre[0]) + (part.kind === 'plate' ? part.width / 2 : part.radius);

/** Written at least a line apart, in the order given, each as near to its own place as that allows. */
export function spread(places: readonly number[], gap: number): readonly number[] {
  const blocks: { sum: number; count: number }[] = [];
  const start = ({ sum, count }: { sum: number; count: number }): number =>
    sum / count - ((count - 1) * gap) / 2;
  for (const place of places) {
    blocks.push({ sum: place, count: 1 });
    for (let last = blocks.length - 1; last > 0; last--) {
      const [before, block] = [blocks[last - 1]!, blocks[last]!];
      if (start(before) + before.count * gap <= start(block)) break;
      blocks.splice(last - 1, 2, { sum: before.sum + block.sum, count: before.count + block.count });
    }
  }
  return blocks.flatMap((block) => Array.from({ length: block.count }, (_, k) => start(block) + k * gap));
}

/** `normal` as it shows in the picture, x to the right and y down, and along the line of sight. */
function ellipse(
  cx: number,
  cy: number,
  radius: number,
  normal: readonly [number, number, number]
): DrawnRing {
  const [right, down, toward] = normal;
  const size = Math.hypot(right, down, toward);
  const turn = right === 0 && down === 0 ? 0 : (Math.atan2(down, right) * 180) / Math.PI + 90;
  return { cx, cy, rx: radius, ry: (radius * Math.abs(toward)) / size, turn };
}

/** `width`: pixels that there are. The height follows from the vehicle. */
export function drawVehicle(
  { parts, bodyWidth, bodyLength }: CatalogueVehicle,
  width: number
): VehicleDrawing {
  const front = Math.max(bodyLength / 2, ...parts.map((part) => part.centre[1] + half(part)));
  const rear = Math.min(-bodyLength / 2, ...parts.map((part) => part.centre[1] - half(part)));
  const across = 2 * Math.max(bodyWidth / 2, ...parts.map(reachOf));
  const tall = Math.max(LEAST_TALL, ...parts.map(topOf));
  const scale = Math.min(
    (width - MARGIN.left - MARGIN.right) / (front - rear),
    MOST_HEIGHT / (tall + across)
  );
  const left = MARGIN.left + (width - MARGIN.left - MARGIN.right - (front - rear) * scale) / 2;
  const heights = [...new Set(parts.map(heightOf))].sort((a, b) => b - a);
  const free = spread(
    heights.map((height) => -height * scale),
    LINE
  );
  // none of them under the road, and the uppermost still in the picture
  const up = Math.min(0, -LINE / 2 - (free.at(-1) ?? 0));
  const road = Math.max(MARGIN.top + tall * scale, LINE - up - (free[0] ?? 0));
  const middle = road + BETWEEN + (across / 2) * scale;
  const x = (ahead: number): number => left + (ahead - rear) * scale;
  const z = (height: number): number => road - height * scale;

  const drawn = parts.map((part, index): DrawnPart => {
    const [toRight, ahead] = part.centre;
    const y = middle + toRight * scale;
    if (part.kind === 'plate') {
      const from = x(ahead - part.length / 2);
      const long = part.length * scale;
      return {
        ...{ kind: 'plate', index },
        side: { x: from, y: z(part.height) - SHEET / 2, width: long, height: SHEET },
        plan: { x: from, y: y - (part.width / 2) * scale, width: long, height: part.width * scale }
      };
    }
    const [nx, ny, nz] = part.axis;
    const radius = part.radius * scale;
    return {
      ...{ kind: 'ring', index, thickness: 2 * part.conductorRadius * scale },
      side: ellipse(x(ahead), z(part.centre[2]), radius, [ny, -nz, nx]),
      plan: ellipse(x(ahead), y, radius, [ny, nx, nz])
    };
  });

  return {
    width,
    height: middle + (across / 2) * scale + MARGIN.bottom,
    scale,
    road,
    outline: {
      x: x(-bodyLength / 2),
      y: middle - (bodyWidth / 2) * scale,
      width: bodyLength * scale,
      height: bodyWidth * scale
    },
    parts: drawn,
    levels: heights.map((height, k) => ({
      height,
      y: z(height),
      wordsY: road + free[k]! + up,
      to: Math.min(
        ...parts.filter((part) => heightOf(part) === height).map((part) => x(part.centre[1] - half(part)))
      )
    })),
    overallLength: { metres: bodyLength, a: x(-bodyLength / 2), b: x(bodyLength / 2), at: road + 20 },
    overallWidth: {
      metres: bodyWidth,
      a: middle - (bodyWidth / 2) * scale,
      b: middle + (bodyWidth / 2) * scale,
      at: Math.min(x(rear), x(-bodyLength / 2)) - 8
    }
  };
}

/** The chosen part's length above it, and its width beside it. */
export function dimensionsOf(
  { parts }: VehicleDrawing,
  part: VehiclePart,
  index: number
): { readonly length: Dimension; readonly width: Dimension | null } | null {
  const drawn = parts[index];
  if (!drawn) return null;
  if (drawn.kind === 'plate' && part.kind === 'plate') {
    const { side, plan } = drawn;
    return {
      length: { metres: part.length, a: side.x, b: side.x + side.width, at: side.y - 7 },
      width: { metres: part.width, a: plan.y, b: plan.y + plan.height, at: plan.x + plan.width + 8 }
    };
  }
  if (drawn.kind !== 'ring' || part.kind !== 'ring') return null;
  const { cx, cy, rx } = drawn.side;
  return { length: { metres: 2 * part.radius, a: cx - rx, b: cx + rx, at: cy - rx - 6 }, width: null };
}

/** The part at a place of the picture: the smallest of those that are there, since it lies upon the others. */
export function partAt({ parts }: VehicleDrawing, x: number, y: number): number | null {
  const REACH = 5;
  const inBox = (box: Box): boolean =>
    x >= box.x - REACH &&
    x <= box.x + box.width + REACH &&
    y >= box.y - REACH &&
    y <= box.y + box.height + REACH;
  const inRing = ({ cx, cy, rx, ry, turn }: DrawnRing): boolean => {
    const angle = (turn * Math.PI) / 180;
    const [dx, dy] = [x - cx, y - cy];
    const along = dx * Math.cos(angle) + dy * Math.sin(angle);
    const off = -dx * Math.sin(angle) + dy * Math.cos(angle);
    return (along / (rx + REACH)) ** 2 + (off / (ry + REACH)) ** 2 <= 1;
  };
  const found = parts
    .filter((part) =>
      part.kind === 'plate' ? inBox(part.side) || inBox(part.plan) : inRing(part.side) || inRing(part.plan)
    )
    .map((part) => ({
      index: part.index,
      area: part.kind === 'plate' ? part.plan.width * part.plan.height : Math.PI * part.side.rx ** 2
    }))
    .sort((a, b) => a.area - b.area);
  return found[0]?.index ?? null;
}

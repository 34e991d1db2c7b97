/**
 * A cut across the slots of one loop, to draw it and to check it: where the wires lie, what covers them, what steel lies
 * below. Metres; z is negative below the road surface. Turn i lies at −depth + D·(i + ½), D the insulated diameter: one
 * column from the bottom. A slot that two cells share holds 2N wires.
 */
import { wireOf } from '#plan/catalogue/wires';
import { distance } from '#plan/geometry/points';
import { contains, sidesOf } from '#plan/geometry/polygons';
import { segmentDistance } from '#plan/geometry/segments';
import type { Loop, Point, Site } from '#plan/schema';
import { outlineOf, pathOf } from '#plan/shapes/index';

/** Steel further aside than this does not lie below the loop, metres. */
const BESIDE = 0.3;
/** Steel deeper than this below the bottom of the slot is out of the picture, metres. */
const BELOW = 1;

interface SectionWire {
  /** Height of the axis. */
  readonly z: number;
  /** 0 or 1: in a shared slot the cell whose turn it is; they lie interleaved. */
  readonly cell: 0 | 1;
}

interface SectionSlot {
  readonly isShared: boolean;
  /** From the bottom up. */
  readonly wires: readonly SectionWire[];
  /** Road surface to the top of the uppermost wire; negative when wires stand out. */
  readonly cover: number;
  /** Cross-section of the sealant, m². */
  readonly fill: number;
}

export interface SectionSteel {
  readonly id: string;
  readonly kind: 'mat' | 'plate';
  readonly depth: number;
  /** Bars; null for a plate. */
  readonly bars: { readonly pitch: number; readonly radius: number } | null;
}

export interface SlotSection {
  readonly depth: number;
  readonly width: number;
  /** Diameters. */
  readonly conductor: number;
  readonly insulated: number;
  readonly fits: boolean;
  /** The ordinary slot first; then the shared one of a loop that has one. */
  readonly slots: readonly SectionSlot[];
  /** The uppermost first. */
  readonly steel: readonly SectionSteel[];
}

function liesNear(loop: Loop, outline: readonly Point[]): boolean {
  const own = outlineOf(loop.shape);
  if (own.some((point) => contains(outline, point)) || outline.some((point) => contains(own, point)))
    return true;
  return sidesOf(own).some((a) =>
    sidesOf(outline).some((b) => distance(a.from, a.to) > 0 && segmentDistance(a, b) < BESIDE)
  );
}

/** Null for a wire that nobody knows. */
export function slotSection(loop: Loop, site: Pick<Site, 'wires' | 'steel'>): SlotSection | null {
  const wire = wireOf(loop.wire, site);
  if (!wire) return null;
  const { depth, width } = loop.slot;
  const pitch = wire.insulatedDiameter;
  const slotOf = (isShared: boolean): SectionSlot => {
    const count = isShared ? 2 * loop.turns : loop.turns;
    return {
      isShared,
      wires: Array.from({ length: count }, (_, i) => ({
        z: -depth + pitch * (i + 0.5),
        cell: isShared && i % 2 === 1 ? 1 : 0
      })),
      cover: depth - pitch * count,
      fill: Math.max(0, depth * width - (Math.PI / 4) * pitch * pitch * count)
    };
  };
  const isShared = pathOf(loop.shape).cells.some(
    (cell) => cell.kind === 'polygon' && cell.edges.some(({ shared }) => shared)
  );
  return {
    depth,
    width,
    conductor: wire.conductorDiameter,
    insulated: pitch,
    fits: pitch <= width,
    slots: isShared ? [slotOf(false), slotOf(true)] : [slotOf(false)],
    steel: site.steel
      .filter((each) => each.depth <= depth + BELOW && liesNear(loop, each.outline))
      .map((each) => ({
        id: each.id,
        kind: each.kind,
        depth: each.depth,
        bars: each.kind === 'mat' ? { pitch: each.pitch, radius: each.barRadius } : null
      }))
      .sort((a, b) => a.depth - b.depth)
  };
}

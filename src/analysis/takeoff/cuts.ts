/**
 * Everything that is sawn and cored on a site: slots once, what runs past their ends, holes. One result for the take-off,
 * the cutting plan and the report's totals.
 */
import { estimateOf, type StatedEstimate } from '#plan/catalogue/estimate';
import type { Point, Site } from '#plan/schema';
import { deepCorners, type End } from './corners';
import { bladeReaches, overcutArea, overcutLength } from './overcut';
import { piecesOf, type Piece } from './pieces';
import { strokesOf, woundLoops, type Wound } from './strokes';

/** A slot as it is sawn. */
export interface SawnPiece extends Piece {
  readonly overcut: { readonly from: number; readonly to: number };
  /** Cubic metres that run past its ends, to be sealed. */
  readonly overcutVolume: number;
}

export interface Hole {
  readonly owner: Wound;
  readonly at: Point;
  readonly depth: number;
  /** Cubic metres of it that no slot has taken away already. */
  readonly volume: number;
}

/** A home run whose length was typed: it is sawn, but nobody knows where. */
export interface Unplaced {
  readonly owner: Wound;
  readonly length: number;
  readonly depth: number;
  readonly width: number;
}

export interface Sawn {
  readonly wound: readonly Wound[];
  readonly estimate: StatedEstimate;
  readonly pieces: readonly SawnPiece[];
  readonly unplaced: readonly Unplaced[];
  readonly holes: readonly Hole[];
  /** Depths, metres, that the blade does not reach, the deepest first. */
  readonly outOfReach: readonly number[];
}

/** How many slots leave the hole: those that end there, and twice those of the same loops that pass through. */
const armsAt = (corner: readonly End[], pieces: readonly Piece[]): readonly Piece[] => {
  const ending = corner.map(({ piece }) => piece);
  const at = corner[0]!.at;
  const passing = pieces.filter(({ from, to, length, circle }) => {
    if (circle) return Math.abs(Math.hypot(at[0] - circle.centre[0], at[1] - circle.centre[1]) - circle.radius) < 1e-3; // prettier-ignore
    const [ux, uy] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
    const [dx, dy] = [at[0] - from[0], at[1] - from[1]];
    const along = dx * ux + dy * uy;
    return Math.abs(dx * uy - dy * ux) < 1e-3 && along > 1e-3 && along < length - 1e-3;
  });
  return [...ending, ...passing, ...passing];
};

function holesAt(
  corners: readonly (readonly End[])[],
  pieces: readonly Piece[],
  diameter: number
): readonly Hole[] {
  const byLoop = new Map<Wound, Piece[]>();
  for (const piece of pieces)
    for (const wound of [piece.owner, ...piece.others]) {
      const list = byLoop.get(wound);
      if (list) list.push(piece);
      else byLoop.set(wound, [piece]);
    }
  return corners.map((corner): Hole => {
    const loops = new Set(corner.flatMap(({ piece }) => [piece.owner, ...piece.others]));
    const near = [...new Set([...loops].flatMap((wound) => byLoop.get(wound)!))];
    const depth = Math.max(...corner.map(({ piece }) => piece.depth));
    const owner = corner.reduce((best, { piece }) => (piece.owner.index < best.index ? piece.owner : best), corner[0]!.piece.owner); // prettier-ignore
    // an arm takes a strip from the middle to the rim; where strips lie over one another in the middle is left out
    const slots = armsAt(corner, near).reduce((sum, piece) => sum + (diameter / 2) * piece.width * piece.depth, 0); // prettier-ignore
    return { owner, at: corner[0]!.at, depth, volume: Math.max(0, (Math.PI * diameter * diameter * depth) / 4 - slots) }; // prettier-ignore
  });
}

/** Pure geometry, quick enough to follow a gesture. */
export function sawnOn(site: Site): Sawn {
  const estimate = estimateOf(site);
  const wound = woundLoops(site);
  const { straight, round } = strokesOf(wound);
  const pieces = piecesOf(straight, round);
  const { bladeDiameter_m: blade, coreHoles, overcuts } = estimate;
  const corners = coreHoles || overcuts ? deepCorners(pieces, blade) : [];
  const [runsFrom, runsTo] = [new Set<Piece>(), new Set<Piece>()];
  if (!coreHoles)
    for (const corner of corners) for (const { piece, isTo } of corner) (isTo ? runsTo : runsFrom).add(piece);
  const sawn = pieces.map((piece): SawnPiece => {
    const run = overcutLength(blade, piece.depth) ?? 0;
    const [from, to] = [runsFrom.has(piece) ? run : 0, runsTo.has(piece) ? run : 0];
    // where a shallower slot goes on, only what is deeper is sawn anew: the segment of the blade below that slot
    const below = (depth: number): number => overcutArea(blade, piece.depth - depth) ?? 0;
    const area = (from > 0 ? below(piece.goesOnFrom) : 0) + (to > 0 ? below(piece.goesOnTo) : 0);
    return { ...piece, overcut: { from, to }, overcutVolume: area * piece.width };
  });
  const unplaced = wound.flatMap((owner): Unplaced[] => {
    const { tail, slot } = owner.loop;
    const run = tail.length - (tail.route?.allowance ?? 0);
    if (owner.tail || !(run > 0)) return [];
    return [{ owner, length: run, depth: slot.depth, width: slot.width }];
  });
  return {
    wound,
    estimate,
    pieces: sawn,
    unplaced,
    holes: coreHoles ? holesAt(corners, pieces, estimate.coreDiameter_m) : [],
    outOfReach: [...new Set([...pieces, ...unplaced].map(({ depth }) => depth))]
      .filter((depth) => !bladeReaches(blade, depth))
      .sort((a, b) => b - a)
  };
}

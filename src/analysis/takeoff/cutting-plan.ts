/**
 * In which order a site is sawn, and from where each cut is set out.
 *
 * The order: loop by loop, as one comes to them along the baseline (its first point in station, then the nearer to the
 * line; without a baseline as they were drawn). Of each loop first the sides, so that its corners are fixed, in the order in
 * which the wire runs; then the slot that its halves share; then the corner cuts, which go from finished side to finished
 * side; last the home run, from the loop to the box. Common practice.
 */
import type { Point, Site } from '#plan/schema';
import { baselineOf, setOutFrom, type Baseline } from './baseline';
import { sawnOn, type Sawn, type SawnPiece } from './cuts';
import type { CoreHole, Cut, CutKind, CuttingPlan } from './results';
import type { Wound } from './strokes';
import { cautionsOf } from './takeoff';

const RANKS: Readonly<Record<CutKind, number>> = {
  side: 0,
  round: 0,
  'shared side': 1,
  'corner cut': 2,
  'home run': 3
};

const endsOf = ({ circle, from, to }: SawnPiece): readonly Point[] => (circle ? [circle.centre] : [from, to]);

/** Loops in the order in which one comes to them; the first is 0. */
function turnsOf({ wound, pieces }: Sawn, baseline: Baseline | null): ReadonlyMap<Wound, number> {
  const first = new Map<Wound, { station: number; aside: number }>();
  if (baseline)
    for (const piece of pieces)
      for (const end of piece.kind === 'home run' ? [] : endsOf(piece)) {
        const { station, offset } = setOutFrom(baseline, end);
        const aside = Math.abs(offset);
        const known = first.get(piece.owner);
        const isEarlier = !known || station < known.station - SAME || (station < known.station + SAME && aside < known.aside); // prettier-ignore
        if (isEarlier) first.set(piece.owner, { station, aside });
      }
  const far = { station: Infinity, aside: 0 };
  const order = wound.toSorted((a, b) => {
    const [one, other] = [first.get(a) ?? far, first.get(b) ?? far];
    if (Math.abs(one.station - other.station) > SAME) return one.station - other.station;
    return Math.abs(one.aside - other.aside) > SAME ? one.aside - other.aside : a.index - b.index;
  });
  return new Map(order.map((each, turn) => [each, turn]));
}

/** Metres: stations nearer than this are one. */
const SAME = 1e-3;

/** `number`: among the cuts of its loop. */
const cutOf = (piece: SawnPiece, order: number, number: number, baseline: Baseline | null): Cut => {
  const { from, to, circle } = piece;
  const [start, end] = circle ? [circle.centre, circle.centre] : [from, to];
  return {
    id: `${piece.owner.loop.id}/cut/${number}`,
    order,
    loop: piece.owner.loop.id,
    sharedWith: piece.others.map(({ loop }) => loop.id),
    kind: piece.kind,
    from,
    to,
    circle,
    length: piece.length,
    depth: piece.depth,
    width: piece.width,
    overcut: piece.overcut,
    setOut: baseline && { from: setOutFrom(baseline, start), to: setOutFrom(baseline, end) }
  };
};

function totalsOf({ pieces, unplaced }: Sawn): CuttingPlan['totals'] {
  const totals = new Map<string, { depth: number; width: number; length: number; overcut: number }>();
  const add = (depth: number, width: number, length: number, overcut: number): void => {
    const key = `${depth}/${width}`;
    const total = totals.get(key) ?? { depth, width, length: 0, overcut: 0 };
    totals.set(key, { ...total, length: total.length + length, overcut: total.overcut + overcut });
  };
  for (const { depth, width, length, overcut } of pieces)
    add(depth, width, length, overcut.from + overcut.to);
  for (const { depth, width, length } of unplaced) add(depth, width, length, 0);
  return [...totals.values()].sort((a, b) => b.depth - a.depth || b.width - a.width);
}

/** Pure geometry, quick enough to follow a gesture. */
export function cuttingPlanOf(site: Site): CuttingPlan {
  const sawn = sawnOn(site);
  const baseline = baselineOf(site);
  const turns = turnsOf(sawn, baseline);
  // a stable sort: what ranks alike stays in the order in which the wire runs
  const pieces = sawn.pieces.toSorted(
    (a, b) => turns.get(a.owner)! - turns.get(b.owner)! || RANKS[a.kind] - RANKS[b.kind]
  );
  const counts = new Map<Wound, number>();
  const numberOf = ({ owner }: SawnPiece): number => {
    const number = (counts.get(owner) ?? 0) + 1;
    counts.set(owner, number);
    return number;
  };
  const holes = sawn.holes.toSorted((a, b) => turns.get(a.owner)! - turns.get(b.owner)!);
  return {
    baseline: baseline && { name: baseline.name, points: baseline.line.points },
    cuts: pieces.map((piece, at) => cutOf(piece, at + 1, numberOf(piece), baseline)),
    holes: holes.map(({ owner, at, depth }): CoreHole => ({
      loop: owner.loop.id,
      at,
      diameter: sawn.estimate.coreDiameter_m,
      depth,
      setOut: baseline && setOutFrom(baseline, at)
    })),
    unplaced: sawn.unplaced.map(({ owner, length, depth, width }) => ({ loop: owner.loop.id, length, depth, width })), // prettier-ignore
    totals: totalsOf(sawn),
    cautions: cautionsOf(sawn)
  };
}

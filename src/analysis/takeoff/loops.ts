/** What is sawn, sorted by the loop that it counts with. */
import type { Site } from '#plan/schema';
import type { Hole, Sawn, SawnPiece } from './cuts';
import { cablesInRow } from './lines/parts';
import { placeOf, type OfLoop } from './lines/of-loop';
import type { Wound } from './strokes';

export function loopsSawn({ circuits }: Pick<Site, 'circuits'>, sawn: Sawn): readonly OfLoop[] {
  const own = new Map<Wound, SawnPiece[]>(sawn.wound.map((each) => [each, []]));
  const others = new Map<Wound, SawnPiece[]>(sawn.wound.map((each) => [each, []]));
  const holes = new Map<Wound, Hole[]>(sawn.wound.map((each) => [each, []]));
  for (const piece of sawn.pieces) {
    own.get(piece.owner)!.push(piece);
    for (const other of piece.others) others.get(other)!.push(piece);
  }
  for (const hole of sawn.holes) holes.get(hole.owner)!.push(hole);
  const unplaced = new Map(sawn.unplaced.map((each) => [each.owner, each]));
  const led = new Set(
    circuits
      .filter((circuit) => cablesInRow(circuit).length > 0)
      .flatMap(({ strings }) => strings.flatMap((string) => string.map(({ loop }) => loop)))
  );
  return sawn.wound.map((of) => ({
    of,
    estimate: sawn.estimate,
    own: own.get(of)!,
    places: own.get(of)!.map(placeOf),
    others: others.get(of)!,
    holes: holes.get(of)!,
    unplaced: unplaced.get(of) ?? null,
    hasLeadIn: led.has(of.loop.id)
  }));
}

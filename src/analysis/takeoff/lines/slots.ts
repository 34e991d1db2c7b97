/** What is sawn, cored and sealed for one loop. A slot that several loops lie in counts with one of them. */
import { count, how, length, smallLength, volume } from '../how';
import { SEALANT_OF_ENDS, sawItem } from '../names';
import { overcutLength } from '../overcut';
import type { How, Place } from '../results';
import type { SawnPiece } from '../cuts';
import type { Draft } from './line';
import { listOf, placeOf, sum, type OfLoop } from './of-loop';

interface Sized {
  readonly depth: number;
  readonly width: number;
}

/** By depth and width; `further` tells a size apart that is not the loop's own. */
function bySize(pieces: readonly SawnPiece[], usual: Sized): readonly SizeGroup[] {
  const usualItem = sawItem(usual);
  const groups = new Map<string, SawnPiece[]>();
  for (const piece of pieces) {
    const item = sawItem(piece);
    const group = groups.get(item);
    if (group) group.push(piece);
    else groups.set(item, [piece]);
  }
  return [...groups].map(([item, group]) => ({
    item,
    pieces: group,
    depth: group[0]!.depth,
    width: group[0]!.width,
    further: item === usualItem ? undefined : item
  }));
}

interface SizeGroup extends Sized {
  readonly item: string;
  readonly pieces: readonly SawnPiece[];
  readonly further: string | undefined;
}

const isHomeRun = ({ kind }: SawnPiece): boolean => kind === 'home run';

/** Less than what is drawn counts here: the rest lies in somebody else's slot. */
const REST = 1e-3;

function sawCutHow(group: SizeGroup, own: number, drawn: number, elsewhere: string): How {
  const values = {
    length: length(sum(group.pieces, (piece) => piece.length)),
    depth: smallLength(group.depth),
    width: smallLength(group.width)
  };
  if (own < drawn - REST) return how('sawCutRest', { ...values, drawn: length(drawn), others: elsewhere });
  const shared = sum(group.pieces, ({ sharedLength }) => sharedLength);
  if (shared === 0) return how('sawCut', values);
  const others = listOf(group.pieces.flatMap((piece) => piece.others));
  return how('sawCutShared', { ...values, shared: length(shared), others });
}

function sawCutDrafts(
  each: OfLoop,
  pieces: readonly SawnPiece[],
  drawn: number,
  others: readonly SawnPiece[]
): readonly Draft[] {
  // a home run may lie in a slot of its own loop
  const elsewhere = listOf(others.length > 0 ? others.map(({ owner }) => owner) : [each.of]);
  const own = sum(pieces, (piece) => piece.length);
  return bySize(pieces, each.of.loop.slot).map((group): Draft => ({
    subject: each.of.loop.id,
    what: isHomeRun(group.pieces[0]!) ? 'home run saw cut' : 'loop saw cut',
    further: group.further,
    item: group.item,
    amount: sum(group.pieces, (piece) => piece.length),
    unit: 'm',
    how: sawCutHow(group, own, drawn, elsewhere),
    places: group.pieces.map(placeOf)
  }));
}

/** A tail whose length was typed. */
function typedDrafts({ unplaced }: OfLoop): readonly Draft[] {
  if (!unplaced) return [];
  return [
    {
      subject: unplaced.owner.loop.id,
      what: 'home run saw cut',
      item: sawItem(unplaced),
      amount: unplaced.length,
      unit: 'm',
      how: how('homeRunTyped', { length: length(unplaced.length) }),
      places: []
    }
  ];
}

/** Where a cut runs on past its ends. */
const overcutPlaces = ({ from, to, length: whole, overcut }: SawnPiece): readonly Place[] => {
  if (overcut.from === 0 && overcut.to === 0) return [];
  const [ux, uy] = [(to[0] - from[0]) / whole, (to[1] - from[1]) / whole];
  const beyond = ([x, y]: SawnPiece['from'], run: number): Place => ({
    kind: 'line',
    points: [
      [x, y],
      [x + ux * run, y + uy * run]
    ]
  });
  return [
    ...(overcut.from > 0 ? [beyond(from, -overcut.from)] : []),
    ...(overcut.to > 0 ? [beyond(to, overcut.to)] : [])
  ];
};

function overcutDrafts(
  { of, own, estimate }: OfLoop,
  wherePastEnds: ReadonlyMap<SawnPiece, readonly Place[]>
): readonly Draft[] {
  const blade = estimate.bladeDiameter_m;
  return bySize(own, of.loop.slot).map((group): Draft => {
    const places = group.pieces.flatMap((piece) => wherePastEnds.get(piece)!);
    return {
      subject: of.loop.id,
      what: 'overcut',
      further: group.further,
      item: group.item,
      amount: sum(group.pieces, ({ overcut }) => overcut.from + overcut.to),
      unit: 'm',
      how: how('overcut', {
        ends: count(places.length),
        run: length(overcutLength(blade, group.depth) ?? 0),
        depth: smallLength(group.depth),
        blade: smallLength(blade)
      }),
      places
    };
  });
}

/** The sealant of a loop's slots, without waste and overcuts: what they hold less the wires in them, never below nothing. */
export const netSealant = ({
  own,
  unplaced,
  of
}: OfLoop): { slot: number; wires: number; length: number } => {
  const typedWire = unplaced ? (2 * unplaced.length * Math.PI * of.wire.insulatedDiameter ** 2) / 4 : 0;
  return {
    slot:
      sum(own, ({ length: run, depth, width }) => run * depth * width) +
      (unplaced ? unplaced.length * unplaced.depth * unplaced.width : 0),
    wires: sum(own, ({ wireVolume }) => wireVolume) + typedWire,
    length: sum(own, (piece) => piece.length) + (unplaced?.length ?? 0)
  };
};

function sealantDrafts(each: OfLoop, pastEnds: readonly Place[]): readonly Draft[] {
  const { of, own, places, holes } = each;
  const { slot, wires, length: run } = netSealant(each);
  const overcuts = sum(own, ({ overcutVolume }) => overcutVolume);
  const cored = sum(holes, (hole) => hole.volume);
  return [
    {
      subject: of.loop.id,
      what: 'sealant',
      item: 'sealant',
      amount: Math.max(0, slot - wires),
      unit: 'm3',
      how: how('sealant', { length: length(run), slot: volume(slot), wires: volume(wires) }),
      places
    },
    {
      subject: of.loop.id,
      what: 'sealant',
      further: SEALANT_OF_ENDS.slice(1),
      item: 'sealant',
      amount: overcuts + cored,
      unit: 'm3',
      how: how('sealantEnds', { overcuts: volume(overcuts), holes: volume(cored) }),
      places: [...pastEnds, ...holes.map(({ at }): Place => ({ kind: 'point', at }))]
    }
  ];
}

function holeDrafts({ of, holes, estimate }: OfLoop): readonly Draft[] {
  const diameter = estimate.coreDiameter_m;
  return [
    {
      subject: of.loop.id,
      what: 'core hole',
      item: 'core',
      amount: holes.length,
      unit: 'each',
      how: how('coreHole', { holes: count(holes.length), diameter: smallLength(diameter) }),
      places: holes.map(({ at }): Place => ({ kind: 'circle', centre: at, radius: diameter / 2 }))
    }
  ];
}

export const slotDrafts = (each: OfLoop): readonly Draft[] => {
  const { of, own } = each;
  const sides = own.filter((piece) => !isHomeRun(piece));
  const pastEnds = new Map(own.map((piece) => [piece, overcutPlaces(piece)]));
  return [
    ...sawCutDrafts(
      each,
      sides,
      of.sawCut,
      each.others.filter((piece) => !isHomeRun(piece))
    ),
    ...sawCutDrafts(each, own.filter(isHomeRun), of.tailWay, each.others),
    ...typedDrafts(each),
    ...overcutDrafts(each, pastEnds),
    ...holeDrafts(each),
    ...sealantDrafts(each, [...pastEnds.values()].flat())
  ];
};

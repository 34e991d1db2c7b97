/** Parts: backer pieces, conduits, boxes, splice kits, labels. */
import { lengthSideBySide } from '#plan/geometry/side-by-side';
import { leadInPath, pathLength } from '#plan/lead-out';
import type { Circuit, Conduit, Mark, Point, Site } from '#plan/schema';
import { count, how, length, smallLength } from '../how';
import type { Place, TakeoffKind } from '../results';
import { wholePieces, type Draft } from './line';
import { netSealant } from './slots';
import type { OfLoop } from './of-loop';

/** One kit joins both wires of a tail to its lead-in. Both ends of the loop's wire get a label. */
export function loopPartDrafts(each: OfLoop): readonly Draft[] {
  const { of, places, estimate, hasLeadIn } = each;
  const subject = of.loop.id;
  const end: readonly Place[] = of.tail ? [{ kind: 'point', at: of.tail.at(-1)! }] : [];
  const run = netSealant(each).length;
  return [
    {
      subject,
      what: 'backer',
      item: 'backer',
      amount: wholePieces(run / estimate.backerEvery_m),
      unit: 'each',
      how: how('backer', {
        every: smallLength(estimate.backerEvery_m),
        length: length(run),
        size: smallLength(estimate.backerLength_m)
      }),
      places
    },
    {
      subject,
      what: 'splice kit',
      item: 'splice kit',
      amount: hasLeadIn ? 1 : 0,
      unit: 'each',
      how: how('spliceTail'),
      places: end
    },
    {
      subject,
      what: 'label',
      item: 'label',
      amount: 2,
      unit: 'each',
      how: how('labelLoop', { ends: count(2) }),
      places: end
    }
  ];
}

/** Metres: a conduit that is drawn lies as near as this to the lead-ins in it. Common practice. */
const IN_CONDUIT = 0.5;
/** Metres: less than this is what rounding of places leaves over. */
const LEAST = 1e-3;

const PIECES = { 'pull-box': 'pull box', cabinet: 'cabinet' } as const satisfies Partial<
  Record<Mark['kind'], TakeoffKind>
>;

const isPiece = (mark: Mark): mark is Mark & { readonly kind: keyof typeof PIECES } => mark.kind in PIECES;

function markDraft(mark: Mark): readonly Draft[] {
  if (mark.kind === 'conduit') {
    const run = pathLength(mark.points);
    const places: readonly Place[] = [{ kind: 'line', points: mark.points }];
    const drawn = how('conduitDrawn', { length: length(run) });
    return [{ subject: mark.id, what: 'conduit', further: 'drawn', item: 'conduit', amount: run, unit: 'm', how: drawn, places }]; // prettier-ignore
  }
  if (!isPiece(mark)) return [];
  const what = PIECES[mark.kind];
  const places: readonly Place[] = [{ kind: 'point', at: mark.points[0]! }];
  return [{ subject: mark.id, what, item: what, amount: 1, unit: 'each', how: how('mark'), places }];
}

const waysOf = (site: Site, { circuits }: Conduit): readonly (readonly Point[])[] =>
  circuits.flatMap((id) => {
    const circuit = site.circuits.find((each) => each.id === id);
    const way = circuit && leadInPath(site, circuit);
    return way ? [way] : [];
  });

/** A conduit that is drawn, and how many metres of it are nobody's yet: one pipe is not two, whatever lies in its trench. */
interface Drawn {
  readonly points: readonly Point[];
  left: number;
}

function takenFrom(mark: Drawn, ways: readonly (readonly Point[])[], most: number): number {
  const beside = ways.reduce((longest, way) => Math.max(longest, lengthSideBySide([way, mark.points], IN_CONDUIT)), 0); // prettier-ignore
  const taken = Math.min(mark.left, beside, most);
  mark.left -= taken;
  return taken;
}

/**
 * A conduit with a length, and a conduit that is drawn, may be the same: what is drawn beside a lead-in of the conduit
 * counts there, and here only what goes beyond. Where no lead-in is drawn the given length counts whole.
 */
function conduitDraft(site: Site, conduit: Conduit, marks: readonly Drawn[]): Draft {
  const ways = waysOf(site, conduit);
  const drawn = marks.reduce((sum, mark) => sum + takenFrom(mark, ways, conduit.length - sum), 0);
  const rest = conduit.length - drawn;
  return {
    subject: conduit.id,
    what: 'conduit',
    item: 'conduit',
    amount: rest < LEAST ? 0 : rest,
    unit: 'm',
    how:
      drawn > 0
        ? how('conduitRest', {
            length: length(conduit.length),
            drawn: length(drawn)
          })
        : how('conduit', { length: length(conduit.length) }),
    places: ways.map((points): Place => ({ kind: 'line', points }))
  };
}

export const markDrafts = (site: Site): readonly Draft[] => site.marks.flatMap(markDraft);

export const conduitDrafts = (site: Site): readonly Draft[] => {
  const drawn = site.marks
    .filter(({ kind }) => kind === 'conduit')
    .map(({ points }): Drawn => ({ points, left: pathLength(points) }));
  return site.conduits.map((conduit) => conduitDraft(site, conduit, drawn));
};

/** Cables of a lead-in that have a length, from the box to the cabinet. */
export const cablesInRow = ({
  leadIn
}: Circuit): readonly { readonly cable: string; readonly length: number }[] =>
  [leadIn, ...(leadIn.further ?? [])].filter((part) => part.length > 0);

/** What is drawn on the plan beside lanes, loops and steel, each kind in its own way. */
import { t } from '#i18n/message';
import { between } from '#plan/geometry/points';
import type { DisplayUnits, Mark, Point } from '#plan/schema';
import { isClosedMark, seenLine } from '#editor/geometry/marks';
import type { Viewport } from '#editor/types';
import { planToScreen } from '#editor/viewport';
import { boxCentre, boxAround } from '#editor/geometry/box';
import { area, boxAt, line, type Drawing } from './drawing';
import { drawnBox, isInSight, onScreen } from './frame';
import type { Theme } from './theme';
import { arrowDrawings } from './arrows';
import { dimensionDrawings } from './dimensions';
import { gateDrawings } from './gates';
import { conduit, cover, island, joint, kerb, stopLine } from './mark-lines';
import { LINE_HEIGHT, writing } from './writing';

/** Half the side of a symbol for a thing with no size of its own, pixels. */
const SYMBOL = 7;

/** A box with what it is in writing: a colour or a shape alone would have to be learnt. A note is writing only. */
function symbol(mark: Mark, at: Point, theme: Theme): Drawing[] {
  const text = mark.text || t(`mark.${mark.kind}`);
  if (mark.kind === 'note') return writing(text, at, 'left', theme);
  const stroke = { colour: theme.roadLine, width: 1.5 };
  const below: Point = [at[0], at[1] + SYMBOL + LINE_HEIGHT * 0.75];
  return [area(boxAt(at, SYMBOL), theme.paper, stroke), ...writing(text, below, 'center', theme)];
}

/**
 * What boxes are called, once more over the wires that run to them: under a tail nobody could read it.
 */
export const boxNamesScene = (marks: readonly Mark[], view: Viewport, theme: Theme): Drawing[] => {
  const sight = drawnBox(view);
  return marks
    .filter(({ kind, points }) => kind !== 'note' && points.length === 1 && isInSight(points, sight))
    .flatMap((mark) =>
      symbol(mark, planToScreen(view, mark.points[0]!), theme).filter(({ kind }) => kind === 'text')
    );
};

/** What is written on a mark that has an extent: in the middle of an area, or of the middle stretch of a line. */
function caption(mark: Mark, view: Viewport, theme: Theme): Drawing[] {
  if (!mark.text || mark.kind === 'dimension') return [];
  const middle = Math.floor((mark.points.length - 1) / 2);
  const at = isClosedMark(mark)
    ? boxCentre(boxAround(mark.points)!)
    : between(mark.points[middle]!, mark.points[middle + 1]!);
  return writing(mark.text, planToScreen(view, at), 'center', theme);
}

function figure(mark: Mark, view: Viewport, units: DisplayUnits, theme: Theme): Drawing[] {
  switch (mark.kind) {
    case 'stop-line':
      return stopLine(mark, view, theme);
    case 'kerb':
      return kerb(mark, view, theme);
    case 'island':
      return isClosedMark(mark) ? island(mark, view, theme) : kerb(mark, view, theme);
    case 'cover':
      return isClosedMark(mark) ? cover(mark, view, theme) : joint(mark, view, theme);
    case 'joint':
      return joint(mark, view, theme);
    case 'conduit':
      return conduit(mark, view, theme);
    case 'gate':
      return gateDrawings(mark, view, theme);
    case 'arrow':
      return arrowDrawings(mark, view, theme);
    case 'dimension':
      return dimensionDrawings(mark, view, units, theme);
    default:
      return [line(onScreen(view, mark.points), { colour: theme.roadLine, width: 1.5 })];
  }
}

function markDrawings(mark: Mark, view: Viewport, units: DisplayUnits, theme: Theme): Drawing[] {
  const [first] = mark.points;
  if (mark.points.length === 1 && first) return symbol(mark, planToScreen(view, first), theme);
  return [...figure(mark, view, units, theme), ...caption(mark, view, theme)];
}

/** Areas lie under lines, and the boxes that lines run to stand on them. */
const orderOf = (mark: Mark): number => (isClosedMark(mark) ? 0 : mark.points.length === 1 ? 2 : 1);

export function marksScene(
  marks: readonly Mark[],
  view: Viewport,
  units: DisplayUnits,
  theme: Theme
): Drawing[] {
  const sight = drawnBox(view);
  return [...marks]
    .sort((a, b) => orderOf(a) - orderOf(b))
    .filter((mark) => isInSight(seenLine(mark), sight))
    .flatMap((mark) => markDrawings(mark, view, units, theme));
}

/** What belongs to the sheet and not to the plan: a scale bar and the way to the north. */
import { plain } from '#units/digits';
import type { DisplayUnits, Point } from '#plan/schema';
import { FOOT, INCH } from '#units/constants';
import { gridStep } from '#units/plan-steps';
import type { Box } from '#editor/geometry/box';
import type { Viewport } from '#editor/types';
import { area, line, type Drawing } from './drawing';
import type { Theme } from './theme';

/** Pixels: the bar is at least so long, on a narrow plan less. */
const SHORTEST = [64, 40, 24] as const;
/** Of the plan's width: more would lie under the buttons at the other corner. */
const LARGEST_SHARE = 1 / 3;
const MARGIN = 18;
const HEIGHT = 5;
const NORTH = { right: 26, top: 40, length: 15, width: 6 } as const;

/** A whole number in its unit: the step is round in the system that is shown. */
export function scaleText(metres: number, units: DisplayUnits): string {
  const number = (value: number): string => plain(Number(value.toPrecision(6)));
  if (units === 'imperial')
    return metres < FOOT ? `${number(metres / INCH)} in` : `${number(metres / FOOT)} ft`;
  return metres < 1 ? `${number(metres * 100)} cm` : `${number(metres)} m`;
}

/** Metres, round in the system that is shown. */
function barLength(view: Viewport, units: DisplayUnits): number {
  const steps = SHORTEST.map((least) => gridStep(least / view.scale, units));
  return steps.find((metres) => metres * view.scale <= LARGEST_SHARE * view.width) ?? Math.min(...steps);
}

function scaleBar(view: Viewport, units: DisplayUnits, theme: Theme): Drawing[] {
  const metres = barLength(view, units);
  const length = metres * view.scale;
  const y = view.height - MARGIN;
  const at = (share: number): Point => [MARGIN + share * length, y];
  const box = (from: number, to: number): Point[] => [
    [MARGIN + from * length, y - HEIGHT],
    [MARGIN + to * length, y - HEIGHT],
    at(to),
    at(from)
  ];
  const stroke = { colour: theme.ink, width: 1 };
  const text = { kind: 'text', size: 11, colour: theme.ink, plate: theme.plate } as const;
  const above = y - HEIGHT - 2 - 8 * theme.textScale;
  return [
    area(box(0, 1), theme.paper, stroke),
    area(box(0, 0.5), theme.ink),
    { ...text, at: [MARGIN, above], text: '0', align: 'left' },
    { ...text, at: [MARGIN + length, above], text: scaleText(metres, units), align: 'center' }
  ];
}

/** The plan's y axis points to the north. */
function northArrow(view: Viewport, theme: Theme): Drawing[] {
  const x = view.width - NORTH.right;
  const y = NORTH.top + 12 * (theme.textScale - 1);
  const stroke = { colour: theme.ink, width: 1 };
  const tip: Point = [x, y - NORTH.length];
  const notch: Point = [x, y + NORTH.length * 0.4];
  const left: Point = [x - NORTH.width, y + NORTH.length];
  const right: Point = [x + NORTH.width, y + NORTH.length];
  return [
    area([tip, left, notch], theme.ink, stroke),
    area([tip, right, notch], theme.paper, stroke),
    {
      kind: 'text',
      at: [x, y - NORTH.length - 2 - 7 * theme.textScale],
      text: 'N',
      colour: theme.ink,
      size: 12,
      bold: true,
      align: 'center'
    },
    line([[x, y + NORTH.length * 0.4], tip], stroke) // prettier-ignore
  ];
}

/** The page's buttons over the corner of the plan, pixels. */
const BUTTONS = { width: 320, height: 52 } as const;

/** Where writing on the plan could not be read, pixels: under the scale bar, the north and the buttons. */
export function furnitureBoxes(view: Viewport, units: DisplayUnits, theme: Theme): readonly Box[] {
  const { width, height } = view;
  const bar = barLength(view, units) * view.scale;
  const text = 16 * theme.textScale;
  return [
    { left: 0, right: 2 * MARGIN + bar, bottom: height - MARGIN - HEIGHT - text - 4, top: height },
    { left: width - 2 * NORTH.right, right: width, bottom: 0, top: NORTH.top + NORTH.length },
    { left: width - BUTTONS.width, right: width, bottom: height - BUTTONS.height, top: height }
  ];
}

export const furnitureScene = (view: Viewport, units: DisplayUnits, theme: Theme): Drawing[] => [
  ...scaleBar(view, units, theme),
  ...northArrow(view, theme)
];

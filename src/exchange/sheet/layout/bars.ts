/** The strip above the title block: the check bar, and where a plan is on the page its scale bar and north. Millimetres. */
import { t } from '#i18n/message';
import type { DisplayUnits, Point } from '#plan/schema';
import { area, line, type Drawing } from '#scenes/drawing';
import { scaleText } from '#scenes/furniture';
import { GRID_STEPS } from '#units/plan-steps';
import { INK, LINE, SOFT, TYPE, WHITE } from './look';
import { paragraph, written } from './writing';

export const BARS_HEIGHT = 13;
const CHECK_LENGTH = 100;
const INSET = 4;
const NORTH = 9;
const THICK = 1.6;
const SOLID = { colour: INK, width: LINE.normal };

/** Exactly 100 mm between the middles of its end strokes. */
function checkBar([x, y]: Point): Drawing[] {
  const stroke = (at: number, half: number): Drawing => line([[x + at, y - half], [x + at, y + half]], SOLID); // prettier-ignore
  return [
    line([[x, y], [x + CHECK_LENGTH, y]], SOLID), // prettier-ignore
    ...Array.from({ length: 11 }, (_, k) =>
      stroke((k * CHECK_LENGTH) / 10, k % 10 === 0 ? 1.8 : k === 5 ? 1.2 : 0.8)
    )
  ];
}

/** `room`: millimetres that it may take. */
function scaleBar([x, y]: Point, scale: number, units: DisplayUnits, room: number): Drawing[] {
  const step = GRID_STEPS[units].findLast((metres) => (metres * 1000) / scale <= room / 2);
  if (step === undefined) return [];
  const length = (step * 1000) / scale;
  const parts = Math.min(5, Math.floor(room / length));
  const box = (k: number): Point[] => [
    [x + k * length, y - THICK / 2],
    [x + (k + 1) * length, y - THICK / 2],
    [x + (k + 1) * length, y + THICK / 2],
    [x + k * length, y + THICK / 2]
  ];
  const small = { size: TYPE.small, align: 'center' } as const;
  return [
    ...Array.from({ length: parts }, (_, k) => area(box(k), k % 2 === 0 ? INK : WHITE, SOLID)),
    written('0', [x, y + 3], small),
    written(scaleText(step * parts, units), [x + parts * length, y + 3], small)
  ];
}

function north([x, y]: Point): Drawing[] {
  const tip: Point = [x, y - 4.6];
  const notch: Point = [x, y + 2.2];
  return [
    area([tip, [x - 2, y + 3.6], notch], INK, SOLID),
    area([tip, [x + 2, y + 3.6], notch], WHITE, SOLID),
    written(t('sheet.northSign'), [x + 3.6, y - 2.6], { size: TYPE.value, bold: true, align: 'center' })
  ];
}

export interface Scaled {
  readonly scale: number;
  readonly units: DisplayUnits;
}

/** `plan`: null on a page without one. */
export function bars(plan: Scaled | null, left: number, top: number, width: number): Drawing[] {
  const start = left + INSET;
  const words = { size: TYPE.small, colour: SOFT };
  const beside = start + CHECK_LENGTH + 5;
  const room = left + width - beside - 2 * INSET - NORTH;
  const hint = paragraph(
    t('sheet.actualSize'),
    plan ? CHECK_LENGTH : left + width - beside - INSET,
    words,
    2
  );
  return [
    ...checkBar([start, top + 4.2]),
    ...(plan ? hint.draw([start, top + 6.8]) : hint.draw([beside, top + 2.6])),
    ...(plan ? scaleBar([beside + 3, top + 4.2], plan.scale, plan.units, Math.min(90, room - 8)) : []),
    ...(plan ? north([left + width - INSET - NORTH / 2, top + 6.4]) : [])
  ];
}

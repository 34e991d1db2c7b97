/** Names of loops on paper, with turns and size beside them. Pixels, as on a screen. */
import { t } from '#i18n/message';
import type { DisplayUnits, Loop, Point, Shape, Site } from '#plan/schema';
import { outlineOf } from '#plan/shapes/index';
import { boxAround, type Box } from '#editor/geometry/box';
import type { Viewport } from '#editor/types';
import { line, shortened, type Drawing, type TextDrawing } from './drawing';
import { onScreen } from './frame';
import { placeLabels, type Place, type Want } from './label-places';
import { widthOf } from './paper-type';
import { lengthText } from './tape';
import type { Theme } from './theme';
import { wrapped } from './writing';

const NAME_SIZE = 11;
const TEXT_SIZE = 9.5;
const LINE_HEIGHT = 14;
/** Characters of a line, and lines: a longer name would lie over the plan. */
const NAME_WIDTH = 18;
const NAME_LINES = 2;
/** Characters of a word that nobody has parted. */
const LONGEST_WORD = 24;
/** Share of a label that another one may cover: the frame round its letters. */
const TOLERABLE = 0.02;

interface Label extends Want {
  readonly lines: readonly string[];
  /** How many of them, from the first, are the name. */
  readonly names: number;
}

/** As it is said on the road: across and along; of a polygon nothing, since its corners say it. */
function sizeText(shape: Shape, units: DisplayUnits): string {
  const say = (metres: number): string => lengthText(metres, units);
  if (shape.kind === 'polygon') return '';
  if (shape.kind === 'circle') return t('sheet.diameter', { diameter: say(shape.diameter) });
  return t('sheet.size', { width: say(shape.width), length: say(shape.length) });
}

function nameLines(name: string): readonly string[] {
  const lines = wrapped(name, NAME_WIDTH).map((line) => shortened(line, LONGEST_WORD));
  if (lines.length <= NAME_LINES) return lines;
  const rest = lines.slice(NAME_LINES - 1).join(' ');
  return [...lines.slice(0, NAME_LINES - 1), shortened(rest, NAME_WIDTH)];
}

function labelOf(loop: Loop, view: Viewport, units: DisplayUnits): Label {
  const size = sizeText(loop.shape, units);
  const turns = t('plan.turns', { count: loop.turns });
  const name = nameLines(loop.name.trim() || loop.id);
  const lines = [...name, turns, ...(size === '' ? [] : [size])];
  const widths = lines.map((text, k) =>
    widthOf(text, k < name.length ? { size: NAME_SIZE, bold: true } : { size: TEXT_SIZE })
  );
  return {
    lines,
    names: name.length,
    width: Math.max(...widths) + 6,
    height: lines.length * LINE_HEIGHT,
    short: { width: Math.max(...widths.slice(0, name.length)) + 6, height: name.length * LINE_HEIGHT },
    thing: boxAround(onScreen(view, outlineOf(loop.shape)))!
  };
}

function drawings(label: Label, { at: [x, y], leader, isShort }: Place, theme: Theme): Drawing[] {
  const { names } = label;
  const lines = isShort ? label.lines.slice(0, names) : label.lines;
  const first = y - (lines.length * LINE_HEIGHT) / 2 + LINE_HEIGHT / 2;
  return [
    ...(leader ? [line([leader, [x, y]], { colour: theme.inkSoft, width: 0.6 })] : []),
    ...lines.map((text, k): Drawing => {
      const at: Point = [x, first + k * LINE_HEIGHT];
      const isName = k < names;
      return {
        kind: 'text',
        at,
        text,
        colour: theme.ink,
        size: isName ? NAME_SIZE : TEXT_SIZE,
        align: 'center',
        plate: theme.plate,
        ...(isName ? { bold: true } : {})
      };
    })
  ];
}

/** What a text covers, pixels. */
export function boxOfText(drawing: TextDrawing): Box {
  const {
    at: [x, y],
    text,
    size,
    align
  } = drawing;
  const width = widthOf(text, drawing);
  const left = align === 'left' ? x : align === 'right' ? x - width : x - width / 2;
  // with the sign that most of them stand below
  return { left, right: left + width, bottom: y - 2 * size, top: y + size };
}

/** What several of them cover together. */
export const boxOfTexts = (drawings: readonly TextDrawing[]): Box =>
  drawings.map(boxOfText).reduce((a, b) => ({
    left: Math.min(a.left, b.left),
    right: Math.max(a.right, b.right),
    bottom: Math.min(a.bottom, b.bottom),
    top: Math.max(a.top, b.top)
  }));

/**
 * A label without room says the name alone, one that would only cover others is left out: tables have what it says. `taken`: what is covered already.
 */
export function paperLabels(site: Site, view: Viewport, theme: Theme, taken: readonly Box[]): Drawing[] {
  const labels = site.loops.map((loop) => labelOf(loop, view, site.displayUnits));
  const whole = { left: 0, bottom: 0, right: view.width, top: view.height };
  const places = placeLabels(labels, whole, taken, { tolerable: TOLERABLE, goesFurther: true });
  return labels.flatMap((label, index) => {
    const place = places[index];
    return place ? drawings(label, place, theme) : [];
  });
}

/** How each circuit is wired: a diagram each. */
import { t } from '#i18n/message';
import type { Circuit, Site } from '#plan/schema';
import { loopsIn } from '#plan/wiring';
import { sectionsOf } from '#scenes/cable-sections';
import type { Drawing } from '#scenes/drawing';
import { schematicOf } from '#scenes/schematic';
import { loopName, nameOf } from '../../tables/names';
import type { Block } from '../layout/block';
import { figuresBlock, type Figure } from '../layout/grid';
import { LEADING, TYPE } from '../layout/look';
import { paragraph, writtenWithin } from '../layout/writing';
import { diagram, SCALE } from './wiring-diagram';

/** Units of a diagram: it is at least so wide, for the words beside its cables. */
const LEAST_WIDTH = 205;
const TITLE = 6;

/** For a circuit whose diagram is larger than a page: the same in words. */
function inWords(site: Site, circuit: Circuit, width: number, tallest: number): Figure {
  const called = ({ loop, reversed }: Circuit['strings'][number][number]): string =>
    reversed ? t('sheet.reversedLoop', { name: loopName(site, loop) }) : loopName(site, loop);
  const text = circuit.strings
    .map((string, row) => t('sheet.string', { number: row + 1, loops: string.map(called).join(' – ') }))
    .join('; ');
  const most = Math.floor((tallest - TITLE) / (TYPE.text * LEADING));
  const lines = paragraph(text, width, { size: TYPE.text }, most);
  return {
    width,
    height: TITLE + lines.height,
    draw: (left, top) => [...title(circuit, left, top, width), ...lines.draw([left, top + TITLE])]
  };
}

const title = (circuit: Circuit, left: number, top: number, width: number): Drawing[] =>
  writtenWithin(nameOf(circuit), [left, top + 2], width, { size: TYPE.value, bold: true });

function figureOf(site: Site, circuit: Circuit, most: number, tallest: number): Figure {
  const drawing = schematicOf(circuit.strings, sectionsOf(circuit).length, LEAST_WIDTH);
  const width = drawing.width * SCALE;
  const height = TITLE + (drawing.rails.bottom + 4) * SCALE;
  if (width > most || height > tallest) return inWords(site, circuit, most, tallest);
  return {
    width,
    height,
    draw: (left, top) => [
      ...title(circuit, left, top, width),
      ...diagram(site, circuit, drawing, left, top + TITLE)
    ]
  };
}

export const wiring = (site: Site): Block =>
  figuresBlock(t('sheet.wiring'), (width, height) =>
    site.circuits
      .filter((circuit) => loopsIn(circuit).length > 0)
      .map((circuit) => figureOf(site, circuit, width, height))
  );

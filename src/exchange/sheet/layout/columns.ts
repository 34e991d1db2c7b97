/** Where text and tables may stand: beside or below the plan on its page, then over whole pages. Millimetres. */
import type { Column } from './block';
import { INSET, type Area } from './frame';

/** A column is at least so wide; as many stand side by side as find room. */
const LEAST_WIDTH = 165;
const BETWEEN_COLUMNS = 8;
/** Less than this beside or below the plan is left to the plan. */
const LEAST_HEIGHT = 60;

type Place = Omit<Column, 'page'>;

/** As they stand on a page without a plan, each at most `most` wide: the first at the left edge, the last at the right. */
function columnsIn(area: Area, most = Infinity): readonly Place[] {
  const inner = area.width - 2 * INSET;
  const count = Math.max(1, Math.floor((inner + BETWEEN_COLUMNS) / (LEAST_WIDTH + BETWEEN_COLUMNS)));
  const width = Math.min(most, (inner - (count - 1) * BETWEEN_COLUMNS) / count);
  const step = count === 1 ? 0 : (inner - width) / (count - 1);
  return Array.from({ length: count }, (_, k) => ({
    left: area.left + INSET + k * step,
    top: area.top + INSET,
    width,
    height: area.height - 2 * INSET
  }));
}

export interface Division {
  /** What the plan gets of its page. */
  readonly plan: Area;
  /** What is left beside or below it. */
  readonly rest: readonly Place[];
  /** Those of every further page, as wide as those of this one. */
  readonly further: readonly Place[];
}

/** `needed`: what the plan takes at its scale. */
export function divide(area: Area, needed: { readonly width: number; readonly height: number }): Division {
  const usual = columnsIn(area);
  const room = area.width - needed.width - 2 * INSET;
  if (usual.length > 1 && room >= LEAST_WIDTH) {
    const further = columnsIn(area, room);
    const rest = further.filter(({ left }) => left - INSET >= area.left + needed.width - 1e-9);
    return { plan: { ...area, width: rest[0]!.left - INSET - area.left }, rest, further };
  }
  const height = area.height - needed.height;
  if (height < LEAST_HEIGHT) return { plan: area, rest: [], further: usual };
  const top = area.top + needed.height + INSET;
  return {
    plan: { ...area, height: needed.height },
    rest: usual.map((column) => ({ ...column, top, height: height - 2 * INSET })),
    further: usual
  };
}

/** The columns in the order in which they are filled; `division`: null on a sheet without a plan. */
export function columnsOf(area: Area, division: Division | null): (index: number) => Column {
  const { rest, further } = division ?? { rest: [], further: columnsIn(area) };
  return (index) => {
    const first = rest[index];
    if (first) return { ...first, page: 0 };
    const after = index - rest.length;
    const page = Math.floor(after / further.length) + (division ? 1 : 0);
    return { ...further[after % further.length]!, page };
  };
}

export const tallest = (area: Area): number => area.height - 2 * INSET;

/** How wide a text comes out in the typeface of papers, from its advance widths; `tooling/advance-widths.mjs` writes them. */
import widths from './advance-widths.json';

export interface Face {
  /** Of the type, in the unit that widths come out in. */
  readonly size: number;
  readonly bold?: boolean;
}

/** Thousandths of the size, for a character that the table does not have: wider than most that may stand in its place. */
const UNKNOWN = 1100;

/** From runs of characters of one width: "first count width,…". */
function tableOf(runs: string): ReadonlyMap<number, number> {
  const table = new Map<number, number>();
  for (const run of runs.split(',')) {
    const [first = 0, count = 0, width = UNKNOWN] = run.split(' ').map(Number);
    for (let k = 0; k < count; k++) table.set(first + k, width);
  }
  return table;
}

let regular: ReadonlyMap<number, number> | undefined;
let bold: ReadonlyMap<number, number> | undefined;

export function widthOf(text: string, face: Face): number {
  const table = face.bold ? (bold ??= tableOf(widths.bold)) : (regular ??= tableOf(widths.regular));
  let sum = 0;
  for (let at = 0; at < text.length; at++) sum += table.get(text.charCodeAt(at)) ?? UNKNOWN;
  return (sum * face.size) / 1000;
}

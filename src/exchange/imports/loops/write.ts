/** A site's loops as the table that `read` reads, and a few rows that show how it is filled in. */
import Papa from 'papaparse';
import { decimalSign } from '#i18n/locale';
import type { Loop, Shape } from '#plan/schema';
import { writtenHead, type ColumnName } from './columns';
import { armoured } from './texts';

const UNITS: Partial<Record<ColumnName, string>> = {
  x: 'm',
  y: 'm',
  width: 'm',
  length: 'm',
  diameter: 'm',
  rotation: '°',
  depth: 'mm',
  slotWidth: 'mm',
  cornerCut: 'm',
  tail: 'm',
  points: 'm'
};

const COLUMNS: readonly ColumnName[] = ['id', 'name', 'shape', 'x', 'y', 'width', 'length', 'diameter', 'rotation', 'turns', 'wire', 'depth', 'slotWidth', 'cornerCut', 'tail', 'permittivity', 'points']; // prettier-ignore

type Cell = string | number | undefined;

function shapeCells(shape: Shape): Partial<Record<ColumnName, Cell>> {
  if (shape.kind === 'polygon') return { points: shape.points.map(([x, y]) => `${x} ${y}`).join(' | ') };
  const [x, y] = shape.centre;
  if (shape.kind === 'circle') return { x, y, diameter: shape.diameter };
  const { width, length, rotation } = shape;
  return {
    x,
    y,
    width,
    length,
    rotation,
    ...(shape.kind === 'rectangle' ? { cornerCut: shape.cornerCut } : {})
  };
}

/** Without the noise that a multiplication leaves in the last digits. */
const thousandfold = (metres: number): number => Number((metres * 1_000).toPrecision(15));

function cellsOf({ id, name, turns, wire, slot, tail, shape }: Loop): Partial<Record<ColumnName, Cell>> {
  return {
    ...shapeCells(shape),
    id,
    name,
    shape: shape.kind,
    turns,
    wire,
    depth: thousandfold(slot.depth),
    slotWidth: thousandfold(slot.width),
    tail: tail.length,
    permittivity: slot.relativePermittivity
  };
}

const headOf = (column: ColumnName): string =>
  UNITS[column] === undefined ? writtenHead(column) : `${writtenHead(column)} (${UNITS[column]})`;

/** Commas and a point, or semicolons and a comma, by the language that is spoken; UTF-8, CR LF. */
export function writeLoops(loops: readonly Loop[]): string {
  const sign = decimalSign();
  const text = (cell: Cell): string => {
    if (typeof cell === 'number') return String(cell).replace('.', sign);
    return armoured(cell ?? '');
  };
  const rows = loops.map((loop) => {
    const cells = cellsOf(loop);
    return COLUMNS.map((column) => text(cells[column]));
  });
  const options = { delimiter: sign === ',' ? ';' : ',', newline: '\r\n' } as const;
  return `${Papa.unparse([COLUMNS.map(headOf), ...rows], options)}\r\n`;
}

/**
 * A table as people read it, in the language and the units shown: the same for a sheet, a text file and a workbook. Numbers
 * stay numbers, in the unit that the column's head names.
 */
export interface Column {
  /** With its unit where it has one: "Length (m)". */
  readonly head: string;
  readonly kind: 'text' | 'number';
  /** Places after the decimal sign. */
  readonly digits?: number;
}

export type Cell = string | number | null;

export interface Table {
  readonly title: string;
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly Cell[])[];
  /** Row by row the places of cells that want others than their column: whole pieces among lengths. */
  readonly places?: readonly (readonly (number | null)[])[];
  /** A last row of sums, told apart from the others. */
  readonly totals?: readonly Cell[];
  /** Assumptions and what is left out, beneath the table. */
  readonly notes?: readonly string[];
}

/** A column as one of its cells wants it. */
export function columnAt({ columns, places }: Table, row: number, at: number): Column {
  const digits = places?.[row]?.[at] ?? null;
  return digits === null ? columns[at]! : { ...columns[at]!, digits };
}

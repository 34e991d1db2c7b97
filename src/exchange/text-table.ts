/** Tables of a text report. */

/** Columns padded to their widest cell; the first is left-aligned, the others right-aligned. */
const table = (rows: readonly (readonly string[])[]): string[] => {
  // pairs of hundreds of loops are more than a call takes arguments
  const widths = rows[0]!.map((_, column) =>
    rows.reduce((most, row) => Math.max(most, row[column]!.length), 0)
  );
  return rows.map((row) =>
    `  ${row
      .map((cell, column) => (column === 0 ? cell.padEnd(widths[0]!) : cell.padStart(widths[column]!)))
      .join('  ')}`.trimEnd()
  );
};

/** A title and its table, or what to say without any row. The first row is the head. */
export const block = (title: string, rows: readonly (readonly string[])[], empty: string): string[] => [
  '',
  title,
  ...(rows.length > 1 ? table(rows) : [`  ${empty}`])
];

/** The same, left out altogether without any row. */
export const blockIfAny = (title: string, rows: readonly (readonly string[])[]): string[] =>
  rows.length > 1 ? block(title, rows, '') : [];

/** What a netlist may hold: one word of a file's text, and numbers that every reader of the syntax takes. */

/** Letters, digits and underscores alone: nothing in it can start a line, an element or a comment. */
export const safeWord = (text: string): string => text.replace(/[^A-Za-z0-9_]/g, '_').slice(0, 40) || '_';

/** Ten significant digits. No suffixes: `M` means milli there. */
export const figure = (value: number): string => {
  if (!Number.isFinite(value)) throw new RangeError('a netlist holds numbers only');
  return String(Number(value.toPrecision(10)));
};

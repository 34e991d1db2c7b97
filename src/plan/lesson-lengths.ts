/** Lengths that a lesson's text states in braces, "{20 cm}": as its author wrote them, to be shown in the units of whoever reads. */

const STATED = /^(\d{1,6}(?:\.\d{1,3})?) (m|cm|mm)$/u;
const METRES = { m: 1, cm: 0.01, mm: 0.001 } as const;

export interface StatedLength {
  readonly metres: number;
  /** As it is written: "20", "cm". */
  readonly number: string;
  readonly symbol: keyof typeof METRES;
}

/** Of what stands in braces; null for anything else, such as the name of a measure. */
export function statedLength(inBraces: string): StatedLength | null {
  const [, number, unit] = STATED.exec(inBraces) ?? [];
  if (number === undefined || unit === undefined) return null;
  const symbol = unit as keyof typeof METRES;
  return { metres: Number(number) * METRES[symbol], number, symbol };
}

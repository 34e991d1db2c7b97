import type { QuantityKind } from './kind';
import { UNITS } from './unit';

/** Thrown inside the reader of typed text and caught at its door; the message is shown to the person. */
export class Refusal extends Error {}

const NOUNS: Readonly<Record<QuantityKind, string>> = {
  length: 'length',
  smallLength: 'length',
  angle: 'angle',
  count: 'count',
  frequency: 'frequency',
  inductance: 'inductance',
  capacitance: 'capacitance',
  resistance: 'resistance',
  time: 'time',
  ratio: 'ratio',
  temperature: 'temperature',
  volume: 'volume',
  speed: 'speed',
  plain: 'number'
};

/** The kind as a word in a sentence. */
export function noun(kind: QuantityKind): string {
  return NOUNS[kind];
}

/** The text in quotation marks, shortened where somebody pasted a page. */
export function quoted(text: string): string {
  return text.length > 24 ? `“${text.slice(0, 23)}…”` : `“${text}”`;
}

/** The sentence for a word that is no unit of the kind, with the units that are. */
export function notAUnit(kind: QuantityKind, word: string): string {
  const symbols = UNITS[kind].map((unit) => unit.symbol);
  if (symbols.length === 0) return `${quoted(word)} is not understood; write a number without a unit`;
  return `${quoted(word)} is not a unit of ${noun(kind)}; try ${symbols.join(', ')}`;
}

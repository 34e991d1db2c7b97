import { t, type PlainMessageKey } from '#i18n/message';
import type { QuantityKind } from './kind';
import { UNITS } from './unit';

/** Thrown inside the reader of typed text and caught at its door; the message is shown to the person. */
export class Refusal extends Error {}

const NOUNS: Readonly<Record<QuantityKind, PlainMessageKey>> = {
  length: 'kind.length',
  smallLength: 'kind.length',
  angle: 'kind.angle',
  count: 'kind.count',
  frequency: 'kind.frequency',
  inductance: 'kind.inductance',
  capacitance: 'kind.capacitance',
  resistance: 'kind.resistance',
  insulation: 'kind.resistance',
  time: 'kind.time',
  duration: 'kind.time',
  ratio: 'kind.ratio',
  temperature: 'kind.temperature',
  volume: 'kind.volume',
  speed: 'kind.speed',
  pace: 'kind.pace',
  plain: 'kind.plain'
};

/** The kind as a word in a sentence. */
export function noun(kind: QuantityKind): string {
  return t(NOUNS[kind]);
}

/** The text in quotation marks, shortened where somebody pasted a page. */
export function quoted(text: string): string {
  return t('refusal.quoted', { text: text.length > 24 ? `${text.slice(0, 23)}…` : text });
}

/** The sentence for a word that is no unit of the kind, with the units that are. */
export function notAUnit(kind: QuantityKind, word: string): string {
  const symbols = UNITS[kind].map((unit) => unit.symbol);
  const text = quoted(word);
  if (symbols.length === 0) return t('refusal.noUnits', { text });
  return t('refusal.notAUnit', { text, kind: noun(kind), symbols: symbols.join(', ') });
}

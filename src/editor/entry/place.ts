/** A place from the last point, as it is typed: "@3,2" across and up, "@5<30" far and in which direction. */
import { decimalSign } from '#i18n/locale';
import { t } from '#i18n/message';
import { scale } from '#plan/geometry/points';
import type { UnitSystem } from '#units/kind';
import { parseQuantity } from '#units/parse';
import { towards } from '../geometry/rays';
import type { PlaceEntry } from '../dimension-entry';

/** Two parts of a text at the one sign between them; null for another number of parts. */
function halves(text: string, sign: string): readonly [string, string] | null {
  const [first, second, ...rest] = text.split(sign);
  return first === undefined || second === undefined || rest.length > 0 ? null : [first, second];
}

const refused = (text: string, problem: string): PlaceEntry => ({ text, offset: null, problem });

/** Where the comma is the decimal sign, only a semicolon parts the two lengths. */
function parted(text: string): readonly [string, string] | null {
  if (text.includes(';')) return halves(text, ';');
  return decimalSign() === ',' ? null : halves(text, ',');
}

/** Reads the text, "@" included; never throws, a refusal says why. */
export function readPlace(text: string, units: UnitSystem): PlaceEntry {
  const inner = text.replace(/^@/, '');
  const polar = halves(inner, '<');
  const parts = polar ?? parted(inner);
  if (!parts) return refused(text, t('entry.placeHow'));
  const first = parseQuantity(parts[0], 'length', units);
  if (!first.ok) return refused(text, first.reason);
  const second = parseQuantity(parts[1], polar ? 'angle' : 'length', units);
  if (!second.ok) return refused(text, second.reason);
  const offset = polar ? scale(towards(second.value), first.value) : ([first.value, second.value] as const);
  return { text, offset, problem: null };
}

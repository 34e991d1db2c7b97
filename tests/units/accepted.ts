import { expect } from 'vitest';
import type { QuantityKind, UnitSystem } from '#units/kind';
import { parseQuantity } from '#units/parse';

/** The parsed value; fails the test with the reason when the text is refused. */
export function accepted(text: string, kind: QuantityKind, system: UnitSystem): number {
  const result = parseQuantity(text, kind, system);
  if (!result.ok) expect.fail(`${text} was refused: ${result.reason}`);
  return result.value;
}

/** The reason of a refusal; fails the test with the value when the text is accepted. */
export function refused(text: string, kind: QuantityKind, system: UnitSystem): string {
  const result = parseQuantity(text, kind, system);
  if (result.ok) expect.fail(`${text} was read as ${result.value}`);
  expect(result.reason).not.toBe('');
  return result.reason;
}

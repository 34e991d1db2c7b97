/** Keys as text, so that a menu can show what a press is matched with. */
import type { KeyInput } from '../types';

const isLetter = (key: string): boolean => /^\p{L}$/u.test(key);

/**
 * "Control+Shift+Z", "Shift+ArrowLeft", "Delete". Letters are upper case; for other characters shift says nothing,
 * because it is needed to type them on some keyboards and not on others.
 */
export function keyText({ key, control, shift, alt }: KeyInput): string {
  const name = isLetter(key) ? key.toUpperCase() : key === ' ' ? 'Space' : key;
  const counts = shift && (isLetter(key) || key.length > 1);
  return [...(control ? ['Control'] : []), ...(alt ? ['Alt'] : []), ...(counts ? ['Shift'] : []), name].join(
    '+'
  );
}

/** Colours of drawings as a PDF takes them: an opaque colour, and how much of it is there. */

export interface Tint {
  /** `#rrggbb`. */
  readonly colour: string;
  /** 0 to 1. */
  readonly opacity: number;
}

const hex = (value: number): string =>
  Math.round(Math.min(255, Math.max(0, value)))
    .toString(16)
    .padStart(2, '0');

/** Reads `#rgb`, `#rrggbb`, `#rrggbbaa`, `rgb(…)` and `rgba(…)`. Throws RangeError for anything else. */
export function tintOf(colour: string): Tint {
  const [, digits] = /^#([0-9a-f]{3}|[0-9a-f]{6}|[0-9a-f]{8})$/i.exec(colour) ?? [];
  if (digits !== undefined) {
    const long = digits.length === 3 ? digits.replace(/./g, '$&$&') : digits;
    return {
      colour: `#${long.slice(0, 6).toLowerCase()}`,
      opacity: long.length === 8 ? Number.parseInt(long.slice(6), 16) / 255 : 1
    };
  }
  const [, inner] = /^rgba?\(([\d.,\s]+)\)$/i.exec(colour) ?? [];
  const [red, green, blue, opacity = 1] = (inner ?? '').split(',').map(Number);
  if (inner === undefined || red === undefined || green === undefined || blue === undefined)
    throw new RangeError(`not a colour: ${colour}`);
  return { colour: `#${hex(red)}${hex(green)}${hex(blue)}`, opacity };
}

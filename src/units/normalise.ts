const REPLACEMENTS: readonly (readonly [RegExp, string])[] = [
  [/[‘’‛′ʹʼ´`]/g, "'"],
  [/[“”„‟″ʺ]/g, '"'],
  [/''/g, '"'],
  [/[−–—‐‑‒﹣-]/g, '-'],
  [/[×·⋅]/g, '*'],
  [/[÷⁄∕]/g, '/'],
  [/[µμ]/g, 'u'],
  [/\u2126/g, 'Ω'],
  [/º/g, '°'],
  [/℃/g, '°C'],
  [/℉/g, '°F'],
  [/[\s\u200b]+/g, ' ']
];

/** One spelling for the signs that keyboards, phones and word processors write in many ways. */
export function normalise(text: string): string {
  return REPLACEMENTS.reduce((result, [pattern, sign]) => result.replace(pattern, sign), text).trim();
}

/** The steps of field strength that a picture is coloured by: one, two and five in each decade. */

/** Shares of the nodes that lie under the lowest and over the highest step: what is next to a wire has no end. */
const LOWEST_SHARE = 0.01;
const HIGHEST_SHARE = 0.995;
/** More steps than this nobody tells apart. */
export const MOST_LEVELS = 11;
const STEPS = [1, 2, 5] as const;
const DECADES = { least: -14, most: 0 } as const;

/** By text: 2e-7 and not what 2 · 10⁻⁷ comes to in binary. */
const ALL: readonly number[] = Array.from(
  { length: DECADES.most - DECADES.least },
  (_, n) => n + DECADES.least
).flatMap((decade) => STEPS.map((step) => Number(`${step}e${decade}`)));

/** Ascending, in the unit of the strengths; empty where there is no field. */
export function levelsFor(strengths: Float64Array): readonly number[] {
  const sorted = Float64Array.from(strengths).sort();
  const at = (share: number): number => sorted[Math.floor(share * (sorted.length - 1))] ?? 0;
  const [low, high] = [at(LOWEST_SHARE), at(HIGHEST_SHARE)];
  return ALL.filter((level) => level > low && level <= high).slice(-MOST_LEVELS);
}

/** How many colours there are for what lies under, between and over the steps. */
export const COLOURS = MOST_LEVELS + 1;

/** The colour of the `n`-th band of `count`, from the weakest: all of the range is used however few there are. */
export const colourOf = (n: number, count: number): number =>
  count <= 1 ? 0 : Math.round((n * (COLOURS - 1)) / (count - 1));

/** A round step that divides `most` into about `count` parts; 0 for nothing to divide. */
export function roundStep(most: number, count: number): number {
  if (!(most > 0)) return 0;
  const wanted = most / count;
  const decade = Math.floor(Math.log10(wanted));
  const candidates = [...STEPS.map((step) => Number(`${step}e${decade}`)), Number(`1e${decade + 1}`)];
  return candidates.find((step) => step >= wanted) ?? wanted;
}

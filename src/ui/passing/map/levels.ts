/** The levels of a response map: steps of one, two and five. */

/** Shares of the trip threshold, and of the strongest response where there is none, below which nothing is drawn. */
const BELOW_THRESHOLD = 0.1;
const BELOW_STRONGEST = 0.01;
/** More lines than this nobody reads. */
const MOST = 9;
const STEPS = [1, 2, 5] as const;

/** −ΔL/L, from the weakest; `least`: the lowest trip threshold, or null without one. */
export function levelsFor(strongest: number, least: number | null): readonly number[] {
  if (!(strongest > 0)) return [];
  const low = least === null ? BELOW_STRONGEST * strongest : BELOW_THRESHOLD * least;
  const levels: number[] = [];
  for (let decade = Math.floor(Math.log10(low)); decade <= Math.log10(strongest); decade++)
    for (const step of STEPS) {
      // by text: 2e-4 and not what 2 · 10⁻⁴ comes to in binary
      const level = Number(`${step}e${decade}`);
      if (level >= low * (1 - 1e-9) && level < strongest) levels.push(level);
    }
  return levels.length <= MOST ? levels : levels.slice(-MOST);
}

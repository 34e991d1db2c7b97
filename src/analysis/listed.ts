/** An assessment as a page needs it: of hundreds of circuits the pairs that nobody would look at stay behind. */
import type { Assessment } from './results';

/** All that are not clear are listed, and of the others the strongest up to this number of pairs. */
const MOST_PAIRS = 1_000;

/** No page shows couplings of loops; tens of thousands of them would take longer to hand over than to compute. */
export function listedOf(assessment: Assessment): Assessment {
  const { beats } = assessment;
  if (beats.length <= MOST_PAIRS) return { ...assessment, couplings: [] };
  const clear = beats.filter(({ verdict }) => verdict === 'clear').sort((a, b) => b.ratio - a.ratio);
  const left = new Set(clear.slice(Math.max(0, MOST_PAIRS - (beats.length - clear.length))));
  return {
    ...assessment,
    couplings: [],
    beats: beats.filter((beat) => !left.has(beat)),
    weakerBeats: left.size
  };
}

/** What the drawing says of lead-ins that lie side by side. */
import { tidyLength } from './edits/tidy';
import { lengthSideBySide } from './geometry/side-by-side';
import { leadInPath } from './lead-out';
import type { Point, Site } from './schema';

/** Metres: ways drawn nearer to each other than this lie in one conduit. Common practice. */
const ONE_CONDUIT = 0.15;

/** Shorter than this, metres, they only meet. */
const LEAST = 0.5;

type Drawn = Pick<Site, 'marks' | 'circuits'>;

const waysOf = (site: Drawn, ids: readonly string[]): readonly (readonly Point[] | null)[] =>
  ids.map((id) => {
    const circuit = site.circuits.find((each) => each.id === id);
    return circuit ? leadInPath(site, circuit) : null;
  });

/** Metres over which the lead-ins of all these circuits lie side by side; null where that is not drawn. */
export function sharedLength(site: Drawn, ids: readonly string[]): number | null {
  const ways = waysOf(site, ids);
  const drawn = ways.filter((way) => way !== null);
  if (drawn.length < 2 || drawn.length < ways.length) return null;
  return tidyLength(lengthSideBySide(drawn, ONE_CONDUIT));
}

/**
 * The circuits whose lead-ins lie beside that of the first circuit which has any beside it, and how long all of them do;
 * null where no two do. Circuits in `taken` are left out.
 */
export function firstShared(
  site: Drawn,
  taken: ReadonlySet<string> = new Set()
): { readonly circuits: readonly string[]; readonly length: number } | null {
  const ids = site.circuits
    .filter((circuit) => !taken.has(circuit.id) && leadInPath(site, circuit) !== null)
    .map(({ id }) => id);
  for (const first of ids) {
    const beside = ids.filter((id) => id !== first && (sharedLength(site, [first, id]) ?? 0) >= LEAST);
    const circuits = ids.filter((id) => id === first || beside.includes(id));
    const length = sharedLength(site, circuits);
    if (beside.length > 0 && length !== null && length >= LEAST) return { circuits, length };
  }
  return null;
}

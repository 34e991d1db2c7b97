/**
 * How the loops of a circuit hang together: in series within a string, the strings in parallel.
 *
 * A loop is wired once only and no string or circuit is ever left empty: a circuit that loses its last loop goes, and
 * its readings with it. What a document may not hold leaves the site as it is.
 */
import { COUNTS } from '../bounds';
import type { Circuit, Site } from '../schema';
import { circuitWith, loopsIn, withoutLoops } from '../wiring';
import { forgetCircuits } from './forget-circuits';
import { addCircuitFor } from './new-loop';

type Strings = Circuit['strings'];
type Wired = Strings[number][number];

/** Where a loop can be put: beside another loop of a string, as a string of its own, or in a circuit of its own. */
export type WiringPlace =
  | { readonly kind: 'before' | 'after'; readonly loop: string }
  /** `at`: the string that it comes before, counted from 0 as the circuit is now; the number of strings is the end. */
  | { readonly kind: 'string'; readonly circuit: string; readonly at: number }
  | { readonly kind: 'circuit' };

export type Arrangement = 'series' | 'parallel' | 'series-parallel';

const sameStrings = (a: Strings, b: Strings): boolean =>
  a.length === b.length &&
  a.every((string, row) => {
    const other = b[row]!;
    return string.length === other.length && string.every(({ loop }, column) => loop === other[column]!.loop);
  });

/** With new strings for some circuits; one that has no string left goes, with its readings. */
function withStrings(site: Site, strings: ReadonlyMap<string, Strings>): Site {
  const circuits = site.circuits.map((circuit) => {
    const next = strings.get(circuit.id);
    return next ? { ...circuit, strings: next } : circuit;
  });
  const gone = new Set(circuits.filter((circuit) => circuit.strings.length === 0).map(({ id }) => id));
  return forgetCircuits({ ...site, circuits: circuits.filter(({ id }) => !gone.has(id)) }, gone);
}

function placed(strings: Strings, entry: Wired, place: Exclude<WiringPlace, { kind: 'circuit' }>): Strings {
  const others = strings.map((string) => string.filter(({ loop }) => loop !== entry.loop));
  if (place.kind === 'string') {
    const at = Number.isFinite(place.at) ? Math.trunc(place.at) : 0;
    others.splice(Math.min(others.length, Math.max(0, at)), 0, [entry]);
    return others.filter((string) => string.length > 0);
  }
  return others
    .map((string) => {
      const beside = string.findIndex(({ loop }) => loop === place.loop);
      if (beside < 0) return string;
      const at = place.kind === 'before' ? beside : beside + 1;
      return [...string.slice(0, at), entry, ...string.slice(at)];
    })
    .filter((string) => string.length > 0);
}

const nameIn = (site: Site, id: string): string => site.loops.find((loop) => loop.id === id)?.name || id;

/** The new circuit has the lead-in, the vehicles asked for and the settings of the one that the loop comes from. */
function inOwnCircuit(site: Site, entry: Wired, home: Circuit | undefined): Site {
  if (home && loopsIn(home).length === 1) return site;
  const rest = home
    ? withStrings(site, new Map([[home.id, withoutLoops(home.strings, new Set([entry.loop]))]]))
    : site;
  const made = addCircuitFor(rest, entry.loop, nameIn(site, entry.loop));
  const own = made.circuits.at(-1);
  if (made === rest || !own) return site;
  const { tripThreshold, releaseRatio, output } = home?.channel ?? own.channel ?? {};
  const settings = own.channel && { ...own.channel, tripThreshold, releaseRatio, output };
  const like = home
    ? { leadIn: home.leadIn, detect: home.detect, channel: settings as Circuit['channel'] }
    : {};
  const circuit: Circuit = { ...own, strings: [[entry]], ...like };
  return { ...made, circuits: [...made.circuits.slice(0, -1), circuit] };
}

/** Takes the loop from wherever it is wired, if it is, and puts it there; its winding sense stays. */
export function placeLoop(site: Site, loop: string, place: WiringPlace): Site {
  if (!site.loops.some(({ id }) => id === loop)) return site;
  const home = circuitWith(site, loop);
  const entry = home?.strings.flat().find((each) => each.loop === loop) ?? { loop, reversed: false };
  if (place.kind === 'circuit') return inOwnCircuit(site, entry, home);
  if (place.kind !== 'string' && place.loop === loop) return site;
  const target =
    place.kind === 'string'
      ? site.circuits.find(({ id }) => id === place.circuit)
      : circuitWith(site, place.loop);
  if (!target) return site;
  const strings = placed(target.strings, entry, place);
  if (sameStrings(strings, target.strings) || strings.flat().length > COUNTS.loopsPerCircuit) return site;
  const changes = new Map([[target.id, strings]]);
  if (home && home !== target) changes.set(home.id, withoutLoops(home.strings, new Set([loop])));
  return withStrings(site, changes);
}

/** One place earlier (−1) or later (1) in its string. */
export function shiftLoop(site: Site, loop: string, by: -1 | 1): Site {
  const string = circuitWith(site, loop)?.strings.find((each) => each.some((entry) => entry.loop === loop));
  const at = string?.findIndex((entry) => entry.loop === loop) ?? -1;
  const other = string?.[at + by];
  return other ? placeLoop(site, loop, { kind: by < 0 ? 'before' : 'after', loop: other.loop }) : site;
}

/** Another order of the strings, which changes nothing but the drawing. */
export function moveString(site: Site, circuit: string, from: number, to: number): Site {
  const strings = site.circuits.find(({ id }) => id === circuit)?.strings;
  const string = strings?.[from];
  if (!strings || !string || strings[to] === undefined || from === to) return site;
  const others = strings.filter((_, index) => index !== from);
  return withStrings(site, new Map([[circuit, [...others.slice(0, to), string, ...others.slice(to)]]]));
}

function arranged(groups: readonly Strings[], arrangement: Arrangement): Strings | null {
  const all = groups.flat(2);
  if (arrangement === 'series') return [all];
  // One circuit alone is taken apart into its loops; several keep their strings, side by side.
  if (arrangement === 'parallel') return groups.length > 1 ? groups.flat() : all.map((entry) => [entry]);
  const half = all.length / 2;
  return Number.isInteger(half) && half > 1 ? [all.slice(0, half), all.slice(half)] : null;
}

/**
 * Wires the loops together on the first of their circuits, with whatever else these circuits hold. Series-parallel: two
 * equal strings, so an even number of four or more. The channel is that of the first circuit that has one.
 */
export function wireTogether(site: Site, loops: readonly string[], arrangement: Arrangement): Site {
  const asked = new Set(loops);
  const joined = site.circuits.filter((circuit) => loopsIn(circuit).some((id) => asked.has(id)));
  const loose = site.loops.filter(({ id }) => asked.has(id) && !circuitWith(site, id));
  const [first] = joined;
  if (!first) {
    const [one] = loose;
    const begun = one && loose.length > 1 ? addCircuitFor(site, one.id, nameIn(site, one.id)) : site;
    return begun === site ? site : orSame(wireTogether(begun, loops, arrangement), begun, site);
  }
  const groups = [...joined.map(({ strings }) => strings), ...loose.map(({ id }) => [[{ loop: id, reversed: false }]])]; // prettier-ignore
  const strings = arranged(groups, arrangement);
  if (!strings || strings.flat().length > COUNTS.loopsPerCircuit) return site;
  if (groups.length === 1 && sameStrings(strings, first.strings)) return site;
  const changes = new Map<string, Strings>(joined.map(({ id }) => [id, []]));
  const next = withStrings(site, changes.set(first.id, strings));
  const channel = joined.find((circuit) => circuit.channel !== null)?.channel ?? null;
  if (channel === first.channel) return next;
  return { ...next, circuits: next.circuits.map((each) => (each.id === first.id ? { ...each, channel } : each)) }; // prettier-ignore
}

const orSame = (next: Site, begun: Site, site: Site): Site => (next === begun ? site : next);

const loopsOf = (site: Site, ids: readonly string[]): string[] =>
  site.circuits.filter(({ id }) => ids.includes(id)).flatMap(loopsIn);

const join = (site: Site, ids: readonly string[], arrangement: Arrangement): Site =>
  site.circuits.filter(({ id }) => ids.includes(id)).length < 2
    ? site
    : wireTogether(site, loopsOf(site, ids), arrangement);

/** Puts all loops of the circuits into one series string on the first of them; the others and their readings go. */
export const joinInSeries = (site: Site, ids: readonly string[]): Site => join(site, ids, 'series');

/** Puts the strings of the circuits side by side on the first of them; the others and their readings go. */
export const joinInParallel = (site: Site, ids: readonly string[]): Site => join(site, ids, 'parallel');

/** Gives every loop but the first a circuit of its own. */
export function splitCircuit(site: Site, id: string): Site {
  const circuit = site.circuits.find((each) => each.id === id);
  const [first, ...rest] = circuit?.strings.flat() ?? [];
  if (!first || rest.length === 0 || site.circuits.length + rest.length > COUNTS.circuits) return site;
  return rest.reduce((result, { loop }) => placeLoop(result, loop, { kind: 'circuit' }), site);
}

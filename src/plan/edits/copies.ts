/** Taking copies of things, with the wiring among the loops, and putting them in with ids of their own. */
import { COUNTS } from '../bounds';
import { vehicleOf } from '../catalogue/vehicles';
import type { Circuit, Lane, Mark, Point, Site } from '../schema';
import { bringCable, bringVehicle, bringWire } from './bring';
import { withFreeChannel } from './channels';
import { copiedLeadIn, copiedTail, type MarkCopies } from './copied-routes';
import { freeId, patched } from './list';
import { idsOf, type Thing } from './thing';
import { removeTraffic } from './traffic';
import { moveThings } from './transform';

/** Old ids and new ones. */
type Renamed = ReadonlyMap<string, string>;

/**
 * The same site with nothing in it but these things and the circuits of the loops, cut down to these loops. A way may lead
 * to a mark that is not among them: whoever puts the copies in decides what becomes of it.
 */
export function extractThings(site: Site, things: readonly Thing[]): Site {
  const loops = idsOf(things, 'loop');
  const lanes = idsOf(things, 'lane');
  const marks = idsOf(things, 'mark');
  const steel = idsOf(things, 'steel');
  const paths = idsOf(things, 'path');
  const probes = idsOf(things, 'probe');
  const underlays = idsOf(things, 'underlay');
  const circuits = site.circuits
    .map((circuit) => ({
      ...circuit,
      strings: circuit.strings
        .map((string) => string.filter(({ loop }) => loops.has(loop)))
        .filter((string) => string.length > 0)
    }))
    .filter(({ strings }) => strings.length > 0);
  return {
    ...removeTraffic(site),
    loops: site.loops.filter(({ id }) => loops.has(id)),
    lanes: site.lanes.filter(({ id }) => lanes.has(id)),
    marks: site.marks.filter(({ id }) => marks.has(id)),
    paths: site.paths.filter(({ id }) => paths.has(id)),
    probes: site.probes.filter((_, index) => probes.has(String(index))),
    circuits,
    underlays: site.underlays.filter(({ id }) => underlays.has(id)),
    readings: [],
    conduits: [],
    steel: site.steel.filter(({ id }) => steel.has(id))
  };
}

export interface Inserted {
  readonly site: Site;
  /** The copies. */
  readonly things: readonly Thing[];
}

const hasRoom = (site: Site, from: Site): boolean =>
  (['loops', 'lanes', 'marks', 'steel', 'paths', 'probes', 'circuits', 'underlays'] as const).every(
    (key) => site[key].length + from[key].length <= COUNTS[key]
  );

/** Every circuit on the next free channel, with the threshold and the output of the one it was copied from. */
function insertCircuit(
  site: Site,
  { from, origin, loops, marks }: { from: Circuit; origin: Site; loops: Renamed; marks: MarkCopies }
): Site {
  const { site: connected, channel } = from.channel ? withFreeChannel(site) : { site, channel: null };
  const id = freeId(connected.circuits, 'C');
  const strings = from.strings.map((string) =>
    string.map((entry) => ({ ...entry, loop: loops.get(entry.loop) ?? entry.loop }))
  );
  const { tripThreshold, releaseRatio, output } = from.channel ?? {};
  const settings = { tripThreshold, releaseRatio, output };
  const { site: cabled, leadIn } = withCables(connected, origin, copiedLeadIn(site, from.leadIn, marks));
  const copy: Circuit = {
    ...from,
    id,
    name: strings[0]?.[0]?.loop ?? id,
    strings,
    leadIn,
    channel: channel && ({ ...channel, ...settings } as typeof channel),
    detect: from.detect.filter((vehicle) => vehicleOf(vehicle, site))
  };
  return { ...cabled, circuits: [...cabled.circuits, copy] };
}

/** The lead-in with its cables as the site knows them, which may have to be brought along. */
function withCables(site: Site, origin: Site, leadIn: Circuit['leadIn']) {
  let next = site;
  const known = <P extends { readonly cable: string }>(part: P): P => {
    const brought = bringCable(next, origin, part.cable);
    next = brought.site;
    return { ...part, cable: brought.id };
  };
  const first = known(leadIn);
  const further = leadIn.further?.map(known);
  return { site: next, leadIn: further ? { ...first, further } : first };
}

/** Free ids for the copies of the marks, which ways refer to before the marks are there. */
function namesForMarks(site: Site, from: Site): Renamed {
  const ids = new Map<string, string>();
  let taken: readonly { readonly id: string }[] = site.marks;
  for (const mark of from.marks) {
    const id = freeId(taken, 'm');
    ids.set(mark.id, id);
    taken = [...taken, { id }];
  }
  return ids;
}

function insertLane(site: Site, from: Lane, id: string): Lane {
  const { largestVehicle, ...rest } = from;
  const known = largestVehicle !== undefined && vehicleOf(largestVehicle, site) !== undefined;
  return { ...free(rest), id, ...(known ? { largestVehicle } : {}) };
}

/** A copy is there to be worked on: only pictures keep their lock. */
function free<T extends { readonly locked?: boolean | undefined; readonly hidden?: boolean | undefined }>(
  thing: T
): T {
  return patched<typeof thing>(thing, { locked: undefined, hidden: undefined });
}

/**
 * Copies of everything in `from`, moved by `by`; nothing at all when the site has no room for all of it. `standing`: marks
 * of the document that the copies come from; a way to one of them goes on where that very mark is in the site.
 */
export function insertCopies(site: Site, from: Site, by: Point, standing: readonly Mark[] = []): Inserted {
  if (!hasRoom(site, from)) return { site, things: [] };
  const loops = new Map<string, string>();
  const things: Thing[] = [];
  const marks: MarkCopies = { ids: namesForMarks(site, from), standing };
  let next = site;
  for (const loop of from.loops) {
    const id = freeId(next.loops, 'L');
    loops.set(loop.id, id);
    things.push({ kind: 'loop', id });
    const { site: wired, id: wire } = bringWire(next, from, loop.wire);
    const copy = { ...free(loop), id, name: id, wire, tail: copiedTail(site, loop.tail, marks) };
    next = { ...wired, loops: [...wired.loops, copy] };
  }
  for (const circuit of from.circuits)
    next = insertCircuit(next, { from: circuit, origin: from, loops, marks });
  for (const lane of from.lanes) {
    const id = freeId(next.lanes, 'lane');
    things.push({ kind: 'lane', id });
    next = { ...next, lanes: [...next.lanes, insertLane(site, lane, id)] };
  }
  for (const mark of from.marks) {
    const id = marks.ids.get(mark.id) ?? mark.id;
    things.push({ kind: 'mark', id });
    next = { ...next, marks: [...next.marks, { ...free(mark), id }] };
  }
  for (const steel of from.steel) {
    const id = freeId(next.steel, 's');
    things.push({ kind: 'steel', id });
    next = { ...next, steel: [...next.steel, { ...free(steel), id }] };
  }
  for (const path of from.paths) {
    const id = freeId(next.paths, 'p');
    things.push({ kind: 'path', id });
    next = { ...next, paths: [...next.paths, { ...free(path), id }] };
  }
  for (const probe of from.probes) {
    const { site: known, id: vehicle } = bringVehicle(next, from, probe.vehicle);
    things.push({ kind: 'probe', id: String(known.probes.length) });
    next = { ...known, probes: [...known.probes, { ...free(probe), vehicle }] };
  }
  for (const underlay of from.underlays) {
    const id = freeId(next.underlays, 'picture');
    things.push({ kind: 'underlay', id });
    next = { ...next, underlays: [...next.underlays, { ...underlay, id }] };
  }
  return { site: moveThings(next, things, by), things };
}

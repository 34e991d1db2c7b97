/** Taking copies of things, with the wiring among the loops, and putting them in with ids of their own. */
import { COUNTS } from '../bounds';
import { cableOf } from '../catalogue/cables';
import { vehicleOf } from '../catalogue/vehicles';
import type { Circuit, Lane, Point, Site } from '../schema';
import { withFreeChannel } from './channels';
import { freeId } from './list';
import { idsOf, type Thing } from './thing';
import { moveThings } from './transform';

/** The same site with nothing in it but these things and the circuits of the loops, cut down to these loops. */
export function extractThings(site: Site, things: readonly Thing[]): Site {
  const loops = idsOf(things, 'loop');
  const lanes = idsOf(things, 'lane');
  const marks = idsOf(things, 'mark');
  const steel = idsOf(things, 'steel');
  const probes = idsOf(things, 'probe');
  const circuits = site.circuits
    .map((circuit) => ({
      ...circuit,
      strings: circuit.strings
        .map((string) => string.filter(({ loop }) => loops.has(loop)))
        .filter((string) => string.length > 0)
    }))
    .filter(({ strings }) => strings.length > 0);
  return {
    ...site,
    loops: site.loops.filter(({ id }) => loops.has(id)),
    lanes: site.lanes.filter(({ id }) => lanes.has(id)),
    marks: site.marks.filter(({ id }) => marks.has(id)),
    probes: site.probes.filter((_, index) => probes.has(String(index))),
    circuits,
    readings: [],
    steel: site.steel.filter(({ id }) => steel.has(id))
  };
}

export interface Inserted {
  readonly site: Site;
  /** The copies. */
  readonly things: readonly Thing[];
}

const hasRoom = (site: Site, from: Site): boolean =>
  (['loops', 'lanes', 'marks', 'steel', 'probes', 'circuits'] as const).every(
    (key) => site[key].length + from[key].length <= COUNTS[key]
  );

/** Every circuit on the next free channel, with the threshold and the output of the one it was copied from. */
function insertCircuit(site: Site, from: Circuit, loops: ReadonlyMap<string, string>): Site {
  const { site: wired, channel } = from.channel ? withFreeChannel(site) : { site, channel: null };
  const id = freeId(wired.circuits, 'C');
  const strings = from.strings.map((string) =>
    string.map((entry) => ({ ...entry, loop: loops.get(entry.loop) ?? entry.loop }))
  );
  const { tripThreshold, releaseRatio, output } = from.channel ?? {};
  const settings = { tripThreshold, releaseRatio, output };
  const copy: Circuit = {
    ...from,
    id,
    name: strings[0]?.[0]?.loop ?? id,
    strings,
    leadIn: cableOf(from.leadIn.cable, site) ? from.leadIn : { ...from.leadIn, cable: 'pair-14' },
    channel: channel && ({ ...channel, ...settings } as typeof channel),
    detect: from.detect.filter((vehicle) => vehicleOf(vehicle, site))
  };
  return { ...wired, circuits: [...wired.circuits, copy] };
}

function insertLane(site: Site, from: Lane, id: string): Lane {
  const { largestVehicle, ...rest } = from;
  const known = largestVehicle !== undefined && vehicleOf(largestVehicle, site) !== undefined;
  return { ...rest, id, ...(known ? { largestVehicle } : {}) };
}

/** Copies of everything in `from`, moved by `by`; nothing at all when the site has no room for all of it. */
export function insertCopies(site: Site, from: Site, by: Point): Inserted {
  if (!hasRoom(site, from)) return { site, things: [] };
  const loops = new Map<string, string>();
  const things: Thing[] = [];
  let next = site;
  for (const loop of from.loops) {
    const id = freeId(next.loops, 'L');
    loops.set(loop.id, id);
    things.push({ kind: 'loop', id });
    next = { ...next, loops: [...next.loops, { ...loop, id, name: id }] };
  }
  for (const circuit of from.circuits) next = insertCircuit(next, circuit, loops);
  for (const lane of from.lanes) {
    const id = freeId(next.lanes, 'lane');
    things.push({ kind: 'lane', id });
    next = { ...next, lanes: [...next.lanes, insertLane(site, lane, id)] };
  }
  for (const mark of from.marks) {
    const id = freeId(next.marks, 'm');
    things.push({ kind: 'mark', id });
    next = { ...next, marks: [...next.marks, { ...mark, id }] };
  }
  for (const steel of from.steel) {
    const id = freeId(next.steel, 's');
    things.push({ kind: 'steel', id });
    next = { ...next, steel: [...next.steel, { ...steel, id }] };
  }
  for (const probe of from.probes) {
    if (!vehicleOf(probe.vehicle, site)) continue;
    things.push({ kind: 'probe', id: String(next.probes.length) });
    next = { ...next, probes: [...next.probes, probe] };
  }
  return { site: moveThings(next, things, by), things };
}

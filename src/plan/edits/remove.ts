/** Deleting, with everything that would point at nothing afterwards. */
import type { Circuit, Site } from '../schema';
import { forgetCircuits } from './forget-circuits';
import { forgetLanes } from './forget-lanes';
import { kept, withList } from './list';
import { withoutLooseRoutes } from './routes';
import { idsOf, type Thing } from './thing';

/** The circuit without the loops; null when none is left. */
function withoutLoops(circuit: Circuit, loops: ReadonlySet<string>): Circuit | null {
  const strings = circuit.strings
    .map((string) => kept(string, ({ loop }) => !loops.has(loop)))
    .filter((string) => string.length > 0);
  if (strings.length === 0) return null;
  const same =
    strings.length === circuit.strings.length &&
    strings.every((string, index) => string === circuit.strings[index]);
  return same ? circuit : { ...circuit, strings };
}

/** Circuits without loops go too, and what referred to them. */
function removeLoops(site: Site, loops: ReadonlySet<string>): Site {
  if (loops.size === 0) return site;
  const remaining = site.circuits.map((circuit) => withoutLoops(circuit, loops));
  const gone = new Set(site.circuits.filter((_, index) => remaining[index] === null).map(({ id }) => id));
  const circuits = remaining.filter((circuit) => circuit !== null);
  const same =
    circuits.length === site.circuits.length &&
    circuits.every((circuit, index) => circuit === site.circuits[index]);
  const rest = {
    ...site,
    loops: kept(site.loops, ({ id }) => !loops.has(id)),
    circuits: same ? site.circuits : circuits
  };
  return forgetCircuits(rest, gone);
}

export function removeThings(site: Site, things: readonly Thing[]): Site {
  const lanes = idsOf(things, 'lane');
  const marks = idsOf(things, 'mark');
  const probes = idsOf(things, 'probe');
  const known = new Set(site.loops.map(({ id }) => id));
  const loops = new Set([...idsOf(things, 'loop')].filter((id) => known.has(id)));
  const rest = removeLoops(site, loops);
  const withoutLanes = forgetLanes(
    withList(
      rest,
      'lanes',
      kept(rest.lanes, ({ id }) => !lanes.has(id))
    ),
    lanes
  );
  const left = kept(withoutLanes.marks, ({ id }) => !marks.has(id));
  const withoutMarks =
    left === withoutLanes.marks ? withoutLanes : withoutLooseRoutes({ ...withoutLanes, marks: left });
  const steel = idsOf(things, 'steel');
  const withoutSteel = withList(
    withoutMarks,
    'steel',
    kept(withoutMarks.steel, ({ id }) => !steel.has(id))
  );
  const paths = idsOf(things, 'path');
  const withoutPaths = withList(
    withoutSteel,
    'paths',
    kept(withoutSteel.paths, ({ id }) => !paths.has(id))
  );
  const underlays = idsOf(things, 'underlay');
  const withoutUnderlays = withList(
    withoutPaths,
    'underlays',
    kept(withoutPaths.underlays, ({ id }) => !underlays.has(id))
  );
  return withList(
    withoutUnderlays,
    'probes',
    kept(withoutUnderlays.probes, (_, index) => !probes.has(String(index)))
  );
}

/** What differs between two designs of a site. Things are the same ones where their ids are; the order of lists says nothing. */
import { isAlike } from '../alike';
import type { Mark, Probe, Site } from '../schema';
import type { Difference, DifferingThing } from './difference';
import { laneRules, loopRules, markRules, pathRules, probeRules, steelRules } from './drawn-rules';
import { nameOf, vehicleName } from './names';
import { fieldDifferences, type Rule } from './rule';
import {
  cableRules,
  circuitRules,
  conduitRules,
  siteRules,
  unitRules,
  vehicleRules,
  wireRules
} from './wired-rules';

export * from './difference';

type Pair = readonly [a: Site, b: Site];

function differencesIn<T extends { readonly id: string }>(
  thing: DifferingThing,
  [a, b]: readonly [readonly T[], readonly T[]],
  sites: Pair,
  rules: readonly Rule<T>[],
  called: (each: T) => string | null
): readonly Difference[] {
  const earlier = new Map(a.map((each) => [each.id, each]));
  const later = new Set(b.map(({ id }) => id));
  const told = (each: T, change: 'added' | 'removed'): Difference => ({
    thing,
    id: each.id,
    name: called(each),
    change,
    fields: []
  });
  const found = b.flatMap((each): readonly Difference[] => {
    const before = earlier.get(each.id);
    if (!before) return [told(each, 'added')];
    const fields = before === each ? [] : fieldDifferences(rules, [before, each], sites);
    return fields.length === 0 ? [] : [{ ...told(each, 'added'), change: 'changed', fields }];
  });
  return [...found, ...a.filter(({ id }) => !later.has(id)).map((each) => told(each, 'removed'))];
}

interface Placed {
  readonly probe: Probe;
  readonly index: number;
}

/** A probe has no id: equal ones are the same, and of the rest those of one vehicle in their order. */
function probeDifferences([a, b]: Pair): readonly Difference[] {
  const placed = (site: Site): Placed[] => site.probes.map((probe, index) => ({ probe, index }));
  const gone = placed(a);
  const differs = (one: Placed, other: Placed) =>
    fieldDifferences(probeRules, [one.probe, other.probe], [a, b]);
  const take = (wanted: (each: Placed) => boolean): Placed | undefined => {
    const at = gone.findIndex(wanted);
    return at < 0 ? undefined : gone.splice(at, 1)[0];
  };
  const fresh = placed(b).filter((each) => !take((earlier) => differs(earlier, each).length === 0));
  const told = ({ probe, index }: Placed, change: 'added' | 'removed', site: Site): Difference => ({
    thing: 'probe',
    id: String(index),
    name: vehicleName(probe.vehicle, site),
    change,
    fields: []
  });
  const found = fresh.map((each): Difference => {
    const before = take(({ probe }) => probe.vehicle === each.probe.vehicle);
    if (!before) return told(each, 'added', b);
    return { ...told(each, 'added', b), change: 'changed', fields: differs(before, each) };
  });
  return [...found, ...gone.map((each) => told(each, 'removed', a))];
}

function siteDifferences(sites: Pair): readonly Difference[] {
  const fields = fieldDifferences(siteRules, sites, sites);
  return fields.length === 0 ? [] : [{ thing: 'site', id: '', name: null, change: 'changed', fields }];
}

const textOf = ({ text }: Mark): string | null => (text === undefined || text.trim() === '' ? null : text);

/** From `a` to `b`: added is what only `b` has. Loops and circuits first, what belongs to no single thing last. */
export function differencesBetween(a: Site, b: Site): readonly Difference[] {
  const sites: Pair = [a, b];
  const between = <
    K extends
      | 'loops'
      | 'circuits'
      | 'units'
      | 'lanes'
      | 'marks'
      | 'steel'
      | 'paths'
      | 'conduits'
      | 'wires'
      | 'cables'
      | 'vehicles'
  >(
    thing: DifferingThing,
    key: K,
    rules: readonly Rule<Site[K][number]>[],
    called: (each: Site[K][number]) => string | null
  ): readonly Difference[] =>
    a[key] === b[key] ? [] : differencesIn<Site[K][number]>(thing, [a[key], b[key]], sites, rules, called);
  return [
    ...between('loop', 'loops', loopRules, nameOf),
    ...between('circuit', 'circuits', circuitRules, nameOf),
    ...between('unit', 'units', unitRules, nameOf),
    ...between('lane', 'lanes', laneRules, nameOf),
    ...between('mark', 'marks', markRules, textOf),
    ...between('steel', 'steel', steelRules, () => null),
    ...between('path', 'paths', pathRules, nameOf),
    ...(isAlike(a.probes, b.probes) ? [] : probeDifferences(sites)),
    ...between('conduit', 'conduits', conduitRules, nameOf),
    ...between('wire', 'wires', wireRules, nameOf),
    ...between('cable', 'cables', cableRules, nameOf),
    ...between('vehicle', 'vehicles', vehicleRules, nameOf),
    ...siteDifferences(sites)
  ];
}

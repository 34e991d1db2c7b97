/** What the details panel is about, from what is selected. */
import type { Ref } from '#editor/types';
import type { Circuit, Lane, Loop, Mark, Path, Probe, Site, Steel, Underlay } from '#plan/schema';
import { circuitWith, loopsIn } from '#plan/wiring';

export type Subject =
  | { readonly kind: 'site' }
  | { readonly kind: 'loops'; readonly loops: readonly Loop[] }
  | { readonly kind: 'lane'; readonly lane: Lane }
  | { readonly kind: 'mark'; readonly mark: Mark }
  | { readonly kind: 'steel'; readonly steel: Steel }
  | { readonly kind: 'path'; readonly path: Path }
  | { readonly kind: 'underlay'; readonly underlay: Underlay }
  | { readonly kind: 'vehicle'; readonly index: number; readonly probe: Probe }
  | { readonly kind: 'several'; readonly count: number };

export function subjectOf(site: Site, selection: readonly Ref[]): Subject {
  const [only] = selection;
  if (only === undefined) return { kind: 'site' };
  const ids = new Set(selection.filter(({ kind }) => kind === 'loop').map(({ id }) => id));
  if (ids.size === selection.length) {
    const loops = site.loops.filter(({ id }) => ids.has(id));
    return loops.length > 0 ? { kind: 'loops', loops } : { kind: 'site' };
  }
  if (selection.length > 1) return { kind: 'several', count: selection.length };
  return subjectOfOne(site, only) ?? { kind: 'site' };
}

function subjectOfOne(site: Site, { kind, id }: Ref): Subject | null {
  const lane = kind === 'lane' ? site.lanes.find((each) => each.id === id) : undefined;
  if (lane) return { kind: 'lane', lane };
  const mark = kind === 'mark' ? site.marks.find((each) => each.id === id) : undefined;
  if (mark) return { kind: 'mark', mark };
  const steel = kind === 'steel' ? site.steel.find((each) => each.id === id) : undefined;
  if (steel) return { kind: 'steel', steel };
  const path = kind === 'path' ? site.paths.find((each) => each.id === id) : undefined;
  if (path) return { kind: 'path', path };
  const underlay = kind === 'underlay' ? site.underlays.find((each) => each.id === id) : undefined;
  if (underlay) return { kind: 'underlay', underlay };
  const index = Number(id);
  const probe = kind === 'probe' ? site.probes[index] : undefined;
  return probe ? { kind: 'vehicle', index, probe } : null;
}

/** The one circuit of all these loops, or null if there is none or more than one. */
export function commonCircuit(site: Site, loops: readonly Loop[]): Circuit | null {
  const circuits = new Set(loops.map(({ id }) => circuitWith(site, id)));
  const [circuit] = circuits;
  return circuits.size === 1 && circuit ? circuit : null;
}

/** What to select so that everything with one of these ids is shown: a circuit is shown by its loops. */
export function refsOf(site: Site, ids: readonly string[]): readonly Ref[] {
  const refs = ids.flatMap((id): Ref[] => {
    const circuit = site.circuits.find((each) => each.id === id);
    if (circuit) return loopsIn(circuit).map((loop) => ({ kind: 'loop', id: loop }));
    if (site.loops.some((loop) => loop.id === id)) return [{ kind: 'loop', id }];
    if (site.lanes.some((lane) => lane.id === id)) return [{ kind: 'lane', id }];
    if (site.steel.some((steel) => steel.id === id)) return [{ kind: 'steel', id }];
    if (site.paths.some((path) => path.id === id)) return [{ kind: 'path', id }];
    return site.marks.some((mark) => mark.id === id) ? [{ kind: 'mark', id }] : [];
  });
  return refs.filter(
    (ref, at) => refs.findIndex(({ kind, id }) => kind === ref.kind && id === ref.id) === at
  );
}

/** The value that all have in common, or null. */
export function common<Thing, Value>(things: readonly Thing[], of: (thing: Thing) => Value): Value | null {
  const [first] = things;
  if (first === undefined) return null;
  const value = of(first);
  return things.every((thing) => of(thing) === value) ? value : null;
}

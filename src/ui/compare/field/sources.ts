/** What the field is of, and which vehicle stands in it. */
import type { FieldSource } from '#analysis/field-picture/results';
import { vehicleOf, vehiclesOf } from '#plan/catalogue/vehicles';
import { distance } from '#plan/geometry/points';
import type { Loop, Point, Probe, Site } from '#plan/schema';
import { centreOf } from '#plan/shapes/index';
import { circuitWith, loopsIn } from '#plan/wiring';
import type { Ref } from '#editor/types';
import { t } from '#i18n/message';
import { nameOf } from '../../names';
import { askedFor } from '../../passing/along/vehicles';

export interface Offered {
  readonly value: string;
  readonly label: string;
}

/** A vehicle that stands nearer to the loop than this is meant, metres from middle to middle. */
const NEAR = 3;

export const keyOf = ({ kind, id }: FieldSource): string => `${kind} ${id}`;

/** Every loop, and every circuit of more than one. */
export const sourcesOf = (site: Site): readonly Offered[] => [
  ...site.loops.map((loop) => ({
    value: keyOf({ kind: 'loop', id: loop.id }),
    label: t('seen.ofLoop', { name: nameOf(loop) })
  })),
  ...site.circuits
    .filter((circuit) => loopsIn(circuit).length > 1)
    .map((circuit) => ({
      value: keyOf({ kind: 'circuit', id: circuit.id }),
      label: t('seen.ofCircuit', { name: nameOf(circuit) })
    }))
];

/** The loop nearest to the first vehicle, else the first. */
function usualLoop({ loops, probes }: Site): string | undefined {
  const [probe] = probes;
  if (!probe) return loops[0]?.id;
  const away = loops.map(({ id, shape }) => ({ id, away: distance(centreOf(shape), probe.at) }));
  return away.sort((a, b) => a.away - b.away)[0]?.id;
}

/** What is chosen, else the selected loop, else the last one, else the usual one; null for a plan without loops. */
export function sourceShown(
  site: Site,
  chosen: string | null,
  selection: readonly Ref[],
  last: string | null
): FieldSource | null {
  const [kind, ...rest] = (chosen ?? '').split(' ');
  const named = rest.join(' ');
  const isThere = (id: string | null | undefined): boolean => site.loops.some((loop) => loop.id === id);
  if (kind === 'loop' && isThere(named)) return { kind, id: named };
  if (kind === 'circuit' && site.circuits.some(({ id }) => id === named)) return { kind, id: named };
  const selected = selection.find((ref) => ref.kind === 'loop' && isThere(ref.id));
  const id = selected?.id ?? (isThere(last) ? last : usualLoop(site));
  return id === null || id === undefined ? null : { kind: 'loop', id };
}

export function loopsOfSource(site: Site, { kind, id }: FieldSource): readonly Loop[] {
  if (kind === 'loop') return site.loops.filter((loop) => loop.id === id);
  const circuit = site.circuits.find((each) => each.id === id);
  const ids = circuit ? loopsIn(circuit) : [];
  return ids.flatMap((each) => site.loops.filter((loop) => loop.id === each));
}

/** Of its first loop. */
export const middleOf = (loops: readonly Loop[]): Point | null =>
  loops[0] ? centreOf(loops[0].shape) : null;

/** Those that stand on the plan, then every kind over the loop's middle. */
export const vehiclesOffered = (site: Site): readonly Offered[] => [
  ...site.probes.flatMap((probe, index) => {
    const vehicle = vehicleOf(probe.vehicle, site);
    return vehicle
      ? [
          {
            value: `probe ${index}`,
            label: t('seen.onPlan', { vehicle: nameOf(vehicle), number: index + 1 })
          }
        ]
      : [];
  }),
  ...vehiclesOf(site).map((vehicle) => ({
    value: `over ${vehicle.id}`,
    label: t('seen.over', { vehicle: nameOf(vehicle) })
  }))
];

/** What is chosen, else the selected vehicle, else one that stands near, else the one asked for over the middle. */
export function vehicleShown(
  site: Site,
  source: FieldSource,
  middle: Point,
  chosen: string | null,
  selection: readonly Ref[]
): string {
  if (chosen !== null && vehiclesOffered(site).some(({ value }) => value === chosen)) return chosen;
  const selected = selection.find(({ kind, id }) => kind === 'probe' && site.probes[Number(id)]);
  if (selected) return `probe ${selected.id}`;
  const [nearest] = site.probes
    .map((probe, index) => ({ index, away: distance(probe.at, middle) }))
    .filter(({ index, away }) => away < NEAR && vehicleOf(site.probes[index]!.vehicle, site))
    .sort((a, b) => a.away - b.away);
  if (nearest) return `probe ${nearest.index}`;
  const circuit =
    source.kind === 'circuit'
      ? site.circuits.find(({ id }) => id === source.id)
      : circuitWith(site, source.id);
  const asked = askedFor({ circuits: circuit ? [circuit] : [], vehicles: site.vehicles });
  return `over ${asked[0]}`;
}

/** Null where it is not there. */
export function probeOf(site: Site, key: string, middle: Point, heading: number): Probe | null {
  const [kind, ...rest] = key.split(' ');
  const id = rest.join(' ');
  if (kind === 'probe') return site.probes[Number(id)] ?? null;
  return vehicleOf(id, site) ? { vehicle: id, at: middle, heading } : null;
}

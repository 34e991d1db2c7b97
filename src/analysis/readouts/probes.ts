/** A placed vehicle: what it changes in every loop alone and at every circuit's terminals. */
import { dot } from '#physics/numeric/cholesky';
import { type Placement } from '#physics/field/filaments';
import { reducedFlux } from '#physics/vehicle/flux';
import type { CatalogueVehicle } from '#plan/catalogue/vehicles';
import { distance, rotate } from '#plan/geometry/points';
import type { Probe, Site } from '#plan/schema';
import { centreOf, outlineOf } from '#plan/shapes/index';
import type { VehicleBody } from '../electrical/bodies';
import type { ModelledLoop } from '../electrical/circuit-input';
import type { SolvedCircuit } from '../electrical/circuit-model';
import { changeOf, type Change } from '../electrical/vehicle-effect';
import { RecentCache } from '../recent-cache';
import type { ProbeReadout } from '../results';
import type { Survey } from '../survey';

/** By vehicle, place and mesh: reduced fluxes of each loop, and changes of circuits over steel. An edit leaves the others' alone. */
export interface FluxCache {
  readonly loops: RecentCache<string, Float64Array>;
  readonly circuits: RecentCache<string, Change>;
}
export const createFluxCache = (): FluxCache => ({
  loops: new RecentCache(1_000),
  circuits: new RecentCache(1_000)
});

/** While a vehicle is dragged, loops further than this from its body are served by the quick mesh (a few percent), metres. */
const NEAR = 1;

const isNear = ({ loop }: ModelledLoop, { at, heading }: Probe, vehicle: CatalogueVehicle): boolean => {
  const centre = centreOf(loop.shape);
  const [x, y] = rotate(centre, 90 - heading, at);
  const beside = Math.max(0, Math.abs(x - at[0]) - vehicle.bodyWidth / 2);
  const beyond = Math.max(0, Math.abs(y - at[1]) - vehicle.bodyLength / 2);
  const size = outlineOf(loop.shape).reduce((most, point) => Math.max(most, distance(point, centre)), 0);
  return Math.hypot(beside, beyond) < size + NEAR;
};

/** `exact`: the fine mesh for every loop, however far. */
export const probeReadout = (
  probe: Probe,
  vehicle: CatalogueVehicle,
  body: VehicleBody,
  site: Site,
  { circuits, modelled: loops }: Survey,
  fluxes: FluxCache,
  exact: boolean
): ProbeReadout => {
  const placement: Placement = { x: probe.at[0], y: probe.at[1], heading: probe.heading };
  const place = `${body.key} ${probe.at[0]} ${probe.at[1]} ${probe.heading}`;
  // loops of one circuit must see the same mesh, or their cross terms would not match
  const near = new Set(
    [...loops.values()].filter((each) => exact || isNear(each, probe, vehicle)).map(({ loop }) => loop.id)
  );
  for (const { solved } of circuits.values()) {
    const ids = solved.input.loops.map(({ id }) => id);
    if (ids.some((id) => near.has(id))) ids.forEach((id) => near.add(id));
  }
  const meshOf = (id: string) => (near.has(id) ? 'fine' : 'coarse');
  const reducedOf = (id: string): Float64Array => {
    const { model } = loops.get(id)!;
    const mesh = meshOf(id);
    return fluxes.loops.get(`${place} ${mesh} ${model.key}`, () =>
      reducedFlux(body[mesh], model.filaments, placement)
    );
  };
  const overSteel = (solved: SolvedCircuit, key: number, mesh: 'fine' | 'coarse'): Change =>
    fluxes.circuits.get(`${place} ${mesh} ${key}`, () => changeOf(solved, body, placement, mesh));
  const own = new Map<string, number>();
  const readouts = site.circuits.flatMap(({ id, channel }) => {
    const surveyed = circuits.get(id);
    if (!surveyed) return [];
    const { solved, key } = surveyed;
    const ids = solved.input.loops.map((loop) => loop.id);
    const change = solved.steel
      ? overSteel(solved, key, meshOf(ids[0]!))
      : ids.map((a) => ids.map((b) => -dot(reducedOf(a), reducedOf(b))));
    ids.forEach((loop, i) => {
      const value = change[i]![i]!;
      own.set(loop, typeof value === 'number' ? value : value.re);
    });
    const deltaL = solved.inductanceWith((i, j) => change[i]![j]!) - solved.inductance;
    const deltaLOverL = deltaL / solved.inductance;
    return [
      {
        id,
        deltaL_H: deltaL,
        deltaLOverL,
        deltaF_Hz: (-deltaLOverL / 2) * solved.frequency,
        detected: channel !== null && -deltaLOverL >= channel.tripThreshold
      }
    ];
  });
  return {
    vehicle: probe.vehicle,
    at: probe.at,
    circuits: readouts,
    loops: [...loops.keys()].map((id) => ({
      id,
      deltaL_H: own.get(id) ?? -dot(reducedOf(id), reducedOf(id))
    }))
  };
};

/** How every vehicle answers on one circuit, in its own lanes and from the lanes beside them. */
import { vehicleOf, type CatalogueVehicle } from '#plan/catalogue/vehicles';
import type { Circuit, Loop, Site } from '#plan/schema';
import type { VehicleBody } from '../electrical/bodies';
import type { SolvedCircuit } from '../electrical/circuit-model';
import type { NeighbourResponse, VehicleResponse } from '../results';
import { LOW_VEHICLE, USUAL_LARGEST, vehiclesOn } from './in-play';
import type { LaneLine } from './lane-line';
import { distinctLines, extentAlong, neighbourLines, pathOffsets, servedLines } from './paths';
import { strongestOnPath, type Strongest } from './strongest';

/** What a response needs beside the circuit: prepared vehicles, and a memory of passes already made on this circuit. */
export interface PassMeans {
  /** Null while the vehicle is still being prepared. */
  readonly bodyOf: (vehicle: CatalogueVehicle) => VehicleBody | null;
  readonly remember: (what: string, make: () => readonly Strongest[]) => readonly Strongest[];
}

const passes = (
  circuit: SolvedCircuit,
  loops: readonly Loop[],
  vehicle: CatalogueVehicle,
  body: VehicleBody,
  lines: readonly LaneLine[]
): readonly Strongest[] => {
  return distinctLines(lines).flatMap((line) =>
    pathOffsets(vehicle.paths, line.width).map((offset) =>
      strongestOnPath(
        circuit,
        body,
        vehicle,
        line,
        offset,
        loops.map((loop) => extentAlong(loop, line))
      )
    )
  );
};

const weakerFirst = (a: Strongest, b: Strongest): number => b.deltaLOverL - a.deltaLOverL;

/** The passes of one vehicle over a circuit's loops, the weakest first; null while it is still being prepared. */
export const passesOver = (
  vehicle: CatalogueVehicle,
  solved: SolvedCircuit,
  loops: readonly Loop[],
  site: Site,
  { bodyOf, remember }: PassMeans
): readonly Strongest[] | null => {
  const body = bodyOf(vehicle);
  if (!body) return null;
  const made = remember(`over ${body.key} ${vehicle.paths}`, () =>
    passes(solved, loops, vehicle, body, servedLines(loops, site))
  );
  return [...made].sort(weakerFirst);
};

/** `vehicles`: for whoever needs fewer than a circuit shows. */
export const vehicleResponses = (
  circuit: Circuit,
  solved: SolvedCircuit,
  loops: readonly Loop[],
  site: Site,
  means: PassMeans,
  vehicles = vehiclesOn(circuit, site)
): readonly VehicleResponse[] => {
  const threshold = circuit.channel?.tripThreshold ?? null;
  return vehicles.flatMap((vehicle) => {
    const sorted = passesOver(vehicle, solved, loops, site, means);
    if (!sorted) return [];
    const weakest = sorted[0]!;
    const strongest = sorted[sorted.length - 1]!;
    return [
      {
        vehicle: vehicle.id,
        best: strongest.deltaLOverL,
        worst: weakest.deltaLOverL,
        at: strongest.at,
        heading: strongest.heading,
        worstAt: weakest.at,
        worstHeading: weakest.heading,
        margin: threshold === null ? null : -weakest.deltaLOverL / threshold,
        wanted: circuit.detect.includes(vehicle.id)
      }
    ];
  });
};

/** The worst that the traffic of each lane beside the circuit does to it, driving in its lane's middle. */
export const neighbourResponses = (
  solved: SolvedCircuit,
  loops: readonly Loop[],
  site: Site,
  { bodyOf, remember }: PassMeans
): readonly NeighbourResponse[] =>
  neighbourLines(loops, site).flatMap((line) => {
    const lane = line.lane!;
    const ids = [...new Set([lane.largestVehicle ?? USUAL_LARGEST, LOW_VEHICLE])];
    const answers = ids.flatMap((id) => {
      const vehicle = vehicleOf(id, site);
      const body = vehicle && bodyOf(vehicle);
      if (!vehicle || !body) return [];
      const extents = loops.map((loop) => extentAlong(loop, line));
      return remember(`beside ${lane.id} ${body.key}`, () => [
        strongestOnPath(solved, body, vehicle, line, 0, extents, false)
      ]).map((pass) => ({ id, pass }));
    });
    if (answers.length === 0) return [];
    const worst = answers.reduce((a, b) => (b.pass.deltaLOverL < a.pass.deltaLOverL ? b : a));
    return [{ lane: lane.id, vehicle: worst.id, deltaLOverL: worst.pass.deltaLOverL, at: worst.pass.at }];
  });

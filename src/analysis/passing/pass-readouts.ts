/**
 * Wheel path by wheel path: every vehicle asked for over the lanes that a circuit serves, the largest vehicle of each of
 * them, and the traffic of the lanes beside, in the middle and as near to the loops as its lane lets it drive.
 */
import { vehicleOf, type CatalogueVehicle } from '#plan/catalogue/vehicles';
import type { Site } from '#plan/schema';
import type { VehicleBody } from '../electrical/bodies';
import type { SurveyedCircuit } from '../survey';
import type { Steps } from '../steps';
import { LONG_AND_HIGH, LOW_VEHICLE, USUAL_LARGEST } from './in-play';
import { onLine, type LaneLine } from './lane-line';
import { distinctLines, neighbourLines, pathOffsets, servedLines } from './paths';
import { profileOver } from './profile';
import type { PassReadout, Profile, Zone } from './results';
import { placeOn, stationOf, wayAlong, wayOf, type Way } from './way';
import { responseAt, strongestOf, zonesOf } from './zones';
import { centreOf } from '#plan/shapes/index';

/** A circuit with no lane is driven over along +y, from so far before it to so far beyond, metres. */
const AROUND = 60;

interface Drive {
  readonly vehicle: CatalogueVehicle;
  readonly way: Way;
  readonly line: LaneLine;
  readonly offset: number;
  readonly isServed: boolean;
}

const wayOfLine = (line: LaneLine, site: Site): Way | null =>
  line.lane
    ? wayOf(site, { kind: 'lane', id: line.lane.id })
    : wayAlong({ kind: 'lane', id: '' }, [onLine(line, -AROUND, 0), onLine(line, AROUND, 0)]);

/** How far to either side of the middle a vehicle's body still keeps within its lane, metres. */
const play = ({ bodyWidth }: CatalogueVehicle, width: number): number => Math.max(0, (width - bodyWidth) / 2);

/** Two-wheelers on any path; what fills the lane in its middle and at both edges. */
const servedOffsets = (vehicle: CatalogueVehicle, { lane, width }: LaneLine): readonly number[] => {
  if (vehicle.paths === 'anywhere' || lane === null) return pathOffsets(vehicle.paths, width);
  const edge = play(vehicle, width);
  return edge > 0 ? [-edge, 0, edge] : [0];
};

/** In the middle, and with its side on the lane's edge towards the loops. */
const neighbourOffsets = (
  vehicle: CatalogueVehicle,
  { width }: LaneLine,
  way: Way,
  { loops }: SurveyedCircuit
): readonly number[] => {
  const sides = loops.map(({ shape }) => stationOf(way, centreOf(shape)).offset);
  const nearest = sides.reduce((best, side) => (Math.abs(side) < Math.abs(best) ? side : best));
  const edge = Math.sign(nearest) * play(vehicle, width);
  return edge === 0 ? [0] : [0, edge];
};

const drivesOver = (surveyed: SurveyedCircuit, site: Site): readonly Drive[] => {
  const { circuit, loops } = surveyed;
  const known = (ids: readonly string[]): CatalogueVehicle[] =>
    [...new Set(ids)].flatMap((id) => vehicleOf(id, site) ?? []);
  const served = distinctLines(servedLines(loops, site)).flatMap((line) => {
    const way = wayOfLine(line, site);
    if (!way) return [];
    const largest = line.lane?.largestVehicle;
    const long = largest ? [largest] : [USUAL_LARGEST, LONG_AND_HIGH];
    return known([...circuit.detect, ...long]).flatMap((vehicle) =>
      servedOffsets(vehicle, line).map((offset) => ({ vehicle, way, line, offset, isServed: true }))
    );
  });
  const beside = neighbourLines(loops, site).flatMap((line) => {
    const way = wayOfLine(line, site);
    if (!way) return [];
    return known([line.lane?.largestVehicle ?? USUAL_LARGEST, LOW_VEHICLE]).flatMap((vehicle) =>
      neighbourOffsets(vehicle, line, way, surveyed).map((offset) => ({
        vehicle,
        way,
        line,
        offset,
        isServed: false
      }))
    );
  });
  return [...served, ...beside];
};

/** The weakest place between each two detections. */
const gapsBetween = (profile: Profile, zones: readonly Zone[]) =>
  zones.slice(1).map(({ from_m: end }, k) => {
    const start = zones[k]!.to_m;
    let along = start;
    for (let at = start; at <= end; at += profile.step)
      if (responseAt(profile, at) < responseAt(profile, along)) along = at;
    return { along, response: responseAt(profile, along), length_m: end - start };
  });

const readoutOf = (drive: Drive, profile: Profile, { circuit }: SurveyedCircuit): PassReadout => {
  const { vehicle, way, line, offset, isServed } = drive;
  const { channel } = circuit;
  const { along_m, response } = strongestOf(profile);
  const place = (along: number) => {
    const { x, y, heading } = placeOn(way, along, offset, vehicle.bodyLength);
    return { at: [x, y] as const, heading };
  };
  const zones = channel
    ? zonesOf(profile, channel.tripThreshold, channel.tripThreshold * channel.releaseRatio)
    : [];
  const [first, last] = [zones[0], zones[zones.length - 1]];
  return {
    circuit: circuit.id,
    vehicle: vehicle.id,
    lane: line.lane?.id ?? null,
    isServed,
    wanted: isServed && circuit.detect.includes(vehicle.id),
    offset_m: offset,
    response,
    ...place(along_m),
    margin: channel && response / channel.tripThreshold,
    detections: zones.length,
    zone:
      first && last
        ? {
            length_m: last.to_m - first.from_m,
            from: place(first.from_m).at,
            to: place(last.to_m).at
          }
        : null,
    gaps: gapsBetween(profile, zones).map(({ along, ...gap }) => ({ ...gap, at: place(along).at }))
  };
};

/** `bodyOf`: also of vehicles that nothing else needs. */
export function* passReadoutsInSteps(
  surveyed: SurveyedCircuit,
  site: Site,
  bodyOf: (vehicle: CatalogueVehicle) => VehicleBody | null
): Steps<readonly PassReadout[]> {
  const readouts: PassReadout[] = [];
  for (const drive of drivesOver(surveyed, site)) {
    const body = bodyOf(drive.vehicle);
    const profile = body && profileOver(surveyed, drive.vehicle, body, drive.way, drive.offset);
    if (profile) readouts.push(readoutOf(drive, profile, surveyed));
    yield;
  }
  return readouts;
}

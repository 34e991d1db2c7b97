/** The answer to 'measure-speed': vehicles driven over a pair of circuits, both ways. */
import { tolerancesOf } from '#plan/catalogue/tolerances';
import { vehicleOf, type CatalogueVehicle } from '#plan/catalogue/vehicles';
import type { Site } from '#plan/schema';
import type { Means } from '../means';
import { profileOver } from '../passing/profile';
import { wayAlong, type Way } from '../passing/way';
import type { Steps } from '../steps';
import type { Survey } from '../survey';
import { crossingOf } from './measure';
import { laneOfPair, type CircuitExtent } from './pairs';
import type { PairDirection, PairPass, PairPicture, PairSide, SpeedWish } from './results';
import { scanOfCircuit } from './timing';

/** Null where the circuit is on no channel. */
const sideOf = (site: Site, { circuit, from_m, to_m }: CircuitExtent): PairSide | null => {
  const { channel } = circuit;
  if (!channel) return null;
  return {
    circuit: circuit.id,
    from_m,
    to_m,
    threshold: channel.tripThreshold,
    release: channel.tripThreshold * channel.releaseRatio,
    scan_s: scanOfCircuit(site, circuit)
  };
};

function* passOver(
  vehicle: CatalogueVehicle,
  sides: readonly [PairSide, PairSide],
  way: Way,
  survey: Survey,
  means: Means
): Steps<PairPass | null> {
  const body = means.bodies.get(vehicle);
  yield;
  const surveyed = sides.map(({ circuit }) => survey.circuits.get(circuit));
  const [one, other] = surveyed;
  const first = one && profileOver(one, vehicle, body, way, 0);
  yield;
  const second = other && profileOver(other, vehicle, body, way, 0);
  yield;
  if (!first || !second) return null;
  const [a, b] = sides;
  const crossings = [
    crossingOf(first, a.threshold, a.release),
    crossingOf(second, b.threshold, b.release)
  ] as const;
  const even = crossingOf(second, a.threshold, a.release);
  return {
    vehicle: vehicle.id,
    vehicleLength_m: vehicle.bodyLength,
    profiles: [first, second],
    crossings: crossings[0] && crossings[1] ? [crossings[0], crossings[1]] : null,
    evenTripDistance_m: crossings[0] && even ? even.trip_m - crossings[0].trip_m : null
  };
}

function* driven(
  site: Site,
  wish: SpeedWish,
  sides: readonly [PairSide, PairSide],
  way: Way,
  means: Means
): Steps<PairDirection> {
  const survey = means.surveyor.survey(site);
  const passes: PairPass[] = [];
  for (const id of wish.vehicles) {
    const vehicle = vehicleOf(id, site);
    const pass = vehicle ? yield* passOver(vehicle, sides, way, survey, means) : null;
    if (pass) passes.push(pass);
  }
  return { sides, spacing_m: sides[1].from_m - sides[0].from_m, passes };
}

/** Null for circuits that do not follow one another in a lane, or of which one is on no channel. */
export function* measureInSteps(site: Site, wish: SpeedWish, means: Means): Steps<PairPicture | null> {
  const found = laneOfPair(site, wish.first, wish.second);
  if (!found) return null;
  const { lane, way, extents } = found;
  const [first, second] = extents.map((extent) => sideOf(site, extent));
  if (!first || !second) return null;
  const back = wayAlong(way.ref, [...way.points].reverse());
  if (!back) return null;
  const turned = (side: PairSide): PairSide => ({
    ...side,
    from_m: way.length - side.to_m,
    to_m: way.length - side.from_m
  });
  const forward = yield* driven(site, wish, [first, second], way, means);
  const backward = yield* driven(site, wish, [turned(second), turned(first)], back, means);
  return {
    lane: lane.id,
    length_m: way.length,
    forward,
    backward,
    spacingTolerance_m: tolerancesOf(site).dimensions_m
  };
}

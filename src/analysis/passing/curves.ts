/** Chosen vehicles driven along a way: the picture of a pass. */
import { vehicleOf } from '#plan/catalogue/vehicles';
import type { Site } from '#plan/schema';
import { loopsIn } from '#plan/wiring';
import type { Means } from '../means';
import type { Steps } from '../steps';
import { extentOn, profileInSteps } from './profile';
import type { PassCurve, PassPicture, PassWish, Profile } from './results';
import { wayOf } from './way';
import { strongestOf, zonesOf } from './zones';

const curveOf = (profile: Profile, site: Site): PassCurve => {
  const channel = site.circuits.find(({ id }) => id === profile.circuit)?.channel ?? null;
  const threshold = channel && channel.tripThreshold;
  const release = channel && channel.tripThreshold * channel.releaseRatio;
  return {
    profile,
    threshold,
    release,
    zones: threshold === null || release === null ? [] : zonesOf(profile, threshold, release),
    strongest: strongestOf(profile)
  };
};

/** Null for a way that is not there. Vehicles that are not there are left out. */
export function* curvesInSteps(site: Site, wish: PassWish, means: Means): Steps<PassPicture | null> {
  const way = wayOf(site, wish.way);
  if (!way) return null;
  const survey = means.surveyor.survey(site);
  const curves: PassCurve[] = [];
  for (const id of wish.vehicles) {
    const vehicle = vehicleOf(id, site);
    if (!vehicle) continue;
    const body = means.bodies.get(vehicle);
    yield;
    for (const surveyed of survey.circuits.values()) {
      const profile = yield* profileInSteps(surveyed, vehicle, body, way, wish.offset_m);
      if (profile) curves.push(curveOf(profile, site));
      yield;
    }
  }
  const circuitOf = new Map(
    site.circuits.flatMap((circuit) => loopsIn(circuit).map((loop) => [loop, circuit.id]))
  );
  return {
    way: wish.way,
    length_m: way.length,
    offset_m: wish.offset_m,
    loops: site.loops
      .filter(({ id }) => survey.modelled.has(id))
      .map(({ id, shape }) => {
        const { from, to } = extentOn(way, shape);
        return { id, circuit: circuitOf.get(id) ?? null, from_m: from, to_m: to };
      }),
    curves
  };
}

/** The responses that traffic needs: every circuit's to every vehicle on every path of every lane. */
import { vehicleOf } from '#plan/catalogue/vehicles';
import type { Site } from '#plan/schema';
import type { Means } from '../means';
import { profilesInSteps } from '../passing/profile';
import type { Profile } from '../passing/results';
import { wayOf } from '../passing/way';
import type { Steps } from '../steps';
import type { Trajectory } from './results';

/** By circuit. */
export type ProfilesOfOne = ReadonlyMap<string, Profile>;

const NONE: ProfilesOfOne = new Map();

/** Of each trajectory, the same object for alike ones; a step says the share that is done. */
export function* laneProfilesInSteps(
  site: Site,
  vehicles: readonly Trajectory[],
  means: Means
): Steps<readonly ProfilesOfOne[]> {
  const survey = means.surveyor.survey(site);
  const ways = new Map(site.lanes.map(({ id }) => [id, wayOf(site, { kind: 'lane', id })]));
  const found = new Map<string, ProfilesOfOne>();
  const all: ProfilesOfOne[] = [];
  for (const { vehicle: id, lane, offset_m } of vehicles) {
    const which = JSON.stringify([id, lane, offset_m]);
    const known = found.get(which);
    if (known) {
      all.push(known);
      continue;
    }
    const vehicle = vehicleOf(id, site);
    const way = ways.get(lane);
    let made = NONE;
    if (vehicle && way) {
      const body = means.bodies.get(vehicle);
      yield;
      const profiles = yield* profilesInSteps(survey, vehicle, body, way, offset_m);
      made = new Map(profiles.map((profile) => [profile.circuit, profile]));
    }
    found.set(which, made);
    all.push(made);
    yield all.length / vehicles.length;
  }
  return all;
}

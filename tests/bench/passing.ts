/** Vehicles that pass over eight circuits of one lane, and maps of their responses: how long an edit waits for them. */
import { compressedOf } from '#analysis/electrical/compressed-bodies';
import { createMapper } from '#analysis/map/response-map';
import type { MapWish } from '#analysis/map/results';
import { createMeans } from '#analysis/means';
import { profilesAlong } from '#analysis/passing/profile';
import { wayOf } from '#analysis/passing/way';
import { finish, type Steps } from '#analysis/steps';
import { catalogueVehicles, vehicleOf } from '#plan/catalogue/vehicles';
import type { Site } from '#plan/schema';
import { centreOf } from '#plan/shapes/index';
import { bigSite, withLoopAt, withMats } from '../support/big-site';

const VEHICLES = ['car', 'van', 'lorry', 'bus', 'motorcycle', 'bicycle'];
const CIRCUITS = 8;
/** Loops lie along a lane at this pitch, metres: a bus reaches two or three at a time. */
const PITCH = 3;

/** Eight different loops one behind the other, each on a circuit of its own, moved `by` metres. */
const row = (by: number): Site => {
  const site = bigSite(CIRCUITS);
  return site.loops.reduce((moved, { shape }, k) => {
    const [x, y] = centreOf(shape);
    return withLoopAt(moved, k, [0.1 + by - x, k * PITCH - y]);
  }, site);
};

const timed = (work: () => void): number => {
  const start = performance.now();
  work();
  return performance.now() - start;
};
const median = (times: readonly number[]): string =>
  [...times].sort((a, b) => a - b)[times.length >> 1]!.toFixed(1);

/** Milliseconds of all steps together and of the longest. */
const stepped = (steps: Steps<unknown>): readonly [number, number] => {
  let all = 0;
  let longest = 0;
  for (let isDone = false; !isDone;) {
    const time = timed(() => {
      isDone = steps.next().done === true;
    });
    all += time;
    longest = Math.max(longest, time);
  }
  return [all, longest];
};

const measurePasses = (): void => {
  const means = createMeans();
  const way = wayOf(row(0), { kind: 'lane', id: 'lane1' })!;
  const times = new Map(VEHICLES.map((id) => [id, [] as number[]]));
  const together: number[] = [];
  let values = 0;
  for (const vehicle of catalogueVehicles) {
    const body = means.bodies.get(vehicle);
    const [all, longest] = stepped(compressedOf(body));
    if (all > 50)
      console.log(`compress a ${vehicle.id}: ${all.toFixed(0)} ms, longest step ${longest.toFixed(0)} ms`);
  }
  for (let edit = 0; edit < 25; edit++) {
    const survey = means.surveyor.survey(row(0.01 * edit));
    values = 0;
    const all = VEHICLES.map((id) => {
      const vehicle = vehicleOf(id, survey.site)!;
      const time = timed(() => {
        for (const { values: each } of profilesAlong(survey, vehicle, means.bodies.get(vehicle), way, 0.3))
          values += each.length;
      });
      times.get(id)!.push(time);
      return time;
    });
    together.push(all.reduce((sum, time) => sum + time, 0));
  }
  const settled = (all: readonly number[]): string => median(all.slice(5));
  console.log(
    `\npasses of ${VEHICLES.length} vehicles over ${CIRCUITS} edited circuits, ${values} values in all: ` +
      `median ${settled(together)} ms (budget 60 ms); ` +
      VEHICLES.map((id) => `${id} ${settled(times.get(id)!)}`).join(', ')
  );
  const oneEdit = Array.from({ length: 15 }, (_, edit) => {
    const survey = means.surveyor.survey(withLoopAt(row(0), 2, [0.01 * (edit + 1), 0]));
    return timed(() => {
      for (const id of VEHICLES) {
        const vehicle = vehicleOf(id, survey.site)!;
        profilesAlong(survey, vehicle, means.bodies.get(vehicle), way, 0.3);
      }
    });
  });
  console.log(
    `  the same where one circuit of the ${CIRCUITS} was edited: median ${median(oneEdit.slice(3))} ms`
  );
  const overMats = means.surveyor.survey(withMats(row(0)));
  const car = vehicleOf('car', overMats.site)!;
  profilesAlong(overMats, car, means.bodies.get(car), way, 0.3);
  const time = timed(() => profilesAlong(overMats, car, means.bodies.get(car), way, 0.31));
  console.log(`  a car over the ${CIRCUITS}, each with a mat of bars: ${time.toFixed(0)} ms`);
};

const measureMaps = (): void => {
  const site = bigSite(CIRCUITS);
  const means = createMeans();
  const mapper = createMapper(means);
  for (const { id } of catalogueVehicles)
    for (const heading of [90, 37]) {
      finish(compressedOf(means.bodies.get(vehicleOf(id, site)!)));
      const wish = (size: number): MapWish => ({
        vehicle: id,
        heading,
        circuits: null,
        box: { left: -3, bottom: -6, right: 14, top: 11 },
        columns: size,
        rows: size
      });
      const [first] = stepped(mapper(site, wish(26)));
      const [refined, longest] = stepped(mapper(site, wish(100)));
      console.log(
        `map of a ${id} heading ${heading} over ${CIRCUITS} circuits: 26 × 26 ${first.toFixed(0)} ms (budget 150), ` +
          `100 × 100 ${refined.toFixed(0)} ms (budget 1500), longest step ${longest.toFixed(0)} ms`
      );
    }
};

export const measurePassing = (): void => {
  measurePasses();
  measureMaps();
};

/** Counts of the drawing's own traffic are kept as long as they stay what they are. */
import { expect, it } from 'vitest';
import { createCallKeeper } from '#analysis/calls-keeper';
import { callSimulatorOf } from '#analysis/calls/simulate';
import { createMeans } from '#analysis/means';
import * as edits from '#plan/edits/index';
import type { Channel, Site } from '#plan/schema';
import { stopLine } from '#plan/situations/stop-line';

const means = createMeans();
const keeper = createCallKeeper(means.surveyor, () => callSimulatorOf(means));
const { survey } = means.surveyor;
/** Keeps nothing of what others simulated. */
const simulatorOfItsOwn = () => {
  const simulator = callSimulatorOf(createMeans());
  return () => simulator;
};
const summaries = (site: Site, with_ = keeper) => {
  const surveyed = survey(site);
  while (with_.next(surveyed));
  return with_.of(surveyed);
};

const drawn = stopLine.build();
const car = (at_s: number) => ({
  lane: 'lane2',
  vehicle: 'car',
  at_s,
  speed_m_s: 10,
  offset_m: 0,
  stop: null
});
const site = edits.setTraffic(drawn, {
  seed: 1,
  duration_s: 60,
  streams: [],
  arrivals: [car(0), car(8), car(20)]
});

const onCircuits = (change: (channel: Channel) => Channel): Site => ({
  ...site,
  circuits: site.circuits.map((each) => ({ ...each, channel: each.channel && change(each.channel) }))
});
const loops = site.loops.map(({ id }) => ({ kind: 'loop' as const, id }));

/** Each of them changes what is counted: occupied for longer or shorter, or not at all. */
const EDITS: readonly (readonly [string, Site])[] = [
  ['an arrival', edits.updateArrival(site, 1, { speed_m_s: 5 })],
  ['the length of the simulation', edits.updateTraffic(site, { duration_s: 30 })],
  ['the threshold', onCircuits((channel) => ({ ...channel, tripThreshold: 0.01 }))],
  ['the output', onCircuits((channel) => ({ ...channel, output: { ...channel.output, extension_s: 3 } }))],
  ['a loop’s place', edits.moveThings(site, loops.slice(2, 3), [0, 0.4])],
  ['a lane’s line', edits.updateLane(site, 'lane2', { centreline: [[1, -25], [1, 3]] })], // prettier-ignore
  ['a vehicle', { ...site, vehicles: [{ ...edits.newVehicle(site, 'Car'), id: 'car' }] }]
];

it('says nothing of a drawing without traffic', () => {
  expect(keeper.of(survey(drawn))).toBeNull();
  expect(keeper.isLeft(survey(drawn))).toBe(false);
});

it('is not done before it is asked, and done then', () => {
  expect(keeper.of(survey(site))).toBeNull();
  expect(keeper.isLeft(survey(site))).toBe(true);
  expect(summaries(site)!.find(({ circuit }) => circuit === 'C2')).toMatchObject({ vehicles: 3, calls: 3 });
  expect(keeper.isLeft(survey(site))).toBe(false);
  expect(keeper.isLeft(survey({ ...site, name: 'Elsewhere' }))).toBe(false);
});

it.each(EDITS)('an edit of %s begins anew, and says what a new one says', (_, edited) => {
  const before = summaries(site);
  expect(keeper.isLeft(survey(edited))).toBe(true);
  const after = summaries(edited);
  expect(after).toEqual(summaries(edited, createCallKeeper(means.surveyor, simulatorOfItsOwn())));
  expect(after).not.toEqual(before);
});

it('a drawing that is left half way does not answer for the next one', () => {
  const [slow, quick] = [30, 31].map((seconds) => edits.updateTraffic(site, { duration_s: seconds }));
  const one = createCallKeeper(means.surveyor, simulatorOfItsOwn());
  one.next(survey(slow!));
  expect(summaries(quick!, one)).toEqual(summaries(quick!));
  expect(one.of(survey(slow!))).toBeNull();
});

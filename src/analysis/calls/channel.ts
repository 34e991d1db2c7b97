/** One channel under traffic: from who drives where to what its output said and why. */
import type { Channel } from '#plan/schema';
import type { Steps } from '../steps';
import type { Adding, Case } from './causes';
import { judged } from './judge';
import { outcomeInSteps, type Outcome } from './outcome';
import { ownResponse, ownZoneOf, passageOf, type OwnZone, type Passage, type Span } from './passages';
import type { ChannelCalls, Trajectory } from './results';
import { rulesOf, type Rules } from './rules';
import { contributionOf, NOTHING, sumInSteps, valueOn, type Curve } from './signal';
import { referenceAt } from './traces';

/** Vehicles between two places where a newer drawing may come in. */
const AT_ONCE = 200;

export interface ChannelInput {
  readonly circuit: string;
  readonly channel: Channel;
  readonly end: number;
  readonly vehicles: readonly Trajectory[];
  /** The circuit's thinned profile for each vehicle, `NOTHING` out of reach; the same object for alike ones. */
  readonly profileOf: (vehicle: number) => Curve;
  readonly lengthOf: (vehicle: number) => number;
  /** Each lane served. */
  readonly extents: ReadonlyMap<string, Served>;
}

/** Where the loops lie along a lane, and how far from its middle a vehicle may drive and still be of it, metres. */
export interface Served extends Span {
  readonly beside: number;
}

export interface SimulatedChannel {
  readonly calls: ChannelCalls;
  readonly response: Curve;
  readonly outcome: Outcome;
  readonly rules: Rules;
}

/** Who adds something at a time: those whose contribution spans it, found among neighbours in the order of their beginnings. */
function createAdding(input: ChannelInput, contributions: readonly Curve[]): Case['adding'] {
  const starting = contributions
    .map((curve, vehicle) => ({ curve, vehicle, from: curve.at[0] ?? Infinity }))
    .filter(({ curve }) => curve.at.length > 0);
  const peakOf = (vehicle: number): number => Math.max(...input.profileOf(vehicle).values);
  return (time) =>
    starting
      .filter(({ curve, from }) => from < time && curve.at[curve.at.length - 1]! > time)
      .map(({ curve, vehicle }): Adding => ({
        vehicle,
        response: valueOn(curve, time),
        peak: peakOf(vehicle)
      }))
      .filter(({ response }) => response > 0)
      .sort((a, b) => b.response - a.response);
}

export function* channelInSteps(input: ChannelInput): Steps<SimulatedChannel> {
  const { circuit, channel, end, vehicles, profileOf, lengthOf, extents } = input;
  const rules = rulesOf(channel);
  const contributions: Curve[] = [];
  for (const [k, trajectory] of vehicles.entries()) {
    const profile = profileOf(k);
    contributions.push(profile === NOTHING ? NOTHING : contributionOf(trajectory, profile));
    if (k % AT_ONCE === 0) yield;
  }
  const response = yield* sumInSteps(contributions, end);
  yield;
  const outcome = yield* outcomeInSteps(response, rules);
  const zones = new Map<Curve, OwnZone>();
  const zoneOf = (profile: Curve): OwnZone => {
    const known = zones.get(profile) ?? ownZoneOf(profile, rules);
    zones.set(profile, known);
    return known;
  };
  const passages: Passage[] = [];
  for (const [k, trajectory] of vehicles.entries()) {
    const served = extents.get(trajectory.lane);
    if (k % AT_ONCE === 0) yield;
    if (!served || Math.abs(trajectory.offset_m) > served.beside) continue;
    const passage = passageOf(k, trajectory, lengthOf(k), served, zoneOf(profileOf(k)), end);
    if (passage) passages.push(passage);
  }
  passages.sort((a, b) => a.reach.from - b.reach.from);
  yield;
  const { summary, calls, mistakes } = judged({
    rules,
    end,
    response,
    outcome,
    passages,
    referenceAt: (time) => referenceAt(response, outcome, rules, time),
    ownResponse: (vehicle, time) => ownResponse(vehicles[vehicle]!, profileOf(vehicle), time),
    adding: createAdding(input, contributions)
  });
  const stays = passages
    .map(({ vehicle, stay }) => ({ vehicle, from_s: stay.from, to_s: stay.to }))
    .sort((a, b) => a.from_s - b.from_s);
  return {
    calls: { summary: { circuit, ...summary }, stays, events: outcome.events, calls, mistakes },
    response,
    outcome,
    rules
  };
}

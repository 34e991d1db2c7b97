/**
 * The drawing's traffic over its loops, and what the units' outputs make of it: deterministic, exact in time, whatever
 * asks. The last simulations are kept, so that a part of one can be looked at closely at once.
 */
import { vehicleOf } from '#plan/catalogue/vehicles';
import type { Circuit, Site, Traffic } from '#plan/schema';
import { centreOf } from '#plan/shapes/index';
import { stationOnLane } from '#plan/stop-line';
import { loopsIn } from '#plan/wiring';
import type { Means } from '../means';
import { extentOn } from '../passing/profile';
import type { Profile } from '../passing/results';
import { wayOf } from '../passing/way';
import type { Steps } from '../steps';
import { driversOn } from '../traffic/demand';
import { durationOf, trajectoriesInSteps } from '../traffic/trajectories';
import { channelInSteps, type Served, type SimulatedChannel } from './channel';
import { laneProfilesInSteps } from './lane-profiles';
import type { CallsPicture, CallsWish, Trace, TraceWish } from './results';
import { NOTHING, thinned, type Curve } from './signal';
import { tracedPart } from './traces';

export interface CallSimulator {
  /** Null for a drawing without traffic. */
  readonly simulate: (site: Site, wish: CallsWish) => Steps<CallsPicture | null>;
  readonly trace: (site: Site, wish: TraceWish) => Steps<readonly Trace[]>;
}

interface Simulation {
  readonly picture: CallsPicture;
  readonly channels: readonly SimulatedChannel[];
}

const MOST_KEPT = 3;
/** Of all the work of a simulation, profiles take about that share. */
const PROFILES_SHARE = 0.7;

/** From the first to the last of a circuit's loops along each lane in which one of them lies. */
function extentsOf(circuit: Circuit, site: Site): ReadonlyMap<string, Served> {
  const ids = new Set(loopsIn(circuit));
  const loops = site.loops.filter(({ id }) => ids.has(id));
  return new Map(
    site.lanes.flatMap((lane) => {
      const way = wayOf(site, { kind: 'lane', id: lane.id });
      const within = loops.filter(
        ({ shape }) => stationOnLane(lane, centreOf(shape)).apart <= lane.width / 2
      );
      if (!way || within.length === 0) return [];
      const extents = within.map(({ shape }) => extentOn(way, shape));
      const span = {
        from: Math.min(...extents.map(({ from }) => from)),
        to: Math.max(...extents.map(({ to }) => to)),
        beside: lane.width / 2
      };
      return [[lane.id, span] as const];
    })
  );
}

const createCallSimulator = (means: Means): CallSimulator => {
  const kept = new Map<string, Simulation>();

  /** Everything that a simulation depends on. */
  const keyOf = (site: Site, until: number): string => {
    const { circuits } = means.surveyor.survey(site);
    const channels = [...circuits.values()].map(({ circuit, key }) => [circuit.id, key, circuit.channel]);
    const loops = site.loops.map(({ id, shape }) => [id, shape]);
    return JSON.stringify([site.traffic, until, site.lanes, site.vehicles, loops, channels]);
  };

  function* simulated(
    site: Site,
    traffic: Traffic,
    end: number,
    asked: CallsPicture['asked']
  ): Steps<Simulation> {
    const vehicles = yield* trajectoriesInSteps(site, traffic, end);
    const steps = laneProfilesInSteps(site, vehicles, means);
    let step = steps.next();
    for (; !step.done; step = steps.next())
      yield typeof step.value === 'number' ? PROFILES_SHARE * step.value : undefined;
    const all = step.value;
    const lengths = new Map(vehicles.map(({ vehicle: id }) => [id, vehicleOf(id, site)?.bodyLength ?? 0]));
    const circuits = [...means.surveyor.survey(site).circuits.values()];
    const channels: SimulatedChannel[] = [];
    for (const { circuit } of circuits) {
      const { channel } = circuit;
      if (!channel) continue;
      const thin = new Map<Profile, Curve>();
      const profileOf = (vehicle: number): Curve => {
        const profile = all[vehicle]!.get(circuit.id);
        if (!profile) return NOTHING;
        const known = thin.get(profile) ?? thinned(profile, channel.tripThreshold);
        thin.set(profile, known);
        return known;
      };
      channels.push(
        yield* channelInSteps({
          circuit: circuit.id,
          channel,
          end,
          vehicles,
          profileOf,
          lengthOf: (vehicle) => lengths.get(vehicles[vehicle]!.vehicle) ?? 0,
          extents: extentsOf(circuit, site)
        })
      );
      yield PROFILES_SHARE + ((1 - PROFILES_SHARE) * channels.length) / circuits.length;
    }
    const picture = {
      duration_s: end,
      asked,
      vehicles,
      channels: channels.map(({ calls }) => calls)
    };
    return { picture, channels };
  }

  function* simulationOf(site: Site, until: number): Steps<Simulation | null> {
    const { traffic } = site;
    if (!traffic) return null;
    const key = keyOf(site, until);
    const known = kept.get(key);
    if (known) return known;
    const end = durationOf(traffic, until);
    const made = yield* simulated(site, traffic, end, {
      duration_s: Math.min(traffic.duration_s, until),
      vehicles: site.lanes.reduce((sum, { id }) => sum + driversOn(id, site, traffic, end).length, 0)
    });
    if (kept.size >= MOST_KEPT) kept.delete(kept.keys().next().value!);
    kept.set(key, made);
    return made;
  }

  return {
    simulate: function* (site, { until_s = Infinity }) {
      return (yield* simulationOf(site, until_s))?.picture ?? null;
    },
    trace: function* (site, wish) {
      const simulation = yield* simulationOf(site, Infinity);
      const end = simulation?.picture.duration_s ?? 0;
      const [from, to] = [Math.max(0, Math.min(end, wish.from_s)), Math.min(end, wish.to_s)];
      if (!simulation || !(to >= from)) return [];
      const traces: Trace[] = [];
      for (const { calls, response, outcome, rules } of simulation.channels) {
        traces.push({ circuit: calls.summary.circuit, ...tracedPart(response, outcome, rules, from, to) });
        yield;
      }
      return traces;
    }
  };
};

const simulators = new WeakMap<Means, CallSimulator>();

/** One for all that share their means. */
export const callSimulatorOf = (means: Means): CallSimulator => {
  const known = simulators.get(means) ?? createCallSimulator(means);
  simulators.set(means, known);
  return known;
};

/** What the drawing's own traffic comes to; null without traffic. */
export const callsInSteps = (site: Site, means: Means): Steps<CallsPicture | null> =>
  callSimulatorOf(means).simulate(site, {});

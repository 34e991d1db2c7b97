/** Two-wheelers that make no call: what the design leaves them, where they ride, and what the unit is set to. */
import { vehicleOf } from '#plan/catalogue/vehicles';
import { stationOf, wayOf } from '../../passing/way';
import { answer, said, yesOrNo, type Node, type Path, type Place } from '../node';
import { loopChecks } from '../parts/loop-checks';
import { laneName, own, vehicleName } from '../parts/names';
import { swapping } from '../parts/swap';
import { practicable } from '../parts/threshold';
import type { Said } from '../results';
import { count, metres, ratio, seconds, times } from '../values';

const USUAL = 'motorcycle';
/** Share of the weakest response at which a lowered threshold still has room. */
const ROOM = 0.8;
/** A pass at 30 km/h, metres a second. */
const SPEED = 30 / 3.6;

interface Rider {
  readonly vehicle: string;
  /** On the best and on the worst path across the lane. */
  readonly best: number;
  readonly worst: number;
}

/** The weakest two-wheeler that is asked for; the catalogue's motorcycle where none is. */
function riderOf({ site, responses }: Pick<Place, 'site' | 'responses'>): Rider | null {
  const riders = responses.filter(({ vehicle }) => vehicleOf(vehicle, site)?.paths === 'anywhere');
  const motors = riders.filter(({ vehicle }) => vehicle.startsWith(USUAL));
  const asked = [
    ...motors.filter(({ wanted }) => wanted),
    ...motors,
    ...riders.filter(({ wanted }) => wanted)
  ];
  const first = asked[0];
  if (!first) return null;
  const alike = asked.filter(({ wanted }) => wanted === first.wanted);
  const { vehicle, best, worst } = alike.reduce((a, b) => (b.worst > a.worst ? b : a));
  return { vehicle, best: -best, worst: -worst };
}

/** Where it answers least: metres to the right of the middle of the lane that the circuit serves; null without a lane. */
function worstPath(place: Place, vehicle: string) {
  const { site, circuit, lanes, responses } = place;
  const found = responses.find((each) => each.vehicle === vehicle);
  if (!found) return null;
  const offsets = (lanes.get(circuit.id) ?? []).flatMap((id) => {
    const way = wayOf(site, { kind: 'lane', id });
    return way ? [stationOf(way, found.worstAt).offset] : [];
  });
  const [first, ...others] = offsets;
  if (first === undefined) return null;
  const offset = others.reduce((a, b) => (Math.abs(b) < Math.abs(a) ? b : a), first);
  return { offset, response: -found.worst };
}

/** While it is over the loops it is detected over so many metres; null where it never is. */
const zoneOf = ({ passes }: Place, vehicle: string): number | null => {
  const lengths = passes.flatMap((pass) =>
    pass.isServed && pass.vehicle === vehicle && pass.zone ? [pass.zone.length_m] : []
  );
  return lengths.length > 0 ? Math.min(...lengths) : null;
};

/** Of whoever is to be seen on every path; where `orBest`, at least on the best one. Null where no unit is set so fine. */
const lowered = ({ worst, best }: Rider, orBest: boolean): number | null =>
  practicable(ROOM * worst) ?? (orBest ? practicable(ROOM * best) : null);

/** What it would do to the lane beside. */
function besides(place: Place, threshold: number): Said {
  const beside = place.pickUps.find(({ circuit }) => circuit === place.circuit.id);
  if (!beside) return said('cycles.lower.alone', { threshold: ratio(threshold) });
  const values = {
    threshold: ratio(threshold),
    vehicle: vehicleName(place, beside.vehicle),
    lane: laneName(place, beside.lane),
    response: ratio(beside.response)
  };
  return beside.response < threshold
    ? said('cycles.lower.keeps', values)
    : said('cycles.lower.spoils', values);
}

const check = (place: Place): Said => {
  const rider = riderOf(place);
  return said('cycles.check', { vehicle: rider ? vehicleName(place, rider.vehicle) : '' });
};

/** Nothing where it is low enough already. */
const lower = (place: Place, orBest: boolean): readonly Said[] => {
  const rider = riderOf(place);
  const threshold = rider && lowered(rider, orBest);
  return threshold === null || threshold >= place.channel.tripThreshold ? [] : [besides(place, threshold)];
};

const design: Node = {
  decided: (place) => {
    const rider = riderOf(place);
    if (!rider) return { to: 'set', said: said('cycles.design.none', { circuit: own(place) }) };
    const { tripThreshold } = place.channel;
    const values = {
      vehicle: vehicleName(place, rider.vehicle),
      threshold: ratio(tripThreshold),
      best: ratio(rider.best)
    };
    if (rider.best < tripThreshold) return { to: 'end-never', said: said('cycles.design.never', values) };
    if (rider.worst < tripThreshold)
      return { to: 'where', said: said('cycles.design.some', { ...values, worst: ratio(rider.worst) }) };
    return {
      to: 'set',
      said: said('cycles.design.always', {
        vehicle: values.vehicle,
        worst: ratio(rider.worst),
        times: times(rider.worst / tripThreshold)
      })
    };
  }
};

export const missesMotorcycles: Path = {
  start: 'design',
  needs: ['passes'],
  nodes: {
    design,
    where: {
      decide: (place) => {
        const rider = riderOf(place);
        return rider && worstPath(place, rider.vehicle) ? null : { to: 'set', said: null };
      },
      question: () => said('cycles.where.ask'),
      facts: (place) => {
        const rider = riderOf(place);
        const worst = rider && worstPath(place, rider.vehicle);
        if (!worst) return [];
        const values = { offset: metres(Math.abs(worst.offset)), response: ratio(worst.response) };
        return [
          Math.abs(worst.offset) < 0.05
            ? said('cycles.where.middle', { response: values.response })
            : worst.offset > 0
              ? said('cycles.where.right', values)
              : said('cycles.where.left', values)
        ];
      },
      hazards: ['traffic'],
      answers: () => [
        answer('there', said('cycles.where.there'), 'end-path'),
        answer('elsewhere', said('cycles.where.elsewhere'), 'set')
      ]
    },
    set: {
      question: (place) =>
        said('cycles.set.ask', {
          threshold: ratio(place.channel.tripThreshold),
          number: count(place.channel.number)
        }),
      hazards: ['mains'],
      answers: yesOrNo('delay', 'end-set')
    },
    delay: {
      decide: (place) => {
        const { delay_s } = place.channel.output;
        if (delay_s === 0) return { to: 'resistance', said: said('cycles.delay.none') };
        const rider = riderOf(place);
        const zone = rider && zoneOf(place, rider.vehicle);
        if (!zone) return null;
        return zone / SPEED > delay_s
          ? {
              to: 'resistance',
              said: said('cycles.delay.short', {
                delay: seconds(delay_s),
                length: metres(zone),
                time: seconds(zone / SPEED)
              })
            }
          : null;
      },
      question: (place) => said('cycles.delay.ask', { delay: seconds(place.channel.output.delay_s) }),
      facts: (place) => {
        const rider = riderOf(place);
        const zone = rider && zoneOf(place, rider.vehicle);
        return zone ? [said('cycles.delay.fact', { length: metres(zone), time: seconds(zone / SPEED) })] : [];
      },
      hazards: ['traffic'],
      answers: yesOrNo('end-delay', 'resistance')
    },
    ...loopChecks('depth'),
    depth: {
      question: () => said('cycles.depth.ask'),
      hazards: ['traffic'],
      answers: yesOrNo('end-depth', 'swap')
    },
    'end-never': {
      verdict: (place) => {
        const rider = riderOf(place);
        return said('cycles.end.never', {
          circuit: own(place),
          vehicle: rider ? vehicleName(place, rider.vehicle) : ''
        });
      },
      remedies: (place) => [...lower(place, true), said('cycles.end.shape'), said('cycles.end.share')],
      hazards: ['mains', 'gate'],
      check
    },
    'end-path': {
      verdict: () => said('cycles.end.path'),
      // those who ride where it sees least are helped by nothing that only others answer
      remedies: (place) => [...lower(place, false), said('cycles.end.shape'), said('cycles.end.mark')],
      hazards: ['mains', 'gate'],
      check
    },
    'end-set': {
      verdict: () => said('cycles.end.set'),
      remedies: (place) => [
        said('never.end.set.as', {
          threshold: ratio(place.channel.tripThreshold),
          number: count(place.channel.number)
        })
      ],
      hazards: ['mains', 'gate'],
      check
    },
    'end-delay': {
      verdict: (place) => said('cycles.end.delay', { delay: seconds(place.channel.output.delay_s) }),
      remedies: () => [said('cycles.end.delay.shorter')],
      hazards: ['mains', 'gate'],
      check
    },
    'end-depth': {
      verdict: () => said('cycles.end.depth'),
      remedies: (place) => [said('cycles.end.depth.draw'), ...lower(place, true)],
      hazards: ['traffic'],
      check
    },
    ...swapping
  }
};

/** Traffic of a lane beside the loops. */
import { said, type Decision, type EndNode, type Place } from '../node';
import type { PickUp } from '../figures/figures';
import type { Said } from '../results';
import { ratio, seconds } from '../values';
import { circuitName, laneName, own, vehicleName } from './names';
import { keepOut, raise } from './threshold';

/** Of the threshold: from here on tolerances and a vehicle at the lane's edge may make it a call. */
const WORTH_A_LOOK = 0.5;

export const ownPickUp = ({ pickUps, circuit }: Pick<Place, 'pickUps' | 'circuit'>): PickUp | undefined =>
  pickUps.find((each) => each.circuit === circuit.id);

const words = (place: Pick<Place, 'site'>, pickUp: PickUp) => ({
  vehicle: vehicleName(place, pickUp.vehicle),
  lane: laneName(place, pickUp.lane),
  circuit: circuitName(place, pickUp.circuit),
  response: ratio(pickUp.response),
  share: { value: pickUp.ratio, kind: 'share' } as const
});

export const pickUpFact = (place: Pick<Place, 'site'>, pickUp: PickUp): Said =>
  said('beside.fact', words(place, pickUp));

/** Null where a lane beside is worth a look. `least`: over the threshold. */
export function nothingBeside(
  place: Pick<Place, 'site' | 'circuit'>,
  pickUp: PickUp | undefined,
  to: string,
  least = WORTH_A_LOOK
): Decision | null {
  if (!pickUp) return { to, said: said('beside.none', { circuit: own(place) }) };
  return pickUp.ratio >= least ? null : { to, said: said('beside.weak', words(place, pickUp)) };
}

export const besideEnd = (of: (place: Place) => PickUp | undefined): EndNode => ({
  verdict: (place) => {
    const pickUp = of(place);
    return said('end.beside', {
      circuit: pickUp ? circuitName(place, pickUp.circuit) : own(place),
      lane: pickUp ? laneName(place, pickUp.lane) : ''
    });
  },
  facts: (place) => {
    const pickUp = of(place);
    return pickUp ? [pickUpFact(place, pickUp)] : [];
  },
  remedies: (place) => {
    const pickUp = of(place);
    const isOwn = pickUp?.circuit === place.circuit.id;
    const needed = keepOut(Math.max(pickUp?.response ?? 0, place.channel.tripThreshold));
    return [
      ...(isOwn ? [raise(place, needed)] : []),
      said('end.beside.delay', { circuit: own(place), delay: seconds(place.channel.output.delay_s) }),
      said('end.beside.anew')
    ];
  },
  hazards: ['traffic', 'gate'],
  check: (place) => {
    const pickUp = of(place);
    return said('end.beside.check', {
      vehicle: pickUp ? vehicleName(place, pickUp.vehicle) : '',
      lane: pickUp ? laneName(place, pickUp.lane) : ''
    });
  }
});

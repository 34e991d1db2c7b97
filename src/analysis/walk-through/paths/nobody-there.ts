/** Calls with nothing over the loops: a neighbour, the next lane, a gate, water, a loose joint, a threshold set too low. */
import { said, yesOrNo, type Path, type Place } from '../node';
import { beatEnd, beatNode } from '../parts/beat';
import { besideEnd, nothingBeside, ownPickUp, pickUpFact } from '../parts/beside';
import { soundReadings } from '../parts/ends';
import { insulationChecks } from '../parts/loop-checks';
import { laneName, own, vehicleName } from '../parts/names';
import { swapping } from '../parts/swap';
import { raise, settable, weakestWanted } from '../parts/threshold';
import { metres, ohms, ratio, times } from '../values';

/** Beyond this a moving leaf is far away for loops of usual size, metres: common practice. */
const FAR = 3;
/** A threshold that leaves the weakest vehicle asked for this much is high enough. */
const ROOM = 2;
/** Nobody tries more than so many times the threshold at once. */
const MOST = 2;

const higher = (place: Place): number | null => {
  const weakest = weakestWanted(place);
  const { tripThreshold } = place.channel;
  if (!weakest || weakest.response < ROOM * tripThreshold) return null;
  return settable(Math.min(weakest.response / ROOM, MOST * tripThreshold));
};

export const nobodyThere: Path = {
  start: 'beat',
  needs: ['beats'],
  nodes: {
    beat: beatNode('beside'),
    beside: {
      decide: (place) => nothingBeside(place, ownPickUp(place), 'gate'),
      question: (place) => {
        const pickUp = ownPickUp(place);
        return said('nobody.beside.ask', {
          vehicle: pickUp ? vehicleName(place, pickUp.vehicle) : '',
          lane: pickUp ? laneName(place, pickUp.lane) : ''
        });
      },
      facts: (place) => {
        const pickUp = ownPickUp(place);
        return pickUp ? [pickUpFact(place, pickUp)] : [];
      },
      hazards: ['traffic'],
      answers: yesOrNo('end-beside', 'gate')
    },
    gate: {
      decide: (place) => {
        const away = place.gateDistance;
        if (away === null) return { to: 'weather', said: said('nobody.gate.none') };
        return away > FAR
          ? { to: 'weather', said: said('nobody.gate.far', { distance: metres(away) }) }
          : null;
      },
      question: () => said('nobody.gate.ask'),
      facts: ({ gateDistance }) =>
        gateDistance === null ? [] : [said('nobody.gate.fact', { distance: metres(gateDistance) })],
      hazards: ['gate'],
      answers: yesOrNo('end-gate', 'weather')
    },
    weather: {
      question: () => said('nobody.weather.ask'),
      answers: yesOrNo('insulation', 'joint')
    },
    ...insulationChecks('joint'),
    joint: {
      question: () => said('nobody.joint.ask'),
      facts: (place) => [
        said('nobody.joint.fact', {
          circuit: own(place),
          value: ohms(place.expected.resistanceDc_ohm.value)
        })
      ],
      hazards: ['mains', 'traffic', 'gate'],
      measure: { testPoint: 'cabinet', quantity: 'resistanceDc_ohm' },
      answers: yesOrNo('end-joint', 'threshold')
    },
    threshold: {
      decide: (place) => {
        if (higher(place) !== null) return null;
        const weakest = weakestWanted(place);
        return {
          to: 'interference',
          said: weakest
            ? said('nobody.threshold.noRoom', {
                vehicle: vehicleName(place, weakest.vehicle),
                times: times(weakest.response / place.channel.tripThreshold)
              })
            : said('nobody.threshold.nobody', { circuit: own(place) })
        };
      },
      question: (place) =>
        said('nobody.threshold.ask', {
          before: ratio(place.channel.tripThreshold),
          threshold: ratio(higher(place) ?? place.channel.tripThreshold)
        }),
      facts: (place) => {
        const threshold = higher(place);
        return threshold === null ? [] : [raise(place, threshold)];
      },
      hazards: ['mains', 'traffic', 'gate'],
      answers: yesOrNo('end-threshold', 'interference')
    },
    interference: {
      question: () => said('nobody.interference.ask'),
      facts: ({ leadIn }) => [said('nobody.interference.fact', { length: metres(leadIn.length) })],
      hazards: ['mains'],
      answers: yesOrNo('end-interference', 'swap')
    },
    'end-beat': beatEnd,
    'end-beside': besideEnd(ownPickUp),
    'end-gate': {
      verdict: (place) => said('nobody.end.gate', { circuit: own(place) }),
      facts: ({ gateDistance }) =>
        gateDistance === null ? [] : [said('nobody.gate.fact', { distance: metres(gateDistance) })],
      remedies: () => [said('nobody.end.gate.away'), said('nobody.end.gate.shape')],
      hazards: ['gate'],
      check: () => said('nobody.end.gate.check')
    },
    'end-joint': {
      verdict: (place) => said('nobody.end.joint', { circuit: own(place) }),
      remedies: () => [said('nobody.end.joint.anew')],
      hazards: ['mains', 'traffic'],
      check: soundReadings
    },
    'end-threshold': {
      verdict: (place) =>
        said('nobody.end.threshold', { threshold: ratio(place.channel.tripThreshold), circuit: own(place) }),
      remedies: (place) => [raise(place, higher(place) ?? place.channel.tripThreshold)],
      hazards: ['mains', 'gate'],
      check: () => said('nobody.check')
    },
    'end-interference': {
      verdict: () => said('nobody.end.interference'),
      remedies: () => [said('nobody.end.interference.pair'), said('nobody.end.interference.apart')],
      hazards: ['mains'],
      check: () => said('nobody.check')
    },
    ...swapping
  }
};

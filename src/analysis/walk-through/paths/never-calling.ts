/** No call for a vehicle that is there: too weak, kept back, lost on the way out, or another loop on these terminals. */
import { listed } from '#i18n/locale';
import { timingsOf } from '#plan/catalogue/timings';
import { answer, said, yesOrNo, type Path, type Place } from '../node';
import { soundReadings, wiredElsewhere } from '../parts/ends';
import { frequencyFact, loopChecks } from '../parts/loop-checks';
import { circuitName, own, ownUnit, vehicleName } from '../parts/names';
import { swapping } from '../parts/swap';
import { practicable } from '../parts/threshold';
import { count, hertz, ratio, seconds, times } from '../values';

/** What answers most, of those asked for if any are. */
function bestAsked({ responses }: Pick<Place, 'responses'>) {
  const wanted = responses.filter((each) => each.wanted);
  const [best] = [...(wanted.length > 0 ? wanted : responses)].sort((a, b) => a.best - b.best);
  return best ? { vehicle: best.vehicle, response: -best.best } : null;
}

/** f goes with 1/√L: half of the drop, to first order. */
const riseOf = (place: Place, response: number): number =>
  place.expected.frequency_Hz.value * (1 / Math.sqrt(1 - response) - 1);

const reachFacts = (place: Place) => {
  const best = bestAsked(place);
  if (!best) return [];
  return [
    said('never.reach.fact', {
      vehicle: vehicleName(place, best.vehicle),
      response: ratio(best.response),
      times: times(best.response / place.channel.tripThreshold),
      threshold: ratio(place.channel.tripThreshold)
    })
  ];
};

const others = ({ site, circuit }: Place) => site.circuits.filter(({ id }) => id !== circuit.id);
/** More than so many are not driven over one by one. */
const MOST = 5;

export const neverCalling: Path = {
  start: 'alive',
  needs: [],
  nodes: {
    alive: {
      question: (place) =>
        said('never.alive.ask', { unit: ownUnit(place), number: count(place.channel.number) }),
      hazards: ['mains'],
      answers: () => [
        answer('runs', said('never.alive.runs'), 'reach'),
        answer('fault', said('never.alive.fault'), 'resistance'),
        answer('dark', said('never.alive.dark'), 'end-dark')
      ]
    },
    reach: {
      decided: (place) => {
        const best = bestAsked(place);
        if (!best) return { to: 'test', said: null };
        const values = {
          vehicle: vehicleName(place, best.vehicle),
          circuit: own(place),
          response: ratio(best.response),
          threshold: ratio(place.channel.tripThreshold)
        };
        return best.response < place.channel.tripThreshold
          ? { to: 'end-threshold', said: said('never.reach.none', values) }
          : { to: 'test', said: said('never.reach.fine', values) };
      }
    },
    test: {
      question: (place) => {
        const best = bestAsked(place);
        return best
          ? said('never.test.ask', { vehicle: vehicleName(place, best.vehicle) })
          : said('never.test.any');
      },
      facts: reachFacts,
      hazards: ['traffic', 'gate'],
      answers: yesOrNo('delay', 'frequency')
    },
    delay: {
      decide: ({ channel: { output } }) =>
        output.delay_s > 0 ? null : { to: 'pulse', said: said('never.delay.none') },
      question: ({ channel: { output } }) => said('never.delay.ask', { delay: seconds(output.delay_s) }),
      hazards: ['traffic', 'gate'],
      answers: yesOrNo('end-delay', 'pulse')
    },
    pulse: {
      decide: ({ channel: { output } }) =>
        output.mode === 'pulse' ? null : { to: 'output', said: said('never.pulse.none') },
      question: ({ channel: { output } }) =>
        said('never.pulse.ask', { pulse: seconds(timingsOf(output).pulse_s) }),
      answers: yesOrNo('output', 'end-pulse')
    },
    output: {
      question: () => said('never.output.ask'),
      hazards: ['mains', 'traffic', 'gate'],
      answers: yesOrNo('end-controller', 'end-relay')
    },
    frequency: {
      question: () => said('never.frequency.ask'),
      facts: (place) => {
        const best = bestAsked(place);
        return [
          ...frequencyFact(place),
          ...(best
            ? [
                said('never.frequency.rise', {
                  vehicle: vehicleName(place, best.vehicle),
                  rise: hertz(riseOf(place, best.response))
                })
              ]
            : [])
        ];
      },
      hazards: ['mains', 'traffic'],
      measure: { testPoint: 'unit', quantity: 'frequency_Hz' },
      answers: () => [
        answer('rises', said('never.frequency.rises'), 'set'),
        answer('less', said('never.frequency.less'), 'resistance'),
        answer('stays', said('never.frequency.stays'), 'elsewhere'),
        answer('unknown', said('never.frequency.unknown'), 'set')
      ]
    },
    set: {
      question: (place) =>
        said('never.set.ask', {
          threshold: ratio(place.channel.tripThreshold),
          number: count(place.channel.number)
        }),
      hazards: ['mains'],
      answers: yesOrNo('elsewhere', 'end-set')
    },
    elsewhere: {
      decide: (place) =>
        others(place).length > 0
          ? null
          : { to: 'resistance', said: said('never.elsewhere.none', { circuit: own(place) }) },
      question: (place) =>
        said('never.elsewhere.ask', {
          circuits: listed(
            others(place)
              .slice(0, MOST)
              .map(({ id }) => circuitName(place, id))
          ),
          circuit: own(place)
        }),
      hazards: ['traffic', 'gate'],
      answers: yesOrNo('end-elsewhere', 'resistance')
    },
    ...loopChecks('swap'),
    'end-dark': {
      verdict: (place) => said('never.end.dark', { unit: ownUnit(place) }),
      remedies: () => [said('never.end.dark.other')],
      hazards: ['mains'],
      check: soundReadings
    },
    'end-threshold': {
      verdict: (place) => said('never.end.threshold', { circuit: own(place) }),
      remedies: (place) => {
        const best = bestAsked(place);
        const threshold = best && practicable(best.response / 2);
        return [
          ...(best && threshold !== null
            ? [
                said('never.end.threshold.lower', {
                  threshold: ratio(threshold),
                  vehicle: vehicleName(place, best.vehicle)
                })
              ]
            : []),
          said('never.end.threshold.anew')
        ];
      },
      facts: reachFacts,
      check: (place) => said('never.check', { circuit: own(place) })
    },
    'end-delay': {
      verdict: ({ channel: { output } }) => said('never.end.delay', { delay: seconds(output.delay_s) }),
      remedies: () => [said('never.end.delay.shorter')],
      hazards: ['mains', 'gate'],
      check: (place) => said('never.check', { circuit: own(place) })
    },
    'end-pulse': {
      verdict: ({ channel: { output } }) =>
        said('never.end.pulse', { pulse: seconds(timingsOf(output).pulse_s) }),
      remedies: () => [said('never.end.pulse.longer')],
      hazards: ['mains', 'gate'],
      check: (place) => said('never.check', { circuit: own(place) })
    },
    'end-controller': {
      verdict: () => said('never.end.controller'),
      remedies: () => [said('never.end.controller.wire')],
      hazards: ['mains', 'gate', 'traffic'],
      check: (place) => said('never.check', { circuit: own(place) })
    },
    'end-relay': {
      verdict: (place) => said('never.end.relay', { unit: ownUnit(place) }),
      remedies: () => [said('never.end.relay.replace')],
      hazards: ['mains', 'gate'],
      check: (place) => said('never.check', { circuit: own(place) })
    },
    'end-set': {
      verdict: () => said('never.end.set'),
      remedies: (place) => [
        said('never.end.set.as', {
          threshold: ratio(place.channel.tripThreshold),
          number: count(place.channel.number)
        })
      ],
      hazards: ['mains', 'gate'],
      check: (place) => said('never.check', { circuit: own(place) })
    },
    'end-elsewhere': wiredElsewhere,
    ...swapping
  }
};

/** A vehicle that stands on the loop and loses its call: the output's rules, the vehicle's floor, its place, or a restart. */
import { timingsOf } from '#plan/catalogue/timings';
import type { PassReadout } from '../../passing/results';
import { answer, said, type Path, type Place, yesOrNo } from '../node';
import { loopChecks } from '../parts/loop-checks';
import { own, ownUnit, vehicleName } from '../parts/names';
import { swapping } from '../parts/swap';
import type { Said } from '../results';
import { metres, ratio, seconds } from '../values';

const releaseOf = ({ channel }: Pick<Place, 'channel'>): number =>
  channel.tripThreshold * channel.releaseRatio;

/** Of the vehicles that are lost and found again in one pass, the one that is lost over the longest way. */
function worstGap({ passes }: Place) {
  const gaps = passes
    .filter(({ isServed }) => isServed)
    .flatMap((pass: PassReadout) => pass.gaps.map((gap) => ({ vehicle: pass.vehicle, ...gap })));
  return gaps.length === 0 ? null : gaps.reduce((a, b) => (b.length_m > a.length_m ? b : a));
}

/** The reference follows a standing vehicle with one time constant: x·e^(−t/τ) falls to the release. */
export const heldFor = (response: number, release: number, adaptation: number): number =>
  response <= release ? 0 : adaptation * Math.log(response / release);

/** Of everything asked for: how long it is held where it answers most. */
const holds = (place: Place): readonly Said[] => {
  const { adaptation_s } = timingsOf(place.channel.output);
  return place.responses
    .filter(({ wanted, best }) => wanted && -best > place.channel.tripThreshold)
    .map(({ vehicle, best }) =>
      said('drops.held', {
        vehicle: vehicleName(place, vehicle),
        response: ratio(-best),
        time: seconds(heldFor(-best, releaseOf(place), adaptation_s))
      })
    );
};

const lowest = ({ heights }: Place) => {
  const known = heights.flatMap(({ height_m }) => (height_m === null ? [] : [height_m]));
  return known.length > 0 ? Math.min(...known) : null;
};

/** The stretch over which the first vehicle asked for is detected. */
const zoneFact = (place: Place): readonly Said[] => {
  const pass = place.passes.find(({ wanted, zone }) => wanted && zone !== null);
  return pass?.zone
    ? [
        said('drops.place.zone', {
          vehicle: vehicleName(place, pass.vehicle),
          length: metres(pass.zone.length_m)
        })
      ]
    : [];
};

const check = (place: Place): Said => said('drops.check', { circuit: own(place) });

export const dropsStanding: Path = {
  start: 'mode',
  needs: ['passes', 'heights'],
  nodes: {
    mode: {
      decided: ({ channel: { output } }) =>
        output.mode === 'pulse'
          ? {
              to: 'end-pulse',
              said: said('drops.mode.pulse', { pulse: seconds(timingsOf(output).pulse_s) })
            }
          : { to: 'which', said: said('drops.mode.presence') }
    },
    which: {
      question: () => said('drops.which.ask'),
      hazards: ['traffic'],
      answers: () => [
        answer('high', said('drops.which.high'), 'gap'),
        answer('all', said('drops.which.all'), 'how-long')
      ]
    },
    gap: {
      decided: (place) => {
        const gap = worstGap(place);
        const height = lowest(place);
        if (gap)
          return {
            to: 'end-gap',
            said: said('drops.gap.found', {
              vehicle: vehicleName(place, gap.vehicle),
              response: ratio(gap.response),
              release: ratio(releaseOf(place)),
              length: metres(gap.length_m)
            })
          };
        return {
          to: 'how-long',
          said:
            height === null ? said('drops.gap.none') : said('drops.gap.height', { height: metres(height) })
        };
      }
    },
    'how-long': {
      question: () => said('drops.howLong.ask'),
      facts: (place) => {
        const { longestPresence_s } = place.channel.output;
        return [
          longestPresence_s === null
            ? said('drops.howLong.noLongest')
            : said('drops.howLong.longest', { longest: seconds(longestPresence_s) }),
          ...holds(place)
        ];
      },
      hazards: ['traffic'],
      answers: ({ channel: { output } }) => [
        answer('at-once', said('drops.howLong.atOnce'), 'place'),
        ...(output.longestPresence_s === null
          ? []
          : [
              answer(
                'longest',
                said('drops.howLong.after', { longest: seconds(output.longestPresence_s) }),
                'end-longest'
              )
            ]),
        answer('later', said('drops.howLong.later'), 'end-adapted'),
        answer('any', said('drops.howLong.any'), 'restart')
      ]
    },
    place: {
      question: () => said('drops.place.ask'),
      facts: zoneFact,
      hazards: ['traffic'],
      answers: () => [
        answer('over', said('drops.place.over'), 'restart'),
        answer('beside', said('drops.place.beside'), 'end-place')
      ]
    },
    restart: {
      question: (place) => said('drops.restart.ask', { unit: ownUnit(place) }),
      hazards: ['mains'],
      answers: yesOrNo('end-restart', 'resistance')
    },
    ...loopChecks('swap'),
    'end-pulse': {
      verdict: ({ channel: { output } }) =>
        said('drops.end.pulse', { pulse: seconds(timingsOf(output).pulse_s) }),
      remedies: () => [said('drops.end.pulse.presence')],
      hazards: ['mains', 'gate'],
      check
    },
    'end-gap': {
      verdict: (place) => {
        const gap = worstGap(place);
        return said('drops.end.gap', { vehicle: gap ? vehicleName(place, gap.vehicle) : '' });
      },
      remedies: (place) => {
        const gap = worstGap(place);
        return [
          said('drops.end.gap.release', {
            release: ratio(gap?.response ?? 0),
            threshold: ratio(place.channel.tripThreshold)
          }),
          said('drops.end.gap.extension', {
            extension: seconds(place.channel.output.extension_s),
            length: metres(gap?.length_m ?? 0)
          }),
          said('drops.end.gap.longer')
        ];
      },
      hazards: ['mains', 'gate'],
      check
    },
    'end-longest': {
      verdict: ({ channel: { output } }) =>
        said('drops.end.longest', { longest: seconds(output.longestPresence_s ?? 0) }),
      remedies: () => [said('drops.end.longest.more')],
      hazards: ['mains', 'gate'],
      check
    },
    'end-adapted': {
      verdict: ({ channel: { output } }) =>
        said('drops.end.adapted', { time: seconds(timingsOf(output).adaptation_s) }),
      facts: holds,
      remedies: (place) => [
        said('drops.end.adapted.lower', { threshold: ratio(place.channel.tripThreshold) }),
        said('drops.end.adapted.other')
      ],
      hazards: ['mains', 'gate'],
      check
    },
    'end-place': {
      verdict: () => said('drops.end.place'),
      facts: zoneFact,
      remedies: () => [said('drops.end.place.line'), said('drops.end.place.longer')],
      hazards: ['traffic', 'gate'],
      check
    },
    'end-restart': {
      verdict: (place) => said('drops.end.restart', { unit: ownUnit(place) }),
      remedies: () => [said('drops.end.restart.supply'), said('drops.end.restart.empty')],
      hazards: ['mains', 'gate'],
      check
    },
    ...swapping
  }
};

/** A call that does not go: something over the loop, a unit that fails to a call, or one that is held. */
import { answer, said, yesOrNo, type Path, type Place } from '../node';
import { beatEnd, beatNode } from '../parts/beat';
import { besideEnd, nothingBeside, ownPickUp, pickUpFact } from '../parts/beside';
import { soundReadings } from '../parts/ends';
import { loopChecks } from '../parts/loop-checks';
import { laneName, own, ownLoops, ownUnit, vehicleName } from '../parts/names';
import { swapping } from '../parts/swap';
import { henries, ratio, seconds } from '../values';

const releaseOf = ({ channel }: Pick<Place, 'channel'>): number =>
  channel.tripThreshold * channel.releaseRatio;

export const alwaysCalling: Path = {
  start: 'occupied',
  needs: ['beats'],
  nodes: {
    occupied: {
      question: (place) => said('always.occupied.ask', { loops: ownLoops(place) }),
      facts: (place) => {
        const release = releaseOf(place);
        const holding = place.responses.filter(({ best }) => -best > release);
        const least = holding.sort((a, b) => b.best - a.best)[0];
        return least
          ? [
              said('always.occupied.holds', {
                release: ratio(release),
                vehicle: vehicleName(place, least.vehicle),
                response: ratio(-least.best)
              })
            ]
          : [];
      },
      hazards: ['traffic', 'gate'],
      answers: yesOrNo('end-occupied', 'shown')
    },
    shown: {
      question: (place) => said('always.shown.ask', { unit: ownUnit(place), circuit: own(place) }),
      hazards: ['mains'],
      answers: () => [
        answer('fault', said('always.shown.fault'), 'range'),
        answer('detection', said('always.shown.detection'), 'reset'),
        answer('nothing', said('always.shown.nothing'), 'output')
      ]
    },
    range: {
      decided: (place) => {
        // the unit's own, at its frequency
        const { inductance_H: value } = place.terminals;
        const [least, most] = place.unit.inductanceRange_H;
        const values = {
          circuit: own(place),
          unit: ownUnit(place),
          inductance: henries(value),
          least: henries(least),
          most: henries(most)
        };
        return value < least || value > most
          ? { to: 'end-range', said: said('always.range.outside', values) }
          : { to: 'resistance', said: said('always.range.inside', values) };
      }
    },
    ...loopChecks('swap'),
    reset: {
      question: (place) => said('always.reset.ask', { circuit: own(place) }),
      hazards: ['mains', 'traffic', 'gate'],
      answers: () => [
        answer('stays-away', said('always.reset.staysAway'), 'held'),
        answer('comes-back', said('always.reset.comesBack'), 'beside'),
        answer('stays', said('always.reset.stays'), 'beside')
      ]
    },
    held: {
      question: () => said('always.held.ask'),
      facts: ({ channel: { output } }) => [
        output.extension_s > 0
          ? said('always.held.extension', { extension: seconds(output.extension_s) })
          : said('always.held.noExtension'),
        output.longestPresence_s === null
          ? said('always.held.noLongest')
          : said('always.held.longest', { longest: seconds(output.longestPresence_s) })
      ],
      hazards: ['traffic'],
      answers: ({ channel: { output } }) => [
        answer('with-it', said('always.held.withIt'), 'beside'),
        ...(output.extension_s > 0
          ? [
              answer(
                'extension',
                said('always.held.after', { extension: seconds(output.extension_s) }),
                'end-extension'
              )
            ]
          : []),
        answer('reset', said('always.held.reset'), 'end-release')
      ]
    },
    beside: {
      // a call is held from the release on
      decide: (place) =>
        nothingBeside(place, ownPickUp(place), 'beat', Math.min(0.5, place.channel.releaseRatio)),
      question: (place) => {
        const pickUp = ownPickUp(place);
        return said('always.beside.ask', { lane: pickUp ? laneName(place, pickUp.lane) : '' });
      },
      facts: (place) => {
        const pickUp = ownPickUp(place);
        return [
          ...(pickUp ? [pickUpFact(place, pickUp)] : []),
          said('always.beside.release', { release: ratio(releaseOf(place)) })
        ];
      },
      hazards: ['traffic'],
      answers: yesOrNo('end-beside', 'beat')
    },
    beat: beatNode('resistance'),
    output: {
      question: (place) => said('always.output.ask', { unit: ownUnit(place) }),
      hazards: ['mains', 'traffic', 'gate'],
      answers: () => [
        answer('goes', said('always.output.goes'), 'end-relay'),
        answer('stays', said('always.output.stays'), 'end-controller')
      ]
    },
    'end-occupied': {
      verdict: () => said('always.end.occupied'),
      remedies: (place) => [
        said('always.end.occupied.clear'),
        said('always.end.occupied.lasting', { circuit: own(place) })
      ],
      hazards: ['traffic', 'gate'],
      check: (place) => said('always.check', { circuit: own(place) })
    },
    'end-range': {
      verdict: (place) => said('always.end.range', { circuit: own(place), unit: ownUnit(place) }),
      remedies: (place) => {
        const isLow = place.terminals.inductance_H < place.unit.inductanceRange_H[0];
        return [isLow ? said('always.end.range.more') : said('always.end.range.fewer')];
      },
      check: soundReadings
    },
    'end-extension': {
      verdict: ({ channel: { output } }) =>
        said('always.end.extension', { extension: seconds(output.extension_s) }),
      remedies: () => [said('always.end.extension.shorter')],
      hazards: ['mains', 'gate'],
      check: (place) => said('always.check', { circuit: own(place) })
    },
    'end-release': {
      verdict: (place) => said('always.end.release', { release: ratio(releaseOf(place)) }),
      remedies: ({ channel }) => [
        said('always.end.release.higher', { ratio: { value: channel.releaseRatio, kind: 'share' } }),
        channel.output.longestPresence_s === null
          ? said('always.end.release.longest')
          : said('always.end.release.longestIs', { longest: seconds(channel.output.longestPresence_s) })
      ],
      hazards: ['mains', 'gate'],
      check: (place) => said('always.check', { circuit: own(place) })
    },
    'end-relay': {
      verdict: (place) => said('always.end.relay', { unit: ownUnit(place) }),
      remedies: () => [said('always.end.relay.contact'), said('always.end.relay.stuck')],
      hazards: ['mains', 'gate'],
      check: (place) => said('always.check', { circuit: own(place) })
    },
    'end-controller': {
      verdict: () => said('always.end.controller'),
      remedies: () => [said('always.end.controller.wire')],
      hazards: ['mains', 'gate', 'traffic'],
      check: (place) => said('always.check', { circuit: own(place) })
    },
    'end-beside': besideEnd(ownPickUp),
    'end-beat': beatEnd,
    ...swapping
  }
};

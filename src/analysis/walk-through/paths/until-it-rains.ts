/** Works until it rains: water on copper, or frequencies that the wet road moves. */
import { WATCH_FROM } from '../../beating/rate';
import { answer, said, yesOrNo, type Path, type Place } from '../node';
import { beatEnd, beatFact } from '../parts/beat';
import { unexplained } from '../parts/ends';
import { insulationChecks, lastRead } from '../parts/loop-checks';
import { circuitName, own } from '../parts/names';
import type { Said } from '../results';
import { hertz, insulation, metres, ratio } from '../values';

/** From the driest to the wettest pavement that the catalogue knows, Hz; negative: down. */
const shiftOf = ({ terminals: { dry, wet } }: Place): number => wet.frequency_Hz - dry.frequency_Hz;

/** ΔL/L that would shift the frequency as much. */
const asResponse = (place: Place): number => Math.abs((2 * shiftOf(place)) / place.terminals.frequency_Hz);

const pavement = (place: Place): Said => {
  const { dry, wet } = place.terminals;
  return said('rain.pavement', {
    circuit: own(place),
    dry: hertz(dry.frequency_Hz),
    wet: hertz(wet.frequency_Hz),
    change: ratio(asResponse(place)),
    share: { value: asResponse(place) / place.channel.tripThreshold, kind: 'share' }
  });
};

const band = ({ terminals: { dry, wet } }: Place): readonly [number, number] => [
  Math.min(dry.frequency_Hz, wet.frequency_Hz),
  Math.max(dry.frequency_Hz, wet.frequency_Hz)
];

/** The neighbour that the wet road could bring near. */
const nearest = ({ beats }: Place) =>
  beats.length === 0 ? null : beats.reduce((a, b) => (b.separation_Hz < a.separation_Hz ? b : a));

const check = (): Said => said('rain.check');

export const untilItRains: Path = {
  start: 'frequency',
  needs: ['beats'],
  nodes: {
    frequency: {
      question: () => said('rain.frequency.ask'),
      facts: (place) => [pavement(place), ...lastRead(place, 'unit', 'frequency_Hz', hertz)],
      hazards: ['mains'],
      measure: { testPoint: 'unit', quantity: 'frequency_Hz' },
      answers: (place) => {
        const [low, high] = band(place);
        const { low: least, high: most } = place.expected.frequency_Hz;
        const values = { low: hertz(Math.min(low, least)), high: hertz(Math.max(high, most)) };
        return [
          answer('within', said('rain.frequency.within', values), 'insulation'),
          answer('beyond', said('rain.frequency.beyond'), 'insulation'),
          answer('unknown', said('rain.frequency.unknown'), 'insulation')
        ];
      }
    },
    ...insulationChecks('between'),
    between: {
      question: () => said('rain.between.ask'),
      facts: (place) => [
        said('loop.insulation.limit', { limit: insulation(place.insulationLimit_ohm) }),
        ...lastRead(place, 'cabinet', 'insulationBetween_ohm', insulation)
      ],
      hazards: ['insulation tester', 'mains', 'traffic', 'gate'],
      measure: { testPoint: 'cabinet', quantity: 'insulationBetween_ohm' },
      answers: ({ insulationLimit_ohm: limit }) => [
        answer('good', said('loop.insulation.good', { limit: insulation(limit) }), 'box'),
        answer('bad', said('loop.insulation.bad', { limit: insulation(limit) }), 'end-cable'),
        answer('skip', said('rain.between.skip'), 'box')
      ]
    },
    box: {
      question: () => said('rain.box.ask'),
      hazards: ['traffic'],
      answers: yesOrNo('end-box', 'slot')
    },
    slot: {
      question: () => said('rain.slot.ask'),
      hazards: ['traffic'],
      answers: yesOrNo('end-slot', 'cabinet')
    },
    cabinet: {
      question: () => said('rain.cabinet.ask'),
      hazards: ['mains'],
      answers: yesOrNo('end-cabinet', 'beat')
    },
    beat: {
      decide: (place) => {
        const near = nearest(place);
        if (!near) return { to: 'end-unexplained', said: said('beat.none', { circuit: own(place) }) };
        const shift = Math.abs(shiftOf(place));
        if (near.separation_Hz <= shift || near.ratio >= WATCH_FROM) return null;
        return {
          to: 'end-unexplained',
          said: said('rain.beat.far', {
            shift: hertz(shift),
            other: circuitName(place, near.other),
            separation: hertz(near.separation_Hz)
          })
        };
      },
      question: (place) => said('rain.beat.ask', { other: circuitName(place, nearest(place)?.other ?? '') }),
      facts: (place) => {
        const near = nearest(place);
        return near
          ? [beatFact(place, near), said('rain.beat.shift', { shift: hertz(Math.abs(shiftOf(place))) })]
          : [];
      },
      hazards: ['mains', 'traffic', 'gate'],
      answers: (place) => [
        answer('yes', said('answer.yes'), 'end-beat', nearest(place)?.other ?? null),
        answer('no', said('answer.no'), 'end-unexplained')
      ]
    },
    'end-cable': {
      verdict: () => said('rain.end.cable'),
      remedies: ({ leadIn }) => [said('end.leak.leadIn.replace', { length: metres(leadIn.length) })],
      hazards: ['traffic', 'insulation tester'],
      check
    },
    'end-box': {
      verdict: () => said('rain.end.box'),
      remedies: () => [said('end.leak.splice.anew'), said('rain.end.box.drain')],
      hazards: ['traffic'],
      check
    },
    'end-slot': {
      verdict: () => said('rain.end.slot'),
      remedies: () => [said('rain.end.slot.seal'), said('end.leak.loop.anew')],
      hazards: ['traffic'],
      check
    },
    'end-cabinet': {
      verdict: () => said('rain.end.cabinet'),
      remedies: () => [said('rain.end.cabinet.dry')],
      hazards: ['mains'],
      check
    },
    'end-beat': beatEnd,
    'end-unexplained': unexplained
  }
};

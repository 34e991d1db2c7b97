/** Resistance, inductance and insulation at the cabinet, in the order in which a meter is at hand, and what each points to. */
import type { Quantity, TestPoint } from '#plan/schema';
import type { ToldValue } from '../../fault-finding/results';
import type { Span } from '../figures/figures';
import { answer, said, type Answer, type AskNode, type EndNode, type Node, type Place } from '../node';
import type { Said } from '../results';
import { henries, hertz, insulation, metres, ohms } from '../values';
import { leadInFacts, soundReadings } from './ends';
import { own } from './names';

/** What was read there last, if anything was. */
export function lastRead(
  place: Pick<Place, 'lastRead'>,
  testPoint: TestPoint,
  quantity: Quantity,
  write: (value: number) => ToldValue
): readonly Said[] {
  const last = place.lastRead(testPoint, quantity);
  if (!last) return [];
  if (last.value === null) return [said('loop.lastOver', { day: { day: last.day } })];
  return [said('loop.lastRead', { value: write(last.value), day: { day: last.day } })];
}

const spanFact = (place: Place, span: Span, write: (value: number) => ToldValue): Said => {
  const { value, low, high, meter } = span;
  const common = { circuit: own(place), value: write(value), low: write(low), high: write(high) };
  return meter === null ? said('loop.expected', common) : said('loop.expectedWith', { ...common, meter });
};

const spanAnswers = (
  { low, high }: Span,
  write: (value: number) => ToldValue,
  to: { readonly less: string; readonly fits: string; readonly more: string }
): readonly Answer[] => [
  answer('fits', said('loop.fits', { low: write(low), high: write(high) }), to.fits),
  answer('less', said('loop.less', { low: write(low) }), to.less),
  answer('more', said('loop.more', { high: write(high) }), to.more)
];

const resistance = (fits: string): AskNode => ({
  question: () => said('loop.resistance.ask'),
  facts: (place) => [
    spanFact(place, place.expected.resistanceDc_ohm, ohms),
    ...lastRead(place, 'cabinet', 'resistanceDc_ohm', ohms)
  ],
  hazards: ['mains', 'gate'],
  measure: { testPoint: 'cabinet', quantity: 'resistanceDc_ohm' },
  answers: ({ expected }) => [
    ...spanAnswers(expected.resistanceDc_ohm, ohms, { less: 'end-short', fits, more: 'end-splice' }),
    answer('open', said('loop.open'), 'end-open')
  ]
});

const inductance = (fits: string): AskNode => ({
  decide: (place) =>
    place.expected.inductance_H.value > 0
      ? null
      : {
          to: fits,
          said: said('loop.capacitive', {
            circuit: own(place),
            frequency: hertz(place.meterFrequency_Hz)
          })
        },
  question: () => said('loop.inductance.ask'),
  facts: (place) => [
    spanFact(place, place.expected.inductance_H, henries),
    said('loop.meterAt', { frequency: hertz(place.meterFrequency_Hz) }),
    ...lastRead(place, 'cabinet', 'inductance_H', henries)
  ],
  hazards: ['mains'],
  measure: { testPoint: 'cabinet', quantity: 'inductance_H' },
  answers: ({ expected }) => [
    ...spanAnswers(expected.inductance_H, henries, { less: 'end-turns', fits, more: 'end-more' }),
    answer('no-meter', said('loop.noMeter'), fits)
  ]
});

export const insulationChecks = (good: string): Readonly<Record<string, Node>> => ({
  insulation: {
    question: () => said('loop.insulation.ask'),
    facts: (place) => [
      said('loop.insulation.limit', { limit: insulation(place.insulationLimit_ohm) }),
      ...lastRead(place, 'cabinet', 'insulation_ohm', insulation)
    ],
    hazards: ['insulation tester', 'mains', 'gate'],
    measure: { testPoint: 'cabinet', quantity: 'insulation_ohm' },
    answers: ({ insulationLimit_ohm: limit }) => [
      answer('good', said('loop.insulation.good', { limit: insulation(limit) }), good),
      answer('bad', said('loop.insulation.bad', { limit: insulation(limit) }), 'leak-where')
    ]
  },
  'leak-where': {
    question: ({ insulationLimit_ohm: limit }) => said('loop.leak.ask', { limit: insulation(limit) }),
    hazards: ['traffic', 'insulation tester'],
    measure: { testPoint: 'pull-box', quantity: 'insulation_ohm' },
    answers: () => [
      answer('loop', said('loop.leak.loop'), 'end-leak-loop'),
      answer('lead-in', said('loop.leak.leadIn'), 'end-leak-lead-in'),
      answer('splice', said('loop.leak.splice'), 'end-leak-splice')
    ]
  },
  'end-leak-loop': leak(
    () => said('end.leak.loop'),
    [said('end.leak.loop.slot'), said('end.leak.loop.anew')]
  ),
  'end-leak-lead-in': leak(
    () => said('end.leak.leadIn'),
    ({ leadIn }) => [said('end.leak.leadIn.replace', { length: metres(leadIn.length) })]
  ),
  'end-leak-splice': leak(() => said('end.leak.splice'), [said('end.leak.splice.anew')])
});

function leak(verdict: EndNode['verdict'], remedies: readonly Said[] | EndNode['remedies']): EndNode {
  return {
    verdict,
    remedies: typeof remedies === 'function' ? remedies : () => remedies,
    hazards: ['traffic', 'insulation tester'],
    check: ({ insulationLimit_ohm: limit }) => said('check.insulation', { limit: insulation(limit) })
  };
}

const ENDS: Readonly<Record<string, EndNode>> = {
  'end-open': {
    verdict: (place) => said('end.open', { circuit: own(place) }),
    remedies: ({ leadIn }) => [
      said('end.open.joints'),
      ...(leadIn.length > 0 ? [said('end.open.half', { length: metres(leadIn.length) })] : [])
    ],
    hazards: ['mains', 'traffic'],
    check: soundReadings
  },
  'end-short': {
    verdict: (place) => said('end.short', { circuit: own(place) }),
    remedies: () => [said('end.short.distance'), said('end.short.splice')],
    facts: leadInFacts,
    hazards: ['mains', 'traffic'],
    check: soundReadings
  },
  'end-splice': {
    verdict: (place) => said('end.splice', { circuit: own(place) }),
    remedies: () => [said('end.splice.move'), said('end.splice.wire')],
    hazards: ['mains', 'traffic'],
    check: soundReadings
  },
  'end-turns': {
    verdict: (place) => said('end.turns', { circuit: own(place) }),
    remedies: () => [said('end.turns.causes'), said('end.turns.steel'), said('end.turns.anew')],
    hazards: ['traffic'],
    check: soundReadings
  },
  'end-more': {
    verdict: (place) => said('end.more', { circuit: own(place) }),
    remedies: () => [said('end.more.which'), said('end.more.drawing')],
    hazards: ['mains', 'traffic'],
    check: soundReadings
  }
};

/** Of a loop that fits in everything the way goes on at `fits`. */
export const loopChecks = (fits: string): Readonly<Record<string, Node>> => ({
  resistance: resistance('inductance'),
  inductance: inductance('insulation'),
  ...insulationChecks(fits),
  ...ENDS
});

/** What the unit should show with nothing over the loops. */
export const frequencyFact = (place: Place): readonly Said[] => [
  said('loop.frequency', {
    circuit: own(place),
    value: hertz(place.expected.frequency_Hz.value),
    low: hertz(place.expected.frequency_Hz.low),
    high: hertz(place.expected.frequency_Hz.high)
  }),
  ...lastRead(place, 'unit', 'frequency_Hz', hertz)
];

/** Every key that a diagnosis can return has words in both languages, and whatever they name is filled in. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { GENERAL, SPECIFIC } from '#analysis/fault-finding/evidence-words';
import { judge } from '#analysis/fault-finding/judge';
import { CAUSE_KINDS, type Diagnosis, type Told } from '#analysis/fault-finding/results';
import { SAFETY_KEYS, WAYS } from '#analysis/fault-finding/next/how';
import { messages as german } from '#i18n/de/bundles/views';
import { messages as english } from '#i18n/en/bundles/views';
import { t } from '#i18n/message';
import { speakWhole } from '#i18n/whole';
import { READING_QUANTITIES, type Reading } from '#plan/schema';
import { fault } from './support/prepared';
import { AT_CABINET, diagnosed, EVERYWHERE, readingsUnder } from './support/readings';

/** Each side on which a figure can lie far out of its circuit's own range. */
const FAR_OFF = (
  [
    ['resistanceDc_ohm', 1e-2, 300],
    ['inductance_H', 2e-6, 0.01],
    ['q', 0.1, 400]
  ] as const
).flatMap(([quantity, least, most]) => {
  const [value, accuracy] = [Math.sqrt(least * most), { share: 0, floor: 0 }];
  const held = { value, low: value, high: value, limits: [] };
  return [least, most].flatMap((read) => {
    // by 0.7 of a power of ten from a prefix
    const { farOff } = judge(quantity, 0.7 * read, held, accuracy);
    return farOff === null ? [] : [`causes.doubt.far.${farOff}.${quantity}`];
  });
});

const LISTED: readonly string[] = [
  ...SPECIFIC,
  ...GENERAL,
  ...SAFETY_KEYS,
  ...Object.values(WAYS).flatMap((ways) => Object.values(ways).map(({ how }) => how)),
  'causes.remedy.slip',
  ...CAUSE_KINDS.flatMap((kind) => [`causes.kind.${kind}`, `causes.remedy.${kind}`]),
  ...READING_QUANTITIES.map((quantity) => `causes.doubt.${quantity}`),
  ...FAR_OFF
];

const toldBy = ({ figures, causes, next, distances, assumptions }: Diagnosis): readonly Told[] => [
  ...figures.flatMap(({ doubt }) => doubt ?? []),
  ...causes.flatMap(({ evidence, remedy }) => [...evidence.map(({ told }) => told), remedy]),
  ...next.flatMap(({ how, safety }) => [how, ...safety]),
  ...distances.map(({ told }) => told),
  ...assumptions
];

const FACTORED = ['resistanceDc_ohm', 'inductance_H', 'q'] as const;

const off = (
  readings: readonly Reading[],
  by: Partial<Record<(typeof FACTORED)[number], number>>
): Reading[] =>
  readings.map((reading) => {
    const read = FACTORED.flatMap((quantity) => {
      const value = reading[quantity];
      return value === undefined ? [] : [[quantity, value * (by[quantity] ?? 1)] as const];
    });
    return { ...reading, ...Object.fromEntries(read) };
  });

const faults = [
  fault('shorted turns', 'L2', { shortedTurns: 1, resistance_ohm: 0.05 }),
  fault('open'),
  fault('open', 'L1'),
  fault('resistive splice', null, { resistance_ohm: 4 }),
  fault('short at splice', null, { resistance_ohm: 0.02 }),
  fault('short in lead-in', null, { distance_m: 79, resistance_ohm: 1 }),
  fault('reversed loop', 'L2'),
  fault('parallel for series'),
  fault('wet splice', null, { leakage_ohm: 800 }),
  fault('other loop', 'C2'),
  fault('wrong setting', null, { setting: 4 }),
  fault('wrong meter frequency', null, { frequency_Hz: 1000 })
];

/** Also of readings that fit nothing, that are in doubt, and that break a limit. */
const diagnoses = (): readonly Diagnosis[] => {
  const sound = readingsUnder([], EVERYWHERE);
  return [
    diagnosed(sound),
    ...faults.map((each) => diagnosed(readingsUnder([each], EVERYWHERE))),
    ...faults.map((each) => diagnosed(readingsUnder([each], [AT_CABINET]))),
    diagnosed(off(sound, { inductance_H: 3, q: 0.2 })),
    diagnosed(off(sound, { inductance_H: 1e3 })),
    diagnosed(off(sound, { q: 100 })),
    diagnosed(off(sound, { q: 5 })),
    diagnosed(off(sound, { resistanceDc_ohm: 0.3 })),
    diagnosed(off(sound, { inductance_H: 30 })),
    diagnosed([{ circuit: 'C1', testPoint: 'cabinet', insulation_ohm: 2e6, overRange: ['inductance_H'] }]),
    diagnosed([...sound, { circuit: 'C1', testPoint: 'loop', loop: 'L3', q: 20 }])
  ];
};

let told: readonly Told[] = [];
beforeAll(() => {
  told = diagnoses().flatMap(toldBy);
}, 120_000);
afterAll(() => speakWhole('en'));

const textsOf = (key: string, messages: object): string[] => {
  const message = (messages as Record<string, string | { one: string; other: string }>)[key];
  return message === undefined ? [] : typeof message === 'string' ? [message] : Object.values(message);
};

describe.each([
  ['en', english],
  ['de', german]
] as const)('words in %s', (language, messages) => {
  it.each(LISTED)('%s', (key) => {
    expect(textsOf(key, messages).join('')).not.toBe('');
  });

  it('of what diagnoses told, with all that they name', () => {
    speakWhole(language);
    expect(told.length).toBeGreaterThan(300);
    for (const { key, values } of told) {
      const texts = textsOf(`causes.${key}`, messages);
      expect(texts, key).not.toEqual([]);
      for (const [, name] of texts.join(' ').matchAll(/\{(\w+)\}/g))
        expect(Object.keys(values), `${key} names ${name}`).toContain(name);
      const filled = Object.fromEntries(Object.keys(values).map((name) => [name, 'so much']));
      const text = (t as (key: string, values: object) => string)(`causes.${key}`, { ...filled, count: 1 });
      expect(text).not.toMatch(/^causes\.|[{}]/);
    }
  });
});

describe('keys', () => {
  it('ask about either side of what a circuit has, but for a Q that is low', () => {
    expect(FAR_OFF).toHaveLength(5);
    expect(told.filter(({ key }) => key.startsWith('doubt.far.')).map(({ key }) => key)).toEqual(
      expect.arrayContaining([
        'doubt.far.below.resistanceDc_ohm',
        'doubt.far.above.q',
        'doubt.far.above.inductance_H'
      ])
    );
  });

  it('that are told of evidence are listed where the words are proved', () => {
    const known = new Set(LISTED);
    const evidence = told.filter(({ key }) => /^(for|against|evidence)\./.test(key));
    expect(evidence.length).toBeGreaterThan(50);
    for (const { key } of evidence) expect(known).toContain(`causes.${key}`);
  });
});

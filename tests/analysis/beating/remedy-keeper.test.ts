/** Remedies are kept from one drawing to the next: never for a drawing in which they are others. */
import { describe, expect, it } from 'vitest';
import { createAssessor } from '#analysis/assess';
import type { Beat } from '#analysis/results';
import type { Site } from '#plan/schema';
import { channel, circuit, loop, QUICK_VEHICLES, siteOf, square, unit } from '../support/sites';

type Json = Readonly<Record<string, unknown>>;

const on = (name: string, over: Json = {}): Json => ({
  channel: channel(name, 1, { frequency_Hz: null, frequencySetting: 2, tripThreshold: 1e-4 }),
  detect: ['car'],
  ...over
});
const drawn = (over: Json = {}): Site =>
  siteOf({
    loops: [loop('L1', square(0, 0)), loop('L2', square(3, 0))],
    circuits: [circuit('C1', ['L1'], on('U1')), circuit('C2', ['L2'], on('U2'))],
    units: [unit('U1'), unit('U2')],
    conduits: [{ id: 'D1', circuits: ['C1', 'C2'], length: 20 }],
    vehicles: QUICK_VEHICLES,
    ...over
  });
const remediesOf = (beats: readonly Beat[]) => beats.map(({ remedies }) => remedies);

describe('what is kept', () => {
  const assessor = createAssessor();
  const before = remediesOf(assessor.assess(drawn(), 'complete').beats);

  it.each<[string, Json]>([
    ['a unit measures longer', { units: [unit('U1', { measuringTime_s: 0.03 }), unit('U2')] }],
    [
      'a unit has other settings',
      { units: [unit('U1', { settings_F: [2.2e-7, 1.5e-7, 9e-8] }), unit('U2')] }
    ],
    ['a conduit is longer', { conduits: [{ id: 'D1', circuits: ['C1', 'C2'], length: 90 }] }],
    ['a loop lies elsewhere', { loops: [loop('L1', square(0, 0)), loop('L2', square(2.7, 0.4))] }],
    [
      'other vehicles are asked for',
      { circuits: [circuit('C1', ['L1'], on('U1', { detect: ['bus'] })), circuit('C2', ['L2'], on('U2'))] }
    ],
    [
      'a vehicle is larger',
      {
        vehicles: QUICK_VEHICLES.map((each) =>
          each.id === 'car'
            ? { ...each, parts: [{ kind: 'plate', centre: [0, 0], width: 1.2, length: 1.6, height: 0.25 }] }
            : each
        )
      }
    ],
    ['winters are colder', { temperatureRange_C: [-50, 50] }]
  ])('is made anew when %s', (_, over) => {
    const found = assessor.assess(drawn(over), 'complete');
    expect(remediesOf(found.beats)).not.toEqual(before);
    const afresh = createAssessor().assess(drawn(over), 'complete');
    expect(found.beats).toEqual(afresh.beats);
    expect(found.channels).toEqual(afresh.channels);
  });

  it.each<[string, Json]>([
    ['a threshold', { tripThreshold: 2e-4 }],
    ['a pin', { pinned: true }],
    ['a given frequency', { frequency_Hz: 47_000 }]
  ])('gives way to a drawing with another channel: %s', (_, over) => {
    const there = drawn({
      circuits: [
        circuit('C1', ['L1'], {
          channel: channel('U1', 1, { frequency_Hz: null, frequencySetting: 2, ...over })
        }),
        circuit('C2', ['L2'], on('U2'))
      ]
    });
    assessor.assess(drawn(), 'complete');
    const found = assessor.assess(there, 'complete');
    const afresh = createAssessor().assess(there, 'complete');
    expect(found.beats).toEqual(afresh.beats);
    expect(found.channels).toEqual(afresh.channels);
  });

  it('gives way to a drawing over steel, and comes back without it', () => {
    const outline = [[-4, -4], [8, -4], [8, 4], [-4, 4]]; // prettier-ignore
    const mat = { id: 'S1', kind: 'mat', depth: 0.12, pitch: 0.2, barRadius: 0.006, outline };
    const over = assessor.assess(drawn({ steel: [mat] }), 'complete');
    expect(over.beats).toEqual(createAssessor().assess(drawn({ steel: [mat] }), 'complete').beats);
    expect(remediesOf(assessor.assess(drawn(), 'complete').beats)).toEqual(before);
  });

  it('is the same again for the same drawing', () => {
    const again = assessor.assess(drawn(), 'prepared');
    expect(again.isFollowed).toBe(false);
    expect(remediesOf(again.beats)).toEqual(before);
  });
});

describe('the steps', () => {
  it('take the worst pair first', () => {
    const row = drawn({
      loops: [0, 2.1, 5].map((x, k) => loop(`L${k + 1}`, square(x, 0))),
      circuits: [1, 2, 3].map((k) => circuit(`C${k}`, [`L${k}`], on(`U${k}`))),
      units: [unit('U1'), unit('U2'), unit('U3')],
      conduits: []
    });
    const assessor = createAssessor();
    const pairs = [...assessor.assess(row, 'all').beats];
    const worst = pairs.sort((one, other) => other.ratio - one.ratio)[0]!;
    expect([worst.a, worst.b]).toEqual(['C1', 'C2']);
    // the last pair in the document must not come first: turned over, C1 and C2 are it
    const turned: Site = { ...row, circuits: [...row.circuits].reverse() };
    let made: Beat[] = [];
    assessor.assess(turned, 'all');
    while (made.length === 0 && assessor.followNext(turned))
      made = assessor
        .assess(turned, 'prepared')
        .beats.filter(({ verdict, remedies }) => verdict !== 'clear' && remedies !== null);
    expect(made.map(({ a, b }) => [a, b])).toEqual([['C2', 'C1']]);
  });
});

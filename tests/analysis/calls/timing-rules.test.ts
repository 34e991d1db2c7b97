/**
 * Every timing rule with times worked out by hand. A visit from 10 s: the response rises by FULL = 4·TRIP in the second to
 * 11 s, so it exceeds TRIP at 10 + 1/4 = 10.25; it stays to 14 s and falls within a second, so it is below RELEASE = FULL/8
 * at 14 + 7/8 = 14.875. The stay is 4.625 s. Rules: common practice, as the header of `output.ts` says them.
 */
import { describe, expect, it } from 'vitest';
import type { Rules } from '#analysis/calls/rules';
import { curve, FULL, RELEASE, rules, said, TRIP, visit } from './script';

const EMPTY = [40, 0] as const;
const ONE = curve([0, 0], ...visit(10), EMPTY);
/** The second trips 1.375 s after the first has left: 16.25 − 14.875. */
const TWO = curve([0, 0], ...visit(10), ...visit(16), EMPTY);

type Row = readonly [what: string, given: Partial<Rules>, expected: readonly string[]];

describe('presence', () => {
  const rows: readonly Row[] = [
    ['neither delay nor extension', {}, ['detected 10.25', 'on 10.25', 'left 14.875', 'off 14.875']],
    // 10.25 + 2
    [
      'a delay shorter than the stay',
      { delay: 2 },
      ['detected 10.25', 'on 12.25', 'left 14.875', 'off 14.875']
    ],
    ['a delay longer than the stay', { delay: 5 }, ['detected 10.25', 'left 14.875']],
    // 14.875 − 10.25 = 4.625: it leaves at the very moment
    ['a delay as long as the stay', { delay: 4.625 }, ['detected 10.25', 'left 14.875']],
    [
      'a delay a 64th of a second shorter than the stay',
      { delay: 4.625 - 1 / 64 },
      ['detected 10.25', `on ${14.875 - 1 / 64}`, 'left 14.875', 'off 14.875']
    ],
    // 14.875 + 3
    ['an extension', { extension: 3 }, ['detected 10.25', 'on 10.25', 'left 14.875', 'off 17.875']],
    ['both', { delay: 2, extension: 3 }, ['detected 10.25', 'on 12.25', 'left 14.875', 'off 17.875']],
    ['an extension without a call', { delay: 5, extension: 3 }, ['detected 10.25', 'left 14.875']]
  ];
  it.each(rows)('%s', (_, given, expected) => {
    expect(said(ONE, rules(given))).toEqual(expected);
  });

  const pairs: readonly Row[] = [
    [
      'a gap shorter than the extension: held, without a delay of its own, and extended from the second leaving',
      { delay: 2, extension: 1.5 },
      ['detected 10.25', 'on 12.25', 'left 14.875', 'detected 16.25', 'left 20.875', 'off 22.375']
    ],
    [
      'a gap as long as the extension: a call of its own, with its delay',
      { delay: 2, extension: 1.375 },
      [
        ...['detected 10.25', 'on 12.25', 'left 14.875', 'off 16.25'],
        ...['detected 16.25', 'on 18.25', 'left 20.875', 'off 22.25']
      ]
    ],
    [
      'a gap longer than the extension',
      { extension: 1 },
      [
        ...['detected 10.25', 'on 10.25', 'left 14.875', 'off 15.875'],
        ...['detected 16.25', 'on 16.25', 'left 20.875', 'off 21.875']
      ]
    ],
    [
      'a delay that only both together would outlast',
      { delay: 5, extension: 9 },
      ['detected 10.25', 'left 14.875', 'detected 16.25', 'left 20.875']
    ]
  ];
  it.each(pairs)('two vehicles, %s', (_, given, expected) => {
    expect(said(TWO, rules(given))).toEqual(expected);
  });

  const caps: readonly Row[] = [
    // 10.25 + 3; from then on the vehicle counts as road, and its leaving is nothing
    [
      'the longest presence ends the call without extension',
      { longest: 3, extension: 2 },
      ['detected 10.25', 'on 10.25', 'tuned-out 13.25', 'off 13.25']
    ],
    ['it counts from the detection, not from the call', { longest: 3, delay: 1 }, ['detected 10.25', 'on 11.25', 'tuned-out 13.25', 'off 13.25']], // prettier-ignore
    [
      'it comes before a delay of the same length',
      { longest: 3, delay: 3 },
      ['detected 10.25', 'tuned-out 13.25']
    ],
    [
      'it does not matter to a shorter stay',
      { longest: 5 },
      ['detected 10.25', 'on 10.25', 'left 14.875', 'off 14.875']
    ]
  ];
  it.each(caps)('%s', (_, given, expected) => {
    expect(said(ONE, rules(given))).toEqual(expected);
  });

  it('counts the longest presence anew for a detection that an extension has joined', () => {
    // 16.25 + 4.75 = 21 comes after the second has left at 20.875
    const expected = [
      'detected 10.25',
      'on 10.25',
      'left 14.875',
      'detected 16.25',
      'left 20.875',
      'off 22.875'
    ];
    expect(said(TWO, rules({ longest: 4.75, extension: 2 }))).toEqual(expected);
  });
});

describe('pulse', () => {
  const pulse = { isPulse: true } as const;
  const rows: readonly Row[] = [
    // off 10.25 + 0.125, re-armed 10.25 + 2
    ['one that stands', pulse, ['detected 10.25', 'on 10.25', 'off 10.375', 'tuned-out 12.25']],
    [
      'one that leaves before re-arming',
      { ...pulse, rearm: 8 },
      ['detected 10.25', 'on 10.25', 'off 10.375', 'left 14.875']
    ],
    // on 10.25 + 1, re-armed 11.25 + 2
    ['with a delay', { ...pulse, delay: 1 }, ['detected 10.25', 'on 11.25', 'off 11.375', 'tuned-out 13.25']],
    [
      'with a delay longer than the stay',
      { ...pulse, delay: 5, rearm: 8 },
      ['detected 10.25', 'left 14.875']
    ],
    [
      'one that outlasts the stay keeps its length, extension or not',
      { ...pulse, pulse: 5, rearm: 8, extension: 3, longest: 1 },
      ['detected 10.25', 'on 10.25', 'left 14.875', 'off 15.25']
    ]
  ];
  it.each(rows)('%s', (_, given, expected) => {
    expect(said(ONE, rules(given))).toEqual(expected);
  });

  it('gives none that would begin during another', () => {
    // the second trips at 16.25, before 10.25 + 7
    const expected = [
      'detected 10.25',
      'on 10.25',
      'left 14.875',
      'detected 16.25',
      'off 17.25',
      'left 20.875'
    ];
    expect(said(TWO, rules({ ...pulse, pulse: 7, rearm: 8 }))).toEqual(expected);
  });

  it('has no second pulse for a second vehicle before re-arming', () => {
    // it comes at 11.5 s while the first stands, and both are tuned out at 12.25
    const both = curve([0, 0], [10, 0], [11, FULL], [11.5, FULL], [12, 2 * FULL], [20, 2 * FULL]);
    expect(said(both, rules(pulse))).toEqual(['detected 10.25', 'on 10.25', 'off 10.375', 'tuned-out 12.25']);
  });

  it('has one for a second vehicle after it', () => {
    // the reference is FULL from 12.25 s on; the second exceeds FULL + TRIP at 13 + 1/4
    const both = curve([0, 0], [10, 0], [11, FULL], [13, FULL], [14, 2 * FULL], [20, 2 * FULL]);
    expect(said(both, rules(pulse))).toEqual([
      ...['detected 10.25', 'on 10.25', 'off 10.375', 'tuned-out 12.25'],
      ...['detected 13.25', 'on 13.25', 'off 13.375', 'tuned-out 15.25']
    ]);
  });
});

describe('hysteresis', () => {
  it('keeps what falls under the trip and not under the release', () => {
    const dip = curve([0, 0], [1, FULL], [2, (TRIP + RELEASE) / 2], [3, FULL], [4, 0], [9, 0]);
    // 0 + 1/4; 3 + 7/8
    expect(said(dip, rules())).toEqual(['detected 0.25', 'on 0.25', 'left 3.875', 'off 3.875']);
  });

  it('loses what falls under the release, and wants the trip again', () => {
    // back to between the two: not enough; then over the trip: from 0.75·TRIP at 6 s to FULL at 7.0 s
    const between = 0.75 * TRIP;
    const dip = curve([0, 0], [1, FULL], [2, 0], [3, between], [6, between], [7, FULL], [8, 0], [9, 0]);
    const again = 6 + (TRIP - between) / (FULL - between);
    expect(said(dip, rules())).toEqual([
      ...['detected 0.25', 'on 0.25', 'left 1.875', 'off 1.875'],
      ...[`detected ${again}`, `on ${again}`, 'left 7.875', 'off 7.875']
    ]);
  });

  it('does not trip at what just reaches the threshold', () => {
    expect(said(curve([0, 0], [1, TRIP], [5, TRIP], [6, 0], [9, 0]), rules())).toEqual([]);
  });

  it('detects at once what stands there at the beginning', () => {
    expect(said(curve([0, FULL], [4, FULL], [5, 0]), rules())).toEqual([
      'detected 0',
      'on 0',
      'left 4.875',
      'off 4.875'
    ]);
  });
});

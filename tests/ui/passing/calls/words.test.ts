import { describe, expect, it } from 'vitest';
import type { Cause } from '#analysis/calls/results';
import { layoutOf, mistakeAt, rowsOf } from '#ui/passing/calls/row';
import { eventsWithin, mistakesOf, stopsOf } from '#ui/passing/calls/stops';
import { causeText, clockText, mistakeText } from '#ui/passing/calls/words';
import { bentSite, channelOf, driven, mistakeOf, pictureOf } from './pictures';

const CAUSES: readonly Cause[] = [
  'too-weak',
  'left-before-delay',
  'still-occupied',
  'still-extended',
  'not-re-armed',
  'tuned-out',
  'timed-out',
  'lost-in-between',
  'other-lane',
  'several-together'
];
const RESPONSES = new Set<Cause>(['too-weak', 'lost-in-between', 'other-lane', 'several-together']);

describe('a time', () => {
  it('is seconds under a minute and minutes beyond', () => {
    expect(clockText(0)).toBe('0.0 s');
    expect(clockText(9.87, 2)).toBe('9.87 s');
    expect(clockText(59.94)).toBe('59.9 s');
    expect(clockText(59.96)).toBe('1:00.0');
    expect(clockText(83.4567, 3)).toBe('1:23.457');
    expect(clockText(300, 0)).toBe('5:00');
    expect(clockText(3_725, 0)).toBe('62:05');
  });
});

describe('a cause in words', () => {
  it.each(CAUSES)('%s gives the numbers that it rests on, and those only', (cause) => {
    const numbers = { response: 0.0012, needed: 0.0016, seconds: 0.42, neededSeconds: 2 };
    const isOfTime = cause === 'tuned-out' || cause === 'timed-out';
    const said = causeText(mistakeOf(cause, isOfTime ? { ...numbers, response: null } : numbers));
    const [found, needed] = RESPONSES.has(cause) ? ['0.120 %', '0.160 %'] : ['420 ms', '2.00 s'];
    expect(said).toContain(found);
    expect(said).toContain(needed);
    expect(said).not.toContain(RESPONSES.has(cause) ? '420 ms' : '0.120 %');
  });

  it.each(CAUSES)('%s is a sentence by itself where there are no numbers', (cause) => {
    const said = causeText(mistakeOf(cause));
    expect(said).toMatch(/^[A-Z].*[a-z]\.$/);
    expect(said).not.toMatch(/[{}]|null|undefined|NaN/);
  });

  it.each(['tuned-out', 'timed-out'] as const)(
    '%s of an earlier vehicle gives what this one would have needed',
    (cause) => {
      const said = causeText(
        mistakeOf(cause, { response: 0.002, needed: 0.011, seconds: 0.1, neededSeconds: 0.5 })
      );
      expect(said).toContain('0.200 %');
      expect(said).toContain('1.10 %');
      expect(said).not.toContain('500 ms');
    }
  );

  it('says what it knows where only one of the two is known', () => {
    const said = causeText(mistakeOf('too-weak', { response: 0.0012 }));
    expect(said).toContain('0.120 %');
    expect(said).not.toMatch(/null|–/);
  });

  it('stands behind when, where and who', () => {
    const mistake = mistakeOf('left-before-delay', {
      time_s: 75.25,
      vehicles: [0],
      seconds: 0.8,
      neededSeconds: 1
    });
    expect(mistakeText(bentSite(), pictureOf([driven([0, 0], [9, 40])]), { circuit: 'C1', mistake })).toBe(
      '1:15.250, Front: no call for a vehicle (Car, no. 1). It left before the delay had run out. It stayed 800 ms; the delay needs 1.00 s.'
    );
  });
});

describe('rows of the timeline', () => {
  const stays = [
    { vehicle: 0, from_s: 1, to_s: 2 },
    { vehicle: 1, from_s: 3, to_s: 4 },
    { vehicle: 2, from_s: 5, to_s: 6 }
  ];
  const other = { ...driven([0, 0], [9, 40]), lane: 'lane2' };
  const vehicles = [driven([0, 0], [9, 40]), other, driven([4, 0], [9, 40])];

  it('are one for each channel, with the truth lane by lane', () => {
    const [row, ...rest] = rowsOf(bentSite(), pictureOf(vehicles, [channelOf({ stays })]));
    expect(rest).toEqual([]);
    expect(row?.lanes.map(({ lane, stays: there }) => [lane, there.map(({ from_s }) => from_s)])).toEqual([
      ['lane1', [1, 5]],
      ['lane2', [3]]
    ]);
  });

  it('are left out for circuits that are not there any more', () => {
    const gone = channelOf({ summary: { ...channelOf().summary, circuit: 'C9' } });
    expect(rowsOf(bentSite(), pictureOf([], [gone]))).toEqual([]);
  });

  it('lay their parts out one below the other, with room for every lane', () => {
    const one = layoutOf({ lanes: [{ lane: 'a', stays: [] }] });
    const two = layoutOf({ lanes: [{ lane: 'a', stays: [] }, { lane: 'b', stays: [] }] }); // prettier-ignore
    expect(two.height).toBeGreaterThan(one.height);
    for (const { lanes, trace, detected, call, marks, height } of [one, two]) {
      const order = [...lanes, trace, detected, call, marks, height];
      expect(order).toEqual([...order].sort((a, b) => a - b));
    }
  });

  it('have mistakes under the finger that is near enough', () => {
    const mistakes = [mistakeOf('too-weak', { time_s: 10 }), mistakeOf('timed-out', { time_s: 20 })];
    const calls = channelOf({ mistakes });
    const x = (time: number) => 5 * time;
    expect(mistakeAt({ calls }, 54, x)).toBe(mistakes[0]);
    expect(mistakeAt({ calls }, 93, x)).toBe(mistakes[1]);
    expect(mistakeAt({ calls }, 75, x)).toBeNull();
  });
});

describe('lists', () => {
  const first = channelOf({
    events: [
      { time_s: 1, kind: 'detected' },
      { time_s: 3, kind: 'left' }
    ],
    mistakes: [mistakeOf('too-weak', { time_s: 7 })]
  });
  const second = channelOf({
    summary: { ...channelOf().summary, circuit: 'C2' },
    events: [
      { time_s: 1, kind: 'on' },
      { time_s: 2, kind: 'off' }
    ],
    mistakes: [mistakeOf('timed-out', { time_s: 5 })]
  });
  const picture = pictureOf([], [first, second]);

  it('hold every event of the part in sight, in order of time', () => {
    expect(eventsWithin(picture, 1, 2).map(({ circuit, time_s }) => [circuit, time_s])).toEqual([
      ['C1', 1],
      ['C2', 1],
      ['C2', 2]
    ]);
  });

  it('hold every mistake with its circuit, in order of time', () => {
    expect(mistakesOf(picture).map(({ circuit }) => circuit)).toEqual(['C2', 'C1']);
  });

  it('step over each time once', () => {
    expect(stopsOf(picture)).toEqual([1, 2, 3, 5, 7]);
  });
});

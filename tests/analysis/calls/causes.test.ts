/**
 * Each cause with the numbers that it rests on. At 10 m/s a car trips at −3 + 2·0.0016/0.02 = −2.84 m and releases at
 * 5 − 2·0.00096/0.02 = 4.904 m: 7.744 m, 0.7744 s. Its body, 4 m long, is over the loop from −2 m to 4 m: 0.6 s.
 */
import { describe, expect, it } from 'vitest';
import type { Mistake } from '#analysis/calls/results';
import type { Channel } from '#plan/schema';
import { RELEASE, simulated, TRIP, type MadeUp } from './made-up';

type Told = Partial<Mistake>;
const about = (value: number): number => expect.closeTo(value, 4) as number;

interface Row {
  readonly what: string;
  readonly drivers: readonly MadeUp[];
  readonly output?: Partial<Channel['output']>;
  readonly expected: Told;
}

const pulse = { mode: 'pulse', pulse_s: 0.125, rearm_s: 2 } as const;
const car = (at: number): MadeUp => ({ vehicle: 'car', at });

const rows: readonly Row[] = [
  {
    what: 'too weak',
    drivers: [{ vehicle: 'weak', at: 20 }],
    expected: { kind: 'missed', cause: 'too-weak', vehicles: [0], response: 0.001, needed: TRIP }
  },
  {
    what: 'it left before the delay had run out',
    drivers: [car(20)],
    output: { delay_s: 1 },
    expected: {
      kind: 'missed',
      cause: 'left-before-delay',
      vehicles: [0],
      seconds: about(0.7744),
      neededSeconds: 1
    }
  },
  {
    // one detection from 19.716 s to 21.19 s: its call begins at 20.716 s, and the first has left at 20.49 s
    what: 'it left before the delay had run out, and the next one made the call',
    drivers: [car(20), car(20.7)],
    output: { delay_s: 1 },
    expected: {
      kind: 'missed',
      cause: 'left-before-delay',
      vehicles: [0],
      seconds: about(0.7744),
      neededSeconds: 1
    }
  },
  {
    // 7 m behind, so tripped 0.7 s after the first, which takes 0.7744 s
    what: 'the one before was still over the loops',
    drivers: [car(20), car(20.7)],
    expected: {
      kind: 'merged',
      cause: 'still-occupied',
      vehicles: [0, 1],
      calls: [0],
      seconds: about(0.7),
      neededSeconds: about(0.7744)
    }
  },
  {
    // 2 − 0.7744 after the first has left
    what: 'the call was still extended',
    drivers: [car(20), car(22)],
    output: { extension_s: 3 },
    expected: {
      kind: 'merged',
      cause: 'still-extended',
      vehicles: [0, 1],
      calls: [0],
      seconds: about(1.2256),
      neededSeconds: 3
    }
  },
  {
    what: 'a weak one that an extension covers',
    drivers: [car(20), { vehicle: 'weak', at: 21.5 }],
    output: { extension_s: 3 },
    expected: { kind: 'merged', cause: 'still-extended', vehicles: [0, 1] }
  },
  {
    // the car's call begins at 20.116 s, while the weak one is in the middle of its stay, 19.8 s to 20.4 s
    what: 'a weak one just ahead of a strong one, whose call it is',
    drivers: [{ vehicle: 'weak', at: 20 }, car(20.4)],
    expected: { kind: 'merged', cause: 'too-weak', vehicles: [1, 0], response: 0.001, needed: TRIP }
  },
  {
    // the car's call ends at 20.49 s; the weak one is there from 20.45 s to 21.05 s
    what: 'a weak one whose coming alone a call still covers',
    drivers: [car(20), { vehicle: 'weak', at: 20.65 }],
    expected: { kind: 'missed', cause: 'too-weak', vehicles: [1], response: 0.001, needed: TRIP }
  },
  {
    what: 'not re-armed',
    drivers: [car(20), car(20.7)],
    output: pulse,
    expected: {
      kind: 'missed',
      cause: 'not-re-armed',
      vehicles: [1, 0],
      seconds: about(0.7),
      neededSeconds: 2
    }
  },
  {
    // the first stands 5 s over the loop and is taken for road; a weaker one comes 0.8 s after it has begun to leave
    what: 'the one before had been tuned out',
    drivers: [
      { vehicle: 'car', at: 20, stop: { place: 1, seconds: 5 } },
      { vehicle: 'high', at: 26 }
    ],
    output: { ...pulse, recovery_s: 20 },
    expected: { kind: 'missed', cause: 'tuned-out', vehicles: [1], response: 0.004, neededSeconds: about(20) }
  },
  {
    // after 30 s at 0.02 the unit takes 0.02·(1 − e^(−30/20)) = 0.0155 for the road, and all but keeps it for the weaker one
    what: 'the reference had come up under the one before, which then moved on',
    drivers: [
      { vehicle: 'car', at: 20, stop: { place: 1, seconds: 30 } },
      { vehicle: 'high', at: 52 }
    ],
    output: { adaptation_s: 20, recovery_s: 600 },
    expected: { kind: 'missed', cause: 'tuned-out', vehicles: [1], response: 0.004 }
  },
  {
    what: 'the longest presence had run out for the one before',
    drivers: [
      { vehicle: 'car', at: 20, stop: { place: 1, seconds: 5 } },
      { vehicle: 'high', at: 26 }
    ],
    output: { longestPresence_s: 3, recovery_s: 20 },
    expected: { kind: 'missed', cause: 'timed-out', vehicles: [1], response: 0.004 }
  },
  {
    what: 'the longest presence came before the delay had run out',
    drivers: [{ vehicle: 'car', at: 20, stop: { place: 1, seconds: 9 } }],
    output: { longestPresence_s: 2, delay_s: 4 },
    expected: { kind: 'missed', cause: 'timed-out', vehicles: [0], seconds: about(2), neededSeconds: 4 }
  },
  {
    what: 'lost in the middle',
    drivers: [{ vehicle: 'lorry', at: 20 }],
    expected: {
      kind: 'split',
      cause: 'lost-in-between',
      vehicles: [0],
      calls: [0, 1],
      response: about(0.0005),
      needed: RELEASE
    }
  },
  {
    // each axle for less than 0.2 s, both together for over a second
    what: 'lost in the middle, so that the delay never runs out',
    drivers: [{ vehicle: 'lorry', at: 20 }],
    output: { delay_s: 0.5 },
    expected: {
      kind: 'missed',
      cause: 'lost-in-between',
      vehicles: [0],
      response: about(0.0005),
      needed: RELEASE
    }
  },
  {
    // it stands where it responds with 0.01, is taken for road after 2 s, and moves on to 0.02
    what: 'taken for road half way, and called again',
    drivers: [{ vehicle: 'car', at: 20, stop: { place: -2, seconds: 6 } }],
    output: { longestPresence_s: 2 },
    expected: {
      kind: 'split',
      cause: 'timed-out',
      vehicles: [0],
      calls: [0, 1],
      seconds: about(2),
      neededSeconds: 2
    }
  },
  {
    what: 'taken for road half way, and given a second pulse',
    drivers: [{ vehicle: 'car', at: 20, stop: { place: -2, seconds: 6 } }],
    output: pulse,
    expected: {
      kind: 'split',
      cause: 'tuned-out',
      vehicles: [0],
      calls: [0, 1],
      seconds: about(2),
      neededSeconds: 2
    }
  },
  {
    // its first hump stands for 30 s: 0.0155 is road by then, which the middle of 0.004 falls short of, and the second hump trips
    what: 'adapted to half way, and called again though it was never lost',
    drivers: [{ vehicle: 'twin', at: 20, stop: { place: -5, seconds: 30 } }],
    output: { adaptation_s: 20 },
    expected: { kind: 'split', cause: 'tuned-out', vehicles: [0], calls: [0, 1] }
  },
  {
    // tripped at 19.716 s, so the pulse comes at 20.716 s, when the first has left and the second is there: it is the first's
    what: 'a delayed pulse of which a second has run out the delay',
    drivers: [car(20), car(20.7)],
    output: { ...pulse, delay_s: 1 },
    expected: { kind: 'merged', cause: 'not-re-armed', vehicles: [0, 1], calls: [0] }
  },
  {
    what: 'a vehicle of the lane beside',
    drivers: [{ vehicle: 'beside', lane: 'lane2', at: 20 }],
    expected: { kind: 'false', cause: 'other-lane', vehicles: [0], calls: [0], response: 0.003, needed: TRIP }
  },
  {
    what: 'two vehicles beside, neither of which would do it alone',
    drivers: [
      { vehicle: 'besideWeak', lane: 'lane2', at: 20 },
      { vehicle: 'besideWeak', lane: 'lane3', at: 20.1 }
    ],
    expected: {
      kind: 'false',
      cause: 'several-together',
      vehicles: [0, 1],
      response: about(0.002),
      needed: TRIP
    }
  },
  {
    // 12 m apart there are 0.4256 s without either; lane 2 bridges them
    what: 'two vehicles that one in the lane beside has joined',
    drivers: [car(20), { vehicle: 'beside', lane: 'lane2', at: 20.6 }, car(21.2)],
    expected: { kind: 'merged', cause: 'other-lane', vehicles: [0, 2, 1], calls: [0], needed: RELEASE }
  },
  {
    // 0.1 m apart the two add up to 0.00156 in between, above the release without the lane beside
    what: 'two vehicles that one in the lane beside did not need to join',
    drivers: [car(20), { vehicle: 'besideWeak', lane: 'lane2', at: 20.6 }, car(20.7844)],
    expected: { kind: 'merged', cause: 'still-occupied', vehicles: [0, 2], calls: [0] }
  }
];

describe('one mistake with its cause', () => {
  it.each(rows)('$what', ({ drivers, output, expected }) => {
    const { mistakes } = simulated(drivers, output).calls;
    expect(mistakes).toHaveLength(1);
    expect(mistakes[0]).toMatchObject(expected);
  });
});

describe('no mistake', () => {
  it('where every vehicle has its call', () => {
    const { summary, calls, mistakes, stays } = simulated([car(20), car(25), car(30)]).calls;
    expect(mistakes).toEqual([]);
    expect(summary).toMatchObject({ vehicles: 3, calls: 3, missed: 0, merged: 0, split: 0, false: 0 });
    expect(calls.map(({ vehicles }) => vehicles)).toEqual([[0], [1], [2]]);
    // 3 · 0.7744 s of 100 s, and 3 · 0.6 s
    expect(summary.occupancy).toBeCloseTo(0.023232, 6);
    expect(summary.trueOccupancy).toBeCloseTo(0.018, 6);
    expect(stays.map(({ from_s, to_s }) => to_s - from_s)).toEqual([about(0.6), about(0.6), about(0.6)]);
  });

  it('where an extension bridges a high middle', () => {
    const { summary } = simulated([{ vehicle: 'lorry', at: 20 }], { extension_s: 2 }).calls;
    expect(summary).toMatchObject({ vehicles: 1, calls: 1, split: 0 });
  });

  it('where a second vehicle comes to a pulse zone after re-arming', () => {
    const { summary } = simulated(
      [
        { vehicle: 'car', at: 20, stop: { place: 1, seconds: 9 } },
        { vehicle: 'car', at: 24, speed: 2 }
      ],
      pulse
    ).calls;
    expect(summary).toMatchObject({ vehicles: 2, calls: 2, missed: 0, merged: 0, split: 0, false: 0 });
  });

  it('where a call still holds when the time ends', () => {
    const { summary, calls } = simulated(
      [{ vehicle: 'car', at: 20, stop: { place: 1, seconds: 50 } }],
      {},
      40
    ).calls;
    expect(summary).toMatchObject({ vehicles: 1, calls: 1, missed: 0 });
    // tripped 3.84 m before the place where it stands: at 20.1 − 0.384 s
    expect(calls).toEqual([{ from_s: about(19.716), to_s: 40, vehicles: [0] }]);
    expect(summary.occupancy).toBeCloseTo((40 - 19.716) / 40, 6);
  });

  it('for one that has not left when the time ends', () => {
    const { summary } = simulated([car(20), { vehicle: 'weak', at: 30 }], {}, 29.9).calls;
    expect(summary).toMatchObject({ vehicles: 1, calls: 1, missed: 0 });
  });
});

it('a time at which two bodies are there counts once', () => {
  // 0.6 s each, the second 0.3 s later
  expect(simulated([car(20), car(20.3)]).calls.summary.trueOccupancy).toBeCloseTo(0.009, 9);
});

import { describe, expect, it } from 'vitest';
import { createAssessor } from '#analysis/assess';
import type { BeatSimulation, SimulationWish } from '#analysis/beat-simulation/simulation';
import { createBeatSimulator } from '#analysis/beat-simulation/simulate-in-steps';
import { finish } from '#analysis/steps';
import { averagingOf, driveOf } from '#physics/coupling/beat';
import { emptySite } from '#plan/empty';
import type { Site } from '#plan/schema';
import { channelOf, loopOf, rectangleAt, seriesOf, unitOf } from '#plan/situations/parts';

const AS_DRAWN: SimulationWish = {
  circuits: ['C1', 'C2'],
  extraDistance_m: 0,
  separation_Hz: null,
  measuringTime_s: null
};

/** Two loops whose middles lie 3 m apart along the lane, of different turns, 2 kHz apart on units of their own. */
const drawn = (over: Partial<Site> = {}): Site => ({
  ...emptySite('Two neighbours'),
  loops: [
    loopOf('L1', '', rectangleAt(0, 0, 1.8, 1.8), 4),
    loopOf('L2', '', rectangleAt(0, 3, 1.8, 2.4), 4, 4)
  ],
  circuits: [
    seriesOf('C1', '', ['L1'], 30, { ...channelOf('U1', 1, 1, 0.002), frequency_Hz: 48_000 }, []),
    seriesOf('C2', '', ['L2'], 30, { ...channelOf('U2', 1, 1, 0.001), frequency_Hz: 50_000 }, [])
  ],
  units: [unitOf('U1', '', 1), { ...unitOf('U2', '', 1), measuringTime_s: 0.0023 }],
  ...over
});

const simulator = createBeatSimulator();
const simulated = (wish: Partial<SimulationWish> = {}, site: Site = drawn()): BeatSimulation => {
  const answer = finish(simulator(site, { ...AS_DRAWN, ...wish }));
  if (!answer) throw new Error('nothing to simulate');
  return answer;
};
const rangeOf = (values: readonly number[]): readonly [number, number] => [
  Math.min(...values),
  Math.max(...values)
];

describe('two channels of a drawing', () => {
  it('are coupled, tuned and judged as the assessment has them', () => {
    const found = simulated();
    const { beats, circuits } = createAssessor().assess(drawn());
    expect(found.k).toBeCloseTo(beats[0]!.k, 12);
    expect(found.drawnSeparation_Hz).toBeCloseTo(2_000, 6);
    expect(found.separation_Hz).toBe(found.drawnSeparation_Hz);
    found.sides.forEach((side, n) => {
      expect(side.circuit).toBe(circuits[n]!.id);
      expect(side.inductance_H).toBe(circuits[n]!.inductance_H);
      expect(side.q).toBe(circuits[n]!.q);
      expect(side.frequency_Hz).toBe(circuits[n]!.frequency_Hz);
      expect(side.threshold_Hz).toBeCloseTo((side.tripThreshold / 2) * side.frequency_Hz, 9);
    });
    expect(found.sides.map(({ measuringTime_s }) => measuringTime_s)).toEqual([0.005, 0.0023]);
    expect(found.sides.map(({ tripThreshold }) => tripThreshold)).toEqual([0.002, 0.001]);
  });

  it('swing as the law says, each by its own weight', () => {
    const { sides, k, beat_Hz, separation_Hz, strength, isLocked } = simulated();
    expect(isLocked).toBe(false);
    expect(strength).toBeLessThan(1 / 3);
    expect(Math.abs(beat_Hz / separation_Hz - 1)).toBeLessThan(0.05);
    sides.forEach(({ law, seen, frequency_Hz, inductance_H }, n) => {
      const other = sides[1 - n]!;
      const drive = driveOf(inductance_H, other.inductance_H, frequency_Hz, other.frequency_Hz);
      expect(law.ripple).toBeCloseTo(Math.abs(k) * drive, 12);
      expect(Math.abs(seen.swing_Hz / law.swing_Hz - 1)).toBeLessThan(0.1);
      expect(seen.ripple).toBeCloseTo((2 * seen.swing_Hz) / frequency_Hz, 12);
    });
    // more turns: the larger tank suffers more
    expect(sides[1].seen.ripple).toBeGreaterThan(1.1 * sides[0].seen.ripple);
  });

  it('are read with at most what averaging leaves, and with that at the worst of times', () => {
    // 2.5 beats, and whole ones
    for (const [beats, least, most] of [
      [2.5, 0.85, 1.15],
      [1.5, 0.85, 1.15],
      [4, 0, 0.3]
    ] as const) {
      const { sides } = simulated({ measuringTime_s: beats / 2_000 });
      for (const { law, seen, ratio, tripThreshold, measuringTime_s } of sides) {
        expect(law.averaged).toBeCloseTo(law.ripple * averagingOf(2_000, measuringTime_s), 12);
        expect(seen.averaged / law.averaged).toBeGreaterThanOrEqual(least);
        expect(seen.averaged / law.averaged).toBeLessThan(most);
        expect(ratio).toBeCloseTo(seen.averaged / tripThreshold, 12);
      }
    }
  });

  it('are moved apart along the line between their middles, and couple as if they were drawn there', () => {
    const near = simulated();
    const further = simulated({ extraDistance_m: 2 });
    expect(near.drawnDistance_m).toBeCloseTo(3, 9);
    expect([further.drawnDistance_m, further.distance_m]).toEqual([
      near.drawnDistance_m,
      expect.closeTo(5, 9) as number
    ]);
    expect(Math.abs(further.k)).toBeLessThan(Math.abs(near.k) / 3);
    const there = drawn({
      loops: [drawn().loops[0]!, loopOf('L2', '', rectangleAt(0, 5, 1.8, 2.4), 4, 4)]
    });
    expect(further.k).toBeCloseTo(createAssessor().assess(there).beats[0]!.k, 12);
  });

  it.each([600, 1_500, 3_500])('are %f Hz apart when that is asked for', (separation_Hz) => {
    const found = simulated({ separation_Hz, extraDistance_m: 1 });
    expect(found.separation_Hz).toBeCloseTo(separation_Hz, 6);
    expect(found.sides[0].frequency_Hz).toBe(48_000);
    expect(Math.abs(found.beat_Hz / separation_Hz - 1)).toBeLessThan(0.02);
  });

  it('keep to their side when the second is the lower one', () => {
    const site = drawn();
    const [first, second] = site.circuits;
    const lower = drawn({
      circuits: [first!, { ...second!, channel: { ...second!.channel!, frequency_Hz: 45_000 } }]
    });
    expect(simulated({ separation_Hz: 1_000 }, lower).sides[1].frequency_Hz).toBe(47_000);
  });

  it('are measured for a tenth of a second at most, however long their units take', () => {
    const slow = drawn({ units: [unitOf('U1', '', 1), { ...unitOf('U2', '', 1), measuringTime_s: 2 }] });
    const { sides, ownMeasuringTime_s } = simulated({}, slow);
    expect(sides.map(({ measuringTime_s }) => measuringTime_s)).toEqual([0.005, 0.1]);
    expect(ownMeasuringTime_s).toBe(0.1);
    expect(simulated({ measuringTime_s: 5 }).sides.map(({ measuringTime_s }) => measuringTime_s)).toEqual([
      0.1, 0.1
    ]);
  });

  it('on one frequency run in step', () => {
    const { isLocked, beat_Hz, strength, sides } = simulated({ separation_Hz: 0 });
    expect(isLocked).toBe(true);
    expect(beat_Hz).toBe(0);
    expect(strength).toBe(Infinity);
    for (const { seen, law } of sides) expect(seen.swing_Hz).toBeLessThan(0.05 * law.swing_Hz);
  });
});

describe('what is drawn', () => {
  const { sides, shownCycles_s, shownReadings_s, beat_Hz } = simulated();

  it('shows a few beats, cycle by cycle, round the mean', () => {
    expect(shownCycles_s * beat_Hz).toBeCloseTo(4, 6);
    for (const { cycles, seen } of sides) {
      const [least, most] = rangeOf(cycles.values);
      expect((most - least) / 2).toBeCloseTo(seen.swing_Hz, -1);
      expect(Math.abs(most + least)).toBeLessThan(0.3 * seen.swing_Hz);
      expect(cycles.times).toHaveLength(cycles.values.length);
      expect(cycles.times.length).toBeGreaterThan(60);
      expect(cycles.times.at(-1)!).toBeLessThanOrEqual(shownCycles_s);
      expect([...cycles.times].sort((a, b) => a - b)).toEqual(cycles.times);
    }
  });

  it('shows amplitudes that swing about those of the tanks by themselves', () => {
    for (const { amplitude } of sides) {
      const [least, most] = rangeOf(amplitude.values);
      expect(least).toBeGreaterThan(0.8);
      expect(least).toBeLessThan(1);
      expect(most).toBeGreaterThan(1);
      expect(most).toBeLessThan(1.2);
    }
  });

  it('shows one reading after the other, none beyond what was seen', () => {
    for (const { readings, measuringTime_s, seen } of sides) {
      expect(readings.values.length).toBeGreaterThan(9);
      readings.times.forEach((time, n) => {
        expect(time).toBeCloseTo(n * measuringTime_s, 12);
      });
      const [least, most] = rangeOf(readings.values);
      expect((most - least) / 2).toBeLessThan(1.05 * seen.averaged_Hz);
      expect(readings.times.length * measuringTime_s).toBeLessThanOrEqual(shownReadings_s + 1e-12);
    }
  });

  it('stays small enough to be drawn at once, however long the beat', () => {
    for (const separation_Hz of [0, 20, 100, 5_000])
      for (const { cycles, amplitude, readings } of simulated({ separation_Hz, measuringTime_s: 0.0005 })
        .sides)
        expect(
          Math.max(cycles.times.length, amplitude.times.length, readings.times.length)
        ).toBeLessThanOrEqual(601);
  });

  it('can be sent from a worker', () => {
    const answer = simulated({ separation_Hz: 700 });
    expect(structuredClone(answer)).toEqual(answer);
  });
});

describe('a drawing without such a pair', () => {
  it('has an invented one: two equal loops side by side', () => {
    const { sides, k, strength, distance_m } = simulated({ circuits: null }, emptySite(''));
    expect(sides.map(({ circuit }) => circuit)).toEqual([null, null]);
    // equal squares of 6 ft, one turn, a gap of 3 ft: −0.08043 of 10.525 µH by Neumann [C]; less through tail and lead-in
    expect(-k).toBeGreaterThan(0.003);
    expect(-k).toBeLessThan(0.08043 / 10.525);
    expect(distance_m).toBeCloseTo(2.8, 9);
    expect(strength).toBeLessThan(1 / 3);
    for (const { seen, law } of sides) expect(Math.abs(seen.swing_Hz / law.swing_Hz - 1)).toBeLessThan(0.1);
  });

  it.each([
    ['a circuit that is not there', { circuits: ['C1', 'C9'] as const }, drawn()],
    ['a circuit without a channel', {}, drawn({ units: [unitOf('U1', '', 1)] })],
    [
      'a circuit with too much loss to oscillate',
      {},
      drawn({ loops: drawn().loops.map((loop) => ({ ...loop, addedResistance_ohm: 60 })) })
    ]
  ])('has nothing to show for %s', (_, wish, site) => {
    expect(finish(createBeatSimulator()(site, { ...AS_DRAWN, ...wish }))).toBeNull();
  });
});

describe('steps', () => {
  it('are many, and say how far the run is', () => {
    const steps = createBeatSimulator()(drawn(), AS_DRAWN);
    const shares: number[] = [];
    for (let step = steps.next(); !step.done; step = steps.next())
      if (typeof step.value === 'number') shares.push(step.value);
    expect(shares.length).toBeGreaterThan(10);
    expect([...shares].sort((a, b) => a - b)).toEqual(shares);
    expect(shares.at(-1)!).toBeLessThanOrEqual(1);
    expect(shares.at(-1)!).toBeGreaterThan(0.9);
  });
});

/** Counts that must agree whatever the traffic and the settings are. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Channel } from '#plan/schema';
import { PROFILES, simulated, type MadeUp } from './made-up';

const SEED = 299_792;

const drivers: fc.Arbitrary<readonly MadeUp[]> = fc.array(
  fc.record({
    vehicle: fc.constantFrom(...Object.keys(PROFILES)),
    lane: fc.constantFrom('lane1', 'lane1', 'lane2'),
    at: fc.double({ min: 1, max: 90, noNaN: true }),
    speed: fc.double({ min: 1, max: 25, noNaN: true }),
    stop: fc.record({
      place: fc.double({ min: -4, max: 4, noNaN: true }),
      seconds: fc.double({ min: 0, max: 20, noNaN: true })
    })
  }),
  { maxLength: 14 }
);

const output: fc.Arbitrary<Partial<Channel['output']>> = fc.record({
  mode: fc.constantFrom('presence' as const, 'pulse' as const),
  delay_s: fc.constantFrom(0, 0, 1, 4),
  extension_s: fc.constantFrom(0, 0, 1, 5),
  longestPresence_s: fc.constantFrom(null, null, 3, 20),
  rearm_s: fc.constantFrom(1, 3),
  adaptation_s: fc.constantFrom(20, 1_800)
});

it('calls are vehicles less missed and merged ones, plus split and false ones', () => {
  fc.assert(
    fc.property(drivers, output, (traffic, timings) => {
      const { summary, calls, mistakes, stays } = simulated(traffic, timings).calls;
      const { vehicles, missed, merged, split } = summary;
      expect(summary.calls).toBe(vehicles - missed - merged + split + summary.false);
      expect(calls).toHaveLength(summary.calls);
      expect(mistakes).toHaveLength(missed + merged + split + summary.false);
      expect(vehicles).toBeLessThanOrEqual(stays.length);
      for (const share of [summary.occupancy, summary.trueOccupancy]) {
        expect(share).toBeGreaterThanOrEqual(0);
        expect(share).toBeLessThanOrEqual(1);
      }
      for (const { vehicles: named, calls: numbers, seconds, neededSeconds } of mistakes) {
        named.forEach((vehicle) => expect(traffic[vehicle]).toBeDefined());
        numbers.forEach((number) => expect(calls[number]).toBeDefined());
        for (const time of [seconds, neededSeconds]) expect(time ?? 0).toBeGreaterThanOrEqual(0);
      }
    }),
    { seed: SEED, numRuns: 400 }
  );
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { durationOf } from '#analysis/traffic/trajectories';
import type { Arrival, Stream } from '#plan/schema';
import {
  arrival,
  CAR_LENGTH,
  drivenOn,
  frontAt,
  lengthOf,
  signal,
  stream,
  street,
  timeOfFront
} from './sites';

const SEED = 662_607;

describe('a single arrival', () => {
  it('has its front at the lane’s start at its time and drives evenly', () => {
    const [only] = drivenOn(street({ arrivals: [arrival({ at_s: 10, speed_m_s: 8 })] }));
    expect(frontAt(only!, 10)).toBeCloseTo(0, 9);
    expect(frontAt(only!, 20)).toBeCloseTo(80, 9);
    expect(only!.times).toHaveLength(2);
    // from well before the lane to well beyond it
    expect(only!.places[0]).toBeLessThan(-10);
    expect(only!.places.at(-1)).toBeGreaterThan(210);
  });

  it('stands where it is told for so long, braking and starting evenly (3 and 1.5 m/s²)', () => {
    const stop = { at_m: 60, for_s: 20 };
    const [only] = drivenOn(street({ arrivals: [arrival({ at_s: 0, speed_m_s: 12, stop })] }));
    // it brakes from 12 m/s over 12²/6 = 24 m in 4 s: at 36 m after 3 s, at 60 m after 7 s, off again at 27 s
    expect(frontAt(only!, 3)).toBeCloseTo(36, 6);
    expect(frontAt(only!, 5)).toBeCloseTo(36 + 12 * 2 - (3 * 2 ** 2) / 2, 1.5);
    expect(frontAt(only!, 7)).toBeCloseTo(60, 6);
    expect(frontAt(only!, 27)).toBeCloseTo(60, 6);
    expect(frontAt(only!, 29)).toBeCloseTo(60 + (1.5 * 2 ** 2) / 2, 1.5);
    // 12 m/s after 8 s and 48 m
    expect(frontAt(only!, 35)).toBeCloseTo(108, 1.5);
    expect(frontAt(only!, 36)! - frontAt(only!, 35)!).toBeCloseTo(12, 1);
  });

  it('looks for its place again when somebody’s tail was in the way', () => {
    // the first stands at 60 m from 7 s to 17 s: its tail is at 55.6 m, and 2 m are left; the second wants to 58 m
    const arrivals = [
      arrival({ at_s: 0, speed_m_s: 12, stop: { at_m: 60, for_s: 10 } }),
      arrival({ at_s: 3, speed_m_s: 12, stop: { at_m: 58, for_s: 20 } })
    ];
    const [, second] = drivenOn(street({ arrivals }));
    expect(frontAt(second!, 16)).toBeCloseTo(53.6, 3);
    const stands = [22, 30, 38].map((time) => frontAt(second!, time)!);
    expect(stands[0]).toBeCloseTo(58, 1);
    expect(stands[2]).toBeCloseTo(58, 1);
    expect(frontAt(second!, 46)!).toBeGreaterThan(65);
  });

  it('starts at about half a car’s rate (0.8 m/s²) where it is long', () => {
    // standing at 100 m from when it has braked until 30 s later; 4 s after that it has come 0.8·4²/2 = 6.4 m
    const [only] = drivenOn(
      street({ arrivals: [arrival({ vehicle: 'long', stop: { at_m: 100, for_s: 30 } })] })
    );
    const stops = 10 + 10 + 10 / (2 * 3);
    expect(frontAt(only!, stops + 30)).toBeCloseTo(100, 6);
    expect(Math.abs(frontAt(only!, stops + 34)! - 106.4)).toBeLessThan(0.011);
  });

  it('begins at the lane’s start where a faster one before it was not yet past the road before', () => {
    // at 2 m/s it would have come to 20 m before the lane nine seconds ahead of the first
    const arrivals = [arrival({ at_s: 10, speed_m_s: 20 }), arrival({ at_s: 11, speed_m_s: 2 })];
    expect(timeOfFront(drivenOn(street({ arrivals }))[1]!, 0)).toBeCloseTo(11, 9);
  });

  it('is followed until its rear too is 20 m past the lane', () => {
    const [only] = drivenOn(street({ arrivals: [arrival({ vehicle: 'long' })] }));
    expect(only!.places.at(-1)! - 6).toBeCloseTo(220, 6);
  });

  it('keeps to the parabola within a centimetre, with few nodes', () => {
    const stop = { at_m: 100, for_s: 5 };
    const [only] = drivenOn(street({ arrivals: [arrival({ at_s: 0, speed_m_s: 15, stop })] }));
    // brakes over 15²/6 = 37.5 m from 62.5 m on, at 62.5/15 s, for 5 s
    const begins = 62.5 / 15;
    for (let t = 0; t <= 5; t += 0.03)
      expect(Math.abs(frontAt(only!, begins + t)! - (62.5 + 15 * t - 1.5 * t * t))).toBeLessThan(0.0101);
    expect(only!.times.length).toBeLessThan(80);
  });

  it('that stays on until the end has no end of its own', () => {
    const stop = { at_m: 60, for_s: 10_000 };
    const [only] = drivenOn(street({ arrivals: [arrival({ stop })] }));
    expect(only!.times.at(-1)).toBe(600);
    expect(frontAt(only!, 600)).toBeCloseTo(60, 6);
  });
});

describe('a signal', () => {
  it('lets through who comes in green', () => {
    // at 150 m after 10.7 s
    const site = street({ streams: [stream({ flow_per_h: 0, signal: signal() })], arrivals: [arrival({ at_s: 0, speed_m_s: 14 })] }); // prettier-ignore
    const [only] = drivenOn(site);
    expect(only!.times).toHaveLength(2);
  });

  it('stops who comes in red half a metre before the line, until a second after green', () => {
    const site = street({ streams: [stream({ flow_per_h: 0, signal: signal() })], arrivals: [arrival({ at_s: 25, speed_m_s: 15 })] }); // prettier-ignore
    const [only] = drivenOn(site);
    // 149.5 − 37.5 = 112 m at 25 + 112/15 s, standing 5 s later
    const stands = 25 + 112 / 15 + 5;
    expect(frontAt(only!, stands)).toBeCloseTo(149.5, 6);
    expect(frontAt(only!, 61)).toBeCloseTo(149.5, 6);
    expect(frontAt(only!, 63)).toBeCloseTo(149.5 + 3, 1.5);
  });

  it('is driven through by who could not stop any more', () => {
    // braking for 149.5 m would begin at 112 m; the red begins at 25 s; a reaction takes 1 s
    const passes = (at: number): boolean => {
      const site = street({ streams: [stream({ flow_per_h: 0, signal: signal() })], arrivals: [arrival({ at_s: at, speed_m_s: 15 })] }); // prettier-ignore
      return timeOfFront(drivenOn(site)[0]!, 150) < 60;
    };
    expect(passes(26 - 112 / 15 - 0.01)).toBe(true);
    expect(passes(26 - 112 / 15 + 0.01)).toBe(false);
  });

  it('is driven through, too, by who meets somebody slower when it could not stop any more', () => {
    // both would have to brake by 25.9 s, too soon after the red of 25 s; the second meets the first at 130 m, at 27.1 s
    const arrivals = [
      arrival({ at_s: 26.8 - 136.4 / 12, speed_m_s: 12 }),
      arrival({ at_s: 25.9 - 112 / 15, speed_m_s: 15 })
    ];
    const site = street({ streams: [stream({ flow_per_h: 0, signal: signal() })], arrivals });
    const [slow, fast] = drivenOn(site);
    expect(timeOfFront(slow!, 150)).toBeLessThan(30);
    expect(timeOfFront(fast!, 150)).toBeLessThan(30);
    expect(fast!.times.length).toBeGreaterThan(2);
  });

  it('lets who still rolls go on at green', () => {
    // red until 60 s; braking begins at 58.5 s from 15 m/s; released at 61 s with 15 − 3·2.5 = 7.5 m/s
    const site = street({ streams: [stream({ flow_per_h: 0, signal: signal() })], arrivals: [arrival({ at_s: 58.5 - 112 / 15, speed_m_s: 15 })] }); // prettier-ignore
    const [only] = drivenOn(site);
    expect(frontAt(only!, 61)).toBeCloseTo(112 + 15 * 2.5 - (3 * 2.5 ** 2) / 2, 4);
    expect((frontAt(only!, 61.2)! - frontAt(only!, 61)!) / 0.2).toBeCloseTo(7.65, 0.5);
  });

  it('that is never green lets nobody past, one that always is lets everybody', () => {
    const all = (green_s: number) =>
      drivenOn(street({ streams: [stream({ signal: signal({ green_s }) })] }), 300).map((each) =>
        timeOfFront(each, 151)
      );
    expect(all(0).every((time) => time === Infinity)).toBe(true);
    expect(all(60).filter((time) => time < 280).length).toBeGreaterThan(35);
  });

  it('empties a queue at about the 1900 cars an hour of green that handbooks give a lane (from memory; the least headway is the cause)', () => {
    const site = street({ streams: [stream({ flow_per_h: 2_000, signal: signal() })] });
    const crossing = drivenOn(site)
      .map((each) => timeOfFront(each, 150))
      .filter((time) => time > 120 && time < 146)
      .sort((a, b) => a - b);
    const headways = crossing.slice(1).map((time, k) => time - crossing[k]!);
    // from the fifth on, as usual when saturation is measured
    const settled = headways.slice(4);
    const perHour = 3_600 / (settled.reduce((sum, each) => sum + each, 0) / settled.length);
    expect(settled.length).toBeGreaterThan(4);
    expect(perHour).toBeGreaterThan(1_750);
    expect(perHour).toBeLessThan(2_050);
    // the first takes its reaction and the way from half a metre before the line: √(2·0.5/1.5) = 0.82 s
    expect(crossing[0]! - 120).toBeCloseTo(1.82, 1);
  });

  it('leaves cars standing 2 m apart', () => {
    const fronts = drivenOn(street({ streams: [stream({ flow_per_h: 1_800, signal: signal() })] }))
      .map((each) => frontAt(each, 119))
      .filter((front) => front !== null && front < 150 && front > 0)
      .sort((a, b) => b! - a!);
    expect(fronts[0]).toBeCloseTo(149.5, 3);
    expect(fronts[1]).toBeCloseTo(149.5 - CAR_LENGTH - 2, 1);
    expect(fronts[2]).toBeCloseTo(149.5 - 2 * (CAR_LENGTH + 2), 1);
  });
});

describe('a stream', () => {
  it('is the same again, and another with another seed', () => {
    const site = (seed: number) =>
      street({ streams: [stream({ speedSpread: 0.1, wander_m: 0.2, mix: [{ vehicle: 'short', share: 3 }, { vehicle: 'long', share: 1 }] })], seed }); // prettier-ignore
    expect(drivenOn(site(1))).toEqual(drivenOn(site(1)));
    expect(drivenOn(site(2))).not.toEqual(drivenOn(site(1)));
  });

  it('has its flow, its least headway and its mix', () => {
    const mix = [
      { vehicle: 'short', share: 3 },
      { vehicle: 'long', share: 1 }
    ];
    const site = street({ streams: [stream({ flow_per_h: 720, leastHeadway_s: 2, mix, speed_m_s: 20 })] });
    const all = drivenOn(site, 36_000);
    // exponential on top of 2 s with a mean of 3 s: √7200·3/5 = 51 is the deviation of the count
    expect(Math.abs(all.length - 7_200)).toBeLessThan(160);
    const starts = all.map((each) => timeOfFront(each, 0));
    const headways = starts.slice(1).map((time, k) => time - starts[k]!);
    expect(Math.min(...headways)).toBeGreaterThan(1.99);
    expect(headways.filter((each) => each < 2 + 3 * Math.LN2).length / headways.length).toBeCloseTo(0.5, 1);
    const long = all.filter(({ vehicle }) => vehicle === 'long').length / all.length;
    expect(Math.abs(long - 0.25)).toBeLessThan(0.02);
  });

  it('may begin with its first vehicle at any time', () => {
    const first = [1, 2, 3, 4, 5, 6, 7, 8].map((seed) =>
      timeOfFront(drivenOn(street({ streams: [stream()], seed }))[0]!, 0)
    );
    expect(Math.min(...first)).toBeGreaterThan(0);
    expect(Math.max(...first)).toBeGreaterThan(3);
  });

  it('begins at once where its flow leaves nothing but the least headway', () => {
    const all = drivenOn(street({ streams: [stream({ flow_per_h: 2_000 })] }), 60);
    expect(all.slice(0, 3).map((each) => timeOfFront(each, 0))).toEqual(
      [0, 1.8, 3.6].map((time) => expect.closeTo(time, 6) as number)
    );
  });

  it('has nobody who stands still or drives backwards, however far its speeds spread', () => {
    // 14 m/s·(1 − 2.5·0.5) would be −3.5 m/s
    const all = drivenOn(street({ streams: [stream({ speedSpread: 0.5, flow_per_h: 200 })] }), 3_600);
    const slowest = all.map(({ times, places }) => (places[1]! - places[0]!) / (times[1]! - times[0]!));
    expect(Math.min(...slowest)).toBeGreaterThanOrEqual(0.5 - 1e-9);
    expect(all.length).toBeGreaterThan(10);
  });

  it('keeps its lane: offsets lie on a grid of 5 cm and leave the body in it', () => {
    const all = drivenOn(street({ streams: [stream({ wander_m: 0.6 })] }), 3_600);
    const offsets = new Set(all.map(({ offset_m }) => offset_m));
    expect(offsets.size).toBeGreaterThan(20);
    for (const offset of offsets) {
      expect(Math.abs(offset)).toBeLessThanOrEqual((3.5 - 1.8) / 2 + 1e-9);
      expect(Math.abs(offset / 0.05 - Math.round(offset / 0.05))).toBeLessThan(1e-6);
    }
  });

  it('with another mix has the same times, and another stream does not change it', () => {
    const starts = (...streams: Stream[]) =>
      drivenOn(street({ streams }), 120).map((each) => timeOfFront(each, 0).toFixed(6));
    const plain = starts(stream());
    const mixed = starts(stream({ mix: [{ vehicle: 'short', share: 1 }, { vehicle: 'long', share: 1e-9 }] })); // prettier-ignore
    expect(mixed).toEqual(plain);
    expect(starts(stream(), stream({ flow_per_h: 0 }))).toEqual(plain);
  });

  it('ends sooner where it would be more than can be kept', () => {
    const site = street({ streams: [stream({ flow_per_h: 3_000 }), stream({ flow_per_h: 3_000 })] });
    expect(durationOf({ ...site.traffic!, duration_s: 86_400 }, Infinity)).toBe(24_000);
    expect(durationOf({ ...site.traffic!, duration_s: 600 }, Infinity)).toBe(600);
    expect(durationOf({ ...site.traffic!, duration_s: 600 }, 60)).toBe(60);
  });
});

describe('following', () => {
  const anyStream: fc.Arbitrary<Stream> = fc
    .record({
      flow_per_h: fc.constantFrom(200, 900, 1_800, 3_000),
      speed_m_s: fc.double({ min: 1, max: 35, noNaN: true }),
      speedSpread: fc.constantFrom(0, 0.1, 0.5),
      leastHeadway_s: fc.constantFrom(0.5, 1.8, 4),
      mix: fc.constantFrom([{ vehicle: 'short', share: 1 }], [{ vehicle: 'short', share: 2 }, { vehicle: 'long', share: 1 }]), // prettier-ignore
      signal: fc.option(
        fc.record({
          cycle_s: fc.constantFrom(20, 60, 90),
          greenFrom_s: fc.constantFrom(0, 17),
          green_s: fc.constantFrom(0, 5, 25, 90),
          line_m: fc.constantFrom(-5, 0, 20, 150, 230)
        })
      )
    })
    .map((given) => stream(given));
  const anyArrival: fc.Arbitrary<Arrival> = fc
    .record({
      vehicle: fc.constantFrom('short', 'long'),
      at_s: fc.double({ min: 0, max: 200, noNaN: true }),
      speed_m_s: fc.double({ min: 0.2, max: 40, noNaN: true }),
      stop: fc.option(
        fc.record({ at_m: fc.double({ min: -30, max: 240, noNaN: true }), for_s: fc.constantFrom(0, 3, 60) })
      )
    })
    .map((given) => arrival(given));
  const traffic = fc.record({
    seed: fc.integer({ min: 0, max: 2 ** 31 - 1 }),
    streams: fc.array(anyStream, { maxLength: 2 }),
    arrivals: fc.array(anyArrival, { maxLength: 8 })
  });

  it('never leads into the one ahead, backwards or through time', () => {
    fc.assert(
      fc.property(traffic, (given) => {
        const all = [...drivenOn(street(given), 240)];
        for (const { times, places } of all) {
          expect(times.length).toBeGreaterThan(1);
          for (let k = 1; k < times.length; k++) {
            expect(times[k]!).toBeGreaterThan(times[k - 1]!);
            expect(places[k]!).toBeGreaterThanOrEqual(places[k - 1]!);
          }
        }
        for (let time = 1; time < 240; time += 7.3) {
          const there = all
            .flatMap((each) => {
              const front = frontAt(each, time);
              return front === null ? [] : [{ front, rear: front - lengthOf(each) }];
            })
            .sort((a, b) => b.front - a.front);
          for (let k = 1; k < there.length; k++)
            expect(there[k]!.front).toBeLessThanOrEqual(there[k - 1]!.rear - 2 + 0.001);
        }
      }),
      { seed: SEED, numRuns: 60 }
    );
  });

  it('does not run a red light after the first seconds of it', () => {
    fc.assert(
      fc.property(traffic, (given) => {
        const light = signal({ green_s: 20, line_m: 100 });
        const streams = [
          ...given.streams.map((each) => ({ ...each, signal: null })),
          stream({ flow_per_h: 0, signal: light })
        ];
        for (const each of drivenOn(street({ ...given, streams }), 240)) {
          const time = timeOfFront(each, light.line_m);
          if (time >= 240 || each.places[0]! + lengthOf(each) / 2 > 60) continue;
          // who could not stop: reaction and braking from 40·(1 + 2.5·0.5) m/s, half a metre to spare
          const since = ((time % 60) + 60) % 60;
          const speed = 1 / (timeOfFront(each, light.line_m + 0.5) - timeOfFront(each, light.line_m - 0.5));
          if (since > 20) expect(since - 20).toBeLessThanOrEqual(1 + speed / 6 + 0.5 / speed + 1);
        }
      }),
      { seed: SEED, numRuns: 60 }
    );
  });
});

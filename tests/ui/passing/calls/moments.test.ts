import { describe, expect, it } from 'vitest';
import { createMoments, placeAt } from '#ui/passing/calls/moments';
import { bentSite, channelOf, driven, pictureOf } from './pictures';

describe('a vehicle at a time', () => {
  const car = driven([10, 0], [12, 20], [15, 20], [16, 25]);

  it('is on the straight line between its times', () => {
    expect(placeAt(car, 10)).toBe(0);
    // 20 m in 2 s, so 5 m after half a second
    expect(placeAt(car, 10.5)).toBeCloseTo(5, 12);
    expect(placeAt(car, 12)).toBe(20);
    expect(placeAt(car, 13.7)).toBe(20);
    expect(placeAt(car, 15.2)).toBeCloseTo(21, 12);
    expect(placeAt(car, 16)).toBe(25);
  });

  it('is not there before and after', () => {
    expect(placeAt(car, 9.999)).toBeNull();
    expect(placeAt(car, 16.001)).toBeNull();
  });

  it('stands in its lane and looks along it, in the bend too', () => {
    const momentAt = createMoments(bentSite(), pictureOf([driven([0, 0], [4, 40])]));
    const [below] = momentAt(1).vehicles;
    expect(below?.at[0]).toBeCloseTo(0, 9);
    expect(below?.at[1]).toBeCloseTo(10, 9);
    expect(below?.heading).toBeCloseTo(90, 9);
    // both axles on the way, 45° in the middle of the bend
    expect(momentAt(2).vehicles[0]?.heading).toBeCloseTo(45, 6);
    const [beyond] = momentAt(3).vehicles;
    expect(beyond?.at[0]).toBeCloseTo(10, 9);
    expect(beyond?.at[1]).toBeCloseTo(20, 9);
    expect(beyond?.heading).toBeCloseTo(0, 9);
  });

  it('keeps to its side of the lane', () => {
    const toTheRight = { ...driven([0, 0], [4, 40]), offset_m: 0.5 };
    const [car] = createMoments(bentSite(), pictureOf([toTheRight]))(1).vehicles;
    expect(car?.at[0]).toBeCloseTo(0.5, 9);
  });

  it('is found among others, long and short ones, in any order', () => {
    const vehicles = [driven([30, 0], [31, 10]), driven([0, 0], [90, 40]), driven([5, 0], [6, 10])];
    const momentAt = createMoments(bentSite(), pictureOf(vehicles));
    expect([2, 5.5, 20, 30.5, 95].map((time) => momentAt(time).vehicles.length)).toEqual([1, 2, 1, 2, 0]);
  });

  it('is left out when its lane is not there', () => {
    const elsewhere = { ...driven([0, 0], [4, 40]), lane: 'gone' };
    expect(createMoments(bentSite(), pictureOf([elsewhere]))(1).vehicles).toEqual([]);
  });
});

describe('outputs at a time', () => {
  const channel = channelOf({
    events: [
      { time_s: 2, kind: 'detected' },
      { time_s: 3, kind: 'on' },
      { time_s: 6, kind: 'left' },
      { time_s: 7, kind: 'off' },
      { time_s: 90, kind: 'detected' }
    ],
    calls: [{ from_s: 3, to_s: 7, vehicles: [0] }]
  });
  const momentAt = createMoments(bentSite(), pictureOf([], [channel]));

  it('detect first and call after the delay, to the end of the extension', () => {
    const states = [1.9, 2, 2.9, 3, 6.5, 6.999, 7, 89, 99].map((time) => momentAt(time).outputs.get('C1'));
    expect(states).toEqual(['off', 'detecting', 'detecting', 'on', 'on', 'on', 'off', 'off', 'detecting']);
  });

  it('are one and the same map while nothing changes', () => {
    const before = momentAt(2.1).outputs;
    expect(momentAt(2.8).outputs).toBe(before);
    expect(momentAt(3.5).outputs).not.toBe(before);
  });

  it('depend on the time alone, whatever was looked at before', () => {
    momentAt(99);
    const once = momentAt(3.2);
    momentAt(1);
    expect(momentAt(3.2)).toEqual(once);
  });
});

describe('a signal', () => {
  const momentAt = createMoments(bentSite(), pictureOf([]));

  it('is green over the end of its cycle too', () => {
    // a cycle of 60 s, green from 50 s on for 20 s
    const times = [0, 9.99, 10, 49.99, 50, 59, 60, 69, 70];
    const green = times.map((time) => momentAt(time).signals[0]?.isGreen);
    expect(green).toEqual([true, true, false, false, true, true, true, true, false]);
  });

  it('stands across its lane at the stop line, from the left edge to the right', () => {
    const [shown] = momentAt(5).signals;
    expect(shown?.isGreen).toBe(true);
    expect(shown?.from).toEqual([-2, 18]);
    expect(shown?.to).toEqual([2, 18]);
  });
});

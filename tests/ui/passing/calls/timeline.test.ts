import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { detectionsOf, holdsAt, lastUpTo } from '#ui/passing/calls/stretches';
import {
  barsPath,
  curvePath,
  firstWindow,
  following,
  neighbouring,
  panned,
  roundAbove,
  timeTicks,
  valueAt,
  zoomed
} from '#ui/passing/calls/timeline';

const MINUTE = { from_s: 30, to_s: 90 };

describe('the part in sight', () => {
  it('is a minute at first, or all where there is less', () => {
    expect(firstWindow(300)).toEqual({ from_s: 0, to_s: 60 });
    expect(firstWindow(20)).toEqual({ from_s: 0, to_s: 20 });
  });

  it('is zoomed about a time that stays where it is', () => {
    expect(zoomed(MINUTE, 2, 45, 300)).toEqual({ from_s: 37.5, to_s: 67.5 });
    expect(zoomed(MINUTE, 0.5, 60, 300)).toEqual({ from_s: 0, to_s: 120 });
    expect(zoomed(MINUTE, 0.01, 60, 300)).toEqual({ from_s: 0, to_s: 300 });
  });

  it('is panned by its own length, and not beyond the ends', () => {
    expect(panned(MINUTE, 0.5, 300)).toEqual({ from_s: 60, to_s: 120 });
    expect(panned(MINUTE, -2, 300)).toEqual({ from_s: 0, to_s: 60 });
    expect(panned(MINUTE, 99, 300)).toEqual({ from_s: 240, to_s: 300 });
  });

  it('turns a page when the time leaves it', () => {
    expect(following(MINUTE, 60, 300)).toBe(MINUTE);
    expect(following(MINUTE, 90.5, 300)).toEqual({ from_s: 87.5, to_s: 147.5 });
    expect(following(MINUTE, 150, 300, 0.4)).toEqual({ from_s: 126, to_s: 186 });
    expect(following(MINUTE, 2, 300)).toEqual({ from_s: 0, to_s: 60 });
  });

  it('always lies in the simulated time and never vanishes', () => {
    const seconds = fc.double({ min: 1, max: 3_600, noNaN: true });
    const moves = fc.array(
      fc.tuple(fc.constantFrom('zoom', 'pan', 'follow'), fc.double({ min: 0.05, max: 20, noNaN: true })),
      { maxLength: 20 }
    );
    fc.assert(
      fc.property(seconds, moves, (duration, hand) => {
        let window = firstWindow(duration);
        for (const [what, by] of hand) {
          if (what === 'zoom') window = zoomed(window, by, (by / 20) * duration, duration);
          else if (what === 'pan') window = panned(window, by - 10, duration);
          else window = following(window, (by / 20) * duration, duration);
          expect(window.from_s).toBeGreaterThanOrEqual(0);
          expect(window.to_s).toBeLessThanOrEqual(duration + 1e-9);
          expect(window.to_s - window.from_s).toBeGreaterThan(0.49);
        }
      })
    );
  });
});

describe('stepping', () => {
  const times = [1, 2, 2.0002, 5];

  it('goes to the next event and the one before, not to the one it is at', () => {
    expect(neighbouring(times, 0, 1)).toBe(1);
    expect(neighbouring(times, 1, 1)).toBe(2);
    expect(neighbouring(times, 2, 1)).toBe(5);
    expect(neighbouring(times, 5, -1)).toBe(2.0002);
    expect(neighbouring(times, 3, -1)).toBe(2.0002);
  });

  it('stops at the ends', () => {
    expect(neighbouring(times, 5, 1)).toBeNull();
    expect(neighbouring(times, 1, -1)).toBeNull();
  });
});

describe('stretches of time', () => {
  it('hold from their beginning up to their end', () => {
    const stretches = [{ from_s: 1, to_s: 2 }, { from_s: 4, to_s: 9 }]; // prettier-ignore
    expect([0, 1, 1.9, 2, 3, 4, 8.9, 9].map((time) => holdsAt(stretches, time))).toEqual([
      false,
      true,
      true,
      false,
      false,
      true,
      true,
      false
    ]);
  });

  it('find the last value that is not above another as a search one by one does', () => {
    const sorted = fc.array(fc.integer({ min: 0, max: 30 })).map((list) => list.sort((a, b) => a - b));
    fc.assert(
      fc.property(sorted, fc.integer({ min: -1, max: 31 }), (values, wanted) => {
        const found = lastUpTo(values.length, (index) => values[index]!, wanted);
        expect(found).toBe(values.findLastIndex((value) => value <= wanted));
      })
    );
  });

  it('of a detection end when the vehicle leaves, is tuned out, or the time is up', () => {
    const events = [
      { time_s: 1, kind: 'detected' },
      { time_s: 1.5, kind: 'on' },
      { time_s: 2, kind: 'left' },
      { time_s: 3, kind: 'detected' },
      { time_s: 5, kind: 'tuned-out' },
      { time_s: 6, kind: 'left' },
      { time_s: 8, kind: 'detected' }
    ] as const;
    expect(detectionsOf({ events }, 10)).toEqual([
      { from_s: 1, to_s: 2 },
      { from_s: 3, to_s: 5 },
      { from_s: 8, to_s: 10 }
    ]);
  });
});

describe('what is drawn', () => {
  const ten = (value: number) => 10 * value;
  const numbersOf = (path: string) =>
    path
      .replace(/[MLHVZ]/g, ' ')
      .trim()
      .split(/\s+/)
      .map(Number);

  it('is a line through the nodes in sight and one more on either side', () => {
    const times = Float64Array.from([0, 1, 2, 3, 4, 5]);
    const path = curvePath(times, (index) => index, { from_s: 2, to_s: 3 }, ten, ten);
    expect(path).toBe('M10.0 10.0L20.0 20.0L30.0 30.0L40.0 40.0');
  });

  it('keeps a peak that is narrower than a pixel', () => {
    const times = Float64Array.from({ length: 2_001 }, (_, index) => index / 100);
    const path = curvePath(
      times,
      (index) => (index === 777 ? 5 : 0),
      { from_s: 0, to_s: 20 },
      (t) => t,
      ten
    );
    expect(numbersOf(path)).toContain(50);
    expect(path.length).toBeLessThan(1_000);
  });

  it('is nothing where there is nothing in between', () => {
    expect(curvePath(new Float64Array(), () => 0, MINUTE, ten, ten)).toBe('');
  });

  it('joins bars that run into one another, and shows the shortest', () => {
    expect(barsPath([{ from_s: 1, to_s: 2 }], ten, 3, 4)).toBe('M10.0 3H20.0V7H10.0Z');
    expect(barsPath([{ from_s: 1, to_s: 1.001 }], ten, 0, 1)).toBe('M10.0 0H11.0V1H10.0Z');
    const close = [{ from_s: 1, to_s: 2 }, { from_s: 2.02, to_s: 3 }]; // prettier-ignore
    expect(barsPath(close, ten, 0, 1)).toBe('M10.0 0H30.0V1H10.0Z');
  });

  it('reads a value between two nodes, and none beyond them', () => {
    const [times, values] = [Float64Array.from([0, 1, 3]), Float64Array.from([0, 10, 20])];
    expect([0, 0.5, 1, 2, 3].map((time) => valueAt(times, values, time))).toEqual([0, 5, 10, 15, 20]);
    expect(valueAt(times, values, 3.1)).toBeNull();
    expect(valueAt(times, values, -0.1)).toBeNull();
  });

  it('has ticks at times that are round on a clock', () => {
    expect(timeTicks({ from_s: 0, to_s: 600 }, 10)).toEqual({
      step: 60,
      times: [0, 60, 120, 180, 240, 300, 360, 420, 480, 540, 600]
    });
    expect(timeTicks({ from_s: 31, to_s: 91 }, 5).times).toEqual([45, 60, 75, 90]);
    expect(timeTicks({ from_s: 0, to_s: 86_400 }, 4).step).toBe(14_400);
    const fine = timeTicks({ from_s: 7.02, to_s: 7.52 }, 6).times;
    expect(fine.map((time) => time.toFixed(2))).toEqual(['7.10', '7.20', '7.30', '7.40', '7.50']);
  });

  it('has a scale that ends at a round number', () => {
    const ends = [0.0064, 0.011, 0.02, 0.049, 0.1].map(roundAbove);
    for (const [index, end] of [0.01, 0.02, 0.02, 0.05, 0.1].entries())
      expect(ends[index]).toBeCloseTo(end, 12);
  });
});

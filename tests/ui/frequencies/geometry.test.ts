import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bandOf, joinsOf, middleOfRow, placeRatings, ROW_HEIGHT, type Join } from '#ui/frequencies/geometry';
import { rowsOf } from '#ui/frequencies/rows';
import { beatOf, channelOf, siteOf, sweepOf } from './sites';

/** A pixel for every 10 Hz from 40 kHz. */
const fine = (hertz: number) => (hertz - 40_000) / 10;
/** And for every kilohertz. */
const coarse = (hertz: number) => (hertz - 40_000) / 1000;

describe('a band', () => {
  it('is to scale: the temperature first, the vehicle on top of it', () => {
    const sweep = sweepOf(50_000, { cold_Hz: 50_100, hot_Hz: 49_800, low_Hz: 49_800, high_Hz: 51_102 });
    const band = bandOf(sweep, fine);
    expect(band).toMatchObject({ rest: 1000, left: 980, warm: 1010 });
    expect(band.right).toBeCloseTo(1110.2, 9);
  });

  it('can be seen in both its parts when the scale is coarse', () => {
    const { rest, left, warm, right } = bandOf(sweepOf(50_000, { high_Hz: 50_020 }), coarse);
    expect(rest).toBe(10);
    expect(warm - left).toBeGreaterThanOrEqual(3);
    expect(right - warm).toBeGreaterThanOrEqual(3);
  });

  it('has no vehicle’s part where none shifts it', () => {
    const { warm, right } = bandOf(sweepOf(50_000, { deepest: 0, high_Hz: 50_010 }), coarse);
    expect(right).toBe(warm);
  });
});

const site = siteOf([
  { circuit: 'A', unit: 'U2' },
  { circuit: 'B', unit: 'U2' },
  { circuit: 'C', unit: 'U2' }
]);
const exact = { deepest: 0, cold_Hz: 0, hot_Hz: 0 };
const rows = rowsOf(site, [
  channelOf('A', 0, { sweep: sweepOf(50_000, { ...exact, low_Hz: 50_000, high_Hz: 51_000 }) }),
  channelOf('B', 0, { sweep: sweepOf(45_000, { ...exact, low_Hz: 45_000, high_Hz: 46_000 }) }),
  channelOf('C', 0, { sweep: sweepOf(50_600, { ...exact, low_Hz: 50_600, high_Hz: 51_400 }) })
]);

describe('lines between pairs', () => {
  it('run between the nearest ends of the bands, or through the middle of what they share', () => {
    const [ab, ac] = joinsOf(rows, [beatOf('A', 'B', 2), beatOf('C', 'A', 1)], fine);
    expect([ab!.from, ab!.to]).toEqual([
      [1000, middleOfRow(0)],
      [600, middleOfRow(1)]
    ]);
    // 50.6 to 51.0 kHz is shared: the middle is 50.8.
    expect([ac!.from, ac!.to]).toEqual([
      [1080, middleOfRow(0)],
      [1080, middleOfRow(2)]
    ]);
    expect(ac!.rows).toEqual([0, 2]);
  });

  it('come worst first, and not at all for a circuit without a row', () => {
    const beats = [beatOf('A', 'B', 0.1), beatOf('A', 'C', 3), beatOf('B', 'gone', 9)];
    expect(joinsOf(rows, beats, fine).map(({ beat }) => beat.ratio)).toEqual([3, 0.1]);
  });
});

describe('ratings on the lines', () => {
  const join = (upper: number, lower: number, x: number): Join => ({
    beat: beatOf('A', 'B', 1),
    from: [x, middleOfRow(upper)],
    to: [x, middleOfRow(lower)],
    rows: [upper, lower]
  });

  it('stand between two rows, where no band is hidden', () => {
    expect(placeRatings([join(0, 1, 100)], [40], 500)).toEqual([{ x: 100, y: ROW_HEIGHT }]);
    const [place] = placeRatings([join(0, 2, 100)], [40], 500);
    expect(place!.y % ROW_HEIGHT).toBe(0);
  });

  it('give way to worse ones, and are left out when there is no room', () => {
    const crowd = [join(0, 2, 100), join(0, 2, 110), join(0, 2, 105)];
    const places = placeRatings(crowd, [40, 40, 40], 500);
    expect(places.map((place) => place && place.y / ROW_HEIGHT).sort()).toEqual([1, 2, null]);
    expect(places[2]).toBeNull();
  });

  it('never overlap nor leave the plot', () => {
    const anyJoin = fc
      .tuple(fc.nat(8), fc.integer({ min: 1, max: 6 }), fc.integer({ min: 0, max: 600 }))
      .map(([upper, rest, x]) => join(upper, upper + rest, x));
    fc.assert(
      fc.property(fc.array(anyJoin, { maxLength: 30 }), (joins) => {
        const width = 44;
        const places = placeRatings(
          joins,
          joins.map(() => width),
          600
        ).filter((place) => place !== null);
        for (const [at, place] of places.entries()) {
          expect(place.x - width / 2).toBeGreaterThanOrEqual(0);
          expect(place.x + width / 2).toBeLessThanOrEqual(600);
          for (const other of places.slice(at + 1))
            expect(place.y !== other.y || Math.abs(place.x - other.x) > width).toBe(true);
        }
      }),
      { seed: 20, numRuns: 200 }
    );
  });
});

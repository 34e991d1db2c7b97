import { describe, expect, it } from 'vitest';
import type { MapWish, ResponseMap } from '#analysis/map/results';
import { vehicleOf } from '#plan/catalogue/vehicles';
import { mapArea, net } from '#ui/passing/map/area';
import { levelsFor } from '#ui/passing/map/levels';
import { pictureOf } from '#ui/passing/map/picture';
import { RefiningMap, type AreaWish } from '#ui/passing/map/refining.svelte.ts';

describe('levels', () => {
  it('go in steps of one, two and five from a tenth of the threshold to the strongest response', () => {
    expect(levelsFor(0.013, 0.0016)).toEqual([0.0002, 0.0005, 0.001, 0.002, 0.005, 0.01]);
  });

  it('reach two decades down without a threshold, and are never a crowd', () => {
    expect(levelsFor(0.5, null)).toEqual([0.005, 0.01, 0.02, 0.05, 0.1, 0.2]);
    expect(levelsFor(0.5, 1e-5).length).toBeLessThanOrEqual(9);
    expect(levelsFor(0.5, 1e-5).at(-1)).toBe(0.2);
  });

  it('are none where nothing answers', () => {
    expect(levelsFor(0, 0.001)).toEqual([]);
    expect(levelsFor(Number.NaN, 0.001)).toEqual([]);
  });
});

/** e^(−r) about a point, in steps that a straight line through logarithms follows exactly along an axis. */
function cone(columns: number, rows: number, ratio: number): ResponseMap {
  const box = { left: -6, right: 6, bottom: -3, top: 3 };
  const response = new Float64Array(columns * rows);
  for (let row = 0; row < rows; row++)
    for (let column = 0; column < columns; column++) {
      const x = box.left + ((box.right - box.left) * column) / (columns - 1);
      const y = box.bottom + ((box.top - box.bottom) * row) / (rows - 1);
      response[row * columns + column] = Math.exp(-Math.hypot(x - 1, y));
    }
  return {
    vehicle: 'car',
    heading: 90,
    circuits: null,
    box,
    columns,
    rows,
    response,
    ratio: response.map((value) => value * ratio)
  };
}
const words = { level: (value: number) => `at ${value}`, threshold: 'trip' };

describe('the picture of a map', () => {
  it('has every outline where the response has that level', () => {
    const { contours, isPreliminary } = pictureOf(
      cone(121, 61, 0),
      [Math.exp(-2), Math.exp(-1)],
      words,
      false
    );
    expect(isPreliminary).toBe(false);
    expect(contours.map(({ label }) => label)).toEqual([`at ${Math.exp(-2)}`, `at ${Math.exp(-1)}`]);
    for (const [k, radius] of [
      [0, 2],
      [1, 1]
    ] as const)
      // prettier-ignore
      for (const [x, y] of contours[k]!.rings[0]!) expect(Math.hypot(x - 1, y)).toBeCloseTo(radius, 2);
  });

  it('has the threshold where the ratio is one, whatever the responses are', () => {
    const { contours } = pictureOf(cone(121, 61, Math.exp(1.5)), [], words, true);
    expect(contours).toMatchObject([{ isThreshold: true, label: 'trip' }]);
    for (const [x, y] of contours[0]!.rings[0]!) expect(Math.hypot(x - 1, y)).toBeCloseTo(1.5, 2);
  });

  it('keeps outlines within the area, and none that are not reached', () => {
    const { contours } = pictureOf(cone(41, 21, 0), [Math.exp(-4), 2], words, false);
    expect(contours).toHaveLength(1);
    for (const [x, y] of contours[0]!.rings.flat()) {
      expect(Math.abs(x)).toBeLessThanOrEqual(6);
      expect(Math.abs(y)).toBeLessThanOrEqual(3);
    }
  });

  it('leaves a hole where the response falls again', () => {
    const map = cone(121, 61, 0);
    // a dead middle: nothing within a metre of the summit
    const response = map.response.map((value) => (value > Math.exp(-1) ? 0 : value));
    const { contours } = pictureOf({ ...map, response }, [Math.exp(-2)], words, false);
    expect(contours[0]!.rings).toHaveLength(2);
  });
});

describe('the area of a map', () => {
  const car = vehicleOf('car', { vehicles: [] })!;
  const sight = { left: -500, right: 500, bottom: -500, top: 500 };

  it('reaches as far round the loops as the vehicle does, and two metres more', () => {
    const box = mapArea([[0, 0], [2, 4]], car, 90, sight)!; // prettier-ignore
    expect(box.right - 2).toBeCloseTo(car.bodyWidth / 2 + 2, 9);
    expect(box.top - 4).toBeCloseTo(car.bodyLength / 2 + 2, 9);
    const turned = mapArea([[0, 0], [2, 4]], car, 0, sight)!; // prettier-ignore
    expect(turned.right - 2).toBeCloseTo(car.bodyLength / 2 + 2, 9);
  });

  it('is what is in sight where loops lie far apart, in steps; nothing where none is in sight', () => {
    const far = [[0, 0], [0, 200]] as const; // prettier-ignore
    const look = (top: number) => mapArea(far, car, 90, { left: -9, right: 9, bottom: top - 20, top });
    expect(look(101)).toEqual(look(103));
    expect(look(101)!.top - look(101)!.bottom).toBeLessThan(40);
    expect(look(400)).toBeNull();
    expect(mapArea([], car, 90, sight)).toBeNull();
  });

  it('has a net of square meshes with no more nodes than asked for', () => {
    const { columns, rows } = net({ left: 0, right: 10, bottom: 0, top: 40 }, 100);
    expect(columns * rows).toBeLessThanOrEqual(10_000);
    expect(columns * rows).toBeGreaterThan(9_500);
    expect(rows / columns).toBeCloseTo(4, 1);
  });
});

const wish = (heading: number): AreaWish => ({
  vehicle: 'car',
  heading,
  circuits: null,
  box: { left: 0, right: 10, bottom: 0, top: 10 }
});
const settle = () => new Promise((resolve) => setTimeout(resolve));

/** Answers when it is told to. */
function held() {
  const asked: MapWish[] = [];
  let drops = 0;
  let end: (outcome: Awaited<ReturnType<RefiningMapAsk>>) => void = () => {};
  const map = new RefiningMap({
    ask: (each) => {
      asked.push(each);
      return new Promise((resolve) => {
        end = resolve;
      });
    },
    drop: () => {
      drops += 1;
      end({ kind: 'superseded' });
    }
  });
  const give = async (): Promise<void> => {
    const { columns, rows, ...rest } = asked.at(-1)!;
    const none = new Float64Array(columns * rows);
    end({ kind: 'answer', answer: { ...rest, columns, rows, response: none, ratio: none } });
    await settle();
  };
  const fail = async (reason: string): Promise<void> => {
    end({ kind: 'failed', reason });
    await settle();
  };
  return { asked, map, give, fail, drops: () => drops };
}
type RefiningMapAsk = ConstructorParameters<typeof RefiningMap>[0]['ask'];

describe('a map in two goes', () => {
  it('is shown coarse, then fine', async () => {
    const { asked, map, give } = held();
    map.want(wish(90));
    await give();
    expect(map.shown?.isFine).toBe(false);
    expect(map.isBusy).toBe(true);
    await give();
    expect(map.shown?.isFine).toBe(true);
    expect(map.isBusy).toBe(false);
    expect(asked.map(({ columns, rows }) => [columns, rows])).toEqual([[26, 26], [100, 100]]); // prettier-ignore
  });

  it('is asked coarse only while a hand moves, one at a time and the newest', async () => {
    const { asked, map, give } = held();
    map.want(wish(1));
    map.want(wish(2));
    map.want(wish(3));
    await give();
    expect(asked.map(({ heading, columns }) => [heading, columns])).toEqual([[1, 26], [3, 26]]); // prettier-ignore
    await give();
    expect(asked.at(-1)).toMatchObject({ heading: 3, columns: 100 });
  });

  it('gives a fine one up for the next edit', async () => {
    const { asked, map, give, drops } = held();
    map.want(wish(1));
    await give();
    map.want(wish(2));
    expect(drops()).toBe(1);
    await settle();
    expect(asked.at(-1)).toMatchObject({ heading: 2, columns: 26 });
    // what is there stays in sight meanwhile
    expect(map.shown?.map.heading).toBe(1);
  });

  it('lets go of everything when nobody looks, says what went wrong, and recovers', async () => {
    const { asked, map, give, fail } = held();
    map.want(wish(1));
    await fail('it broke');
    expect(map.reason).toBe('it broke');
    map.want(wish(2));
    await give();
    expect([map.reason, map.shown?.map.heading]).toEqual([null, 2]);
    map.stop();
    await settle();
    expect(map.shown).toBeNull();
    expect(asked).toHaveLength(3);
  });
});

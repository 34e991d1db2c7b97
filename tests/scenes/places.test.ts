import { describe, expect, it } from 'vitest';
import type { Cut, Place } from '#analysis/takeoff/results';
import type { Viewport } from '#editor/types';
import { orderScene, setOutScene } from '#scenes/cutting';
import type { Drawing, LineDrawing, TextDrawing } from '#scenes/drawing';
import { placesScene, reachOf } from '#scenes/places';
import { DARK, LIGHT } from '#scenes/theme';

/** 50 pixels a metre round the middle of 1000 by 800. */
const view: Viewport = { centre: [0, 0], scale: 50, width: 1000, height: 800 };

const along: Place = { kind: 'line', points: [[0, 0], [2, 0]] }; // prettier-ignore
const hole: Place = { kind: 'circle', centre: [1, 1], radius: 0.02 };
const box: Place = { kind: 'point', at: [-1, -1] };

const lines = (drawings: readonly Drawing[]) =>
  drawings.filter((each): each is LineDrawing => each.kind === 'line');
const circles = (drawings: readonly Drawing[]) => drawings.filter((each) => each.kind === 'circle');
const texts = (drawings: readonly Drawing[]) =>
  drawings.filter((each): each is TextDrawing => each.kind === 'text').map(({ text }) => text);

describe('places that are looked at', () => {
  it('draws nothing for none', () => {
    expect(placesScene([], view, LIGHT)).toEqual([]);
  });

  it('draws a line dashed over a pale ribbon, where it is', () => {
    for (const theme of [LIGHT, DARK]) {
      const [ribbon, dashed] = lines(placesScene([along], view, theme));
      for (const each of [ribbon!, dashed!])
        expect(each.points).toEqual([
          [500, 400],
          [600, 400]
        ]);
      expect(ribbon!.stroke!.dash).toBeUndefined();
      expect(dashed!.stroke!.dash!.length).toBeGreaterThan(0);
      expect(ribbon!.stroke!.width).toBeGreaterThan(dashed!.stroke!.width);
      expect([ribbon!.stroke!.colour, dashed!.stroke!.colour]).toEqual([theme.plate, theme.guide]);
    }
  });

  it('puts all ribbons under all lines', () => {
    const colours = lines(placesScene([along, { ...along, points: [[0, 0], [0, 2]] }], view, LIGHT)).map(({ stroke }) => stroke!.colour); // prettier-ignore
    expect(colours).toEqual([LIGHT.plate, LIGHT.plate, LIGHT.guide, LIGHT.guide]);
  });

  it('rings points and small holes so that they can be seen, and large circles where they are', () => {
    const drawn = circles(placesScene([hole, box, { ...hole, radius: 1 }], view, LIGHT)).slice(3);
    expect(drawn.map(({ at }) => at)).toEqual([[550, 350], [450, 450], [550, 350]]); // prettier-ignore
    const [small, point, large] = drawn.map((each) => (each.kind === 'circle' ? each.radius : 0));
    expect(small).toBeGreaterThanOrEqual(6);
    expect(point).toBe(small);
    expect(large).toBe(50);
  });

  it('leaves out what is far out of sight', () => {
    expect(placesScene([{ kind: 'point', at: [500, 500] }, { kind: 'line', points: [[90, 0], [99, 0]] }], view, LIGHT)).toEqual([]); // prettier-ignore
  });

  it('tells how far places reach', () => {
    expect(reachOf([along, { kind: 'circle', centre: [0, 0], radius: 3 }, box])).toEqual([
      [0, 0],
      [2, 0],
      [-3, -3],
      [3, 3],
      [-1, -1]
    ]);
  });
});

describe('the order of cuts', () => {
  const cut = (order: number, from: readonly [number, number], to: readonly [number, number]): Cut => ({
    id: `L1/cut/${order}`,
    order,
    loop: 'L1',
    sharedWith: [],
    kind: 'side',
    from,
    to,
    circle: null,
    length: 2,
    depth: 0.05,
    width: 0.008,
    overcut: { from: 0, to: 0 },
    setOut: null
  });
  const round: Cut = { ...cut(3, [1, 0], [1, 0]), kind: 'round', circle: { centre: [0, 0], radius: 1 } };
  const pictureOf = (
    cuts: readonly Cut[],
    looked: number | null,
    points: readonly (readonly [number, number])[] | null
  ) => ({
    plan: {
      baseline: points && { name: 'Kerb', points },
      cuts,
      holes: [],
      unplaced: [],
      totals: [],
      cautions: []
    },
    looked
  });
  const drawn = (
    cuts: readonly Cut[],
    looked: number | null = null,
    taken: Parameters<typeof orderScene>[3] = []
  ) =>
    // prettier-ignore
    orderScene(pictureOf(cuts, looked, null), view, LIGHT, taken);

  it('writes the number of each cut beside it, on the right of the way of the saw', () => {
    const scene = drawn([cut(1, [0, 0], [2, 0]), cut(2, [2, 0], [2, 2])]);
    expect(texts(scene)).toEqual(['1', '2']);
    const [one, two] = circles(scene).map(({ at }) => at);
    // east: the right is to the south, which is further down; north: the right is to the east
    expect(one![1]).toBeGreaterThan(400);
    expect(two![0]).toBeGreaterThan(600);
  });

  it('numbers a round cut above it', () => {
    const [disc] = circles(drawn([round]));
    expect(disc!.at[0]).toBe(500);
    expect(disc!.at[1]).toBeLessThan(350);
  });

  it('stands clear of what is written already, or waits for more room, unless somebody looks at it', () => {
    const one = [cut(1, [0, 0], [2, 0])];
    const [usual] = circles(drawn(one));
    const [x, y] = usual!.at;
    const around = (reach: number) => ({ left: x - reach, right: x + reach, bottom: y - reach, top: y + reach }); // prettier-ignore
    const [moved] = circles(drawn(one, null, [around(3)]));
    expect(moved!.at[1]).toBeLessThan(400);
    expect(drawn(one, null, [around(500)])).toEqual([]);
    expect(circles(drawn(one, 1, [around(500)]))[0]!.at).toEqual(usual!.at);
  });

  it('shows no two numbers over one another; the one that is looked at keeps its place', () => {
    const many = Array.from({ length: 12 }, (_, at) => cut(at + 1, [0, at / 50], [2, at / 50]));
    const discs = circles(drawn(many));
    expect(discs.length).toBeGreaterThan(1);
    expect(discs.length).toBeLessThan(12);
    for (const [at, one] of discs.entries())
      for (const other of discs.slice(at + 1))
        expect(Math.hypot(one.at[0] - other.at[0], one.at[1] - other.at[1])).toBeGreaterThanOrEqual(18);
    expect(texts(drawn(many))).not.toContain('12');
    expect(texts(drawn(many, 12))[0]).toBe('12');
  });

  it('has no number for a cut of a few pixels, unless somebody looks at it', () => {
    const short = [cut(1, [0, 0], [0.2, 0])];
    expect(texts(drawn(short))).toEqual([]);
    expect(texts(drawn(short, 1))).toEqual(['1']);
  });

  it('has an arrow on a cut that is long enough, the way the saw goes', () => {
    const scene = setOutScene(pictureOf([cut(1, [0, 0], [2, 0]), cut(2, [0, 1], [0.2, 1])], null, null), view, LIGHT); // prettier-ignore
    const [head, ...others] = lines(scene);
    expect(others).toEqual([]);
    const [tip, ...wings] = head!.points;
    for (const wing of wings) expect(wing[0]).toBeLessThan(tip![0]);
  });

  it('shows where the baseline begins and which way it goes', () => {
    const scene = setOutScene(pictureOf([], null, [[-2, 0], [2, 0]]), view, LIGHT); // prettier-ignore
    expect(texts(scene)).toEqual(['0']);
    expect(circles(scene)[0]!.at).toEqual([400, 400]);
    const head = lines(scene).find(({ closed }) => closed)!;
    expect(head.points[0]).toEqual([600, 400]);
  });
});

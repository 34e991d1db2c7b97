import { describe, expect, it } from 'vitest';
import { newLines, addUnderlay } from '#plan/edits/index';
import { readSite } from '#plan/read';
import type { Lines, Point, Site, Underlay } from '#plan/schema';
import { pixelOnPlan } from '#plan/underlays';
import { planToScreen } from '#editor/viewport';
import {
  partInSight,
  pathsIn,
  thinned,
  tileFor,
  wantsTiles,
  withOpacity,
  type LineTile
} from '#scenes/underlay-lines';
import { underlayLabelsScene, underlaysScene } from '#scenes/underlays';
import { editorOf, frameOf } from './frames';

const reading = readSite('{"format":"kerfline-site","version":1,"name":"Yard"}');
if (!reading.ok) throw new Error('the empty site');
const empty: Site = reading.site;

const lines: Lines = { width: 10, height: 4, paths: [[[0, 0], [10, 0]], [[0, 4], [5, 4], [5, 3]]] }; // prettier-ignore
const under = (of: Lines, more: Partial<Underlay> = {}): Site =>
  addUnderlay(empty, { ...newLines(empty, { name: 'a', lines: of, at: [0, 0], metresPerUnit: 1 }), ...more });
const frameFor = (site: Site, scale = 50) => frameOf(editorOf(site, scale));

describe('lines under the plan', () => {
  it('lie on the screen where they lie on the plan, turned ones too', () => {
    for (const rotation of [0, 30, -135]) {
      const site = under(lines, { rotation });
      const frame = frameFor(site);
      const drawn = underlaysScene(frame).map((each) => (each.kind === 'line' ? each.points : []));
      const wanted = lines.paths.map((path) =>
        path.map((point) => planToScreen(frame.state.viewport, pixelOnPlan(site.underlays[0]!, point)))
      );
      drawn.flat().forEach((point, index) => {
        const [x, y] = wanted.flat()[index]!;
        expect(Math.hypot(point[0] - x, point[1] - y)).toBeLessThan(1e-6);
      });
      expect(drawn).toHaveLength(2);
    }
  });

  it('have no frame, no label and no fault', () => {
    expect(underlayLabelsScene(frameFor(under(lines)))).toEqual([]);
  });

  it('out of sight, or hidden, are not drawn', () => {
    expect(underlaysScene(frameFor(under(lines, { at: [500, 0] })))).toEqual([]);
    expect(underlaysScene(frameFor(under(lines, { hidden: true })))).toEqual([]);
    // close up only the path that is there
    expect(underlaysScene(frameFor(under(lines, { at: [-4.9, 0] }), 4_000))).toEqual([]);
    expect(underlaysScene(frameFor(under(lines, { at: [-4.9, -2] }), 4_000))).toHaveLength(1);
  });

  it('let through as much as the opacity says', () => {
    const [first] = underlaysScene(frameFor(under(lines, { opacity: 0.5 })));
    expect(first).toMatchObject({ stroke: { colour: '#4b595580' } });
    expect(withOpacity('rgb(1, 2, 3)', 0.25)).toBe('rgba(1, 2, 3, 0.25)');
    expect(withOpacity('rgba(1, 2, 3, 0.1)', 0.25)).toBe('rgba(1, 2, 3, 0.1)');
  });

  it('keep the ends of what is thinned', () => {
    const dense: Point[] = Array.from({ length: 101 }, (_, index) => [index / 100, 0]);
    expect(thinned(dense, 0.5)).toEqual([[0, 0], [0.5, 0], [1, 0]]); // prettier-ignore
    expect(thinned([[0, 0], [0.1, 0]])).toEqual([[0, 0], [0.1, 0]]); // prettier-ignore
  });
});

describe('a drawing that is too much for a frame', () => {
  const wave = Array.from({ length: 200 }, (_, row): [number, number][] =>
    Array.from({ length: 100 }, (_, column): [number, number] => [column, row])
  );
  const heavy: Lines = { width: 99, height: 199, paths: wave };
  const image = { width: 1, height: 1 } as ImageBitmap;
  const whole = { left: 0, top: 0, width: 99, height: 199 };
  const coarse: LineTile = { image, part: whole, fineness: 2 };

  it('wants tiles as a whole, and none for the corner that is looked at', () => {
    const site = under(heavy);
    const view = editorOf(site, 4).state.viewport;
    expect(wantsTiles(site.underlays[0]!, view)).toBe(true);
    expect(wantsTiles(site.underlays[0]!, { ...view, scale: 400 })).toBe(false);
  });

  it('is shown by its coarse tile until there is one as fine as the screen', () => {
    const fine: LineTile = { image, part: { left: 0, top: 0, width: 40, height: 40 }, fineness: 8 };
    const sight = { left: 5, top: 5, width: 20, height: 20 };
    expect(tileFor([coarse, fine], sight, 8)).toBe(fine);
    expect(tileFor([coarse, fine], { ...sight, left: 30 }, 8)).toBe(coarse);
    expect(tileFor([coarse, fine], sight, 20)).toBe(coarse);
    expect(tileFor([], sight, 8)).toBeUndefined();
  });

  it('is one image on a screen and every line elsewhere', () => {
    const site = under(heavy, { rotation: 20 });
    const frame = frameFor(site, 4);
    const tiles = new Map([[heavy, [coarse]]]);
    const [only, ...more] = underlaysScene({ ...frame, lineTiles: tiles });
    expect(more).toEqual([]);
    expect(only).toMatchObject({ kind: 'image', rotation: 20, opacity: 0.8, width: 396, height: 796 });
    const [x, y] = planToScreen(frame.state.viewport, [0, 0]);
    expect((only as { readonly at: Point }).at[0]).toBeCloseTo(x, 6);
    expect((only as { readonly at: Point }).at[1]).toBeCloseTo(y, 6);
    expect(underlaysScene({ ...frame, lineTiles: new Map() })).toEqual([]);
    expect(underlaysScene(frame).length).toBe(pathsIn(heavy, partInSight(site.underlays[0]!, frame.state.viewport)!).length); // prettier-ignore
  });
});

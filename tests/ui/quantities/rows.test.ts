import { describe, expect, it } from 'vitest';
import type { Takeoff, TakeoffItem, TakeoffLine } from '#analysis/takeoff/results';
import { takeoffOf } from '#analysis/takeoff/takeoff';
import { setPrice, updateEstimate } from '#plan/edits/index';
import {
  costOf,
  filterThere,
  groupsOf,
  rowsOf,
  subjectsShown,
  sumOf,
  totalOf
} from '#ui/quantities/take-off/rows';
import { siteWith, square } from '../../editor/sites';

const site = siteWith({ shapes: [square(-2, 0), square(2, 0)] });
const takeoff = takeoffOf(site);
const loopRef = (id: string) => ({ kind: 'loop', id }) as const;

const line = (more: Partial<TakeoffLine>): TakeoffLine => ({
  id: 'a/b',
  subject: 'a',
  what: 'loop wire',
  group: 'wire',
  item: 'wire:awg14',
  amount: 10,
  unit: 'm',
  waste: 0.1,
  gross: 11,
  how: { key: 'extra', values: {} },
  places: [],
  ...more
});

const item = (more: Partial<TakeoffItem>): TakeoffItem => ({
  item: 'wire:awg14',
  group: 'wire',
  unit: 'm',
  amount: 30,
  gross: 33,
  pack: null,
  packs: null,
  bought: 33,
  price: 2,
  cost: 66,
  copper_kg: null,
  ...more
});

const of = (lines: readonly TakeoffLine[], items: readonly TakeoffItem[]): Takeoff => ({
  ...takeoff,
  lines,
  items
});

describe('which lines are shown', () => {
  it('shows all of a site, or what is about a loop', () => {
    expect(rowsOf(takeoff, subjectsShown(site, 'all', []))).toHaveLength(takeoff.lines.length);
    const own = rowsOf(takeoff, subjectsShown(site, 'loop L1', []));
    expect(own.length).toBeGreaterThan(3);
    expect(new Set(own.map((row) => row.line.subject))).toEqual(new Set(['L1']));
  });

  it('shows a circuit with its loops', () => {
    expect(subjectsShown(site, 'circuit C2', [])).toEqual(new Set(['C2', 'L2']));
  });

  it('follows the selection, with circuits that are selected whole', () => {
    expect(subjectsShown(site, 'selected', [])).toBeNull();
    expect(subjectsShown(site, 'selected', [loopRef('L1')])).toEqual(new Set(['L1', 'C1']));
    const [first, second] = site.circuits;
    const series = [{ loop: 'L1', reversed: false }, { loop: 'L2', reversed: false }]; // prettier-ignore
    const both = {
      ...site,
      circuits: [
        { ...first!, strings: [series] },
        { ...second!, strings: [] }
      ]
    };
    expect(subjectsShown(both, 'selected', [loopRef('L1')])).toEqual(new Set(['L1']));
  });

  it('shows everything again when its loop is gone', () => {
    expect(filterThere(site, 'loop L2')).toBe('loop L2');
    expect(filterThere(site, 'loop L9')).toBe('all');
    expect(filterThere(site, 'circuit C9')).toBe('all');
    expect(filterThere(site, 'selected')).toBe('selected');
  });
});

describe('rows', () => {
  it('have keys of their own where a loop and a circuit have one id', () => {
    const rows = rowsOf(of([line({}), line({}), line({ id: 'c' })], []), null);
    expect(new Set(rows.map(({ key }) => key)).size).toBe(3);
  });

  it('keep their key whatever is filtered', () => {
    const all = of([line({}), line({ subject: 'z' })], []);
    expect(rowsOf(all, new Set(['z'])).map(({ key }) => key)).toEqual([rowsOf(all, null)[1]!.key]);
  });

  it('cost their share of what is paid for the item, whole packs included', () => {
    // 33 m with waste, of which this line is 11 m; 100 m at 2 are bought
    const rows = rowsOf(of([line({})], [item({ packs: 1, pack: 100, bought: 100, cost: 200 })]), null);
    expect(rows[0]!.cost).toBeCloseTo(200 / 3, 9);
  });

  it('cost nothing that is known without a price', () => {
    const rows = rowsOf(of([line({})], [item({ price: null, cost: null })]), null);
    expect(rows[0]!.cost).toBeNull();
    expect(costOf(rows)).toBeNull();
  });

  it('add up to the cost of the site, whatever has a price', () => {
    const priced = updateEstimate(setPrice(setPrice(site, 'wire:awg14', 0.8), 'crew', 95), {
      wholePacks: true
    });
    const full = takeoffOf(priced);
    expect(full.cost).toBeGreaterThan(0);
    expect(costOf(rowsOf(full, null))).toBeCloseTo(full.cost, 9);
  });
});

describe('groups', () => {
  const rows = rowsOf(takeoff, null);

  it.each(['subject', 'kind', 'item'] as const)('gathers every line once by %s', (grouping) => {
    const groups = groupsOf(rows, grouping, takeoff.items);
    expect(groups.flatMap((group) => group.rows.map(({ key }) => key)).sort()).toEqual(
      rows.map(({ key }) => key).sort()
    );
    expect(new Set(groups.map(({ key }) => key)).size).toBe(groups.length);
  });

  it('has a sum where all is counted in one unit, and none else', () => {
    expect(sumOf(rowsOf(of([line({}), line({ amount: 5, gross: 6 })], []), null))).toEqual({
      unit: 'm',
      amount: 15,
      gross: 17
    });
    expect(sumOf(rowsOf(of([line({}), line({ unit: 'each' })], []), null))).toBeNull();
    expect(sumOf([])).toBeNull();
  });

  it('tells the packs of an item only where all its lines are there', () => {
    const whole = groupsOf(rows, 'item', takeoff.items).find(({ key }) => key === 'wire:awg14')!;
    expect(whole.item?.item).toBe('wire:awg14');
    const part = groupsOf(rowsOf(takeoff, new Set(['L1'])), 'item', takeoff.items);
    expect(part.find(({ key }) => key === 'wire:awg14')!.item).toBeNull();
  });

  it('counts saw cuts in metres beside holes in pieces', () => {
    const mixed = [line({ group: 'saw cut' }), line({ group: 'saw cut', unit: 'each', amount: 4, gross: 4 })];
    expect(totalOf(rowsOf(of(mixed, []), null), 'saw cut', 'm')).toMatchObject({ amount: 10, gross: 11 });
  });
});

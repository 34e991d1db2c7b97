import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Block, Column, Piece } from '#exchange/sheet/layout/block';
import { columnsOf, divide, tallest } from '#exchange/sheet/layout/columns';
import { flow } from '#exchange/sheet/layout/flow';
import { contentArea, type Area } from '#exchange/sheet/layout/frame';
import { paperSize, type Paper } from '#plan/catalogue/sheet';
import { ORIENTATIONS, PAPERS } from './papers';

interface Put {
  readonly label: string;
  readonly left: number;
  readonly top: number;
  readonly height: number;
}

/** A piece that notes where it was put. */
const noting = (label: string, height: number, put: Put[], staysWithNext = false): Piece => ({
  height,
  staysWithNext,
  draw: (left, top) => {
    put.push({ label, left, top, height });
    return [];
  }
});

const area: Area = { left: 10, top: 10, width: 190, height: 230 };
const column = (index: number): Column => ({ page: index, left: 0, top: 0, width: 100, height: 100 });

describe('blocks in columns', () => {
  it('follow each other, none on another, none beyond its column, none lost', () => {
    const heights = fc.array(fc.array(fc.double({ min: 0.5, max: 100, noNaN: true }), { maxLength: 12 }), {
      maxLength: 8
    });
    fc.assert(
      fc.property(heights, (blocks) => {
        const put: Put[] = [];
        const laid = blocks.map((pieces, b): Block => () => ({
          pieces: pieces.map((height, p) => noting(`${b}.${p}`, height, put)),
          again: []
        }));
        const placed = flow(laid, column, 100);
        expect(put.map(({ label }) => label)).toEqual(
          blocks.flatMap((pieces, b) => pieces.map((_, p) => `${b}.${p}`))
        );
        put.forEach(({ top, height }, k) => {
          expect(top + height).toBeLessThanOrEqual(100 + 1e-6);
          const before = put[k - 1];
          if (before && placed[k - 1]!.page === placed[k]!.page)
            expect(top).toBeGreaterThanOrEqual(before.top + before.height - 1e-9);
          else if (before) expect(placed[k]!.page).toBeGreaterThan(placed[k - 1]!.page);
        });
      })
    );
  });

  it('repeat their head in every further column', () => {
    const put: Put[] = [];
    const block: Block = () => ({
      pieces: [
        noting('head', 10, put, true),
        ...Array.from({ length: 9 }, (_, k) => noting(`row ${k}`, 20, put))
      ],
      again: [noting('head again', 10, put, true)]
    });
    flow([block], column, 100);
    expect(put.map(({ label }) => label)).toEqual(
      ['head', 'row 0', 'row 1', 'row 2', 'row 3', 'head again', 'row 4', 'row 5', 'row 6', 'row 7', 'head again', 'row 8'] // prettier-ignore
    );
  });

  it('never leave a head alone at the foot of a column', () => {
    const put: Put[] = [];
    const before: Block = () => ({ pieces: [noting('before', 80, put)], again: [] });
    const block: Block = () => ({
      pieces: [noting('head', 10, put, true), noting('row', 20, put)],
      again: []
    });
    const placed = flow([before, block], column, 100);
    expect(placed.map(({ page }) => page)).toEqual([0, 1, 1]);
  });

  it('are parted where no column could hold what belongs together', () => {
    const put: Put[] = [];
    const block: Block = () => ({
      pieces: Array.from({ length: 6 }, (_, k) => noting(`row ${k}`, 30, put, true)),
      again: []
    });
    flow([block], column, 100);
    expect(put.map(({ top }) => top)).toEqual([0, 30, 60, 0, 30, 60]);
  });

  it('pass over a column that is too short for them', () => {
    const short = (index: number): Column => ({ ...column(index), height: index === 0 ? 15 : 100 });
    const block: Block = () => ({ pieces: [noting('tall', 60, [])], again: [] });
    expect(flow([block], short, 100).map(({ page }) => page)).toEqual([1]);
  });
});

describe('the columns of a sheet', () => {
  const papers = fc.record({
    paper: fc.constantFrom<Paper>(...PAPERS),
    orientation: fc.constantFrom(...ORIENTATIONS)
  });
  const share = fc.double({ min: 0, max: 1, noNaN: true });

  it('lie in the page, beside each other, and never on the plan', () => {
    fc.assert(
      fc.property(papers, share, share, (paper, across, down) => {
        const whole = contentArea(paperSize(paper));
        const needed = { width: across * whole.width, height: down * whole.height };
        const division = divide(whole, needed);
        const { plan, rest } = division;
        expect(plan.width).toBeGreaterThanOrEqual(needed.width - 1e-9);
        expect(plan.height).toBeGreaterThanOrEqual(needed.height - 1e-9);
        const at = columnsOf(whole, division);
        const columns = Array.from({ length: rest.length + 4 }, (_, k) => at(k));
        for (const each of columns) {
          expect(each.width).toBeCloseTo(columns[0]!.width, 9);
          expect(each.left).toBeGreaterThanOrEqual(whole.left);
          expect(each.left + each.width).toBeLessThanOrEqual(whole.left + whole.width + 1e-9);
          expect(each.top + each.height).toBeLessThanOrEqual(whole.top + whole.height + 1e-9);
          const isBeside = each.left >= plan.left + plan.width - 1e-9;
          const isBelow = each.top >= plan.top + plan.height - 1e-9;
          expect(each.page > 0 || isBeside || isBelow).toBe(true);
        }
        for (const [k, each] of columns.entries())
          for (const other of columns.slice(k + 1))
            if (other.page === each.page)
              expect(other.left).toBeGreaterThanOrEqual(each.left + each.width - 1e-9);
      })
    );
  });

  it('begin on the first page where there is no plan', () => {
    expect(columnsOf(area, null)(0).page).toBe(0);
    expect(columnsOf(area, divide(area, area))(0).page).toBe(1);
    expect(tallest(area)).toBeLessThan(area.height);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { composeSheet } from '#exchange/sheet/compose';
import { divide } from '#exchange/sheet/layout/columns';
import { contentArea } from '#exchange/sheet/layout/frame';
import { needed } from '#exchange/sheet/parts/plan-fit';
import { boxOfPlan } from '#scenes/paper';
import type { Point } from '#plan/schema';
import type { Page, Sheet } from '#exchange/sheet/page';
import { widthOf } from '#scenes/paper-type';
import { paperSize, sheetOf, type SheetScale } from '#plan/catalogue/sheet';
import { emptySite } from '#plan/read';
import type { Site } from '#plan/schema';
import type { Drawing, TextDrawing } from '#scenes/drawing';
import { extentOf, overlap, textExtent } from './extent';
import { ORIENTATIONS, PAPERS, SCALES } from './papers';
import {
  ALL_BUT_PLAN,
  anyLayout,
  anyScale,
  anySite,
  bigSite,
  sample,
  SAMPLES,
  sourceOf,
  withSheet
} from './sites';

const compose = (site: Site): Sheet => composeSheet(sourceOf(site));

function pagesOf(site: Site): readonly Page[] {
  const sheet = compose(site);
  if (sheet.kind !== 'pages') throw new Error(sheet.message);
  return sheet.pages;
}

const textsOf = (page: Page): TextDrawing[] =>
  page.drawings.filter((drawing): drawing is TextDrawing => drawing.kind === 'text');

const MARGIN = 9.7;

function expectInside({ width, height, drawings }: Page): void {
  const beyond = drawings.filter((drawing) => {
    const { left, top, right, bottom } = extentOf(drawing);
    return left < MARGIN || top < MARGIN || right > width - MARGIN || bottom > height - MARGIN;
  });
  expect(beyond).toEqual([]);
}

/** No text on another one. */
function expectDisjoint(page: Page): void {
  const texts = textsOf(page).map((drawing) => ({ drawing, extent: textExtent(drawing) }));
  for (const [k, one] of texts.entries())
    for (const other of texts.slice(k + 1))
      if (overlap(one.extent, other.extent))
        expect.unreachable(`“${one.drawing.text}” lies on “${other.drawing.text}”`);
}

/** Without the texts on the plan, which may lie where they find room. */
function besidePlan(page: Page, site: Site, scale: number): Page {
  const box = boxOfPlan(site)!;
  const size = { width: box.right - box.left, height: box.top - box.bottom };
  const { plan } = divide(contentArea(page), needed(size, scale));
  const isOnPlan = ([x, y]: Point): boolean =>
    x > plan.left && x < plan.left + plan.width && y > plan.top && y < plan.top + plan.height;
  const drawings = page.drawings.filter((drawing) => drawing.kind !== 'text' || !isOnPlan(drawing.at));
  return page.title.startsWith('Plan') ? { ...page, drawings } : page;
}

describe('a sheet', () => {
  it('has everything inside its margins, and no text on another', () => {
    fc.assert(
      fc.property(anySite, anyLayout, (site, layout) => {
        for (const page of pagesOf(withSheet(site, { ...layout, parts: ALL_BUT_PLAN }))) {
          expectInside(page);
          expectDisjoint(page);
        }
      }),
      { numRuns: 30 }
    );
  });

  it('names every loop and every circuit', () => {
    fc.assert(
      fc.property(anySite, anyLayout, (site, layout) => {
        const texts = pagesOf(withSheet(site, { ...layout, parts: ALL_BUT_PLAN })).flatMap(textsOf);
        for (const { name } of [...site.loops, ...site.circuits])
          expect(
            texts.some(({ text }) => text.includes(name)),
            name
          ).toBe(true);
      }),
      { numRuns: 15 }
    );
  });

  it('counts its pages, and says on each which it is', () => {
    for (const count of [1, 8, 24]) {
      const pages = pagesOf(withSheet(bigSite(count), { paper: 'A4', parts: ALL_BUT_PLAN }));
      pages.forEach((page, k) => {
        expect(textsOf(page).filter(({ text }) => text === `${k + 1} of ${pages.length}`)).toHaveLength(1);
      });
    }
    expect(pagesOf(withSheet(bigSite(24), { paper: 'A4', parts: ALL_BUT_PLAN })).length).toBeGreaterThan(2);
  });

  it('writes nothing smaller than 2.2 mm', () => {
    for (const page of pagesOf(withSheet(bigSite(8), { parts: ALL_BUT_PLAN })))
      for (const { size, text } of textsOf(page)) expect(size, text).toBeGreaterThanOrEqual(2.2);
  });

  it('is as large as its paper, whatever is on it', () => {
    for (const paper of PAPERS) {
      const site = withSheet(bigSite(4), { paper, orientation: 'portrait' });
      for (const { width, height } of pagesOf(site))
        expect({ width, height }).toEqual(paperSize(sheetOf(site)));
    }
  });

  it.each(SAMPLES)('%s: the baseline has its name, clear of all else that is written', (name) => {
    const site = withSheet(sample(name), { parts: ['plan', 'cutting'] });
    // a plan and its cuts need no figures
    const sheet = composeSheet({ site, assessment: undefined as never, file: name });
    if (sheet.kind !== 'pages') throw new Error(sheet.message);
    const texts = textsOf(sheet.pages[0]!);
    const [own] = texts.filter(({ text }) => text.startsWith('Baseline: '));
    expect(own).toBeDefined();
    for (const other of texts)
      if (other !== own && overlap(textExtent(own!), textExtent(other)))
        expect.unreachable(`“${own!.text}” lies on “${other.text}”`);
  });

  it('says what its title block is asked to say', () => {
    const stated = {
      number: 'K-17',
      revision: 'C',
      date: '3 May',
      drawnBy: 'A. Drawer',
      checkedBy: 'B. Checker',
      client: 'Harbour office'
    };
    const site = withSheet(
      { ...sample('driveway-gate.kerfline.json'), name: 'Quay Road' },
      { ...stated, paper: 'A3', scale: 200 }
    );
    const [page] = pagesOf(site);
    const texts = textsOf(page!).map(({ text }) => text);
    for (const value of [...Object.values(stated), 'Quay Road', '1:200 on A3'])
      expect(texts).toContain(value);
  });

  it('shows the parts that are wanted, and no others', () => {
    const titles = { wiring: 'Wiring', section: 'Slot in section', cautions: 'Cautions' };
    for (const part of Object.keys(titles) as (keyof typeof titles)[]) {
      const pages = pagesOf(withSheet(bigSite(2), { parts: [part] }));
      const texts = pages.flatMap(textsOf).map(({ text }) => text);
      for (const [other, title] of Object.entries(titles))
        expect(texts.includes(title), `${other} where ${part} is wanted`).toBe(other === part);
    }
  });

  it('is a page even of a site on which nothing is drawn', () => {
    const pages = pagesOf(emptySite());
    expect(textsOf(pages[0]!).map(({ text }) => text)).toContain('Nothing is drawn yet.');
    expect(pagesOf(withSheet(emptySite(), { parts: [] }))).toHaveLength(1);
  });

  it.each(SAMPLES)('of %s is whole on every paper, or says what it needs', (name) => {
    for (const paper of PAPERS)
      for (const orientation of ORIENTATIONS) {
        const site = withSheet(sample(name), { paper, orientation });
        const sheet = compose(site);
        if (sheet.kind === 'pages')
          for (const page of sheet.pages) {
            expectInside(page);
            expectDisjoint(besidePlan(page, site, sheet.scale));
          }
        else expect(sheet.paper ?? sheet.together).not.toBeNull();
      }
  });

  it('has no prices and no hours on it', () => {
    const prices = [{ item: 'wire:awg14', price: 7.77 }];
    const site = { ...bigSite(2), estimate: { currency: 'EUR', prices, contingency: 0.1 } };
    const texts = pagesOf(withSheet(site, { parts: ['quantities'] })).flatMap(textsOf);
    expect(texts.some(({ text }) => text.includes('Quantities'))).toBe(true);
    for (const { text } of texts) expect(text).not.toMatch(/EUR|7\.77/);
  });

  it('tells the crew of home runs that are not drawn', () => {
    const site = withSheet(sample('driveway-gate.kerfline.json'), { parts: ['cutting'], paper: 'A3' });
    const text = pagesOf(site).flatMap(textsOf).map(({ text: each }) => each).join(' '); // prettier-ignore
    expect(text).toContain('Home run of Free exit: 8.00 m, 50 mm deep. Only its length is stated');
  });

  it('is the same for the same site', () => {
    const site = bigSite(6);
    expect(JSON.stringify(compose(site))).toBe(JSON.stringify(compose(site)));
  });
});

describe('the check bar', () => {
  it('has exactly 100 mm between its end strokes, on every page', () => {
    for (const page of pagesOf(withSheet(bigSite(8), { paper: 'A4' }))) {
      const upright = page.drawings.flatMap((drawing: Drawing) => {
        const [from, to] = drawing.kind === 'line' ? drawing.points : [];
        const isStroke = from && to && from[0] === to[0] && Math.abs(from[1] - to[1] + 3.6) < 1e-9;
        return isStroke ? [from[0]] : [];
      });
      expect(upright).toHaveLength(2);
      expect(upright[1]! - upright[0]!).toBeCloseTo(100, 9);
    }
  });
});

describe('names on a sheet', () => {
  const hostile = [
    '\u202Edetrever\u202C',
    '<script>alert(1)</script>',
    '=HYPERLINK("http://x")',
    'a\u0000b\tc\nd',
    'W'.repeat(10_000),
    'word '.repeat(2_000),
    '🚧'.repeat(300),
    '\uD83D'
  ];

  it.each(hostile)('do no harm: %#', (name) => {
    const site = bigSite(6);
    const named = withSheet(
      {
        ...site,
        name,
        loops: site.loops.map((loop) => ({ ...loop, name })),
        circuits: site.circuits.map((circuit) => ({ ...circuit, name })),
        units: site.units.map((unit) => ({ ...unit, name }))
      },
      { paper: 'A4', parts: ALL_BUT_PLAN, client: name, remarks: name, drawnBy: name, revision: name }
    );
    for (const page of pagesOf(named)) {
      expectInside(page);
      expectDisjoint(page);
      for (const { text } of textsOf(page)) expect(text).not.toMatch(/[\p{Cc}\p{Cf}\p{Cs}]/u);
    }
  });
});

describe('the scale of a sheet', () => {
  it('is true on the plan: millimetres times the scale are metres on the road', () => {
    for (const paper of PAPERS) {
      const site = withSheet(sample('driveway-gate.kerfline.json'), { paper, parts: ['plan'] });
      const sheet = compose(site);
      if (sheet.kind !== 'pages') throw new Error(sheet.message);
      const { shape } = site.loops[0]!;
      if (shape.kind !== 'rectangle') throw new Error('not the sample that was meant');
      const sides = sheet.pages[0]!.drawings.flatMap((drawing) => {
        const isSlot =
          drawing.kind === 'line' && drawing.closed && !drawing.fill && drawing.points.length === 8;
        return isSlot ? [extentOf(drawing)] : [];
      });
      expect(sides).toHaveLength(site.loops.length);
      expect(((sides[0]!.right - sides[0]!.left) * sheet.scale) / 1000).toBeCloseTo(shape.width, 9);
      expect(((sides[0]!.bottom - sides[0]!.top) * sheet.scale) / 1000).toBeCloseTo(shape.length, 9);
    }
  });

  const larger = (scale: SheetScale) => SCALES[SCALES.indexOf(scale) - 1];

  it('is the largest that fits where none is stated', () => {
    fc.assert(
      fc.property(anySite, anyLayout, (site, layout) => {
        const sheet = compose(withSheet(site, { ...layout, parts: ['plan'] }));
        if (sheet.kind !== 'pages') return;
        const next = larger(sheet.scale);
        if (next === undefined) return;
        expect(compose(withSheet(site, { ...layout, parts: ['plan'], scale: next })).kind).toBe('unfit');
      }),
      { numRuns: 30 }
    );
  });

  it('is kept or refused, and what the refusal names fits', () => {
    fc.assert(
      fc.property(anySite, anyLayout, anyScale, (site, layout, scale) => {
        const wanted = { ...layout, parts: ['plan' as const], scale };
        const sheet = compose(withSheet(site, wanted));
        if (sheet.kind === 'pages') {
          expect(sheet.scale).toBe(scale);
          return;
        }
        expect(sheet.message).toContain(`1:${scale}`);
        if (sheet.paper) {
          expect(sheet.message).toContain(sheet.paper.paper);
          expect(compose(withSheet(site, { ...wanted, ...sheet.paper })).kind).toBe('pages');
        }
        if (sheet.together)
          expect(compose(withSheet(site, { ...wanted, ...sheet.together })).kind).toBe('pages');
        if (sheet.scale !== null) {
          expect(sheet.message).toContain(`1:${sheet.scale}`);
          expect(compose(withSheet(site, { ...wanted, scale: sheet.scale })).kind).toBe('pages');
          expect(compose(withSheet(site, { ...wanted, scale: larger(sheet.scale)! })).kind).toBe('unfit');
        }
      }),
      { numRuns: 40 }
    );
  });

  it('is refused in a sentence that names a paper and a scale', () => {
    const square = {
      kind: 'rectangle',
      centre: [0, 0],
      width: 10,
      length: 10,
      rotation: 0,
      cornerCut: 0
    } as const;
    const site = {
      ...bigSite(1),
      lanes: [],
      circuits: [],
      loops: [{ ...bigSite(1).loops[0]!, tail: { length: 0 }, shape: square }]
    };
    const sheet = compose(withSheet(site, { paper: 'A4', orientation: 'portrait', scale: 50 }));
    expect(sheet).toMatchObject({
      kind: 'unfit',
      paper: { paper: 'A3', orientation: 'portrait' },
      scale: 75
    });
    expect(sheet.kind === 'unfit' && sheet.message).toBe(
      'At 1:50 the plan does not fit on A4: it needs A3, or 1:75 on this paper.'
    );
  });

  it('names another paper with a smaller scale where neither alone helps', () => {
    const sheet = compose(
      withSheet(sample('advance-loops.kerfline.json'), { paper: 'A4', orientation: 'landscape', scale: 50 })
    );
    expect(sheet).toMatchObject({ kind: 'unfit', paper: null, scale: null });
    expect(sheet.kind === 'unfit' && sheet.message).toContain('it fits on A3 portrait at 1:500');
  });

  it('says so where a plan fits nowhere', () => {
    const [loop] = bigSite(1).loops;
    const far = { kind: 'circle', centre: [900, 0], diameter: 2 } as const;
    const site = { ...bigSite(1), circuits: [], loops: [loop!, { ...loop!, id: 'L2', shape: far }] };
    expect(compose(withSheet(site, { paper: 'A3' }))).toMatchObject({
      kind: 'unfit',
      paper: null,
      scale: null
    });
    expect(pagesOf(withSheet(site, { paper: 'A3', parts: ALL_BUT_PLAN })).length).toBeGreaterThan(0);
  });
});

describe('text widths', () => {
  it('keep what is written within the columns of the title block', () => {
    const area = contentArea(paperSize({ paper: 'A4', orientation: 'portrait' }));
    const [page] = pagesOf(
      withSheet(bigSite(1), { paper: 'A4', orientation: 'portrait', client: 'W'.repeat(300) })
    );
    const client = textsOf(page!).find(({ text }) => text.startsWith('WW'))!;
    expect(widthOf(client.text, client)).toBeLessThan(area.width / 3);
  });
});

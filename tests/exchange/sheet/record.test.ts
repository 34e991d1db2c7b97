/** The commissioning record and the empty form as pages. */
import { describe, expect, it } from 'vitest';
import { recordRowsOf } from '#analysis/fault-finding/record';
import { composeForm, composeRecord } from '#exchange/sheet/record/compose';
import type { Page, Sheet } from '#exchange/sheet/page';
import { speakWhole } from '#i18n/whole';
import { paperSize } from '#plan/catalogue/sheet';
import { demoSite } from '#plan/demo';
import { emptySite } from '#plan/read';
import type { Site } from '#plan/schema';
import type { TextDrawing } from '#scenes/drawing';
import { checkedAsIf, checkedSite } from '../../support/field-check';
import { HOSTILE, siteNamed } from '../../support/hostile-names';
import { extentOf, overlap, textExtent } from './extent';
import { ORIENTATIONS, PAPERS } from './papers';
import { bigSite, sourceOf } from './sites';

const KINDS = [
  ['record', composeRecord],
  ['form', composeForm]
] as const;
type Compose = typeof composeRecord;

const on = (site: Site, patch: object): Site => ({
  ...site,
  fieldCheck: { ...site.fieldCheck, record: { ...site.fieldCheck?.record, ...patch } }
});

function pagesOf(compose: Compose, site: Site): readonly Page[] {
  const sheet: Sheet = compose(sourceOf(site), checkedAsIf(site));
  if (sheet.kind !== 'pages') throw new Error(sheet.message);
  return sheet.pages;
}

const textsOf = (page: Page): TextDrawing[] =>
  page.drawings.filter((drawing): drawing is TextDrawing => drawing.kind === 'text');
const wordsOf = (pages: readonly Page[]): string =>
  pages.flatMap((page) => textsOf(page).map(({ text }) => text)).join('\n');

const MARGIN = 9.7;

function expectTidy(page: Page): void {
  const beyond = page.drawings.filter((drawing) => {
    const { left, top, right, bottom } = extentOf(drawing);
    return left < MARGIN || top < MARGIN || right > page.width - MARGIN || bottom > page.height - MARGIN;
  });
  expect(beyond).toEqual([]);
  const texts = textsOf(page).map((drawing) => ({ drawing, extent: textExtent(drawing) }));
  for (const [k, one] of texts.entries())
    for (const other of texts.slice(k + 1))
      if (overlap(one.extent, other.extent))
        expect.unreachable(`“${one.drawing.text}” lies on “${other.drawing.text}”`);
}

/** Boxes to write a figure into: far larger than those to tick. */
const boxesOf = (pages: readonly Page[]) =>
  pages.flatMap(({ drawings, height }) =>
    drawings.filter((drawing) => {
      if (drawing.kind !== 'line' || !drawing.closed) return false;
      const { left, top, right, bottom } = extentOf(drawing);
      return bottom - top > 7 && bottom - top < height / 2 && right - left > 30;
    })
  );

describe.each(KINDS)('the %s', (kind, compose) => {
  describe.each(PAPERS)('on %s', (paper) => {
    it.each(ORIENTATIONS)('%s, stands inside the frame, no text on another', (orientation) => {
      const site = on(checkedSite(), { paper, orientation });
      const pages = pagesOf(compose, site);
      const size = paperSize({ paper, orientation });
      for (const page of pages) {
        expect(page).toMatchObject(size);
        expectTidy(page);
      }
      const words = wordsOf(pages);
      for (const { name } of site.circuits) expect(words).toContain(name);
    });
  });

  it('names the limits of work on the road on every page', () => {
    for (const page of pagesOf(compose, checkedSite()))
      expect(wordsOf([page])).toContain('sole safety device');
  });

  it('goes on over many pages, each with its number', () => {
    const site = bigSite();
    const pages = pagesOf(compose, site);
    expect(pages.length).toBeGreaterThan(5);
    for (const [at, page] of pages.entries())
      expect(wordsOf([page])).toContain(`${at + 1} of ${pages.length}`);
    pages.slice(0, 4).forEach(expectTidy);
    const headings = new Set(pages.flatMap(({ title }) => title.split(', ')));
    expect(headings.size).toBeGreaterThan(1);
  }, 60_000);

  it.each(HOSTILE)(
    'keeps the name %j a text inside its place',
    (name) => {
      const site = checkedSite(siteNamed(name));
      const named = on(site, {
        testedBy: name.slice(0, 200),
        remarks: name.slice(0, 4000),
        date: name.slice(0, 40)
      });
      for (const page of pagesOf(compose, named)) {
        expectTidy(page);
        expect(wordsOf([page])).not.toMatch(
          /[\p{Cc}\p{Cf}]/u.test(name) ? /[\p{Cf}\u202A-\u202E]/u : /\u202E/u
        );
      }
    },
    60_000
  );

  it.each(PAPERS)('stands inside the frame in German too, on %s', (paper) => {
    speakWhole('de');
    try {
      const pages = pagesOf(compose, on(checkedSite(), { paper }));
      pages.forEach(expectTidy);
      expect(wordsOf(pages)).toContain(kind === 'record' ? 'Abnahmeprotokoll' : 'Zu messen');
      expect(wordsOf(pages)).toContain('min. 50 MΩ');
    } finally {
      speakWhole('en');
    }
  });

  it('says so on a site without circuits', () => {
    const pages = pagesOf(compose, { ...emptySite(), name: 'Quay Road' });
    expect(pages).toHaveLength(1);
    expect(wordsOf(pages)).toContain('No loop is wired to a circuit yet.');
  });

  it('keeps right-to-left names, without the marks that would turn what stands beside them', () => {
    const base = demoSite();
    const name = 'שער צפוני';
    const site = checkedSite({ ...base, circuits: base.circuits.map((each) => ({ ...each, name })) });
    const words = wordsOf(pagesOf(compose, site));
    expect(words).toContain(name);
    expect(words).not.toMatch(/[\u2066-\u2069]/);
  });
});

describe('the record', () => {
  const site = checkedSite();
  const words = wordsOf(pagesOf(composeRecord, site));

  it('holds names, date, instruments, limits with their sources, remarks and lines to sign on', () => {
    for (const text of ['Gravel & Sons', 'R. Marten', 'P. Osei', '2031-05-04', 'Keys with the porter.'])
      expect(words).toContain(text);
    expect(words).toContain('Instruments: Bridge 12, Insulation tester 3');
    expect(words).toContain('WAC 296-46B-300');
    expect(words.match(/^Signature$/gm)).toHaveLength(3);
  });

  it('holds what was measured on the day, not what was read a year later', () => {
    expect(words).toContain('0.930 Ω');
    expect(words).not.toContain('2.60 Ω');
    expect(words).toContain('over range');
    expect(words).toContain('not measured');
    expect(words).toContain('2031-05-04, RM');
  });

  it('crosses the box of the verdict and of no other', () => {
    const strokes = pagesOf(composeRecord, site).flatMap(({ drawings }) =>
      drawings.filter((drawing) => {
        if (drawing.kind !== 'line' || drawing.points.length !== 2) return false;
        const [[x, y], [u, v]] = drawing.points as [[number, number], [number, number]];
        return x !== u && y !== v;
      })
    );
    expect(strokes).toHaveLength(2);
    expect(words).toContain('Remarks: Seal the pull box lid.');
  });
});

describe('the empty form', () => {
  const site = checkedSite();
  const rows = checkedAsIf(site).flatMap((each) => recordRowsOf(site, { ...each, measured: [] }));

  it('has a box for every figure that is to be read, and none of what was read', () => {
    const pages = pagesOf(composeForm, site);
    expect(boxesOf(pages)).toHaveLength(rows.length);
    const words = wordsOf(pages);
    expect(words).not.toContain('0.930 Ω');
    expect(words).not.toContain('R. Marten');
    expect(words).toMatch(/^0\.90\d–0\.99\d Ω; at most 5 Ω$/m);
    expect(words).toContain('at least 50 MΩ');
    for (const label of ['Weather', 'Initials', 'Temperature of the pavement', 'frozen'])
      expect(words).toContain(label);
  });

  it('begins every circuit on a page of its own where that is asked for', () => {
    const begun = (pages: readonly Page[]) =>
      pages.map(
        (page) =>
          site.circuits.filter(({ name }) => textsOf(page).some(({ text, bold }) => bold && text === name))
            .length
      );
    const each = begun(pagesOf(composeForm, on(site, { onePageEach: true, paper: 'A3' })));
    expect(each).toEqual(site.circuits.map(() => 1));
    const together = begun(pagesOf(composeForm, on(site, { paper: 'A3' })));
    expect(Math.max(...together)).toBeGreaterThan(1);
  });
});

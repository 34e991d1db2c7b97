import { describe, expect, test } from 'vitest';
import { typeface } from '#cli/typeface';
import { Unfit } from '#exchange/files/exported';
import { sheetPdf } from '#exchange/files/sheet-pdf';
import { unwatched } from '#exchange/job';
import { composeSheet } from '#exchange/sheet/compose';
import { paperSize, sheetOf } from '#plan/catalogue/sheet';
import { speakWhole } from '#i18n/whole';
import { demoSite } from '#plan/demo';
import type { Site } from '#plan/schema';
import type { Drawing } from '#scenes/drawing';
import { HOSTILE, siteNamed } from '../../support/hostile-names';
import { readPdf, type ReadPage, type ReadWay } from '../../support/pdf';
import { ORIENTATIONS, PAPERS } from '../sheet/papers';
import { sample, SAMPLES, sourceOf, withSheet } from '../sheet/sites';

const POINTS = 72 / 25.4;

test('a file is named in the language that is spoken', async () => {
  speakWhole('de');
  const { name } = await made(demoSite());
  speakWhole('en');
  expect(name).toMatch(/-blatt\.pdf$/);
});

const made = (site: Site) => sheetPdf(sourceOf(site), { typeface }, unwatched());

async function read(site: Site) {
  const { content } = await made(site);
  if (typeof content === 'string') throw new Error('a PDF is no text');
  return readPdf(content);
}

const textsIn = (drawings: readonly Drawing[]): string[] =>
  drawings.flatMap((drawing) => (drawing.kind === 'text' ? [drawing.text] : []));

const isUpright = ({ points: [a, b], isStroked }: ReadWay): boolean =>
  isStroked && a !== undefined && b !== undefined && Math.abs(a[0] - b[0]) < 1e-3;
const height = ({ points: [a, b] }: ReadWay): number => Math.abs(a![1] - b![1]);

/** Of the check bar, found as eleven upright strokes of which the first and the last are the longest: its ends. */
function checkBar({ ways }: ReadPage): readonly [number, number] {
  for (let at = 0; at + 11 <= ways.length; at++) {
    const strokes = ways.slice(at, at + 11);
    if (!strokes.every((way) => way.points.length === 2 && isUpright(way))) continue;
    const [first, last] = [strokes[0]!, strokes[10]!];
    if (!strokes.slice(1, 10).every((way) => height(way) < height(first) - 0.1)) continue;
    return [first.points[0]![0], last.points[0]![0]];
  }
  throw new Error('there is no check bar');
}

describe.each(PAPERS)('on %s', (paper) => {
  test.each(ORIENTATIONS)('%s, each page has the paper’s size and a bar of 100 mm', async (orientation) => {
    const site = withSheet(demoSite(), { paper, orientation });
    const { pages } = await read(site);
    const size = paperSize(sheetOf(site));
    expect(pages.length).toBeGreaterThan(0);
    for (const page of pages) {
      expect(Math.abs(page.box[2] - size.width * POINTS)).toBeLessThan(0.01);
      expect(Math.abs(page.box[3] - size.height * POINTS)).toBeLessThan(0.01);
      const [from, to] = checkBar(page);
      expect(Math.abs(to - from - 100)).toBeLessThan(0.1);
    }
  });
});

test.each(SAMPLES)('every text of the sheet of %s is read back, page by page', async (name) => {
  const site = withSheet(sample(name), { paper: 'A3', orientation: 'portrait' });
  const sheet = composeSheet(sourceOf(site));
  if (sheet.kind !== 'pages') throw new Error(sheet.message);
  const { pages, title } = await read(site);
  expect(title).toBe(site.name);
  expect(pages).toHaveLength(sheet.pages.length);
  sheet.pages.forEach((page, index) => {
    // blanks apart, which a reader may put where letters stand apart
    const plain = (texts: readonly string[]) => texts.map((text) => text.replace(/\s/g, '')).filter(Boolean);
    const found = plain(pages[index]!.texts.map(({ text }) => text)).join('');
    for (const text of plain(textsIn(page.drawings))) expect(found).toContain(text);
  });
});

test.each([75, 100, 250] as const)(
  'at 1:%i loops have their size and their distance on paper',
  async (scale) => {
    const site = withSheet(demoSite(), { paper: 'tabloid', orientation: 'portrait', scale });
    const { pages } = await read(site);
    const [page] = pages;
    expect(page!.texts.map(({ text }) => text).join('')).toContain(`1:${scale}`);
    const outlines = page!.ways
      .filter(({ points, isStroked }) => isStroked && points.length >= 8)
      .map(({ points }) => {
        const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
        const [left, right, top, bottom] = [
          Math.min(...xs),
          Math.max(...xs),
          Math.min(...ys),
          Math.max(...ys)
        ];
        return { width: right - left, height: bottom - top, x: (left + right) / 2, y: (top + bottom) / 2 };
      });
    const places = site.loops.map(({ shape }) => {
      if (shape.kind !== 'rectangle') throw new Error('the demo has rectangles');
      const [wide, long] = [(shape.width * 1000) / scale, (shape.length * 1000) / scale];
      // from where the plan's origin would lie, of each outline of this size
      return outlines
        .filter(({ width, height: tall }) => Math.abs(width - wide) < 0.02 && Math.abs(tall - long) < 0.02)
        .map(
          ({ x, y }) => [x - (shape.centre[0] * 1000) / scale, y + (shape.centre[1] * 1000) / scale] as const
        );
    });
    // one and the same origin serves all loops
    const [first] = places;
    const fits = first!.some(([x, y]) =>
      places.every((each) => each.some((other) => Math.hypot(other[0] - x, other[1] - y) < 0.02))
    );
    expect(fits).toBe(true);
  }
);

test('a scale that does not fit makes no file, but a sentence', async () => {
  const site = withSheet(sample('advance-loops.kerfline.json'), { paper: 'A4', scale: 50 });
  await expect(made(site)).rejects.toThrow(Unfit);
  await expect(made(site)).rejects.toThrow(/^At 1:50 the plan does not fit/);
});

test('harmful names stay texts', async () => {
  for (const name of HOSTILE) {
    const { content, name: file } = await made(siteNamed(name));
    if (typeof content === 'string') throw new Error('a PDF is no text');
    expect(file).toMatch(/^[\p{L}\p{N}-]{1,60}\.pdf$/u);
    const raw = Buffer.from(content).toString('latin1');
    for (const active of ['/JavaScript', '/JS', '/Launch', '/URI', '/SubmitForm', '/EmbeddedFile', '/AA'])
      expect(raw).not.toContain(active);
    const { pages, title } = await readPdf(content);
    expect(title.length).toBeLessThan(400);
    const texts = pages.flatMap((page) => page.texts.map(({ text }) => text));
    expect(texts.join('')).not.toMatch(/[\u202A-\u202E\u2066-\u2069]/u);
    expect(texts.length).toBeGreaterThan(20);
    for (const page of pages)
      for (const { at, width } of page.texts) expect(at[0] + width).toBeLessThanOrEqual(page.box[2] / POINTS);
  }
}, 120_000);

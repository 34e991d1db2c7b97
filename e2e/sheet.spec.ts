import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { readPdf } from '../tests/support/pdf';
import { Desk } from './hands';
import { expectAccessible } from './support/axe';
import { expect, test } from './support/test';

// A sheet waits for every figure that it shows.
test.describe.configure({ timeout: 120_000 });

const POINTS = 72 / 25.4;

const shown = (page: Page) => page.getByRole('region', { name: 'Pages of the sheet' });
const picture = (page: Page) => shown(page).getByRole('img');

async function withSheet(page: Page): Promise<Desk> {
  const desk = new Desk(page);
  await desk.open();
  await desk.lookAt('Sheet');
  await composed(page);
  return desk;
}

/** The pages are those of the drawing as it is now. */
async function composed(page: Page): Promise<void> {
  await expect(picture(page)).toBeVisible({ timeout: 30_000 });
  await expect(shown(page)).toHaveAttribute('aria-busy', 'false', { timeout: 30_000 });
}

const count = async (page: Page): Promise<number> =>
  Number((await picture(page).getAttribute('aria-label'))!.match(/of (\d+)/)![1]);

test('the pages are looked at one by one, and close up', async ({ page }) => {
  await withSheet(page);
  const pages = await count(page);
  expect(pages).toBeGreaterThan(1);
  await expect(picture(page)).toHaveAccessibleName(/^Page 1 of \d+: Plan/);
  await page.getByRole('button', { name: 'Next page' }).click();
  await expect(picture(page)).toHaveAccessibleName(/^Page 2 of/);
  for (let at = 2; at < pages; at++) await page.getByRole('button', { name: 'Next page' }).click();
  await expect(page.getByRole('button', { name: 'Next page' })).toBeDisabled();

  const width = async () => (await picture(page).boundingBox())!.width;
  const whole = await width();
  await page.getByRole('button', { name: 'Larger' }).click();
  await page.getByRole('button', { name: 'Larger' }).click();
  expect(await width()).toBeCloseTo(2 * whole, 0);
  await page.getByRole('button', { name: 'Whole page' }).click();
  expect(await width()).toBeCloseTo(whole, 0);
});

test('what is set comes onto the sheet, one undo step each', async ({ page }) => {
  const desk = await withSheet(page);
  const landscape = (await picture(page).boundingBox())!;
  expect(landscape.width).toBeGreaterThan(landscape.height);

  await desk.tables.getByLabel('Revision').fill('C7 <b>bold</b>');
  await desk.tables.getByLabel('Revision').press('Enter');
  await expect(picture(page).getByText('C7 <b>bold</b>')).toBeVisible({ timeout: 30_000 });
  await desk.tables.getByLabel('Remarks').fill('Night work only.\nKey with the porter.');
  await desk.tables.getByLabel('Client').focus();
  await desk.tables.getByLabel('Orientation').selectOption('portrait');
  await expect
    .poll(async () => {
      const box = await picture(page).boundingBox();
      return box ? box.height > box.width : false;
    })
    .toBe(true);
  await composed(page);
  await desk.tables.getByRole('checkbox', { name: 'Cutting plan' }).uncheck();
  await composed(page);

  const { sheet } = JSON.parse(await desk.savedText()) as { sheet: Record<string, unknown> };
  expect(sheet).toMatchObject({
    revision: 'C7 <b>bold</b>',
    remarks: 'Night work only.\nKey with the porter.',
    orientation: 'portrait'
  });
  expect(sheet['parts']).not.toContain('cutting');
  for (let step = 0; step < 4; step++) await desk.undo();
  expect(JSON.parse(await desk.savedText())).not.toHaveProperty('sheet');
  await expect(desk.tables.getByLabel('Revision')).toHaveValue('');
});

test('an edit of the drawing is followed', async ({ page }) => {
  const desk = await withSheet(page);
  await desk.type('Site name', 'Orchard gate');
  await expect(picture(page).getByText('Orchard gate')).toBeVisible({ timeout: 30_000 });
});

test('a scale that does not fit is refused in a sentence, with the one that fits at hand', async ({
  page
}) => {
  const desk = await withSheet(page);
  await desk.tables.getByLabel('Paper').selectOption('A4');
  await desk.tables.getByLabel('Scale of the plan').selectOption('1:50');
  const sentence = desk.tables.getByText(/^At 1:50 the plan does not fit/);
  await expect(sentence).toBeVisible({ timeout: 30_000 });
  const way = desk.tables.getByRole('button', { name: /^Take 1:\d+$/ });
  const scale = (await way.innerText()).match(/1:\d+/)![0];
  await way.click();
  await composed(page);
  await expect(sentence).toHaveCount(0);
  await expect(desk.tables.getByLabel('Scale of the plan')).toHaveValue(scale.slice(2));
  await expect(picture(page).getByText(`${scale} on A4`)).toBeVisible();
});

test('the file is the one that the command line makes, byte by byte', async ({ page }, info) => {
  const desk = await withSheet(page);
  const waiting = page.waitForEvent('download');
  await desk.tables.getByRole('button', { name: /PDF/ }).click();
  const download = await waiting;
  expect(download.suggestedFilename()).toMatch(/-sheet\.pdf$/);
  const bytes = readFileSync(await download.path());
  const { pages } = await readPdf(bytes);
  expect(pages).toHaveLength(await count(page));

  const site = info.outputPath('site.kerfline.json');
  const made = info.outputPath('sheet.pdf');
  writeFileSync(site, await desk.savedText());
  execFileSync(process.execPath, [
    '--import',
    'tsx',
    'src/cli/report.ts',
    site,
    '--format',
    'pdf',
    '--output',
    made
  ]);
  expect(Buffer.compare(readFileSync(made), bytes)).toBe(0);
});

/** What the browser would put on paper. */
async function printed(page: Page) {
  return readPdf(await page.pdf({ preferCSSPageSize: true, printBackground: true }));
}

test('the browser prints the sheet at its true size, and nothing else', async ({ page }) => {
  const desk = await withSheet(page);
  for (const [paper, width, height] of [
    ['A3', 420, 297],
    ['letter', 279.4, 215.9]
  ] as const) {
    await desk.tables.getByLabel('Paper').selectOption(paper);
    await composed(page);
    const { pages } = await printed(page);
    expect(pages).toHaveLength(await count(page));
    for (const { box, texts } of pages) {
      // the browser's own paper is a whole number of points
      expect(Math.abs(box[2] - width * POINTS)).toBeLessThan(1);
      expect(Math.abs(box[3] - height * POINTS)).toBeLessThan(1);
      expect(texts.map(({ text }) => text).join('')).not.toContain('Place a vehicle');
    }
    // the ends of the check bar: the first and the last of eleven upright strokes
    const strokes = pages[0]!.ways.filter(
      ({ points: [a, b], isStroked }) => isStroked && a && b && Math.abs(a[0] - b[0]) < 1e-3
    );
    const ends = strokes.map(({ points }) => points[0]![0]);
    const from = ends.find((x) => ends.some((other) => Math.abs(other - x - 10) < 0.01))!;
    expect(ends.some((x) => Math.abs(x - from - 100) < 0.1)).toBe(true);
    const words = pages[0]!.texts.map(({ text }) => text).join('');
    expect(words).toContain('this bar is then 100 mm long');
  }
  // what was laid out for paper is gone again
  await expect(page.locator('#printed-sheet')).toHaveCount(0);
});

test('so it does while another table is looked at', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await expect(async () => {
    const { pages } = await printed(page);
    expect(pages[0]!.texts.map(({ text }) => text).join('')).toContain('this bar is then 100 mm long');
  }).toPass({ timeout: 40_000 });
});

test('designs that the sheet compares stand on it: in its file, and in what the browser prints with no sheet in sight', async ({
  page
}) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.openText(readFileSync('samples/two-ways-to-guard-a-gate.kerfline.json', 'utf8'));
  await expect(page).toHaveTitle(/Sedgewell/);
  await desk.lookAt('Sheet');
  await desk.tables.getByRole('checkbox', { name: 'Designs compared' }).check();
  const waiting = page.waitForEvent('download');
  await desk.tables.getByRole('button', { name: /PDF/ }).click();
  const file = await readPdf(readFileSync(await (await waiting).path()));
  const wordsOf = ({ pages }: typeof file) => pages.flatMap(({ texts }) => texts.map(({ text }) => text));
  const compared = wordsOf(file).join(' ');
  for (const words of ['One long rectangle', 'Two in series', 'Saw cut', '▼ worse', '▲ better'])
    expect(compared).toContain(words);

  await desk.lookAt('Circuits');
  // another drawing, of which nobody has asked for a sheet
  await desk.type('Site name', 'Sedgewell depot');
  await expect(async () => {
    const words = wordsOf(await printed(page)).join(' ');
    expect(words).toContain('Sedgewell depot');
    expect(words).toContain('▼ worse');
  }).toPass({ timeout: 60_000 });
});

test('the key for printing prints the sheet, at the same size as the button', async ({ page }) => {
  await page.addInitScript(() => {
    const seen: string[] = [];
    Object.assign(window, {
      seen,
      print: () => {
        const pages = document.querySelectorAll('#printed-sheet > svg');
        seen.push([...pages].map((each) => each.getAttribute('viewBox')).join(';'));
      }
    });
  });
  const desk = new Desk(page);
  await desk.open();
  const seen = () => page.evaluate(() => (window as unknown as { seen: string[] }).seen);
  await desk.plan.focus();
  await page.keyboard.press('Control+P');
  await expect.poll(async () => (await seen()).length, { timeout: 30_000 }).toBe(1);
  await desk.lookAt('Sheet');
  await composed(page);
  await desk.tables.getByRole('button', { name: 'Print', exact: true }).click();
  await expect.poll(async () => (await seen()).length, { timeout: 30_000 }).toBe(2);
  const [byKey, byButton] = await seen();
  expect(byKey).toMatch(/^0 0 420 297;/);
  expect(byButton).toBe(byKey);
});

for (const [width, height] of [
  [1440, 900],
  [820, 1180]
] as const)
  test(`at ${width} by ${height} the sheet has no accessibility problem`, async ({ page }) => {
    await page.setViewportSize({ width, height });
    const desk = await withSheet(page);
    await expectAccessible(page);
    await desk.tables.getByLabel('Paper').selectOption('A4');
    await desk.tables.getByLabel('Scale of the plan').selectOption('1:50');
    await expect(desk.tables.getByRole('button', { name: /^Take 1:/ })).toBeVisible({ timeout: 30_000 });
    await expectAccessible(page, '#lower-view');
  });

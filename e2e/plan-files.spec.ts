import { createCanvas, loadImage } from '@napi-rs/canvas';
import DxfParser from 'dxf-parser';
import type { Page } from '@playwright/test';
import { readFileSync } from 'node:fs';
import { Desk } from './hands';
import { expect, test } from './support/test';

// A file waits for the figures of the drawing.
test.describe.configure({ timeout: 90_000 });

async function exportDialog(page: Page) {
  const desk = new Desk(page);
  await desk.open();
  await page.keyboard.press('Control+k');
  await page.getByRole('combobox', { name: 'What do you want to do?' }).fill('Export');
  await page.getByRole('option', { name: /^Export/ }).first().click(); // prettier-ignore
  return page.getByRole('dialog', { name: 'Export' });
}

async function exported(page: Page, format: 'SVG' | 'PNG' | 'DXF'): Promise<Buffer> {
  const [download] = await Promise.all([
    page.waitForEvent('download', { timeout: 60_000 }),
    page.getByRole('button', { name: `Plan as ${format}` }).click()
  ]);
  return readFileSync(await download.path());
}

/** Shares of dark pixels in squares of the picture, row by row. */
async function darkness(bytes: Buffer, width: number, height: number): Promise<readonly number[]> {
  const canvas = createCanvas(width, height);
  const context = canvas.getContext('2d');
  context.fillStyle = '#fff';
  context.fillRect(0, 0, width, height);
  context.drawImage(await loadImage(bytes), 0, 0, width, height);
  const { data } = context.getImageData(0, 0, width, height);
  const SQUARE = 20;
  const columns = Math.ceil(width / SQUARE);
  const shares = new Array<number>(columns * Math.ceil(height / SQUARE)).fill(0);
  for (let at = 0; at < width * height; at++)
    if (data[4 * at]! < 140)
      shares[Math.floor(Math.floor(at / width) / SQUARE) * columns + Math.floor((at % width) / SQUARE)]! +=
        1 / SQUARE ** 2;
  return shares;
}

const total = (shares: readonly number[]): number => shares.reduce((sum, each) => sum + each, 0);

/** How much of the darkness of either lies elsewhere in the other; one square off at the most is neighbours. */
function apart(a: readonly number[], b: readonly number[]): number {
  return a.reduce((sum, each, k) => sum + Math.abs(each - b[k]!), 0) / (total(a) + total(b));
}

test('the plan as SVG, PNG and DXF: the same plan in each', async ({ page, context }) => {
  await exportDialog(page);
  const svg = await exported(page, 'SVG');
  const png = await exported(page, 'PNG');
  const dxf = await exported(page, 'DXF');

  // an XML parser has no complaint, and the size is in millimetres
  const [root, complaint, width, height] = await page.evaluate((text) => {
    const parsed = new DOMParser().parseFromString(text, 'application/xml');
    const element = parsed.documentElement;
    return [
      element.localName,
      parsed.querySelector('parsererror')?.textContent ?? '',
      element.getAttribute('width') ?? '',
      element.getAttribute('height') ?? ''
    ] as const;
  }, svg.toString('utf8'));
  expect([root, complaint]).toEqual(['svg', '']);
  const [wide, high] = [width, height].map((length) => {
    expect(length).toMatch(/^[\d.]+mm$/);
    return Number.parseFloat(length);
  }) as [number, number];

  // the PNG has 200 dots to the inch
  const [pixelsWide, pixelsHigh] = [png.readUInt32BE(16), png.readUInt32BE(20)];
  expect(pixelsWide).toBe(Math.round((wide / 25.4) * 200));
  expect(pixelsHigh).toBe(Math.round((high / 25.4) * 200));
  const resolution = png.indexOf('pHYs') + 4;
  expect(png.readUInt32BE(resolution) * 0.0254).toBeCloseTo(200, 1);

  // rendered by the browser, by another library, and as the browser painted it
  const viewer = await context.newPage();
  const [w, h] = [Math.round((wide / 25.4) * 96), Math.round((high / 25.4) * 96)];
  await viewer.setViewportSize({ width: w, height: h });
  await viewer.setContent(
    `<body style="margin:0">${svg.toString('utf8').replace(/^<\?xml.*?\?>/, '')}</body>`
  );
  const shot = await viewer.screenshot();
  await viewer.close();
  const [byBrowser, byOther, painted] = (await Promise.all(
    [shot, svg, png].map((bytes) => darkness(bytes, w, h))
  )) as [readonly number[], readonly number[], readonly number[]];
  expect(total(byBrowser)).toBeGreaterThan(5);
  const measured = { other: apart(byBrowser, byOther), painted: apart(byBrowser, painted) };
  // typefaces differ, and soften differently; lines lie in the same places
  expect(measured.other).toBeLessThan(0.15);
  expect(measured.painted).toBeLessThan(0.15);

  // and the measure tells pictures apart
  expect(apart(byBrowser, [...byOther].reverse())).toBeGreaterThan(0.3);

  const drawing = new DxfParser().parseSync(dxf.toString('utf8'))!;
  expect(drawing.header.$INSUNITS).toBe(6);
  expect(drawing.entities.some(({ layer }) => layer === 'SAW-CUT')).toBe(true);
});

test('a finer picture is larger', async ({ page }) => {
  await exportDialog(page);
  const usual = await exported(page, 'PNG');
  await page.getByLabel('Resolution of PNG').selectOption({ label: '100 dots per inch' });
  const coarse = await exported(page, 'PNG');
  expect(Math.abs(usual.readUInt32BE(16) - 2 * coarse.readUInt32BE(16))).toBeLessThanOrEqual(1);
});

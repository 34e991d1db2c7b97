import { readFileSync } from 'node:fs';
import type { Locator, Page } from '@playwright/test';
import { Desk } from './hands';
import { expectAccessible } from './support/axe';
import { oneLoop } from './support/one-loop';
import { expect, test } from './support/test';

const SITE = oneLoop({ name: 'Tanner Close', loop: 'Close loop', circuit: 'Gate' });

class Sweep {
  readonly part: Locator;
  /** The design on the curve of a result. */
  readonly marker: Locator;

  constructor(
    readonly page: Page,
    readonly desk = new Desk(page)
  ) {
    this.part = desk.tables.getByRole('region', { name: 'Sweep' });
    this.marker = this.part.getByRole('slider', { name: /in the design, with Gate: Inductance/ });
  }

  async open(): Promise<void> {
    await this.desk.open();
    await this.desk.openText(SITE);
    await this.desk.lookAt('Compare');
    await this.desk.tables.getByRole('radio', { name: 'Sweep' }).check({ force: true });
    await this.desk.settled();
  }

  async turns(): Promise<number> {
    const site = JSON.parse(await this.desk.savedText()) as { loops: readonly { turns: number }[] };
    return site.loops[0]!.turns;
  }

  async taken(button: string): Promise<string> {
    const waiting = this.page.waitForEvent('download');
    await this.part.getByRole('button', { name: button }).first().click();
    return (await waiting).path();
  }
}

test('the marker of a sweep changes the design, by keys and by a drag that is one step', async ({ page }) => {
  const sweep = new Sweep(page);
  await sweep.open();
  await expect(sweep.marker).toHaveAttribute('aria-valuenow', '3');
  // what the curve says at the design is what the design's own readout says
  await sweep.desk.outlineItem('loop').press('Enter');
  const circuit = await sweep.desk.details.getByText(/\d µH/).allInnerTexts();
  const said = /([\d.]+)\sµH/.exec((await sweep.marker.getAttribute('aria-valuetext')) ?? '')?.[1];
  expect(circuit.some((text) => text.includes(said ?? 'nothing'))).toBe(true);

  await sweep.marker.focus();
  await page.keyboard.press('ArrowRight');
  await sweep.desk.settled();
  await expect(sweep.marker).toHaveAttribute('aria-valuenow', '4');
  expect(await sweep.turns()).toBe(4);

  const box = await sweep.marker.boundingBox();
  if (!box) throw new Error('the marker is not on the screen');
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 180, y, { steps: 12 });
  await page.mouse.up();
  await sweep.desk.settled();
  const dragged = Number(await sweep.marker.getAttribute('aria-valuenow'));
  expect(dragged).toBeGreaterThan(6);
  expect(await sweep.turns()).toBe(dragged);
  await sweep.desk.undo();
  await expect(sweep.marker).toHaveAttribute('aria-valuenow', '4');

  // given up while it is in the hand, it leaves nothing behind
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 100, y, { steps: 6 });
  await page.keyboard.press('Escape');
  await page.mouse.up();
  await sweep.desk.settled();
  await expect(sweep.marker).toHaveAttribute('aria-valuenow', '4');
});

test('what a sweep shows is taken away as a picture that stands by itself, and as exact numbers', async ({
  page,
  context
}) => {
  const sweep = new Sweep(page);
  await sweep.open();
  await sweep.part.getByRole('radio', { name: 'Second number' }).check({ force: true });
  await sweep.desk.settled();
  const shown = await sweep.part.locator('svg:has(.heading)').first().locator('text').allTextContents();

  const path = await sweep.taken('Picture (SVG)');
  const picture = readFileSync(path, 'utf8');
  expect(picture).not.toMatch(
    /<script|<style|foreignObject|style=|var\(|light-dark|https?:\/\/(?!www\.w3\.org)/
  );
  const alone = await context.newPage();
  const requests: string[] = [];
  alone.on('request', (request) => requests.push(request.url()));
  await alone.setContent(picture);
  expect(await alone.locator('svg text').allTextContents()).toEqual(shown);
  expect(requests).toEqual([]);
  await alone.close();

  const png = readFileSync(await sweep.taken('Picture (PNG)'));
  expect(png.subarray(1, 4).toString()).toBe('PNG');

  const [head, ...rows] = readFileSync(await sweep.taken('Table (CSV)'), 'utf8')
    .trim()
    .split('\r\n');
  expect(head).toContain('Gate: Inductance (H)');
  // henries with all their digits
  expect(rows[0]).toMatch(/,0\.0000\d{10,}/);
  await sweep.part.getByText('Table of all values').click();
  await expect(sweep.part.getByRole('table').getByRole('row')).toHaveCount(rows.length + 2);
  await expectAccessible(page, '.lower');
});

test('two numbers make a map whose cells the keyboard reads, and a long sweep can be cancelled', async ({
  page
}) => {
  const sweep = new Sweep(page);
  await sweep.open();
  await sweep.part.getByRole('radio', { name: 'Map' }).check({ force: true });
  await sweep.part.getByRole('button', { name: 'Cancel' }).click();
  await expect(sweep.part.getByText(/^Cancelled/)).toBeVisible();
  await sweep.part.getByRole('button', { name: 'Calculate', exact: true }).click();
  const map = sweep.part.getByRole('slider', { name: /Place on the map: Gate: Inductance/ });
  await expect(map).toBeVisible({ timeout: 20_000 });
  const before = await map.getAttribute('aria-valuetext');
  await map.focus();
  await page.keyboard.press('ArrowRight');
  await expect(map).not.toHaveAttribute('aria-valuetext', before ?? '');
  await expect(map).toHaveAttribute('aria-valuetext', /µH/);
});

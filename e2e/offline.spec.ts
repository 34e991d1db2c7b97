import type { BrowserContext, Page } from '@playwright/test';
import { Desk } from './hands';
import { expect, test } from './support/test';

test.use({ serviceWorkers: 'allow' });

/** The page again, with nothing but what the first visit kept. */
async function withoutNetwork(page: Page, context: BrowserContext): Promise<Desk> {
  const desk = new Desk(page);
  await desk.open();
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (navigator.serviceWorker.controller) return;
    await new Promise((resolve) => {
      navigator.serviceWorker.addEventListener('controllerchange', resolve, { once: true });
    });
  });
  await context.setOffline(true);
  await page.reload();
  await desk.settled();
  return desk;
}

test('after the first visit everything works without a network', async ({ page, context }) => {
  const desk = await withoutNetwork(page, context);
  await desk.startFrom('Blank');
  await desk.takeTool('Rectangle');
  await desk.drag([-80, -60], [80, 60]);
  expect(await desk.inductance()).toBeGreaterThan(10);

  await page.getByRole('button', { name: 'Open', exact: true }).click();
  await expect(page.getByRole('dialog').getByText('open here')).toBeVisible();
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: 'More about files' }).click();
  await page.getByRole('button', { name: /^Share as a link/ }).click();
  await expect(page.getByLabel('Link', { exact: true })).toHaveValue(/#site=1\./);
  await page.keyboard.press('Escape');
  await desk.kept();
  await page.evaluate(() => {
    localStorage.setItem('kerfline settings', JSON.stringify({ language: 'de' }));
  });
  await page.reload();
  await expect(page.getByRole('button', { name: 'Öffnen', exact: true })).toBeVisible();
});

test('after the first visit a circuit is checked on the road without a network', async ({
  page,
  context
}) => {
  const desk = await withoutNetwork(page, context);
  const { tables } = desk;
  const look = (mode: string) => tables.getByText(mode, { exact: true }).first().click();
  await desk.lookAt('Field check');
  await look('Expected');
  await expect(
    tables.getByRole('table', { name: /^Cabinet/ }).getByRole('row', { name: /^Inductance/ })
  ).toContainText(/[\d.]+ µH/, { timeout: 20_000 });

  await look('Readings');
  await tables.getByLabel('Direct-current resistance', { exact: true }).fill('1.2 k');
  await tables.getByRole('button', { name: 'Keep reading' }).click();
  await look('Causes');
  await expect(tables.getByText('Speaks for it')).toBeVisible({ timeout: 20_000 });

  await look('Walk-through');
  await tables.getByRole('button', { name: 'Never calling' }).click();
  await expect(tables.getByRole('list', { name: 'Answer' }).getByRole('button')).not.toHaveCount(0);
});

test('?fresh drops what was kept of the program, and no site', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.type('Site name', 'Outlives the program');
  await desk.kept();
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    await caches.open('kerfline-an-older-release');
  });
  await desk.open({ address: './?fresh' });
  await page.waitForURL((address) => address.search === '');
  await desk.settled();
  await expect(page).toHaveTitle(/^Outlives the program/);
  expect(await page.evaluate(() => caches.has('kerfline-an-older-release'))).toBe(false);
});

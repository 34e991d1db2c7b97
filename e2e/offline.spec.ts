import { Desk } from './hands';
import { expect, test } from './support/test';

test('after the first visit everything works without a network', async ({ page, context }) => {
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

import { Desk } from './hands';
import { expect, test } from './support/test';

test('a storage that is really full is said; work goes on and can be saved to a file; older work is intact', async ({
  page,
  context
}) => {
  const origin = new URL(test.info().project.use.baseURL ?? '').origin;
  const session = await context.newCDPSession(page);
  await session.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 200_000 });
  // What is kept of the program itself counts too, and would fill a small storage before any site does.
  await page.addInitScript(() => Reflect.deleteProperty(Navigator.prototype, 'serviceWorker'));
  const desk = new Desk(page);
  await desk.open();
  await desk.type('Site name', 'Fits in');
  await desk.kept();

  const large = {
    ...(JSON.parse(await desk.savedText()) as object),
    name: 'Too large',
    survey: noise(400_000)
  };
  await desk.openText(JSON.stringify(large));
  const banner = page.getByRole('alert');
  await expect(banner).toContainText('the storage of this browser is full');
  await expect(page.getByText('Not saved', { exact: true })).toBeVisible();
  await desk.type('Site name', 'Still working');
  const download = page.waitForEvent('download');
  await banner.getByRole('button', { name: 'Save to a file' }).click();
  expect((await download).suggestedFilename()).toBe('Still-working.kerfline.json');

  await page.getByRole('button', { name: 'Open', exact: true }).click();
  await page
    .getByRole('dialog')
    .getByRole('button', { name: /^Fits in/ })
    .click();
  await expect(page).toHaveTitle(/Fits in/);
});

/** Letters without a pattern, which no compression makes smaller. */
function noise(length: number): string {
  let state = 1;
  return Array.from({ length }, () => {
    state = (state * 48271) % 2147483647;
    return String.fromCharCode(0x23 + (state % 56));
  }).join('');
}

import { Desk } from './hands';
import { expectAccessible } from './support/axe';
import { expect, test } from './support/test';

async function linkOf(desk: Desk): Promise<string> {
  const { page } = desk;
  await page.getByRole('button', { name: 'More about files' }).click();
  await page.getByRole('button', { name: /^Share as a link/ }).click();
  const link = await page.getByLabel('Link', { exact: true }).inputValue();
  await expectAccessible(page, 'dialog');
  await page.keyboard.press('Escape');
  return link;
}

test('a link carries a whole site and opens it beside what was there', async ({ page, context, browser }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  const desk = new Desk(page);
  await desk.open();
  await desk.startFrom('Stop line with two lanes');
  await desk.type('Site name', 'Sent by link');
  const text = await desk.savedText();
  const link = await linkOf(desk);
  expect(link.length).toBeLessThan(8000);

  // Somebody else, with work of their own.
  const other = await browser.newContext();
  const theirs = new Desk(await other.newPage());
  await theirs.open();
  await theirs.type('Site name', 'Their own work');
  await theirs.kept();
  await theirs.page.goto('about:blank');
  await theirs.open({ address: link });
  await expect(theirs.page).toHaveTitle(/^Sent by link/);
  await expect(theirs.page.getByText('Nothing that you had was replaced.')).toBeVisible();
  expect(new URL(theirs.page.url()).hash).toBe('');
  expect(await theirs.savedText()).toBe(text);
  await theirs.page.reload();
  await theirs.settled();
  await expect(theirs.page).toHaveTitle(/Sent by link/);
  await theirs.page.getByRole('button', { name: 'Open', exact: true }).click();
  await theirs.page
    .getByRole('dialog')
    .getByRole('button', { name: /Their own work/ })
    .click();
  await expect(theirs.page).toHaveTitle(/^Their own work/);
  await other.close();
});

test('a link that was cut or changed says so, and opens what was open', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.type('Site name', 'Stays open');
  await desk.kept();
  const link = await linkOf(desk);
  const damaged = link.slice(0, -20) + (link.at(-20) === 'A' ? 'B' : 'A') + link.slice(-19);
  for (const [address, words] of [
    [link.slice(0, -30), 'its end is missing'],
    [damaged, 'does not add up'],
    [link.replace('#site=1.', '#site=9.'), 'made by a newer release']
  ] as const) {
    await page.goto('about:blank');
    await desk.open({ address });
    await expect(page.getByText(words)).toBeVisible();
    await expect(page).toHaveTitle(/^Stays open/);
    expect(new URL(page.url()).hash).toBe('');
  }
});

test('a site that is too large for a link is offered as a file', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  const document = JSON.parse(await desk.savedText()) as Record<string, unknown>;
  // Letters without a pattern, which no compression makes smaller.
  let state = 1;
  const noise = Array.from({ length: 9000 }, () => {
    state = (state * 48271) % 2147483647;
    return String.fromCharCode(0x21 + (state % 90));
  }).join('');
  await desk.openText(JSON.stringify({ ...document, survey: noise }));
  await desk.settled();
  await page.getByRole('button', { name: 'More about files' }).click();
  await page.getByRole('button', { name: /^Share as a link/ }).click();
  const dialog = page.getByRole('dialog', { name: 'Share as a link' });
  await expect(dialog).toContainText(/would be \d+\.\d kB long/);
  const download = page.waitForEvent('download');
  await dialog.getByRole('button', { name: 'Save to a file' }).click();
  await download;
});

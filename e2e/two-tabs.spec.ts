import type { BrowserContext, Page } from '@playwright/test';
import { Desk } from './hands';
import { kill } from './support/kill';
import { expect, test } from './support/test';

/** The first tab works on a site; the second one shows it too. */
async function twoTabs(page: Page, context: BrowserContext): Promise<readonly [Desk, Desk]> {
  const first = new Desk(page);
  await first.open();
  await first.type('Site name', 'Shared yard');
  await first.kept();
  const second = new Desk(await context.newPage());
  await second.open();
  await second.page.getByRole('button', { name: 'Show it here too' }).click();
  await second.settled();
  return [first, second];
}

const heading = (desk: Desk) => desk.page.getByLabel('Site name').first();

test('the same site in a second tab can only be looked at, and nothing done there reaches it', async ({
  page,
  context
}) => {
  const [first, second] = await twoTabs(page, context);
  await expect(second.page).toHaveTitle(/^Shared yard \(read only\)/);
  await expect(second.page.getByText('This site is open in another tab.')).toBeVisible();
  const loops = await second.loopCount();
  await second.takeTool('Rectangle');
  await second.drag([-80, -60], [80, 60]);
  expect(await second.loopCount()).toBe(loops);
  await first.type('Site name', 'Still the first tab');
  await first.kept();
  await second.page.close();
  await page.reload();
  await first.settled();
  await expect(page).toHaveTitle(/^Still the first tab/);
});

test('a second tab can take the site over: it has the last change, and the first one says so and writes no more', async ({
  page,
  context
}) => {
  const [first, second] = await twoTabs(page, context);
  await first.type('Site name', 'Changed a moment ago');
  await second.page.getByRole('button', { name: 'Take over' }).click();
  await expect(second.page).toHaveTitle(/^Changed a moment ago – /);
  await expect(page.getByText('Another tab has taken this site over')).toBeVisible();
  await expect(page).toHaveTitle(/\(read only\)/);
  await second.type('Site name', 'From the second tab');
  await second.kept();
  await page.close();
  await second.page.reload();
  await second.settled();
  await expect(second.page).toHaveTitle(/^From the second tab – /);
});

test('work on a copy leaves the other tab’s site alone', async ({ page, context }) => {
  const [first, second] = await twoTabs(page, context);
  await second.page.getByRole('button', { name: 'Work on a copy' }).click();
  await expect(second.page).toHaveTitle(/^Shared yard \(copy\) – /);
  await second.type('Site name', 'A yard of its own');
  await second.kept();
  await first.page.reload();
  await first.settled();
  await expect(first.page).toHaveTitle(/^Shared yard – /);
  await second.page.reload();
  await second.settled();
  await expect(second.page).toHaveTitle(/^A yard of its own – /);
});

test('a tab that crashed keeps nobody out', async ({ page, context }) => {
  const first = new Desk(page);
  await first.open();
  await first.type('Site name', 'Before the crash');
  await first.kept();
  await kill(page);
  const second = new Desk(await context.newPage());
  await second.open();
  await expect(heading(second)).toHaveValue('Before the crash');
  await expect(second.page.getByText(/Restored as it was at/)).toBeVisible();
  await second.type('Site name', 'After the crash');
  await second.kept();
});

test('a duplicated tab looks at the site of the one that it was made from', async ({ page, context }) => {
  const first = new Desk(page);
  await first.open();
  await first.type('Site name', 'Made twice');
  await first.kept();
  const slot = await page.evaluate(() => sessionStorage.getItem('kerfline tab'));
  const copy = await context.newPage();
  await copy.addInitScript((kept) => {
    if (kept !== null) sessionStorage.setItem('kerfline tab', kept);
  }, slot);
  await new Desk(copy).open();
  await expect(copy).toHaveTitle(/^Made twice \(read only\)/);
});

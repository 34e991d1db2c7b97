import type { Locator } from '@playwright/test';
import { Desk } from './hands';
import { expectAccessible } from './support/axe';
import { expect, test } from './support/test';

const list = (desk: Desk) => desk.page.getByRole('dialog', { name: 'Open a site' });
/** The row of a site. */
const row = (desk: Desk, name: string): Locator =>
  list(desk).getByRole('list', { name: 'Kept in this browser' }).locator('> li').filter({ hasText: name });

async function look(desk: Desk): Promise<void> {
  await desk.page.getByRole('button', { name: 'Open', exact: true }).click();
  await expect(list(desk).locator('li').first()).toBeVisible();
}

async function twoSites(desk: Desk): Promise<void> {
  await desk.open();
  await desk.startFrom('Driveway gate');
  await desk.type('Site name', 'Orchard gate');
  await desk.startFrom('Blank');
  await desk.type('Site name', 'Depot yard');
  await desk.kept();
}

test('sites can be renamed, duplicated, deleted and taken back', async ({ page }) => {
  const desk = new Desk(page);
  await twoSites(desk);
  await look(desk);
  await expect(row(desk, 'Depot yard')).toContainText('open here');
  await expect(row(desk, 'Orchard gate')).toContainText(/\d kB/);

  await row(desk, 'Orchard gate').getByRole('button', { name: 'Rename' }).click();
  await list(desk).getByLabel('New name').fill('Orchard gate, south');
  await page.keyboard.press('Enter');
  await row(desk, 'Orchard gate, south').getByRole('button', { name: 'Duplicate' }).click();
  const copy = row(desk, 'Orchard gate, south (copy)');
  await expect(copy).toBeVisible();

  await copy.getByRole('button', { name: 'Delete' }).click();
  await expect(copy).toHaveCount(0);
  await expect(list(desk).getByRole('status')).toContainText('is in the bin');
  await expectAccessible(page, 'dialog');
  await list(desk).getByRole('button', { name: 'Undo' }).click();
  await expect(copy).toBeVisible();

  await row(desk, 'Orchard gate, south')
    .first()
    .getByRole('button', { name: /Orchard gate, south/ })
    .click();
  await expect(page).toHaveTitle(/^Orchard gate, south/);
});

test('the site that is open can be deleted too, and comes back open', async ({ page }) => {
  const desk = new Desk(page);
  await twoSites(desk);
  await look(desk);
  await row(desk, 'Depot yard').getByRole('button', { name: 'Delete' }).click();
  await expect(page).toHaveTitle(/^Orchard gate/);
  await list(desk).getByRole('button', { name: 'Undo' }).click();
  await expect(page).toHaveTitle(/^Depot yard/);
});

test('what is in the bin stays there over a reload, and goes for good when it is asked to', async ({
  page
}) => {
  const desk = new Desk(page);
  await twoSites(desk);
  await look(desk);
  await row(desk, 'Orchard gate').getByRole('button', { name: 'Delete' }).click();
  await expect(row(desk, 'Orchard gate')).toHaveCount(0);
  await page.reload();
  await desk.settled();
  await look(desk);
  await list(desk).getByText('Bin: 1 site').click();
  await expect(list(desk).getByText('Orchard gate')).toBeVisible();
  await list(desk).getByRole('button', { name: 'Empty the bin' }).click();
  await expect(list(desk).getByText(/^Bin:/)).toHaveCount(0);
  await expect(list(desk).getByText('Orchard gate')).toHaveCount(0);
});

test('an earlier state opens as a copy, or the site goes back to it by a step that can be undone', async ({
  page
}) => {
  await page.clock.install();
  const desk = new Desk(page);
  await desk.open();
  await desk.startFrom('Blank');
  await desk.type('Site name', 'Morning');
  await desk.kept();
  await page.clock.fastForward('10:00');
  await desk.type('Site name', 'Noon');
  await desk.kept();
  await look(desk);
  await list(desk).getByRole('button', { name: '2 states' }).click();
  const states = list(desk).getByRole('list', { name: 'States of Noon' }).getByRole('listitem');
  await expect(states).toHaveCount(2);
  await expect(states.last()).toContainText('10 minutes ago');
  await states.last().getByRole('button', { name: 'Go back to it' }).click();
  await expect(page).toHaveTitle(/^Morning/);
  await desk.undo();
  await expect(page).toHaveTitle(/^Noon/);
  await look(desk);
  await list(desk)
    .getByRole('button', { name: /states$/ })
    .click();
  await states.filter({ hasText: 'Morning' }).last().getByRole('button', { name: 'Open as a copy' }).click();
  await expect(page).toHaveTitle(/^Morning \(copy\)/);
});

test('a day of work that is in no file is said once', async ({ page }) => {
  await page.clock.install();
  const desk = new Desk(page);
  await desk.open();
  await desk.type('Site name', 'Long day');
  await desk.kept();
  await page.clock.fastForward('25:00:00');
  const reminder = page.getByText(/kept in this browser only/);
  await desk.type('Site name', 'Longer day');
  await expect(reminder).toBeVisible();
  await page.getByRole('button', { name: 'Dismiss' }).last().click();
  await expect(reminder).toHaveCount(0);
  await desk.kept();
  await page.reload();
  await desk.settled();
  await desk.type('Site name', 'Longest day');
  await desk.kept();
  await expect(reminder).toHaveCount(0);
});

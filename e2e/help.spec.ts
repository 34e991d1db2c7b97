import { Desk } from './hands';
import { expect, test } from './support/test';

test('the list of keys is searched by name and by key', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.plan.focus();
  await page.keyboard.press('?');
  const help = page.getByRole('dialog', { name: 'Help and keys' });
  await expect(help.getByText('does not outlive a reload')).toBeVisible();
  const rows = help.locator('dt');
  const all = await rows.count();
  await help.getByLabel('Search the commands').fill('duplicate');
  await expect(rows).toHaveText(['Duplicate']);
  await expect(help.locator('dd').first()).toHaveText(/Ctrl\s*D/);
  await help.getByLabel('Search the commands').fill('');
  await expect(rows).toHaveCount(all);
  await help.getByLabel('Search the commands').fill('xylophone');
  await expect(rows).toHaveCount(0);
  await expect(help.getByText('No command has this')).toBeVisible();
});

test('an idea opens as a site of its own, and the one before is still there', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  const name = page.getByRole('textbox', { name: 'Site name' }).first();
  await name.fill('Mine alone');
  await name.press('Enter');
  await desk.kept();
  await page.getByRole('button', { name: 'Help and keys', exact: true }).click();
  await page.getByRole('button', { name: 'Ideas to try' }).click();
  const ideas = page.getByRole('dialog', { name: 'Ideas' });
  for (const use of ['Design a stop line', 'Estimate a job', 'Show a class why', 'Compare with the meter']) {
    const card = ideas.getByRole('listitem').filter({ has: page.getByRole('heading', { name: use }) });
    await expect(card.locator('ol > li')).toHaveCount(3);
  }
  await ideas
    .getByRole('listitem')
    .filter({ has: page.getByRole('heading', { name: 'Show a class why' }) })
    .getByRole('button', { name: 'Open this site' })
    .click();
  await expect(ideas).toBeHidden();
  await desk.settled();
  await expect(name).toHaveValue(/bicycle stop line/);
  await page.getByRole('button', { name: 'Open', exact: true }).click();
  await expect(page.getByRole('dialog').getByText('Mine alone').first()).toBeVisible();
});

test('a term is explained where it stands, by keyboard too, and Escape leaves the selection alone', async ({
  page
}) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.outlineItem('loop').press('Enter');
  const turns = desk.field('Turns');
  await turns.focus();
  await page.keyboard.press('Shift+Tab');
  const button = page.getByRole('button', { name: 'What is this: Turns' });
  await expect(button).toBeFocused();
  await page.keyboard.press('Enter');
  const note = page.getByText('How often the wire goes round');
  await expect(note).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(note).toBeHidden();
  await expect(turns).toBeVisible();
  await button.click();
  await expect(note).toBeVisible();
  await button.click();
  await expect(note).toBeHidden();
});

test('the first steps are hidden for good, and the settings bring them back', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  const steps = page.getByRole('region', { name: 'First steps' });
  await expect(steps.getByRole('listitem')).toHaveCount(3);
  await steps.getByRole('button').click();
  await page.reload();
  await desk.settled();
  await expect(steps).toBeHidden();
  await page.getByRole('button', { name: 'Settings', exact: true }).click();
  await page.getByRole('dialog').getByLabel('Show the first steps').check();
  await page.keyboard.press('Escape');
  await expect(steps).toBeVisible();
});

test('the terms of the trade are searched in names and explanations', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await page.getByRole('button', { name: 'Help and keys', exact: true }).click();
  await page.getByRole('button', { name: 'Terms of the trade' }).click();
  const glossary = page.getByRole('dialog', { name: 'Terms of the trade' });
  await expect(glossary.getByRole('term')).not.toHaveCount(1);
  await glossary.getByLabel('Search the terms').fill('megger');
  await expect(glossary.getByRole('term')).toHaveText(['Megger test']);
  // The first press empties the field, as everywhere.
  await page.keyboard.press('Escape');
  await expect(glossary.getByLabel('Search the terms')).toHaveValue('');
  await page.keyboard.press('Escape');
  await expect(glossary).toBeHidden();
});

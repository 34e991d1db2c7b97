import { Desk } from './hands';
import { expect, test } from './support/test';

test('the page opens on a live site: every circuit has its figures and the placed car its responses', async ({
  page
}) => {
  const desk = new Desk(page);
  await desk.open();
  const rows = desk.tables.getByRole('row').filter({ hasText: 'µH' });
  await expect(rows).not.toHaveCount(0);
  for (const row of await rows.all()) await expect(row).toContainText(/\d µH.*\d m?Ω.*\d kHz/);
  const responses = await desk.responses();
  expect(responses.length).toBe(await rows.count());
  expect(Math.max(...responses)).toBeGreaterThan(0.5);
});

test('one line says what to try first, and can be put away for good', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  const hint = page.getByText('Drag the vehicle across a loop');
  await expect(hint).toBeVisible();
  await page.getByRole('button', { name: 'Hide the first steps; the settings bring them back' }).click();
  await page.reload();
  await desk.settled();
  await expect(hint).toHaveCount(0);
});

test('the usual cautions are in sight where nothing is selected', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await expect(desk.details).toContainText('A loop is never the only safety device');
  await expect(desk.details).toContainText('Local codes and licensed practice decide');
});

test('a finding leads to what it is about', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.startFrom('Blank');
  await desk.takeTool('Rectangle');
  await desk.drag([-60, -60], [60, 60]);
  // A slot this shallow leaves no cover over the wires.
  await desk.type('Slot depth', '12 mm');
  await desk.settled();
  await desk.click([-250, 150]);
  const finding = desk.details.getByRole('region', { name: 'Findings' }).getByRole('button').first();
  await finding.click();
  await expect(desk.field('Slot depth')).toHaveValue('12 mm');
});

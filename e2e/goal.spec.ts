import type { Locator } from '@playwright/test';
import { Desk } from './hands';
import { expectAccessible } from './support/axe';
import { oneLoop } from './support/one-loop';
import { expect, test } from './support/test';

/** One turn cannot see a bicycle, and its inductance is below what its unit works with. */
const SITE = oneLoop({
  name: 'Cooper Yard',
  loop: 'Yard loop',
  circuit: 'Yard',
  turns: 1,
  leadIn: 10,
  least: 6e-5
});

test('a finding is cleared by the smallest change that clears it, and undo takes it back', async ({
  page
}) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.openText(SITE);
  await desk.settled();
  const findings = page.getByRole('region', { name: 'Findings' });
  const finding = findings
    .getByRole('listitem')
    .filter({ hasText: /U1 accepts/ })
    .first();
  await finding.getByRole('button', { name: 'What would clear it?' }).click();

  const goal = desk.tables.getByRole('region', { name: 'Goal' });
  await expect(goal.getByLabel('Number', { exact: true })).toHaveValue(/turns/);
  await goal.getByRole('button', { name: 'Find', exact: true }).click();
  const answer = goal.getByText(/Turns of Yard loop: \d+ instead of 1 clears it/);
  await expect(answer).toBeVisible({ timeout: 20_000 });
  const turns = Number(/: (\d+) instead/.exec(await answer.innerText())?.[1]);
  expect(turns).toBeGreaterThan(1);
  await expectAccessible(page, '.lower');

  await goal.getByRole('button', { name: /^Apply/ }).click();
  await desk.settled();
  await expect(finding).toHaveCount(0);
  await desk.undo();
  await expect(finding).toHaveCount(1);
  // one turn fewer does not clear it: the change is the smallest
  await desk.outlineItem('loop').press('Enter');
  await desk.type('Turns', String(turns - 1));
  await desk.settled();
  await expect(finding).toHaveCount(1);
});

test('all numbers of a loop are tried in turn, and each leads to its sweep', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.openText(SITE);
  await desk.lookAt('Compare');
  await desk.tables.getByRole('radio', { name: 'Goal' }).check({ force: true });
  const goal = desk.tables.getByRole('region', { name: 'Goal' });
  await goal
    .getByLabel('Finding')
    .selectOption({ label: await labelWith(goal.getByLabel('Finding', { exact: true }), /U1 accepts/) });
  await goal.getByRole('button', { name: 'Try every number' }).click();
  const rows = goal.getByRole('table').getByRole('row');
  await expect(goal.getByText(/^Do not clear it:/)).toBeVisible({ timeout: 30_000 });
  await desk.settled();
  await expect(rows.filter({ hasText: 'Turns of Yard loop' })).toHaveCount(1);
  await goal.getByRole('button', { name: 'See the sweep of Turns of Yard loop' }).click();
  await expect(
    desk.tables.getByRole('slider', { name: /Turns of Yard loop in the design, with Yard: Inductance/ })
  ).toBeVisible({ timeout: 20_000 });
});

/** Of the options of a list the one that reads so. */
async function labelWith(list: Locator, text: RegExp): Promise<string> {
  const options = await list.getByRole('option').allInnerTexts();
  return options.find((option) => text.test(option)) ?? '';
}

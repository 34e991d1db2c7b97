import { readFileSync } from 'node:fs';
import type { Locator, Page } from '@playwright/test';
import { Desk } from './hands';
import { expectAccessible } from './support/axe';
import { expect, test } from './support/test';

const SAMPLE = readFileSync('samples/exit-lanes-that-beat.kerfline.json', 'utf8');

async function atTheWalk(page: Page, circuit = 'Exit 1'): Promise<Desk> {
  const desk = new Desk(page);
  await desk.open();
  await desk.openText(SAMPLE);
  await desk.settled();
  await desk.lookAt('Field check');
  await desk.tables.getByText('Walk-through', { exact: true }).click();
  await desk.tables.getByLabel('Circuit', { exact: true }).selectOption({ label: circuit });
  return desk;
}

const choose = (desk: Desk, complaint: string) =>
  desk.tables.getByRole('button', { name: complaint }).click();
const question = (desk: Desk, text: string | RegExp): Locator =>
  desk.tables.getByRole('heading', { name: text });
const answer = (desk: Desk, text: string) =>
  desk.tables.getByRole('list', { name: 'Answer' }).getByRole('button', { name: text, exact: true }).click();

test('calls with nobody there lead to the neighbour that beats, and to a setting that clears it', async ({
  page
}) => {
  const desk = await atTheWalk(page);
  await choose(desk, 'Calls with nobody there');
  await expect(question(desk, /With which of them off does it stop/)).toBeVisible();
  await expect(
    desk.tables.getByText(/^Exit 2: a ripple of [\d.]+ times the threshold of Exit 1/)
  ).toBeVisible();
  await answer(desk, 'With Exit 2 off');
  await expect(question(desk, /^Exit 2 beats with Exit 1/)).toBeVisible();
  await expect(
    desk.tables.getByText(/^Set 4 instead of 2 for Exit [12]: then at rest/).first()
  ).toBeVisible();
  await expect(desk.tables.getByText('How to make sure')).toBeVisible();
});

test('what may hurt stands before the question, and what the figures settle is not asked', async ({
  page
}) => {
  const desk = await atTheWalk(page);
  await choose(desk, 'Never calling');
  const group = desk.tables.getByRole('group', { name: /^Before you do this.*mains.*What does channel 1/ });
  await expect(group).toBeFocused();
  await answer(desk, 'It runs, without a fault');
  await expect(desk.tables.getByText(/^By its design Exit 1 sees the car: [\d.]+ % at best/)).toBeVisible();
});

test('by the keyboard alone, back and forth, with the focus on each new question', async ({ page }) => {
  const desk = await atTheWalk(page);
  await desk.tables.getByRole('button', { name: 'Two lanes call together' }).focus();
  await page.keyboard.press('Enter');
  await expect(
    desk.tables.getByRole('group', { name: /Which circuit calls together with Exit 1/ })
  ).toBeFocused();
  await page.keyboard.press('Tab');
  await expect(desk.tables.getByRole('button', { name: 'Exit 2', exact: true })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(desk.tables.getByRole('group', { name: /What is on the road/ })).toBeFocused();
  await desk.tables.getByRole('button', { name: 'Back one step' }).press('Enter');
  await expect(desk.tables.getByRole('group', { name: /Which circuit calls together/ })).toBeFocused();
  await expect(desk.tables.getByRole('button', { name: 'Back one step' })).toBeDisabled();
});

test('a reload comes back to the same step; an answer can be changed; starting again forgets', async ({
  page
}) => {
  const desk = await atTheWalk(page);
  await choose(desk, 'No power');
  await answer(desk, 'Everything is dark');
  await expect(
    question(desk, 'Do the other units run: Exit 2 unit, Exit 3 unit, and Exit 4 unit?')
  ).toBeVisible();
  await answer(desk, 'No');
  await expect(question(desk, /^Is the supply of the cabinet on/)).toBeVisible();
  await desk.kept();
  await page.reload();
  await desk.settled();
  await expect(question(desk, /^Is the supply of the cabinet on/)).toBeVisible();
  await desk.tables.getByRole('button', { name: /^Change: Do the other units run/ }).click();
  await answer(desk, 'Yes');
  await expect(question(desk, /voltage at the supply terminals/)).toBeVisible();
  await desk.tables.getByRole('button', { name: 'Start again' }).click();
  await expect(question(desk, /does anything light up/)).toBeVisible();
  await desk.tables.getByRole('button', { name: 'Another complaint' }).click();
  await expect(desk.tables.getByRole('button', { name: 'Always calling' })).toBeVisible();
});

test('a step that wants a meter opens the form for that reading', async ({ page }) => {
  const desk = await atTheWalk(page, 'Exit 3');
  await choose(desk, 'Always calling');
  await answer(desk, 'No');
  await answer(desk, 'A fault: the loop is out of range');
  await expect(question(desk, /What direct-current resistance/)).toBeVisible();
  await desk.tables.getByRole('button', { name: 'Take the reading down' }).click();
  await expect(desk.tables.getByRole('radio', { name: 'Readings' })).toBeChecked();
  await expect(desk.tables.getByLabel('Circuit', { exact: true })).toHaveValue('C3');
  await expect(desk.tables.getByRole('radio', { name: 'Cabinet' })).toBeChecked();
});

test('accessible, wide and narrow', async ({ page }) => {
  test.slow();
  const desk = await atTheWalk(page);
  const atBothWidths = async () => {
    for (const [width, height] of [
      [1440, 900],
      [820, 1180]
    ] as const) {
      await page.setViewportSize({ width, height });
      await desk.lookAt('Field check');
      await expectAccessible(page, '#lower-view');
    }
  };
  await atBothWidths();
  await choose(desk, 'Calls with nobody there');
  await answer(desk, 'It goes on');
  await expect(question(desk, 'Do the calls come while the gate moves?')).toBeVisible();
  await atBothWidths();
  await desk.tables.getByRole('button', { name: 'Start again' }).click();
  await answer(desk, 'With Exit 2 off');
  await expect(question(desk, /^Exit 2 beats/)).toBeVisible();
  await atBothWidths();
});

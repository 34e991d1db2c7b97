import type { Locator, Page } from '@playwright/test';
import { Desk } from './hands';
import { expectAccessible } from './support/axe';
import { expect, test } from './support/test';

test.describe.configure({ timeout: 120_000 });

interface Fields {
  readonly setting?: number;
  readonly pinned?: boolean;
}

/** Equal loops side by side in neighbouring lanes, on one unit that runs all its channels at once, all on one setting. */
const beatingSite = (
  channels: readonly Fields[],
  { settings = [2.2e-7, 1.8e-7, 1.5e-7, 1.2e-7, 1e-7], scansInTurn = false, channels: most = 8 } = {}
): string => {
  const at = channels.map((_, k) => 2.6 * k);
  return JSON.stringify({
    format: 'kerfline-site',
    version: 1,
    name: 'Neighbours',
    lanes: at.map((x, k) => ({
      id: `lane${k + 1}`,
      name: `Lane ${k + 1}`,
      width: 2.6,
      centreline: [
        [x, -15],
        [x, 15]
      ]
    })),
    loops: at.map((x, k) => ({
      id: `L${k + 1}`,
      name: `Loop ${k + 1}`,
      turns: 3,
      wire: 'awg14',
      slot: { depth: 0.05, width: 0.008 },
      tail: { length: 3 },
      shape: { kind: 'rectangle', centre: [x, 0], width: 1.8, length: 1.8 }
    })),
    circuits: channels.map(({ setting = 1, pinned }, k) => ({
      id: `C${k + 1}`,
      name: `Gate ${k + 1}`,
      strings: [[{ loop: `L${k + 1}` }]],
      leadIn: { cable: 'pair-14', length: 20 },
      channel: {
        unit: 'U1',
        number: k + 1,
        frequencySetting: setting,
        tripThreshold: 0.001,
        ...(pinned ? { pinned } : {})
      }
    })),
    units: [
      {
        id: 'U1',
        name: 'Cabinet unit',
        channels: most,
        scansInTurn,
        measuringTime_s: 0.005,
        settings_F: settings,
        inductanceRange_H: [2e-5, 2e-3]
      }
    ]
  });
};

const FOUR: readonly Fields[] = [{}, {}, {}, {}];

async function openSite(page: Page, text: string): Promise<Desk> {
  const desk = new Desk(page);
  await desk.open();
  await desk.openText(text);
  await desk.settled();
  await page.getByRole('tab', { name: 'Frequencies' }).click();
  return desk;
}

async function planner(page: Page): Promise<Locator> {
  await page.getByRole('button', { name: 'Plan frequencies' }).click();
  return page.getByRole('dialog', { name: 'A frequency plan' });
}

const planned = async (dialog: Locator): Promise<void> => {
  await expect(dialog.getByText(/^Proven: /)).toBeVisible({ timeout: 30_000 });
};

const settingsIn = (text: string): number[] =>
  (JSON.parse(text) as { circuits: { channel: { frequencySetting: number } }[] }).circuits.map(
    ({ channel }) => channel.frequencySetting
  );

test('four gates on one setting are planned apart, in one step that undo takes back', async ({ page }) => {
  const desk = await openSite(page, beatingSite(FOUR));
  const dialog = await planner(page);
  await planned(dialog);
  await expect(
    dialog.getByText(/^Worst ripple ×\d+(\.\d+)? → ×0\.\d+ of the trip threshold\.$/)
  ).toBeVisible();
  await expect(dialog.getByText(/^False calls likely: \d → 0$/)).toBeVisible();
  await expect(dialog.getByRole('row', { name: /Gate 1/ })).toContainText('1 · ');
  await dialog.getByRole('button', { name: /^Change \d settings$/ }).click();
  await expect(dialog).toBeHidden();
  await desk.settled();
  const settings = settingsIn(await desk.savedText());
  expect(new Set(settings).size).toBe(4);
  await page.getByRole('button', { name: /^Undo: Frequency plan/ }).click();
  await desk.settled();
  expect(settingsIn(await desk.savedText())).toEqual([1, 1, 1, 1]);
});

test('by the keyboard alone: pin one, plan, use, undo', async ({ page }) => {
  const desk = await openSite(page, beatingSite(FOUR));
  await page.getByRole('button', { name: 'Plan frequencies' }).focus();
  await page.keyboard.press('Enter');
  const dialog = page.getByRole('dialog', { name: 'A frequency plan' });
  await planned(dialog);
  const pin = dialog.getByRole('checkbox', { name: /^Pin Gate 2/ });
  await pin.focus();
  await page.keyboard.press('Space');
  await expect(pin).toBeChecked();
  await planned(dialog);
  await expect(pin).toBeFocused();
  await expect(dialog.getByRole('row', { name: /Gate 2/ })).toContainText('as now');
  await expect(dialog.getByRole('row', { name: /Gate 2/ })).toContainText('pinned');
  const use = dialog.getByRole('button', { name: /^Change 3 settings$/ });
  await use.focus();
  await page.keyboard.press('Enter');
  await expect(dialog).toBeHidden();
  await desk.settled();
  const settings = settingsIn(await desk.savedText());
  expect(settings[1]).toBe(1);
  expect(new Set(settings).size).toBe(4);
  await page.keyboard.press('Control+z');
  await desk.settled();
  expect(settingsIn(await desk.savedText())).toEqual([1, 1, 1, 1]);
  // the pin was a step of its own
  await page.keyboard.press('Control+z');
  await desk.settled();
  expect(await desk.savedText()).not.toContain('"pinned": true');
});

test('few changes suffice where only clear pairs are asked for', async ({ page }) => {
  await openSite(page, beatingSite([{ setting: 1 }, { setting: 3 }, { setting: 5 }, { setting: 5 }]));
  const dialog = await planner(page);
  await planned(dialog);
  await dialog.getByLabel('the fewest changes that clear every pair').check();
  await planned(dialog);
  await expect(dialog.getByRole('button', { name: 'Change 1 setting', exact: true })).toBeEnabled();
  await expect(dialog.getByText(/^False calls likely: 1 → 0$/)).toBeVisible();
});

test('what settings cannot clear is said, with what else would', async ({ page }) => {
  await openSite(page, beatingSite([{}, {}, {}], { settings: [1e-7] }));
  const dialog = await planner(page);
  await expect(dialog.getByText(/^No channel is free to change: 3 with one setting only\./)).toBeVisible({
    timeout: 30_000
  });
  await expect(dialog.getByText(/^Gate 1 \+ Gate 2 stays at ×.*false calls likely/)).toBeVisible();
  await expect(dialog.getByText('What else would help Gate 1 + Gate 2:')).toBeVisible({ timeout: 30_000 });
  await expect(dialog.getByRole('listitem').filter({ hasText: 'further away' })).toBeVisible();
  await expect(dialog.getByRole('listitem').filter({ hasText: 'scanning in turn' })).toBeVisible();
  await expect(dialog.getByRole('button', { name: 'No settings to change' })).toBeDisabled();
});

test('channels that one unit scans in turn need no plan', async ({ page }) => {
  await openSite(page, beatingSite(FOUR, { scansInTurn: true }));
  const dialog = await planner(page);
  await expect(dialog.getByText(/^No two circuits run at the same time/)).toBeVisible({ timeout: 30_000 });
});

test('a site without channels says what to do, and Escape leaves everything as it was', async ({ page }) => {
  const site = JSON.parse(beatingSite(FOUR)) as { circuits: object[] };
  const bare = { ...site, circuits: site.circuits.map((circuit) => ({ ...circuit, channel: null })) };
  await openSite(page, JSON.stringify(bare));
  const dialog = await planner(page);
  await expect(dialog.getByText(/^No circuit is on a channel yet\./)).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(dialog).toBeHidden();
  await expect(page.getByRole('button', { name: 'Nothing to undo' })).toBeVisible();
});

test('a search that takes long shows how far it is, and can be cancelled and begun again', async ({
  page
}) => {
  // every gate on each of 64 settings: seconds of work
  const many = Array.from({ length: 64 }, (_, k) => 2.2e-7 / 1.02 ** k);
  await openSite(
    page,
    beatingSite(
      Array.from({ length: 24 }, () => ({})),
      { settings: many, channels: 24 }
    )
  );
  const dialog = await planner(page);
  const progress = dialog.getByRole('progressbar', { name: 'Share of the search done' });
  await expect
    .poll(() => progress.evaluate((bar: HTMLProgressElement) => bar.value), { timeout: 30_000 })
    .toBeGreaterThan(0.02);
  await dialog.getByRole('button', { name: 'Cancel' }).click();
  await expect(dialog.getByText(/^Stopped\./)).toBeVisible();
  await expect(progress).toBeHidden();
  await dialog.getByRole('button', { name: 'Plan again' }).click();
  await expect(progress).toBeVisible();
  // closing it ends the search too: nothing is left behind
  await page.keyboard.press('Escape');
  await expect(dialog).toBeHidden();
  await expect(page.getByRole('button', { name: 'Nothing to undo' })).toBeVisible();
});

test.describe('accessibility', () => {
  test('the planner has no accessibility problem', async ({ page }) => {
    await openSite(page, beatingSite([{}, { pinned: true }, {}, {}]));
    const dialog = await planner(page);
    await planned(dialog);
    await expectAccessible(page, 'dialog');
  });
});

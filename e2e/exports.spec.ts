import { spawnSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import type { Download, Page } from '@playwright/test';
import readWorkbook from 'read-excel-file/node';
import { Desk } from './hands';
import { expectAccessible } from './support/axe';
import { expect, test } from './support/test';

const dialogOf = (page: Page) => page.getByRole('dialog', { name: 'Export' });

async function openExport(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'More about files' }).click();
  await page.getByRole('button', { name: 'Export …' }).click();
  await expect(dialogOf(page)).toBeVisible();
}

async function make(page: Page, file: string): Promise<Download> {
  const waiting = page.waitForEvent('download');
  await dialogOf(page).getByRole('button', { name: file }).click();
  return waiting;
}

const bytesOf = async (download: Download) => readFileSync(await download.path());

test('a table from the page is the one from the command line, byte for byte', async ({ page }, info) => {
  test.setTimeout(120_000);
  const desk = new Desk(page);
  await desk.open();
  await desk.startFrom('Stop line with two lanes');
  const site = info.outputPath('site.kerfline.json');
  writeFileSync(site, await desk.savedText());
  await openExport(page);
  for (const [file, only, ending] of [
    ['Take-off as CSV', 'quantities', 'take-off.csv'],
    ['Readings and settings as CSV', 'readings', 'readings.csv'],
    ['Cutting plan as CSV', 'cutting', 'cutting-plan.csv']
  ] as const) {
    const download = await make(page, file);
    expect(download.suggestedFilename()).toContain(ending);
    const { stdout } = spawnSync(process.execPath, [
      ...['--import', 'tsx', 'src/cli/report.ts', site, '--format', 'csv', '--only', only]
    ]);
    expect((await bytesOf(download)).toString()).toBe(stdout.toString());
    await expect(dialogOf(page).getByRole('status')).toContainText('downloads');
  }
});

test('a workbook opens as one, and CSV for a spreadsheet begins with its mark', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await openExport(page);
  const sheets = await readWorkbook(await bytesOf(await make(page, 'Take-off as XLSX')));
  expect(sheets.map(({ sheet }) => sheet)).toEqual(expect.arrayContaining(['Take-off', 'To buy', 'Notes']));
  await expect(dialogOf(page).getByRole('status')).toContainText('.xlsx');
  await dialogOf(page).getByLabel('CSV for a spreadsheet').check();
  const bytes = await bytesOf(await make(page, 'Cutting plan as CSV'));
  expect([...bytes.subarray(0, 3)]).toEqual([0xef, 0xbb, 0xbf]);
});

test('designs side by side are a table of text and a workbook, and a site with one design says why there is none', async ({
  page
}) => {
  test.setTimeout(120_000);
  const desk = new Desk(page);
  await desk.open();
  await openExport(page);
  await dialogOf(page).getByRole('button', { name: 'Designs compared as CSV' }).click();
  await expect(dialogOf(page).getByRole('alert')).toContainText(/one design/i);
  await page.keyboard.press('Escape');

  await desk.openText(readFileSync('samples/two-ways-to-guard-a-gate.kerfline.json', 'utf8'));
  await expect(page).toHaveTitle(/Sedgewell/);
  await openExport(page);
  const text = (await bytesOf(await make(page, 'Designs compared as CSV'))).toString();
  const rows = text.split('\r\n').map((line) => line.split(','));
  const at = rows[0]!.findIndex((cell) => cell.includes('Two in series'));
  expect(rows[0]).toContain('One long rectangle');
  const cut = rows.find((row) => row.includes('Saw cut'))!;
  expect(Number(cut[at])).toBeGreaterThan(Number(cut[rows[0]!.indexOf('One long rectangle')]));
  expect(cut).toContain('▼ worse');

  const [sheet] = await readWorkbook(await bytesOf(await make(page, 'Designs compared as XLSX')));
  expect(sheet!.sheet).toBe('Designs compared');
  const same = sheet!.data.find((row) => row.includes('Saw cut'))!;
  // the text as fine as it is worth reading, the workbook as it was reckoned
  expect(same.flatMap((cell) => (typeof cell === 'number' ? [cell.toFixed(1)] : []))).toContain(cut[at]);
  expect(same).toContain('▼ worse');
});

test('a file that is cancelled is not handed over', async ({ page }) => {
  const downloads: string[] = [];
  page.on('download', (download) => downloads.push(download.suggestedFilename()));
  const desk = new Desk(page);
  await desk.open();
  await openExport(page);
  // the click on Cancel comes as soon as there is something to cancel
  await page.evaluate(() => {
    new MutationObserver((_, observer) => {
      const cancel = [...document.querySelectorAll('dialog button')].find(
        ({ textContent }) => textContent.trim() === 'Cancel'
      );
      if (!(cancel instanceof HTMLElement)) return;
      observer.disconnect();
      cancel.click();
    }).observe(document.body, { subtree: true, childList: true });
  });
  await dialogOf(page).getByRole('button', { name: 'Sheet as PDF' }).click();
  await expect(dialogOf(page).getByRole('status')).toContainText('cancelled, nothing was kept');
  // and another one can be made at once
  await make(page, 'Cutting plan as CSV');
  expect(downloads).toHaveLength(1);
});

test('by keyboard alone, and without an accessibility problem', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await page.keyboard.press('Control+E');
  await expect(dialogOf(page)).toBeVisible();
  await expectAccessible(page, 'dialog');
  await dialogOf(page).getByRole('button', { name: 'Report as JSON' }).focus();
  const waiting = page.waitForEvent('download');
  await page.keyboard.press('Enter');
  expect((await waiting).suggestedFilename()).toMatch(/-report\.json$/);
  await page.keyboard.press('Escape');
  await expect(dialogOf(page)).toHaveCount(0);
});

import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import type { Locator, Page } from '@playwright/test';
import { readPdf } from '../tests/support/pdf';
import { INSTRUMENTS, visitOf } from '../tests/support/visits';
import { Desk } from './hands';
import { expectAccessible } from './support/axe';
import { expect, test } from './support/test';

// A record waits for every figure that it shows.
test.describe.configure({ timeout: 120_000 });

interface Wired {
  readonly circuits: readonly {
    readonly id: string;
    readonly strings: readonly { readonly loop: string }[][];
  }[];
}

/** The site on which meters were read, its record still empty. */
function read(text: string): string {
  const site = JSON.parse(text) as Wired;
  const readings = site.circuits.flatMap(({ id, strings }, at) => visitOf(id, strings[0]![0]!.loop, at + 1));
  return JSON.stringify({
    ...site,
    name: 'Orchard gate',
    readings,
    fieldCheck: { instruments: INSTRUMENTS }
  });
}

async function atRecord(page: Page): Promise<Desk> {
  const desk = new Desk(page);
  await desk.open();
  await desk.openText(read(await desk.savedText()));
  await expect(page).toHaveTitle(/Orchard gate/);
  await desk.lookAt('Field check');
  await desk.tables.getByText('Record', { exact: true }).click();
  await expect(desk.tables.getByRole('table', { name: /^Readings of/ })).toBeVisible({ timeout: 60_000 });
  await desk.settled();
  return desk;
}

const row = (desk: Desk, name: string | RegExp) =>
  desk.tables.getByRole('table', { name: /^Readings of/ }).getByRole('row', { name });

interface Saved {
  readonly fieldCheck: { readonly record?: Record<string, unknown> };
}
const record = async (desk: Desk) => (JSON.parse(await desk.savedText()) as Saved).fieldCheck.record;

test('the record is filled in, accepted and taken back, a step at a time', async ({ page }) => {
  const desk = await atRecord(page);
  const circuits = desk.tables.getByRole('table', { name: 'Circuits' });
  await expect(circuits.getByRole('row', { name: /Left, front/ })).toContainText('7 of 13');
  await expect(circuits.getByRole('row', { name: /Left, front/ })).toContainText('open');
  await expect(row(desk, /^Direct-current resistance 0\.930 Ω/)).toContainText('4 May 2031, RM');
  await expect(row(desk, /^Frequency/)).toContainText('not measured');

  await desk.tables.getByLabel('Tested by').fill('R. Marten');
  await desk.tables.getByLabel('Tested by').press('Enter');
  await desk.tables.getByRole('button', { name: 'Today' }).click();
  await desk.tables.getByRole('radio', { name: 'accepted with remarks' }).check({ force: true });
  await desk.tables.getByLabel('Remarks on Left, front').fill('Seal the lid.\nThen close it.');
  await desk.tables.getByLabel('Remarks on Left, front').press('Control+Enter');
  await expect(circuits.getByRole('row', { name: /Left, front/ })).toContainText('accepted with remarks');
  await circuits.getByRole('button', { name: 'Right, rear' }).click();
  await expect(desk.tables.getByRole('region', { name: 'Readings of Right, rear' }).first()).toBeVisible();
  await desk.tables.getByRole('radio', { name: 'refused' }).check({ force: true });

  const written = await record(desk);
  expect(written).toMatchObject({ testedBy: 'R. Marten' });
  expect(written!['date']).toMatch(/^\d{4}-\d\d-\d\d$/);
  expect(written!['circuits']).toEqual([
    { circuit: 'C1', verdict: 'conditional', remarks: 'Seal the lid.\nThen close it.' },
    { circuit: 'C4', verdict: 'refused' }
  ]);

  await desk.undo();
  await expect(circuits.getByRole('row', { name: /Right, rear/ })).toContainText('open');
  await desk.undo();
  expect((await record(desk))!['circuits']).toEqual([{ circuit: 'C1', verdict: 'conditional' }]);
  for (let step = 0; step < 3; step++) await desk.undo();
  expect(await record(desk)).toBeUndefined();
  await desk.redo();
  await expect(desk.tables.getByLabel('Tested by')).toHaveValue('R. Marten');
});

test('record and form are the files that the command line makes, byte by byte', async ({ page }, info) => {
  const desk = await atRecord(page);
  await desk.tables.getByRole('radio', { name: 'accepted', exact: true }).check({ force: true });
  const site = info.outputPath('site.kerfline.json');
  writeFileSync(site, await desk.savedText());
  for (const [button, only, text] of [
    ['Commissioning record as PDF', 'record', 'Commissioning record'],
    ['Empty form as PDF', 'form', 'Readings to take']
  ] as const) {
    const waiting = page.waitForEvent('download');
    await desk.tables.getByRole('button', { name: button }).click();
    const bytes = readFileSync(await (await waiting).path());
    const { pages } = await readPdf(bytes);
    expect(pages.flatMap(({ texts }) => texts.map((each) => each.text)).join(' ')).toContain(text);
    const made = info.outputPath(`${only}.pdf`);
    execFileSync(process.execPath, [
      ...['--import', 'tsx', 'src/cli/report.ts', site],
      ...['--format', 'pdf', '--only', only, '--output', made]
    ]);
    expect(bytes.equals(readFileSync(made)), `${only} differs`).toBe(true);
  }
});

test('what was measured is a file too, and the papers are in the same dialog', async ({ page }) => {
  const desk = await atRecord(page);
  await page.keyboard.press('Control+e');
  const dialog = page.getByRole('dialog');
  const waiting = page.waitForEvent('download');
  await dialog.getByRole('button', { name: 'Measured readings as CSV' }).click();
  const text = readFileSync(await (await waiting).path(), 'utf8');
  expect(text).toMatch(/^Table,Circuit,Where,/);
  expect(text).toContain(',Rain since Tuesday.');
  for (const name of ['Commissioning record as PDF', 'Empty form as PDF', 'Measured readings as XLSX'])
    await expect(dialog.getByRole('button', { name })).toBeVisible();
  await expect(desk.plan).toBeAttached();
});

/** Instead of the dialog of the browser: what would have been on the paper, as its words. */
async function holdPrinting(page: Page): Promise<() => Promise<readonly string[]>> {
  await page.evaluate(() => {
    Object.assign(window, { printed: [] });
    window.print = () => {
      const pages = [...document.querySelectorAll('#printed-sheet > svg')];
      (window as unknown as { printed: string[] }).printed.push(
        ...pages.map((each) => [...each.querySelectorAll('text')].map((text) => text.textContent).join(' '))
      );
      dispatchEvent(new Event('afterprint'));
    };
  });
  return () =>
    page.evaluate(() => {
      const held = window as unknown as { printed: string[] };
      return held.printed.splice(0);
    });
}

test('the browser prints the pages of record and form', async ({ page }) => {
  const desk = await atRecord(page);
  const printed = await holdPrinting(page);
  let pages: readonly string[] = [];
  const taken = async () => (pages = [...pages, ...(await printed())]).length;

  await desk.tables.getByRole('button', { name: 'Print record' }).click();
  await expect.poll(taken, { timeout: 60_000 }).toBeGreaterThan(1);
  expect(pages.join(' ')).toContain('Signatures');
  expect(pages.join(' ')).toContain('0.930 Ω');

  pages = [];
  await desk.tables.getByLabel('Paper', { exact: true }).selectOption('A3');
  await desk.tables.getByRole('checkbox', { name: /^Empty form/ }).check();
  await desk.tables.getByRole('button', { name: 'Print empty form' }).click();
  await expect.poll(taken, { timeout: 60_000 }).toBe(4);
  expect(pages[3]).toContain('Right, rear');
  expect(pages[3]).not.toContain('0.930 Ω');
});

test('the record can be read by everybody, wide and narrow, in either language', async ({ page }) => {
  test.setTimeout(240_000);
  const desk = await atRecord(page);
  await desk.tables.getByRole('radio', { name: 'accepted', exact: true }).check({ force: true });
  await expect(desk.tables.getByLabel('Remarks on Left, front')).toBeVisible();
  for (const [width, height] of [
    [1440, 900],
    [820, 1180]
  ] as const) {
    await page.setViewportSize({ width, height });
    await desk.lookAt('Field check');
    await expectAccessible(page, '#lower-view');
    const panel = await desk.tables.boundingBox();
    for (const name of ['Print record', 'Print empty form']) {
      const box = await desk.tables.getByRole('button', { name }).boundingBox();
      expect(box!.x + box!.width).toBeLessThanOrEqual(panel!.x + panel!.width);
    }
  }
  // German words are longer: the figures fit beside one another all the same
  const hidden = (region: Locator) => region.evaluate((each) => each.scrollWidth - each.clientWidth);
  expect(await hidden(desk.tables.getByRole('region', { name: /^Readings of/ }))).toBe(0);
  await desk.kept();
  await page.evaluate(() => {
    const settings = JSON.parse(localStorage.getItem('kerfline settings') ?? '{}') as object;
    localStorage.setItem('kerfline settings', JSON.stringify({ ...settings, language: 'de' }));
  });
  await page.reload();
  await expect(page.locator('html')).toHaveAttribute('lang', 'de');
  const sheet = page
    .getByRole('navigation', { name: 'Unter dem Plan' })
    .getByRole('button', { name: 'Tabellen' });
  if ((await sheet.getAttribute('aria-expanded')) !== 'true') await sheet.click();
  const figures = page.getByRole('region', { name: /^Messwerte von/ });
  await expect(figures).toBeVisible({ timeout: 60_000 });
  expect(await hidden(figures)).toBe(0);
});

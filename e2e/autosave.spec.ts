import type { Page } from '@playwright/test';
import { Desk } from './hands';
import { expect, test } from './support/test';

test('work survives a reload without being saved', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.startFrom('Blank');
  await desk.takeTool('Rectangle');
  await desk.drag([-80, -60], [80, 60]);
  await desk.type('Turns', '7');
  await desk.kept();
  const text = await desk.savedText();
  await page.reload();
  await desk.settled();
  await expect(page.getByText(/Restored as it was at/)).toBeVisible();
  expect(await desk.savedText()).toBe(text);
});

test('a change made just before the page goes away is kept too', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.type('Site name', 'In a hurry');
  await page.reload();
  await desk.settled();
  await expect(page).toHaveTitle(/^In a hurry/);
});

test('what is typed and not entered yet when the page goes away is kept too', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.field('Site name').fill('Typed in a hurry');
  await page.reload();
  await desk.settled();
  await expect(page).toHaveTitle(/^Typed in a hurry/);
});

/** Another page keeps the database busy, so that it says nothing to whoever opens it; the result lets it answer again. */
async function silence(page: Page): Promise<() => Promise<void>> {
  await page.evaluate(
    () =>
      new Promise<void>((resolve) => {
        const held = indexedDB.open('kerfline');
        held.onsuccess = () => {
          const database = held.result;
          const upgrade = indexedDB.open('kerfline', database.version + 1);
          upgrade.onupgradeneeded = () => {
            upgrade.transaction?.abort();
          };
          upgrade.onblocked = () => {
            resolve();
          };
          Object.assign(globalThis, {
            letAnswer: () => {
              database.close();
            }
          });
        };
      })
  );
  return () =>
    page.evaluate(() => {
      (globalThis as unknown as { letAnswer: () => void }).letAnswer();
    });
}

test('where the database does not answer, the own site opens by itself once it does, or is offered', async ({
  page,
  context
}) => {
  test.slow();
  const desk = new Desk(page);
  await desk.open();
  await desk.type('Site name', 'Slow to come');
  await desk.kept();
  const other = await context.newPage();
  await other.goto('./?safe');
  let letAnswer = await silence(other);
  const waiting = page.getByText('What is kept in this browser cannot be read yet.');
  await page.reload();
  await expect(waiting).toBeVisible({ timeout: 30_000 });
  await expect(page).not.toHaveTitle(/^Slow to come/);
  await letAnswer();
  await expect(page).toHaveTitle(/^Slow to come/, { timeout: 20_000 });
  await expect(waiting).toHaveCount(0);
  await expect(page.getByText(/Restored as it was at/)).toBeVisible();

  letAnswer = await silence(other);
  await page.reload();
  await expect(waiting).toBeVisible({ timeout: 30_000 });
  await desk.type('Site name', 'Begun meanwhile');
  await letAnswer();
  await page.getByRole('button', { name: 'Open it' }).click({ timeout: 20_000 });
  await expect(page).toHaveTitle(/^Slow to come/);
  await page.getByRole('button', { name: 'Open', exact: true }).click();
  await expect(page.getByRole('dialog').getByRole('button', { name: /^Begun meanwhile/ })).toBeVisible();
});

test('a change survives even where the browser drops the last write', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await page.evaluate(() => {
    // what a page that goes away asks of the database may never be done
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('The page goes away.', 'AbortError');
    };
  });
  await desk.type('Site name', 'Dropped');
  await page.reload();
  await desk.settled();
  await expect(page).toHaveTitle(/^Dropped/);
  await desk.kept();
  await page.reload();
  await desk.settled();
  await expect(page).toHaveTitle(/^Dropped/);
});

test('a second tab never writes over the work of the first', async ({ page, context }) => {
  const first = new Desk(page);
  await first.open();
  await first.type('Site name', 'First tab');
  await first.kept();
  const second = new Desk(await context.newPage());
  await second.open();
  await second.type('Site name', 'Second tab');
  await second.kept();
  await second.page.close();
  await page.reload();
  await first.settled();
  await expect(page).toHaveTitle(/^First tab/);
});

/** Puts text in the place of everything that is kept. */
async function damage(desk: Desk, text: string): Promise<void> {
  await desk.page.evaluate(
    (damaged) =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('kerfline');
        opening.onerror = () => {
          reject(new Error('cannot open'));
        };
        opening.onsuccess = () => {
          const change = opening.result.transaction('texts', 'readwrite');
          const cursor = change.objectStore('texts').openCursor();
          cursor.onsuccess = () => {
            const at = cursor.result;
            if (!at) return;
            at.update(damaged);
            at.continue();
          };
          change.oncomplete = () => {
            opening.result.close();
            resolve();
          };
        };
      }),
    text
  );
}

test('what cannot be read is put aside, offered and never written over', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.type('Site name', 'Soon damaged');
  await desk.kept();
  await damage(desk, '{"format": "kerfline-site", "vers');
  await page.reload();
  await desk.settled();
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Download it' }).click();
  const stream = await (await download).createReadStream();
  const chunks: Buffer[] = [];
  for await (const chunk of stream) chunks.push(chunk as Buffer);
  expect(Buffer.concat(chunks).toString()).toBe('{"format": "kerfline-site", "vers');
  await desk.type('Site name', 'New work');
  await desk.kept();
  await page.reload();
  await desk.settled();
  await expect(page).toHaveTitle(/^New work/);
});

test('the page can be started without reading anything that is stored', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.type('Site name', 'Kept before');
  await desk.kept();
  await desk.open({ address: './?safe' });
  await expect(page).not.toHaveTitle(/^Kept before/);
  await desk.open();
  await expect(page).toHaveTitle(/^Kept before/);
});

test('a full storage is said at once, work goes on and can be saved to a file', async ({ page }) => {
  const desk = new Desk(page);
  await page.addInitScript(() => {
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('The quota has been exceeded.', 'QuotaExceededError');
    };
  });
  await desk.open();
  await desk.type('Site name', 'Too much');
  const banner = page.getByRole('alert');
  await expect(banner).toContainText('the storage of this browser is full');
  await expect(page.getByText('Not saved', { exact: true })).toBeVisible();
  await desk.type('Site name', 'Still working');
  const download = page.waitForEvent('download');
  await banner.getByRole('button', { name: 'Save to a file' }).click();
  expect((await download).suggestedFilename()).toBe('Still-working.kerfline.json');
});

import { Desk } from './hands';
import { expect, test } from './support/test';

test('a site that is saved and opened again is the same to the byte', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.startFrom('Stop line with two lanes');
  await desk.type('Site name', 'Fennel Road / Quarry Lane: stop line');
  const download = await desk.save();
  expect(download.suggestedFilename()).toBe('Fennel-Road-Quarry-Lane-stop-line.kerfline.json');
  const text = await desk.savedText();
  await desk.startFrom('Blank');
  await desk.openText(text);
  await desk.settled();
  expect(await desk.savedText()).toBe(text);
});

test('a field that this release does not know is kept', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  const document = JSON.parse(await desk.savedText()) as Record<string, unknown>;
  await desk.openText(JSON.stringify({ ...document, surveyor: { ref: 17 } }));
  await desk.settled();
  expect(JSON.parse(await desk.savedText())).toMatchObject({ surveyor: { ref: 17 } });
});

const site = { format: 'kerfline-site', version: 1 };
const loop = {
  id: 'L1',
  turns: 3,
  wire: 'awg14',
  slot: { depth: 0.05, width: 0.008 },
  shape: { kind: 'rectangle', centre: [0, 0], width: 2, length: 2 }
};

test('a bad file is refused with every place that is wrong, and the open site is untouched', async ({
  page
}) => {
  const desk = new Desk(page);
  await desk.open();
  const before = await desk.savedText();
  for (const [text, where] of [
    ['{"format": "kerfline-site"', 'the whole file'],
    ['{"hello": 1}', 'format'],
    [JSON.stringify({ ...site, version: 99 }), 'version'],
    [JSON.stringify({ ...site, loops: [{ ...loop, turns: -3 }] }), 'loops[0].turns'],
    [JSON.stringify({ ...site, loops: [{ ...loop, wire: 'string' }] }), 'loops[0].wire']
  ] as const) {
    await desk.openText(text, 'broken.json');
    const dialog = page.getByRole('dialog', { name: 'The file was not opened' });
    await expect(dialog).toContainText('broken.json');
    await expect(dialog.getByRole('rowheader', { name: where, exact: true })).toBeVisible();
    await dialog.getByRole('button', { name: 'Close' }).click();
    await expect(dialog).toHaveCount(0);
  }
  expect(await desk.savedText()).toBe(before);
});

test('a file that is dropped on the page is opened', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  const text = JSON.stringify({ ...site, name: 'Dropped site', loops: [loop] });
  const transfer = await page.evaluateHandle((content) => {
    const data = new DataTransfer();
    data.items.add(new File([content], 'dropped.json', { type: 'application/json' }));
    return data;
  }, text);
  await page.dispatchEvent('body', 'drop', { dataTransfer: transfer });
  await expect(page).toHaveTitle(/^Dropped site/);
});

test('with a picker, Save writes to the chosen file, and from then on to the same one', async ({ page }) => {
  // The browser's private folder gives real file handles without a picker on the screen.
  await page.addInitScript(() => {
    const picker = async () =>
      (await navigator.storage.getDirectory()).getFileHandle('kept.json', { create: true });
    Object.assign(window, { showSaveFilePicker: picker });
  });
  const desk = new Desk(page);
  await desk.open({ hasPickers: true });
  const save = page.getByRole('button', { name: 'Save', exact: true });
  await save.click();
  await expect(save).toHaveAttribute('title', /^Save to kept\.json/);
  await desk.type('Site name', 'Second name');
  await save.click();
  const content = () =>
    page.evaluate(async () => {
      const handle = await (await navigator.storage.getDirectory()).getFileHandle('kept.json');
      return (await handle.getFile()).text();
    });
  await expect.poll(content).toContain('Second name');

  // somebody else writes to it
  await page.evaluate(async () => {
    const handle = await (await navigator.storage.getDirectory()).getFileHandle('kept.json');
    const writable = await handle.createWritable();
    await writable.write('a colleague’s work');
    await writable.close();
  });
  await desk.type('Site name', 'Third name');
  await save.click();
  await expect(page.getByText('kept.json was changed elsewhere')).toBeVisible();
  expect(await content()).toBe('a colleague’s work');
  const replace = page.getByRole('button', { name: 'Replace what is there' });
  // another site has nothing to do with it
  await desk.startFrom('Blank');
  await expect(replace).toBeHidden();
  await page.getByRole('button', { name: 'Open', exact: true }).click();
  await page
    .getByRole('dialog')
    .getByRole('button', { name: /^Third name/ })
    .click();
  await expect(page).toHaveTitle(/^.?\s?Third name/);
  await save.click();
  await replace.click();
  await expect.poll(content).toContain('Third name');
  await expect(replace).toBeHidden();
});

test('a picker that is forbidden ends in a download', async ({ page }) => {
  await page.addInitScript(() => {
    const refuse = () => Promise.reject(new DOMException('Blocked by policy', 'SecurityError'));
    Object.assign(window, { showSaveFilePicker: refuse });
  });
  const desk = new Desk(page);
  await desk.open({ hasPickers: true });
  expect(JSON.parse(await desk.savedText())).toMatchObject({ format: 'kerfline-site' });
});

test('a file of a newer version can be looked at as a copy, and is not written to', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.type('Site name', 'Mine');
  await desk.kept();
  await desk.openText(JSON.stringify({ ...site, version: 99, name: 'From the future', loops: [loop] }));
  await page.getByRole('dialog').getByRole('button', { name: 'Look at a copy' }).click();
  await expect(page).toHaveTitle(/^From the future \(read only\)/);
  await expect(page.getByText('made by a newer release')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Save', exact: true })).toBeDisabled();
  await page.reload();
  await desk.settled();
  await expect(page).toHaveTitle(/^Mine/);
});

test('the title and Save say when the file is behind, and the file is found again after a reload', async ({
  page
}) => {
  await page.addInitScript(() => {
    const picker = async () =>
      (await navigator.storage.getDirectory()).getFileHandle('kept.json', { create: true });
    Object.assign(window, { showSaveFilePicker: picker });
  });
  const desk = new Desk(page);
  await desk.open({ hasPickers: true });
  const save = page.getByRole('button', { name: 'Save', exact: true });
  await save.click();
  await expect(save).toHaveAttribute('title', /kept\.json.*Everything is in kept\.json too/);
  await desk.type('Site name', 'Changed since');
  await expect(page).toHaveTitle(/^• Changed since \(not in its file\)/);
  await expect(save).toHaveAttribute('title', /not in kept\.json yet/);
  await desk.kept();
  await page.reload();
  await desk.settled();
  await expect(page).toHaveTitle(/^• Changed since/);
  await expect(save).toHaveAttribute('title', /not in kept\.json yet/);
  await save.click();
  await expect(page).toHaveTitle(/^Changed since – /);
  const content = await page.evaluate(async () => {
    const handle = await (await navigator.storage.getDirectory()).getFileHandle('kept.json');
    return (await handle.getFile()).text();
  });
  expect(content).toContain('Changed since');
  await desk.type('Site name', 'Changed again');
  await expect(page).toHaveTitle(/^• Changed again/);
  await desk.undo();
  await expect(page).toHaveTitle(/^Changed since – /);
});

import { readFileSync } from 'node:fs';
import { Desk } from './hands';
import { expectAccessible } from './support/axe';
import { colourOnPlan, dropFile, junction, pdf, png, scannedPdf } from './support/pictures';
import { expect, test } from './support/test';

interface Saved {
  readonly underlays: readonly {
    readonly name: string;
    readonly picture: { readonly data: string; readonly width: number; readonly height: number } | null;
    readonly metresPerPixel: number;
    readonly at: readonly [number, number];
    readonly locked: boolean;
    readonly scaledBy?: { readonly distance_m: number };
  }[];
  readonly loops: readonly unknown[];
  readonly lanes: readonly unknown[];
}

const savedBy = async (desk: Desk): Promise<Saved> => JSON.parse(await desk.savedText()) as Saved;

test('a junction is traced from a photograph, and the photograph is in the file', async ({ page }) => {
  test.slow();
  const desk = new Desk(page);
  await desk.open();
  await desk.startFrom('Blank');
  const photo = junction();
  await dropFile(page, 'Miller junction.png', 'image/png', photo);

  // The first thing after the drop: two points and what lies between them.
  const bar = page.getByRole('form', { name: 'Scale the picture' });
  await expect(bar).toContainText('Click two points of “Miller junction”');
  await desk.click([-60, 20]);
  await desk.click([60, 20]);
  await expect(bar.getByLabel('Distance between the points')).toBeFocused();
  await page.keyboard.type('7.2 m');
  await page.keyboard.press('Enter');
  await expect(page.getByText(/^Scaled: 7\.2\d* m between the points/)).toBeVisible();
  await page.keyboard.press('Escape');

  for (const x of [-30, 30]) {
    await desk.takeTool('Lane');
    await desk.click([x, 150]);
    await desk.click([x, 30]);
    await page.keyboard.press('Enter');
  }
  await desk.takeTool('Rectangle');
  await desk.drag([-45, 45], [-15, 75]);
  expect(await desk.inductance()).toBeGreaterThan(5);

  const saved = await savedBy(desk);
  expect(saved.lanes).toHaveLength(2);
  expect(saved.loops).toHaveLength(1);
  const [underlay] = saved.underlays;
  expect(underlay).toMatchObject({ name: 'Miller junction', locked: true, scaledBy: { distance_m: 7.2 } });
  expect(Buffer.from(underlay!.picture!.data, 'base64').equals(photo)).toBe(true);

  const text = await desk.savedText();
  await desk.startFrom('Blank');
  await desk.openText(text);
  await desk.settled();
  await page.getByRole('button', { name: /^Miller junction/ }).focus();
  await page.keyboard.press('Enter');
  await expect(desk.field('Width on the plan')).toHaveValue(/\d m$/);
  await page.keyboard.press('Escape');
  expect(await desk.savedText()).toBe(text);
});

test('the picture is seen on the plan, in its own colours by night too, and hidden when told', async ({
  page
}) => {
  await page.emulateMedia({ colorScheme: 'dark' });
  const desk = new Desk(page);
  await desk.open();
  await desk.startFrom('Blank');
  await dropFile(page, 'Red.png', 'image/png', png(400, 300, () => [200, 40, 40])); // prettier-ignore
  await desk.type('Opacity, typed', '100 %');
  await expect.poll(() => colourOnPlan(page, [10, 10])).toEqual([200, 40, 40]);
  await expectAccessible(page);
  await desk.details.getByLabel('Hidden').check();
  await expect.poll(() => colourOnPlan(page, [10, 10])).toEqual([0, 0, 0]);
  await desk.undo();
  await expect.poll(() => colourOnPlan(page, [10, 10])).toEqual([200, 40, 40]);
});

test('scaling again moves no loop unless it is asked to, and undo takes it back in one step', async ({
  page
}) => {
  test.slow();
  const desk = new Desk(page);
  await desk.open();
  await desk.startFrom('Blank');
  await dropFile(page, 'Yard.png', 'image/png', junction());
  await page.getByRole('button', { name: 'Later' }).click();
  await desk.takeTool('Rectangle');
  await desk.drag([-40, -40], [40, 40]);
  const side = await desk.field('Width').inputValue();
  const before = await desk.savedText();

  async function scaleTo(distance: string, carries: boolean) {
    await page.getByRole('button', { name: /^Yard/ }).focus();
    await page.keyboard.press('Enter');
    await desk.details.getByRole('button', { name: 'Scale by two points' }).click();
    await desk.click([-100, 60]);
    await desk.click([100, 60]);
    const bar = page.getByRole('form', { name: 'Scale the picture' });
    if (carries) {
      await bar.getByRole('checkbox', { name: /^Move and scale the thing/ }).check();
      await expect(bar).toContainText('Sizes of loops');
    }
    await bar.getByLabel('Distance between the points').fill(distance);
    await bar.getByRole('button', { name: 'Scale', exact: true }).click();
  }

  await scaleTo('3 m', false);
  const alone = await savedBy(desk);
  expect(alone.loops).toEqual((JSON.parse(before) as Saved).loops);
  expect(alone.underlays[0]!.scaledBy).toMatchObject({ distance_m: 3 });
  await desk.undo();
  expect(await desk.savedText()).toBe(before);

  await scaleTo('3 m', true);
  await desk.outlineItem('loop').focus();
  await page.keyboard.press('Enter');
  await expect(desk.field('Width')).not.toHaveValue(side);
  await desk.undo();
  expect(await desk.savedText()).toBe(before);
});

test('a picture that is too fine is made smaller, and says so', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.startFrom('Blank');
  const large = png(5000, 1000, (x, y) => [x % 256, y % 256, 90]);
  await dropFile(page, 'Aerial.png', 'image/png', large);
  await expect(page.getByText('from 5000 × 1000 to 4096 × 819 pixels')).toBeVisible();
  const { picture } = (await savedBy(desk)).underlays[0]!;
  expect(picture).toMatchObject({ width: 4096, height: 819 });
});

test('a page of a PDF is chosen by its picture and laid under the plan', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.startFrom('Blank');
  await dropFile(page, 'Survey.pdf', 'application/pdf', pdf(2));
  const dialog = page.getByRole('dialog', { name: 'Which page of Survey?' });
  await expect(dialog.getByRole('button')).toHaveCount(3);
  await expectAccessible(page, 'dialog');
  await dialog.getByRole('button', { name: 'Page 2' }).click();
  await expect(page.getByRole('form', { name: 'Scale the picture' })).toContainText('Survey, page 2');
  const [underlay] = (await savedBy(desk)).underlays;
  expect(underlay?.picture).toMatchObject({ width: 4096, height: 2731 });
  // The bar of page 2 runs from 20 to 140 of 300 points across, at half the height.
  await desk.type('Opacity, typed', '100 %');
  await expect.poll(() => colourOnPlan(page, [-60, 0])).toEqual([51, 51, 51]);
  await expect.poll(() => colourOnPlan(page, [60, 0])).toEqual([255, 255, 255]);
});

test('a PDF of one page is laid under at once, also one that was scanned', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.startFrom('Blank');
  await dropFile(page, 'Scan.pdf', 'application/pdf', scannedPdf());
  await expect(page.getByRole('form', { name: 'Scale the picture' })).toContainText('“Scan”');
  await desk.type('Opacity, typed', '100 %');
  const [left, right] = [[-60, 10], [60, 10]] as const; // prettier-ignore
  await expect.poll(() => colourOnPlan(page, left)).toEqual([200, 40, 40]);
  await expect.poll(() => colourOnPlan(page, right)).toEqual([30, 90, 200]);
});

test('what is no picture is refused in words, and the site stays as it is', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  const before = await desk.savedText();
  const files = [
    ['broken.png', 'image/png', png(40, 40, () => [0, 0, 0]).subarray(0, 60), 'may be damaged'],
    ['broken.pdf', 'application/pdf', Buffer.from('%PDF-1.4\nnothing'), 'cannot be read as a PDF'],
    [
      'drawing.svg',
      'image/svg+xml',
      Buffer.from('<svg xmlns="http://www.w3.org/2000/svg"/>'),
      'can hold programs'
    ],
    ['film.gif', 'image/gif', Buffer.from('GIF89a'), 'not a PNG, JPEG or WebP']
  ] as const;
  for (const [name, type, bytes, reason] of files) {
    await dropFile(page, name, type, bytes);
    await expect(page.getByRole('alert')).toContainText(name);
    await expect(page.getByRole('alert')).toContainText(reason);
  }
  expect(await desk.savedText()).toBe(before);
});

test('a missing picture keeps its place, is told of at opening, and can be brought back', async ({
  page
}) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.startFrom('Blank');
  await dropFile(page, 'Court.png', 'image/png', junction());
  // a picture takes a moment to be read
  await expect(page.getByRole('form', { name: 'Scale the picture' })).toBeVisible();
  const whole = await savedBy(desk);
  expect(whole.underlays).toHaveLength(1);
  const without = { ...whole, underlays: whole.underlays.map((each) => ({ ...each, picture: null })) };
  await desk.openText(JSON.stringify(without));
  await expect(page.getByText(/A picture of this site is missing: “Court”/)).toBeVisible();
  await page.getByRole('button', { name: 'Show the place' }).click();
  const choosing = page.waitForEvent('filechooser');
  await desk.details.getByRole('button', { name: 'Choose the picture …' }).click();
  await (await choosing).setFiles({ name: 'Court.png', mimeType: 'image/png', buffer: junction() });
  await expect(page.getByText(/A picture of this site is missing/)).toHaveCount(0);
  expect((await savedBy(desk)).underlays[0]?.picture).toEqual(whole.underlays[0]?.picture);
});

test('a warning that was put away comes back with the next site that lacks a picture', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.startFrom('Blank');
  await dropFile(page, 'Court.png', 'image/png', junction());
  await expect(page.getByRole('form', { name: 'Scale the picture' })).toBeVisible();
  const whole = await savedBy(desk);
  const lacking = (name: string) =>
    JSON.stringify({
      ...whole,
      name,
      underlays: whole.underlays.map((each) => ({ ...each, name, picture: null }))
    });
  await desk.openText(lacking('North'));
  const warning = page.getByRole('status').filter({ hasText: 'A picture of this site is missing: “North”' });
  await warning.getByRole('button', { name: 'Dismiss' }).click();
  await expect(warning).toHaveCount(0);
  await desk.openText(lacking('South'));
  await expect(page.getByText(/A picture of this site is missing: “South”/)).toBeVisible();
});

test('a picture that is still being read when another site is opened is not laid under that one', async ({
  page
}) => {
  const desk = new Desk(page);
  await page.addInitScript(() => {
    const decode = window.createImageBitmap.bind(window);
    const slow = async (source: ImageBitmapSource, options?: ImageBitmapOptions) => {
      await new Promise((resolve) => setTimeout(resolve, 2500));
      document.body.dataset['decoded'] = 'yes';
      return decode(source, options);
    };
    Object.assign(window, { createImageBitmap: slow });
  });
  await desk.open();
  await desk.startFrom('Blank');
  const other = await desk.savedText();
  await dropFile(page, 'Court.png', 'image/png', junction());
  await expect(page.getByText('Reading Court.png')).toBeVisible();
  await desk.openText(other);
  await expect(page.locator('body[data-decoded]')).toHaveCount(1);
  await expect(page.getByText('Reading Court.png')).toHaveCount(0);
  await desk.settled();
  expect((await savedBy(desk)).underlays).toHaveLength(0);
});

test('saving over a file that has the picture does not lose it', async ({ page }) => {
  await page.addInitScript(() => {
    const handle = async () =>
      (await navigator.storage.getDirectory()).getFileHandle('court.json', { create: true });
    Object.assign(window, { showSaveFilePicker: handle, showOpenFilePicker: async () => [await handle()] });
  });
  const desk = new Desk(page);
  await desk.open({ hasPickers: true });
  await desk.startFrom('Blank');
  await dropFile(page, 'Court.png', 'image/png', junction());
  await page.getByRole('button', { name: 'Later' }).click();
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  /** Empty until it is there, and while it is being written: a file that changes under its reader cannot be read. */
  const content = () =>
    page.evaluate(async () => {
      try {
        const handle = await (await navigator.storage.getDirectory()).getFileHandle('court.json');
        return await (await handle.getFile()).text();
      } catch {
        return '';
      }
    });
  await expect.poll(content).toContain('"mediaType"');
  const whole = await content();
  // The site is opened from a file without the picture, which then is given the picture by somebody else.
  const without = JSON.parse(whole) as { underlays: { picture: unknown }[] };
  without.underlays[0]!.picture = null;
  const write = (text: string) =>
    page.evaluate(async (value) => {
      const handle = await (await navigator.storage.getDirectory()).getFileHandle('court.json');
      const writable = await handle.createWritable();
      await writable.write(value);
      await writable.close();
    }, text);
  await write(JSON.stringify(without));
  await page.getByRole('button', { name: 'Open', exact: true }).click();
  await page.getByRole('button', { name: 'Open a file' }).click();
  await expect(page.getByText(/A picture of this site is missing/)).toBeVisible();
  await write(whole);
  await desk.type('Site name', 'Court yard');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await expect.poll(content).toContain('Court yard');
  const saved = JSON.parse(await content()) as Saved;
  expect(saved.underlays[0]?.picture).toEqual((JSON.parse(whole) as Saved).underlays[0]?.picture);
  await expect(page.getByText(/A picture of this site is missing/)).toHaveCount(0);
});

test('a picture can be chosen by a command, and is kept over a reload', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.startFrom('Blank');
  await desk.plan.focus();
  const choosing = page.waitForEvent('filechooser');
  await page.keyboard.press('Shift+I');
  const path = test.info().outputPath('Lot.png');
  const { writeFileSync, mkdirSync } = await import('node:fs');
  mkdirSync(test.info().outputDir, { recursive: true });
  writeFileSync(path, junction());
  await (await choosing).setFiles(path);
  await expect(page.getByRole('form', { name: 'Scale the picture' })).toBeVisible();
  await desk.kept();
  await page.reload();
  await desk.settled();
  const [underlay] = (await savedBy(desk)).underlays;
  expect(Buffer.from(underlay!.picture!.data, 'base64').equals(readFileSync(path))).toBe(true);
});

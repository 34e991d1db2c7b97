import { readFileSync } from 'node:fs';
import { Desk } from './hands';
import { expectAccessible } from './support/axe';
import { dropFile } from './support/pictures';
import { expect, test } from './support/test';

interface Saved {
  readonly underlays: readonly {
    readonly name: string;
    readonly locked: boolean;
    readonly metresPerPixel: number;
    readonly at: readonly [number, number];
    readonly lines?: { readonly width: number; readonly height: number; readonly paths: readonly unknown[] };
  }[];
  readonly loops: readonly { readonly id: string; readonly name: string; readonly turns: number }[];
  readonly circuits: readonly unknown[];
}
const savedBy = async (desk: Desk): Promise<Saved> => JSON.parse(await desk.savedText()) as Saved;

type Line = readonly [x1: number, y1: number, x2: number, y2: number, layer: string];

/** A drawing of lines as every program writes one; `units` 4 are millimetres, 6 metres, left out none at all. */
function dxf(lines: readonly Line[], units?: number): Buffer {
  const header = units === undefined ? '' : `0\nSECTION\n2\nHEADER\n9\n$INSUNITS\n70\n${units}\n0\nENDSEC\n`;
  const things = lines.map(([x1, y1, x2, y2, layer]) => `0\nLINE\n8\n${layer}\n10\n${x1}\n20\n${y1}\n11\n${x2}\n21\n${y2}\n`); // prettier-ignore
  const text = `0\nTEXT\n8\nWords\n10\n0\n20\n0\n40\n1\n1\n<b>north</b>\n`;
  return Buffer.from(`${header}0\nSECTION\n2\nENTITIES\n${things.join('')}${text}0\nENDSEC\n0\nEOF\n`);
}

const yard: readonly Line[] = [
  [-6, -8, 6, -8, 'Kerb'],
  [6, -8, 6, 8, 'Kerb'],
  [-6, -8, -6, 8, 'Kerb'],
  [0, -8, 0, 8, 'Paint'],
  [-6, 0, 6, 0, '<img src=x onerror=alert(1)>']
];

test('a drawing is looked at, laid under the plan, scaled, undone, and is in the file', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.startFrom('Blank');
  await dropFile(page, 'Mill yard.dxf', 'image/vnd.dxf', dxf(yard.map(([a, b, c, d, layer]) => [a * 1000, b * 1000, c * 1000, d * 1000, layer]), 4)); // prettier-ignore
  const dialog = page.getByRole('dialog', { name: 'Import lines or loops' });
  await expect(dialog.getByRole('img', { name: /12\.00 m by 16\.00 m/ })).toBeVisible();
  await expect(dialog.getByLabel('Unit of the drawing')).toHaveValue('mm');
  await expect(dialog).toContainText('The file says: millimetres.');
  await expect(dialog).toContainText('Left out: 1 text.');
  await expect(dialog.getByText('<img src=x onerror=alert(1)>')).toBeVisible();
  await dialog.getByLabel('Paint').uncheck();
  await expectAccessible(page, 'dialog');
  await dialog.getByRole('button', { name: 'Lay under the plan' }).click();
  await expect(dialog).toBeHidden();

  const [underlay] = (await savedBy(desk)).underlays;
  expect(underlay).toMatchObject({ name: 'Mill yard', locked: true, metresPerPixel: 0.001, at: [0, 0] });
  expect(underlay!.lines).toMatchObject({ width: 12_000, height: 16_000 });
  await expect(desk.details).toContainText('To the scale of the drawing');
  await expect(desk.field('Width on the plan')).toHaveValue('12 m');
  await expect(page.getByText('Not to scale')).toHaveCount(0);

  // lines are no picture, in the names of steps neither
  await desk.details.getByLabel('Hidden').check();
  await page.getByRole('button', { name: /^Undo.*Hide lines/ }).click();

  // opened again it is the same, and one step back there is nothing
  const text = await desk.savedText();
  await desk.undo();
  expect((await savedBy(desk)).underlays).toEqual([]);
  await desk.redo();
  expect(await desk.savedText()).toBe(text);
  await desk.startFrom('Blank');
  await desk.openText(text);
  expect(await desk.savedText()).toBe(text);
});

test('a drawing without a unit asks for it, one from far away is moved here and says so', async ({
  page
}) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.startFrom('Blank');
  const far: Line[] = yard.map(([a, b, c, d, layer]) => [
    a + 345_678,
    b + 5_678_901,
    c + 345_678,
    d + 5_678_901,
    layer
  ]);
  await dropFile(page, 'survey.dxf', '', dxf(far));
  const dialog = page.getByRole('dialog', { name: 'Import lines or loops' });
  await expect(dialog).toContainText('The file does not say its unit.');
  const lay = dialog.getByRole('button', { name: 'Lay under the plan' });
  await expect(lay).toBeDisabled();
  await dialog.getByLabel('Unit of the drawing').selectOption({ label: 'metres: 12.00 m × 16.00 m' });
  await expect(dialog).toContainText('it is moved here');
  await lay.click();
  const [underlay] = (await savedBy(desk)).underlays;
  expect(Math.hypot(...underlay!.at)).toBeLessThan(1_000);
  // the two kerbs that meet are one
  expect(underlay!.lines!.paths).toHaveLength(4);
});

test('what is no drawing is refused with a reason, and the plan stays as it was', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.startFrom('Blank');
  const before = await desk.savedText();
  const dialog = page.getByRole('dialog', { name: 'Import lines or loops' });
  const files = [
    ['old.dwg', 'AC1032\u0000\u0000\u0000', 'DWG'],
    ['letter.dxf', 'Dear Sir,\nthe loops are cut.\n', 'no DXF file'],
    ['packed.dxf', 'Somebody Binary DXF\r\n\u001a\u0000', 'binary DXF'],
    ['half.dxf', dxf(yard, 6).toString().slice(0, 200), 'ends before its end mark'],
    ['photo.csv', '\u0089PNG', 'no column has a name']
  ] as const;
  for (const [name, text, reason] of files) {
    await dropFile(page, name, '', Buffer.from(text, 'latin1'));
    await expect(dialog.getByRole('alert')).toContainText(`${name} cannot be used`);
    await expect(dialog.getByRole('alert')).toContainText(reason);
    await page.keyboard.press('Escape');
    await expect(dialog).toBeHidden();
  }
  expect(await desk.savedText()).toBe(before);
});

test('a table becomes loops: wrong rows are listed, sound ones come in as one step', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.startFrom('Blank');
  await page.getByRole('application').focus();
  await page.keyboard.press('Control+K');
  await page.keyboard.type('import lines');
  await page.keyboard.press('Enter');
  const dialog = page.getByRole('dialog', { name: 'Import lines or loops' });
  const table = 'id,name,shape,x (m),y (m),width,length,turns\nL1,=1+1,rectangle,0,0,6\',72in,3\nL1,Second,circle,5,0,1.8,,4\nL3,Third,blob,0,9,1,1,3\nL4,Fourth,rectangle,0,9,nine,1,99\n'; // prettier-ignore
  await dialog
    .locator('input[type=file]')
    .setInputFiles({ name: 'loops.csv', mimeType: 'text/csv', buffer: Buffer.from(table) });
  await expect(dialog).toContainText('2 of 4 rows can come in.');
  await expect(dialog).toContainText('comes in as L1-2: L1 is taken');
  await expect(dialog).toContainText('shape: found “blob”, expected rectangle, quadrupole');
  await expect(dialog).toContainText('turns: found “99”, expected between 1 and 50');
  await expectAccessible(page, 'dialog');
  await dialog.getByLabel('Show only rows').check();
  await expect(dialog.getByText('L1-2')).toBeHidden();
  await dialog.getByRole('button', { name: 'Bring in 2 loops' }).press('Enter');
  await expect(dialog).toBeHidden();
  await desk.settled();

  const saved = await savedBy(desk);
  expect(saved.loops).toMatchObject([
    { id: 'L1', name: '=1+1', turns: 3, shape: { width: 1.8288, length: 1.8288 } },
    { id: 'L1-2', turns: 4, shape: { kind: 'circle', diameter: 1.8 } }
  ]);
  expect(saved.circuits).toHaveLength(2);
  await desk.undo();
  expect((await savedBy(desk)).loops).toEqual([]);
});

test('the loops of a site leave as a table and come back equal', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  const { loops } = await savedBy(desk);
  const dialog = page.getByRole('dialog', { name: 'Import lines or loops' });
  const ask = async () => {
    await page.keyboard.press('Control+O');
    await page.getByRole('button', { name: 'Import lines or loops' }).click();
  };
  await ask();
  const downloading = page.waitForEvent('download');
  await dialog.getByRole('button', { name: 'Download this site’s loops' }).click();
  const buffer = readFileSync(await (await downloading).path());
  await page.keyboard.press('Escape');
  await desk.startFrom('Blank');
  await ask();
  await dialog.locator('input[type=file]').setInputFiles({ name: 'l.csv', mimeType: 'text/csv', buffer });
  await dialog.getByRole('button', { name: `Bring in ${loops.length} loop` }).click();
  const again = (await savedBy(desk)).loops;
  const bare = (list: Saved['loops']) => list.map((loop) => ({ ...loop, tail: undefined }));
  expect(bare(again)).toEqual(bare(loops));
});

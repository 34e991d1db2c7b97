import { readFileSync } from 'node:fs';
import { Desk } from './hands';
import { expect, test } from './support/test';

interface Saved {
  readonly lanes: readonly { readonly centreline: readonly (readonly [number, number])[] }[];
  readonly marks: readonly { readonly kind: string }[];
  readonly loops: readonly { readonly shape: { readonly width: number; readonly length: number } }[];
  readonly circuits: readonly { readonly strings: readonly (readonly unknown[])[] }[];
}

test('a stop line with two loops is laid out, wired and read by the keyboard alone', async ({ page }) => {
  const desk = new Desk(page);
  const { keyboard } = page;
  await desk.open();
  await page.getByRole('button', { name: 'New', exact: true }).focus();
  await keyboard.press('Enter');
  await page.getByRole('dialog').getByRole('button', { name: 'Blank' }).focus();
  await keyboard.press('Enter');
  await desk.settled();
  await desk.plan.focus();

  // The lane: from three metres below the middle, twelve metres up.
  await keyboard.press('l');
  await keyboard.press('Enter');
  for (let step = 0; step < 3; step++) await keyboard.press('Shift+ArrowDown');
  await keyboard.press('Space');
  await keyboard.type('12');
  await keyboard.press('Tab');
  await keyboard.type('90');
  await keyboard.press('Enter');
  await keyboard.press('Enter');
  await expect(desk.outlineItem('lane')).toHaveAttribute('aria-pressed', 'true');

  // The cross begins at what is selected: in the lane.
  await keyboard.press('s');
  for (let step = 0; step < 4; step++) await keyboard.press('Shift+ArrowUp');
  await keyboard.press('Space');
  await expect(desk.outlineItem('stop line')).toHaveAttribute('aria-pressed', 'true');

  for (const down of [3, 3]) {
    await keyboard.press('r');
    for (let step = 0; step < down; step++) await keyboard.press('Shift+ArrowDown');
    await keyboard.press('Space');
    await keyboard.type('1.8');
    await keyboard.press('Tab');
    await keyboard.type('1.8');
    await keyboard.press('Enter');
  }
  expect(await desk.loopCount()).toBe(2);

  await keyboard.press('Control+a');
  await keyboard.press('w');
  await keyboard.press('Escape');
  await keyboard.press('Enter');
  await keyboard.press('PageDown');
  await expect(desk.outlineItem('loop')).toHaveAttribute('aria-pressed', 'true');
  expect(await desk.inductance()).toBeGreaterThan(20);

  const waiting = page.waitForEvent('download');
  await keyboard.press('Control+s');
  const site = JSON.parse(readFileSync(await (await waiting).path(), 'utf8')) as Saved;
  const [start, end] = site.lanes[0]!.centreline;
  expect(end![1] - start![1]).toBeCloseTo(12, 6);
  expect(site.marks.map(({ kind }) => kind)).toContain('stop-line');
  expect(site.loops.map(({ shape: { width, length } }) => [width, length])).toEqual([[1.8, 1.8], [1.8, 1.8]]); // prettier-ignore
  expect(site.circuits.map(({ strings }) => strings.flat().length)).toEqual([2]);
});

test('where the cross is and what it snaps to is said, but not at every step', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.plan.focus();
  await page.keyboard.press('c');
  await page.keyboard.press('Enter');
  for (let step = 0; step < 5; step++) await page.keyboard.press('ArrowRight');
  await expect(page.getByRole('status').filter({ hasText: /m, .* m/ })).toBeAttached();
  await page.keyboard.press('Escape');
  await expect(page.getByRole('button', { name: 'Select', exact: true })).toHaveAttribute(
    'aria-pressed',
    'true'
  );
});

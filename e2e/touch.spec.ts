import { Desk } from './hands';
import { Fingers } from './support/fingers';
import { expect, test } from './support/test';

// A tablet held upright.
test.use({ viewport: { width: 820, height: 1180 }, hasTouch: true, isMobile: true });

/** A blank site with one square loop in the middle of the plan, selected; grids and neighbours do not attract. */
async function withOneLoop(desk: Desk): Promise<Fingers> {
  await desk.open();
  await desk.startFrom('Blank');
  for (const name of ['Snap to the grid', 'Snap to lanes and loops']) {
    const button = desk.page.getByRole('button', { name, exact: true });
    if ((await button.getAttribute('aria-pressed')) === 'true') await button.tap();
  }
  await desk.plan.focus();
  await desk.page.keyboard.press('Shift+R');
  await desk.settled();
  return Fingers.on(desk.plan, desk.page);
}

const metres = async (desk: Desk, label: string) =>
  Number.parseFloat((await desk.field(label).inputValue()).replace('−', '-'));

/** How many metres the selected loop is moved by when a finger drags it to the right from the middle. */
async function movedBy(desk: Desk, fingers: Fingers, pixels: number): Promise<number> {
  const before = await metres(desk, 'Centre x');
  await fingers.drag([[[0, 0], [pixels, 0]]]); // prettier-ignore
  await expect.poll(() => metres(desk, 'Centre x')).not.toBe(before);
  return (await metres(desk, 'Centre x')) - before;
}

test('a finger moves a loop, and one undo takes the whole way back', async ({ page }) => {
  const desk = new Desk(page);
  const fingers = await withOneLoop(desk);
  const before = await metres(desk, 'Centre x');
  expect(await movedBy(desk, fingers, 120)).toBeGreaterThan(0.3);
  await desk.undo();
  expect(await metres(desk, 'Centre x')).toBe(before);
});

test('two fingers that spread zoom in: the same drag is then fewer metres', async ({ page }) => {
  const desk = new Desk(page);
  const fingers = await withOneLoop(desk);
  const before = await movedBy(desk, fingers, 60);
  await desk.undo();
  const text = await desk.savedText();
  await fingers.drag([
    [[-50, 0], [-100, 0]],
    [[50, 0], [100, 0]]
  ]); // prettier-ignore
  const after = await movedBy(desk, fingers, 60);
  expect(before / after).toBeCloseTo(2, 1);
  await desk.undo();
  expect(await desk.savedText()).toBe(text);
});

test('two fingers side by side move the view and nothing on it', async ({ page }) => {
  const desk = new Desk(page);
  const fingers = await withOneLoop(desk);
  const text = await desk.savedText();
  await fingers.drag([
    [[-40, 0], [-40, 150]],
    [[40, 0], [40, 150]]
  ]); // prettier-ignore
  expect(await desk.savedText()).toBe(text);
  await fingers.tap([0, -60]);
  await expect(desk.details.getByLabel('Site name')).toBeVisible();
  await fingers.tap([0, 150]);
  await expect(desk.field('Turns')).toBeVisible();
});

test('what the browser takes away in the middle of a drag is dropped', async ({ page }) => {
  const desk = new Desk(page);
  const fingers = await withOneLoop(desk);
  const text = await desk.savedText();
  await fingers.drag([[[0, 0], [120, 0]]], 'touchCancel'); // prettier-ignore
  expect(await desk.savedText()).toBe(text);
});

test('a finger that rests on a loop selects it and asks for the menu once', async ({ page }) => {
  const desk = new Desk(page);
  const fingers = await withOneLoop(desk);
  await desk.plan.evaluate((surface) => {
    surface.addEventListener('contextmenu', () => {
      surface.dataset['asked'] = String(Number(surface.dataset['asked'] ?? 0) + 1);
    });
  });
  await fingers.tap([0, -200]);
  await expect(desk.details.getByLabel('Site name')).toBeVisible();
  await fingers.rest([0, 0], 900);
  await expect(desk.plan).toHaveAttribute('data-asked', '1');
  await expect(desk.field('Turns')).toBeVisible();
});

test('once a pen has drawn, a finger only moves the view', async ({ page }) => {
  const desk = new Desk(page);
  const fingers = await withOneLoop(desk);
  await desk.takeTool('Rectangle');
  await fingers.penDrag([100, 60], [180, 140]);
  await expect.poll(() => desk.loopCount()).toBe(2);
  const text = await desk.savedText();
  await desk.takeTool('Select');
  await fingers.drag([[[0, 0], [0, -120]]]); // prettier-ignore
  expect(await desk.savedText()).toBe(text);
  await desk.settled();
  // on a loaded machine the view may still be on its way to where the finger left it
  await expect(async () => {
    await fingers.penDrag([0, -120], [60, -120]);
    expect(await desk.savedText()).not.toBe(text);
  }).toPass();
});

test('the plan, the tools and every panel are in reach without scrolling the page', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  const bar = page.getByRole('navigation', { name: 'Under the plan' });
  for (const [name, shown] of [
    ['Findings', page.getByRole('region', { name: 'Findings' })],
    ['Tables', desk.tables],
    ['Details', desk.details.getByLabel('Site name')]
  ] as const) {
    await bar.getByRole('button', { name }).tap();
    await expect(shown).toBeInViewport();
    await expect(desk.plan).toBeInViewport({ ratio: 0.9 });
    const { scrolled, wide } = await page.evaluate(() => ({
      scrolled: document.documentElement.scrollHeight - innerHeight,
      wide: document.documentElement.scrollWidth - innerWidth
    }));
    expect(scrolled).toBeLessThanOrEqual(0);
    expect(wide).toBeLessThanOrEqual(0);
  }
});

test('what a finger works is at least 44 pixels high', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  const small = await page.evaluate(() =>
    [...document.querySelectorAll('header button, [role="toolbar"] button, aside select, aside input')]
      .filter((element) => element.checkVisibility())
      .map((element) => ({ name: element.textContent, box: element.getBoundingClientRect() }))
      .filter(({ box }) => box.height < 44)
      .map(({ name, box }) => `${name?.trim()}: ${box.height}`)
  );
  expect(small).toEqual([]);
});

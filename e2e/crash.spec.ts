import type { BrowserContext, Page } from '@playwright/test';
import { Desk } from './hands';
import { kill } from './support/kill';
import { expect, test } from './support/test';

interface Wired {
  /** How many more steps of a save are let through. */
  stepsLeft?: number;
  reached?: () => void;
}

/** Stops the page for good before a given step of what it asks of the database, as a dying process would. */
function wire(): void {
  const wired = globalThis as Wired;
  const count = () => {
    if (wired.stepsLeft === undefined) return;
    if (wired.stepsLeft-- > 0) return;
    wired.reached?.();
    // Nothing runs after this: the page is killed while it stands here.
    for (;;);
  };
  const wrap = (prototype: object, name: string) => {
    const original = Reflect.get(prototype, name) as (...given: unknown[]) => unknown;
    Reflect.set(prototype, name, function (this: unknown, ...given: unknown[]) {
      count();
      return original.apply(this, given);
    });
  };
  for (const name of ['get', 'getAll', 'put', 'delete']) wrap(IDBObjectStore.prototype, name);
  wrap(IDBDatabase.prototype, 'transaction');
  wrap(IDBTransaction.prototype, 'commit');
}

async function opened(context: BrowserContext): Promise<Desk> {
  const page: Page = await context.newPage();
  await page.addInitScript(wire);
  const desk = new Desk(page);
  await desk.open();
  return desk;
}

test('a page that is killed at any step of a save opens with the site as it was before or after it', async ({
  page,
  context
}) => {
  test.slow();
  await page.close();
  let desk = await opened(context);
  await desk.type('Site name', 'State 0');
  await desk.kept();
  const outcomes = new Set<string>();
  let step = 0;
  for (; ; step++) {
    const before = `State ${step}`;
    const after = `State ${step + 1}`;
    let isReached = false;
    await desk.page.exposeFunction('reached', () => {
      isReached = true;
    });
    await desk.page.evaluate((left) => {
      (globalThis as Wired).stepsLeft = left;
    }, step);
    await desk.type('Site name', after);
    const poll = expect.poll(() => isReached, { timeout: 4000 });
    // A save that has no such step is through.
    if (
      !(await poll.toBe(true).then(
        () => true,
        () => false
      ))
    )
      break;
    await kill(desk.page);
    await desk.page.close();
    desk = await opened(context);
    const name = await desk.field('Site name').inputValue();
    expect([before, after]).toContain(name);
    outcomes.add(name === before ? 'before' : 'after');
    await desk.type('Site name', after);
    await desk.kept();
  }
  // The owner is looked up, and a state, its text and the site are put: both must have come up on the way.
  expect(step).toBeGreaterThan(5);
  expect([...outcomes].sort()).toEqual(['after', 'before']);
});

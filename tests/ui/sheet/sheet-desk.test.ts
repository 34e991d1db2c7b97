import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { Job } from '#exchange/job';
import type { Sheet } from '#exchange/sheet/page';
import { demoSite } from '#plan/demo';
import { SheetDesk } from '#ui/sheet/sheet-desk.svelte.ts';

const sheet: Sheet = { kind: 'pages', pages: [], scale: 100, site: demoSite() };

interface Open {
  readonly job: Job;
  readonly resolve: (sheet: Sheet) => void;
  readonly reject: (problem: Error) => void;
}

/** A bench on which every sheet waits until the test answers. */
function bench() {
  const open: Open[] = [];
  const composeSheet = (job: Job) =>
    new Promise<Sheet>((resolve, reject) => {
      open.push({ job, resolve, reject });
    });
  return { open, desk: new SheetDesk({ composeSheet }) };
}

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

const rest = () => vi.advanceTimersByTimeAsync(1000);

test('the first sheet is composed at once, and of a row of edits only the last one', async () => {
  const { open, desk } = bench();
  desk.follow(false);
  await rest();
  expect(open).toHaveLength(1);
  open[0]!.resolve(sheet);
  await rest();
  expect(desk.sheet).toBe(sheet);
  expect(desk.isBusy).toBe(false);
  for (let edit = 0; edit < 5; edit++) {
    desk.follow(false);
    expect(desk.isBusy).toBe(true);
    await vi.advanceTimersByTimeAsync(50);
  }
  await rest();
  expect(open).toHaveLength(2);
});

test('nothing is composed while a gesture is in hand', async () => {
  const { open, desk } = bench();
  desk.follow(true);
  await rest();
  expect(open).toHaveLength(0);
  desk.follow(false);
  await rest();
  expect(open).toHaveLength(1);
});

test('what is late is ended, and never shown', async () => {
  const { open, desk } = bench();
  desk.follow(false);
  await rest();
  desk.follow(false);
  expect(open[0]!.job.signal.aborted).toBe(true);
  open[0]!.resolve({ ...sheet, scale: 500 });
  await rest();
  expect(desk.sheet).toBeNull();
  open[1]!.resolve(sheet);
  await rest();
  expect(desk.sheet).toBe(sheet);
});

test('a failure is told with its reason, keeps what is shown, and is over with the next sheet', async () => {
  const { open, desk } = bench();
  desk.follow(false);
  await rest();
  open[0]!.resolve(sheet);
  await rest();
  desk.follow(false);
  await rest();
  open[1]!.reject(new Error('no figures'));
  await rest();
  expect(desk.failure).toBe('no figures');
  expect(desk.sheet).toBe(sheet);
  expect(desk.isBusy).toBe(false);
  desk.follow(false);
  await rest();
  open[2]!.resolve(sheet);
  await rest();
  expect(desk.failure).toBeNull();
});

test('who leaves ends what is composed', async () => {
  const { open, desk } = bench();
  desk.follow(false);
  await rest();
  desk.end();
  expect(open[0]!.job.signal.aborted).toBe(true);
});

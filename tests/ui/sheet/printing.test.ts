import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { Job } from '#exchange/job';
import { printing } from '#ui/sheet/printing.svelte.ts';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  printing.cancel();
  vi.useRealTimers();
});

/** A print that is ready when the test says so. */
function print() {
  const said: string[] = [];
  let job: Job | null = null;
  let settle: { resolve: () => void; reject: (problem: Error) => void } | null = null;
  const done = printing.start(
    (given) =>
      new Promise<void>((resolve, reject) => {
        job = given;
        settle = { resolve, reject };
      }),
    (text) => void said.push(text)
  );
  return { said, job: () => job!, settle: () => settle!, done };
}

test('what comes at once needs no words, what takes long says so and how far it is', async () => {
  const quick = print();
  quick.settle().resolve();
  await quick.done;
  await vi.advanceTimersByTimeAsync(1_000);
  expect(quick.said).toEqual([]);
  expect(printing.isBusy).toBe(false);

  const slow = print();
  await vi.advanceTimersByTimeAsync(1_000);
  expect(slow.said).toHaveLength(1);
  expect(printing.isBusy).toBe(true);
  slow.job().onShare(0.4);
  expect(printing.share).toBe(0.4);
  slow.settle().resolve();
  await slow.done;
  expect([printing.isBusy, printing.share]).toEqual([false, null]);
});

test('a failure is said; one that was ended, by hand or by a newer one, is not', async () => {
  const failing = print();
  failing.settle().reject(new Error('no figures'));
  await failing.done;
  expect(failing.said).toEqual([expect.stringContaining('nothing was printed')]);

  const ended = print();
  printing.cancel();
  expect(ended.job().signal.aborted).toBe(true);
  ended.settle().reject(new Error('ended'));
  await ended.done;

  const older = print();
  const newer = print();
  expect(older.job().signal.aborted).toBe(true);
  await vi.advanceTimersByTimeAsync(1_000);
  older.settle().reject(new Error('ended'));
  await older.done;
  // the newer one is still waited for
  expect(printing.isBusy).toBe(true);
  expect([ended.said, older.said]).toEqual([[], []]);
  newer.settle().resolve();
  await newer.done;
  expect(printing.isBusy).toBe(false);
});

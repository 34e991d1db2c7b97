import { expect, test } from 'vitest';
import { Making } from '#ui/exports/making.svelte.ts';
import type { Bench, ExportOutcome } from '#ui/bench';

const benchThat = (...answers: (() => Promise<ExportOutcome>)[]) =>
  ({ exportFile: () => answers.shift()!() }) as unknown as Bench;

test('what makes files and cannot be loaded is said, and tried again at the next wish', async () => {
  const bench = benchThat(
    () => Promise.reject(new TypeError('no network')),
    () => Promise.resolve({ kind: 'made', name: 'plan.svg' })
  );
  const making = new Making();
  await making.start(bench, 'plan-svg');
  expect(making.progress).toBeNull();
  expect(making.result).toMatchObject({ isBad: true, text: expect.stringContaining('no network') as string });
  await making.start(bench, 'plan-svg');
  expect(making.result).toMatchObject({ isBad: false, text: expect.stringContaining('plan.svg') as string });
});

test('one that is ended before it was loaded is ended, whatever came of the loading', async () => {
  const making = new Making();
  const made = making.start(
    benchThat(() => Promise.reject(new TypeError('no network'))),
    'plan-svg'
  );
  making.cancel();
  await made;
  expect(making.result?.isBad).toBe(false);
});

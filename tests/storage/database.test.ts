import { openDB } from 'idb';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { createDatabaseStore } from '#storage/database';
import { SilentError } from '#storage/refusal';

vi.mock('idb', () => ({ openDB: vi.fn() }));

const asked = vi.mocked(openDB);
const never = () => new Promise<never>(() => undefined);
const holding = (marks: readonly string[]) => ({ getAll: () => Promise.resolve(marks) }) as never;

beforeEach(() => {
  vi.useFakeTimers();
  asked.mockReset();
});
afterEach(() => {
  vi.useRealTimers();
});

/** What the store says of its states within so many seconds. */
async function said(store: ReturnType<typeof createDatabaseStore>, seconds: number): Promise<unknown> {
  const answer = store.marks().catch((problem: unknown) => problem);
  await vi.advanceTimersByTimeAsync(seconds * 1000);
  return answer;
}

test('a database whose opening was forgotten is asked again, though not at every use', async () => {
  asked.mockImplementation(never);
  const store = createDatabaseStore();
  expect(await said(store, 10)).toBeInstanceOf(SilentError);
  for (let use = 0; use < 8; use++) expect(await said(store, 1)).toBeInstanceOf(SilentError);
  expect(asked.mock.calls.length).toBeLessThanOrEqual(2);
  asked.mockResolvedValue(holding(['kept']));
  await vi.advanceTimersByTimeAsync(10_000);
  expect(await said(store, 1)).toEqual(['kept']);
  const { length } = asked.mock.calls;
  await vi.advanceTimersByTimeAsync(60_000);
  expect(await said(store, 1)).toEqual(['kept']);
  expect(asked.mock.calls).toHaveLength(length);
});

test('an answer to the first asking that comes late still counts', async () => {
  let answer: (database: never) => void = () => {};
  asked.mockImplementationOnce(
    () =>
      new Promise((resolve) => {
        answer = resolve;
      })
  );
  asked.mockImplementation(never);
  const store = createDatabaseStore();
  expect(await said(store, 10)).toBeInstanceOf(SilentError);
  await vi.advanceTimersByTimeAsync(20_000);
  expect(await said(store, 1)).toBeInstanceOf(SilentError);
  expect(asked.mock.calls.length).toBeGreaterThan(1);
  answer(holding(['kept']));
  expect(await said(store, 0)).toEqual(['kept']);
});

import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { createPatience } from '#storage/patience';
import { refusalOf, SilentError } from '#storage/refusal';

const never = new Promise<string>(() => undefined);
const idle = () => false;

describe('a database that may not answer', () => {
  beforeEach(() => {
    vi.useFakeTimers();
  });
  afterEach(() => {
    vi.useRealTimers();
  });

  test('has time to answer, and what it says comes through as it is', async () => {
    const patient = createPatience();
    const late = new Promise<string>((resolve) => {
      setTimeout(resolve, 5000, 'open');
    });
    const answer = patient(late, idle);
    await vi.advanceTimersByTimeAsync(5000);
    expect(await answer).toBe('open');
    await expect(patient(Promise.reject(new Error('no')), idle)).rejects.toThrow('no');
  });

  test('is given up for now after ten seconds, and sooner the next time', async () => {
    const patient = createPatience();
    const first = expect(patient(never, idle)).rejects.toThrow(SilentError);
    await vi.advanceTimersByTimeAsync(10_000);
    await first;
    const next = expect(patient(never, idle)).rejects.toThrow(SilentError);
    await vi.advanceTimersByTimeAsync(500);
    await next;
  });

  test('is waited for as long as it is seen to be at work', async () => {
    let isAtWork = true;
    let isOver = false;
    const waiting = createPatience()(never, () => isAtWork).catch(() => {
      isOver = true;
    });
    await vi.advanceTimersByTimeAsync(60_000);
    expect(isOver).toBe(false);
    isAtWork = false;
    await vi.advanceTimersByTimeAsync(10_000);
    await waiting;
    expect(isOver).toBe(true);
  });
});

test('silence is a reason of its own', () => {
  expect(refusalOf(new SilentError('nothing'))).toEqual({ kind: 'silent', detail: 'SilentError: nothing' });
});

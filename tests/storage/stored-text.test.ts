import { describe, expect, test } from 'vitest';
import { storedText, textFrom } from '#storage/stored-text';

const picture = 'aB3/'.repeat(20_000);

describe('a text as it is kept', () => {
  test('is one string without pictures', async () => {
    const stored = storedText(['{"a": ', '1}']);
    expect(stored).toBe('{"a": 1}');
    expect(await textFrom(stored)).toBe('{"a": 1}');
  });

  test('is a file with them, and comes back letter by letter', async () => {
    const pieces = ['{"name": "Straße – 40 ° ✓", "data": "', picture, '"}'];
    const stored = storedText(pieces);
    expect(stored).toBeInstanceOf(Blob);
    expect(await textFrom(stored)).toBe(pieces.join(''));
    // Once more, with what is known of it by then.
    expect(await textFrom(storedText(['[', picture, picture, ']']))).toBe(`[${picture}${picture}]`);
  });

  test('is as if it were not there when the file is gone', async () => {
    const gone = new Blob(['x']);
    Object.defineProperty(gone, 'text', { value: () => Promise.reject(new Error('not found')) });
    expect(await textFrom(gone)).toBeUndefined();
    expect(await textFrom(undefined)).toBeUndefined();
  });
});

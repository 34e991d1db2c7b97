import { afterEach, describe, expect, test } from 'vitest';
import { speakLanguage } from '#i18n/load';
import { inRow, listed } from '#i18n/locale';

const PLAIN = ['North', 'South', 'West'];
/** Lanes of a junction are called so. */
const COMPOSITE = ['Left, front', 'Left, rear', 'Gate'];

describe('names in a list', () => {
  test('stand between commas, in English with one before the last', () => {
    expect(inRow(PLAIN)).toBe('North, South, West');
    expect(listed(PLAIN)).toBe('North, South, and West');
  });

  test('are told apart by semicolons where one holds a comma itself', () => {
    expect(inRow(COMPOSITE)).toBe('Left, front; Left, rear; Gate');
    expect(listed(COMPOSITE)).toBe('Left, front; Left, rear; and Gate');
  });

  test('two of them are joined by the word alone', () => {
    expect(listed(COMPOSITE.slice(0, 2))).toBe('Left, front and Left, rear');
    expect([inRow([]), inRow(['Left, front']), listed(['Left, front'])]).toEqual([
      '',
      'Left, front',
      'Left, front'
    ]);
  });
});

describe('in German', () => {
  afterEach(() => speakLanguage('en', ['page', 'views', 'analysis']));

  test('the last one follows without a sign', async () => {
    await speakLanguage('de', ['page']);
    expect(listed(PLAIN)).toBe('North, South und West');
    expect(listed(COMPOSITE)).toBe('Left, front; Left, rear und Gate');
  });
});

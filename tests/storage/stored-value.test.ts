import { expect, test } from 'vitest';
import { createStoredValue, type TextStorage } from '#storage/stored-value';

const read = (found: unknown) => (found === 'dark' ? 'dark' : 'light');

function memory(initial: string | null = null): TextStorage & { text: string | null } {
  return {
    text: initial,
    getItem() {
      return this.text;
    },
    setItem(_key, text) {
      this.text = text;
    }
  };
}

test('a value is read back by the next visit', () => {
  const storage = memory();
  createStoredValue('theme', read, () => storage).set('dark');
  expect(createStoredValue('theme', read, () => storage).get()).toBe('dark');
});

test('damaged text is the same as none', () => {
  expect(createStoredValue('theme', read, () => memory('{oops')).get()).toBe('light');
});

test('a storage that may not be touched still gives a value for this visit', () => {
  const value = createStoredValue('theme', read, () => {
    throw new DOMException('The operation is insecure.', 'SecurityError');
  });
  expect(value.get()).toBe('light');
  value.set('dark');
  expect(value.get()).toBe('dark');
});

test('a full storage still gives a value for this visit', () => {
  const storage = memory();
  storage.setItem = () => {
    throw new DOMException('full', 'QuotaExceededError');
  };
  const value = createStoredValue('theme', read, () => storage);
  value.set('dark');
  expect(value.get()).toBe('dark');
});

test('no storage is no error', () => {
  expect(createStoredValue('theme', read, () => null).get()).toBe('light');
});

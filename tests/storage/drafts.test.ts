import { beforeEach, expect, test } from 'vitest';
import { createDraftStore, type DraftPlace } from '#storage/drafts';

const DAY = 86_400_000;

class Place {
  readonly texts = new Map<string, string>();
  isFull = false;
  get length() {
    return this.texts.size;
  }
  key = (at: number) => [...this.texts.keys()][at] ?? null;
  getItem = (key: string) => this.texts.get(key) ?? null;
  setItem = (key: string, text: string) => {
    if (this.isFull) throw new DOMException('The quota has been exceeded.', 'QuotaExceededError');
    this.texts.set(key, text);
  };
  removeItem = (key: string) => void this.texts.delete(key);
}

let place: Place;
const there: DraftPlace = () => place;
const opened = (now = 1_000) => createDraftStore(there, () => now);

beforeEach(() => {
  place = new Place();
});

test('a draft is found by the next page, of its own site and by its own name', () => {
  expect(opened().keep('a', 'readings', { text: '98 µH' })).toBeNull();
  const next = opened(2_000);
  expect(next.read('a', 'readings')).toEqual({ text: '98 µH' });
  expect(next.read('b', 'readings')).toBeUndefined();
  expect(next.read('a', 'walk')).toBeUndefined();
  next.drop('a', 'readings');
  expect(opened().read('a', 'readings')).toBeUndefined();
});

test('what nobody came back to in a quarter of a year is given up, and nothing else', () => {
  place.texts.set('kerfline settings', '{"theme":"dark"}');
  opened(0).keep('old', 'readings', 1);
  opened(80 * DAY).keep('young', 'readings', 2);
  const next = opened(95 * DAY);
  expect(next.read('old', 'readings')).toBeUndefined();
  expect(next.read('young', 'readings')).toBe(2);
  expect([...place.texts.keys()]).toEqual(['kerfline settings', 'kerfline draft readings young']);
});

test('a full storage is said, and keeps what it had', () => {
  const store = opened();
  store.keep('a', 'readings', 'first');
  place.isFull = true;
  expect(store.keep('a', 'readings', 'second')).toBe('full');
  expect(store.read('a', 'readings')).toBe('first');
});

test.each<[string, DraftPlace]>([
  ['that is blocked', () => null],
  [
    'that may not even be asked for',
    () => {
      throw new DOMException('Access is denied for this document.', 'SecurityError');
    }
  ]
])('a storage %s is said', (_, blocked) => {
  const store = createDraftStore(blocked, () => 0);
  expect(store.keep('a', 'readings', 1)).toBe('forbidden');
  expect(store.read('a', 'readings')).toBeUndefined();
  store.drop('a', 'readings');
});

test('what cannot be read is as if it were not there', () => {
  place.texts.set('kerfline draft readings a', '{"at":');
  place.texts.set('kerfline draft readings b', '7');
  const store = opened();
  expect(store.read('a', 'readings')).toBeUndefined();
  expect(store.read('b', 'readings')).toBeUndefined();
  expect(place.texts.size).toBe(0);
});

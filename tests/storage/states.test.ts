import { expect, test } from 'vitest';
import { keptMarks } from '#storage/states';
import { MemoryStore } from './memory-store';

const ME = { owner: 'me', format: 1 };

test('what may be opened next is the newest first, without what lies in the bin and what is damaged', async () => {
  const store = new MemoryStore();
  for (const [slot, begun] of [
    ['a', 1],
    ['b', 3],
    ['c', 2]
  ] as const)
    // prettier-ignore
    store.hold({ slot, begun, savedAt: begun, name: slot, text: '{}' });
  store.found.push({ slot: 'd', begun: 'never' });
  await store.claim('b', ME);
  await store.change('b', ME, (record) => ({ ...record, deletedAt: 4 }));
  expect((await keptMarks(store)).map(({ slot }) => slot)).toEqual(['c', 'a']);
});

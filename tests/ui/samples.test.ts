import { readdirSync } from 'node:fs';
import { expect, test } from 'vitest';
import { IDEAS, MORE_SAMPLES } from '#ui/dialogs/ideas';
import { SAMPLES } from '#ui/samples';

test('every finished site is offered, and every one that is offered exists', () => {
  const files = readdirSync('samples').map((name) => name.replace('.kerfline.json', ''));
  expect([...SAMPLES].sort()).toEqual(files.sort());
  const offered = [...IDEAS.map(({ sample }) => sample), ...MORE_SAMPLES];
  expect([...offered].sort()).toEqual(files.sort());
});

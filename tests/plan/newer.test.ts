import { expect, test } from 'vitest';
import { demoSite } from '#plan/demo';
import { newestVersion } from '#plan/migrations/index';
import { readNewer } from '#plan/newer';
import { writeSite } from '#plan/read';

const withVersion = (version: unknown, more: object = {}) =>
  JSON.stringify({ ...(JSON.parse(writeSite(demoSite())) as object), version, ...more });

test('a document that is only of a newer version is understood, with what nobody knows yet', () => {
  const site = readNewer(withVersion(newestVersion() + 4, { tunnels: [1] }));
  expect(site?.loops).toEqual(demoSite().loops);
  expect(site).toMatchObject({ tunnels: [1] });
});

test('one that this release reads itself is not one of them', () => {
  expect(readNewer(withVersion(newestVersion()))).toBeNull();
});

test.each([
  ['no version', withVersion(undefined)],
  ['half a version', withVersion(newestVersion() + 0.5)],
  ['a version as a word', withVersion('2')],
  ['loops of another meaning', withVersion(newestVersion() + 1, { loops: { main: 4 } })],
  ['another format', withVersion(newestVersion() + 1, { format: 'something-else' })],
  ['a list', '[]'],
  ['nothing', ''],
  ['half a document', withVersion(newestVersion() + 1).slice(0, 300)]
])('%s is not understood', (_, text) => {
  expect(readNewer(text)).toBeNull();
});

/** Damaged documents: reading never throws, and answers either with a site or with reasons in words. */
import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readSite, writeSite } from '#plan/read';
import { damageText, damageValue } from './mutations';
import { type Random, seeded } from './random';

const ROUNDS = 1_500;

const folder = (path: string) => new URL(`../../${path}/`, import.meta.url);
const documents = ['samples', 'tests/archive'].flatMap((path) =>
  readdirSync(folder(path))
    .filter((name) => name.endsWith('.kerfline.json'))
    .map((name) => readFileSync(new URL(name, folder(path)), 'utf8'))
);

function damagedValues(text: string, random: Random): string {
  const document = JSON.parse(text) as Record<string, unknown>;
  for (let times = 1 + random.below(2); times > 0; times--) damageValue(document, random);
  return JSON.stringify(document);
}

function expectSoundAnswer(text: string, seed: number): boolean {
  const reading = readSite(text);
  if (reading.ok) {
    const again = readSite(writeSite(reading.site));
    expect(again.ok ? again.site : again.problems, `seed ${seed}`).toEqual(reading.site);
    return true;
  }
  expect(reading.problems.length, `seed ${seed}`).toBeGreaterThan(0);
  for (const { found, expected, message } of reading.problems) {
    expect(
      [found, expected, message].every((words) => words.trim() !== ''),
      `seed ${seed}`
    ).toBe(true);
    expect(message, `seed ${seed}`).not.toMatch(/undefined|\[object|NaN|\p{Cc}/u);
  }
  return false;
}

describe.each([
  ['values', damagedValues, 0.1],
  ['text', damageText, 0.02]
] as const)('documents with damaged %s', (_, damage, leastRead) => {
  it('are read or refused in words', { timeout: 60_000 }, () => {
    let read = 0;
    for (let seed = 1; seed <= ROUNDS; seed++) {
      const random = seeded(seed);
      if (expectSoundAnswer(damage(random.pick(documents), random), seed)) read += 1;
    }
    expect(read / ROUNDS).toBeGreaterThan(leastRead);
    expect(read / ROUNDS).toBeLessThan(0.9);
  });
});

import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { PATHS } from '#analysis/walk-through/paths/index';
import { COMPLAINTS, type Complaint, type Said } from '#analysis/walk-through/results';
import { follow } from '#analysis/walk-through/walk';
import { messages as german } from '#i18n/de/bundles/views';
import { messages as english } from '#i18n/en/bundles/views';
import { readSite } from '#plan/read';
import type { Site } from '#plan/schema';
import { BUILT } from './built-sites';
import { placeOf } from './support';

const samples = readdirSync('samples').map((name): readonly [string, Site] => {
  const reading = readSite(readFileSync(`samples/${name}`, 'utf8'));
  if (!reading.ok) throw new Error(name);
  return [name, reading.site];
});

const SITES: readonly (readonly [string, Site])[] = [...samples, ...BUILT];

const visited = new Map<Complaint, Set<string>>(COMPLAINTS.map((complaint) => [complaint, new Set()]));
const texts: Readonly<Record<string, Readonly<Record<string, unknown>>>> = { english, german };

function wordless({ key, values }: Said): readonly string[] {
  return Object.entries(texts).flatMap(([language, messages]) => {
    const text = messages[`walk.${key}`];
    if (typeof text !== 'string') return [`${language}: no words for ${key}`];
    return [...text.matchAll(/\{(\w+)\}/g)].flatMap(([, name]) => {
      const value = values[name!];
      const isGood =
        typeof value === 'string'
          ? // an empty word is none
            value !== ''
          : value !== undefined && ('day' in value || Number.isFinite(value.value));
      return isGood ? [] : [`${language}: ${key} has no ${name}`];
    });
  });
}

/** Every answer at every step, each step once for whatever it is about. */
function everyWay(site: Site, circuit: string, complaint: Complaint): readonly string[] {
  const place = placeOf(site, circuit);
  if (!place) return [];
  const path = PATHS[complaint];
  const problems: string[] = [];
  const seen = new Set<string>();
  const visit = (answers: readonly string[]): void => {
    const { steps, end, about } = follow(path, place, answers);
    const said = end
      ? [end.verdict, ...end.remedies, ...end.facts, end.check, ...end.ruledOut]
      : steps
          .slice(-1)
          .flatMap((step) => [
            step.question,
            ...step.facts,
            ...step.ruledOut,
            ...step.answers.map(({ label }) => label)
          ]);
    problems.push(...said.flatMap(wordless));
    if (end) {
      visited.get(complaint)!.add(end.id);
      if (end.remedies.length === 0) problems.push(`${end.id} has no remedy`);
      return;
    }
    const step = steps.at(-1)!;
    visited.get(complaint)!.add(step.id);
    if (step.answers.length < 2) problems.push(`${step.id} leaves no choice`);
    if (new Set(step.answers.map(({ id }) => id)).size < step.answers.length)
      problems.push(`${step.id} has two answers of one name`);
    const key = `${step.id} ${String(about)}`;
    if (seen.has(key)) return;
    seen.add(key);
    for (const { id } of step.answers) visit([...answers, id]);
  };
  visit([]);
  return problems;
}

describe('every way through every complaint ends, and everything said has words and numbers', () => {
  test.each(SITES)('%s', (_, site) => {
    const problems = site.circuits.flatMap(({ id }) =>
      COMPLAINTS.flatMap((complaint) => everyWay(site, id, complaint))
    );
    expect([...new Set(problems)]).toEqual([]);
  });

  test.each(COMPLAINTS)('every step of “%s” is reached somewhere', (complaint) => {
    const asked = Object.entries(PATHS[complaint].nodes).flatMap(([id, node]) =>
      'decided' in node ? [] : [id]
    );
    expect(asked.filter((id) => !visited.get(complaint)!.has(id))).toEqual([]);
  });
});

test('a step that touches mains, traffic or a gate says so before it is done', () => {
  const touching = /cabinet|terminal|fuse|channel|unit off|splice|Stop a|Drive|Switch/i;
  const missing = COMPLAINTS.flatMap((complaint) =>
    SITES.flatMap(([, site]) => {
      const place = site.circuits[0] && placeOf(site, site.circuits[0].id);
      if (!place) return [];
      return Object.entries(PATHS[complaint].nodes).flatMap(([id, node]) => {
        if (!('question' in node) || (node.hazards ?? []).length > 0) return [];
        const text = (english as Readonly<Record<string, unknown>>)[
          `walk.${node.question({ ...place, about: null }).key}`
        ];
        return typeof text === 'string' && touching.test(text) ? [`${complaint}: ${id}`] : [];
      });
    })
  );
  expect([...new Set(missing)]).toEqual([]);
});

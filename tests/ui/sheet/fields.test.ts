import { expect, test } from 'vitest';
import { SHEET_PARTS } from '#plan/schema/sheet';
import { updateSheet } from '#plan/edits/estimate';
import { demoSite } from '#plan/demo';
import type { Site } from '#plan/schema';
import {
  baselineOf,
  baselineOptions,
  baselineValue,
  partsWith,
  scaleOf,
  scaleOptions,
  scaleValue,
  today
} from '#ui/sheet/fields';

test('a scale and its option lead to each other; the largest that fits is no scale', () => {
  const values = scaleOptions(null).map(({ value }) => value);
  expect(new Set(values).size).toBe(values.length);
  for (const value of values) expect(scaleValue(scaleOf(value) ?? null)).toBe(value);
  expect(scaleOf(values[0]!)).toBeUndefined();
  expect(scaleOptions(150)[0]!.label).toContain('1:150');
});

test('a part is taken off and put back in its place; with all of them there is nothing to state', () => {
  const site = demoSite();
  const without = updateSheet(site, { parts: partsWith(site, 'wiring', false) });
  expect(without.sheet?.parts).toEqual(SHEET_PARTS.filter((part) => part !== 'wiring'));
  expect(partsWith(without, 'wiring', true)).toBeUndefined();
  const none = SHEET_PARTS.reduce<Site>(
    (before, part) => updateSheet(before, { parts: partsWith(before, part, false) }),
    site
  );
  expect(none.sheet?.parts).toEqual([]);
});

test('every line that can be chosen is found again, whatever its id', () => {
  const site = demoSite();
  const odd = {
    ...site,
    lanes: site.lanes.map((lane, k) => ({ ...lane, id: `lane ${k} of mark` })),
    marks: [
      ...site.marks,
      { ...site.marks[0]!, id: 'k 1', kind: 'kerb' as const, points: [[0, 0], [5, 0]] as const, text: 'East kerb' } // prettier-ignore
    ]
  } as Site;
  const options = baselineOptions(odd);
  expect(options.map(({ label }) => label)).toContain('East kerb');
  expect(options.length).toBeGreaterThan(odd.lanes.length + 1);
  for (const { value } of options) expect(baselineValue(baselineOf(value))).toBe(value);
  expect(baselineOf('lane lane 0 of mark')).toEqual({ kind: 'lane', lane: 'lane 0 of mark' });
});

test('what a file has chosen is listed, even where nobody would choose it', () => {
  const site = demoSite();
  const box = site.marks.find(({ kind }) => kind === 'pull-box')!;
  const chosen: Site = { ...site, sheet: { baseline: { kind: 'mark', mark: box.id } } };
  const values = (each: Site) => baselineOptions(each).map(({ value }) => value);
  expect(values(site)).not.toContain(`mark ${box.id}`);
  expect(values(chosen)).toContain(`mark ${box.id}`);
});

test('a date begins with the year and has two digits everywhere', () => {
  expect(today(new Date(2031, 2, 4, 23, 59))).toBe('2031-03-04');
});

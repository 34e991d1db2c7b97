import { describe, expect, it } from 'vitest';
import { extractThings, insertCopies, type Thing } from '#plan/edits/index';
import { emptySite } from '#plan/read';
import type { Site } from '#plan/schema';
import { readThings, writeThings } from '#plan/things-text';
import { fullSite } from './edits/site';

const THINGS: readonly Thing[] = [
  { kind: 'lane', id: 'lane1' },
  { kind: 'loop', id: 'L1' },
  { kind: 'loop', id: 'L2' },
  { kind: 'probe', id: '0' }
];

/** A loop whose tail is led to a pull box that is not copied with it. */
function ledSite(): Site {
  const site = fullSite();
  const box = { id: 'box', kind: 'pull-box', points: [[3, 8]] } as const;
  const loops = site.loops.map((loop) =>
    loop.id === 'L1' ? { ...loop, tail: { length: 5, route: { to: 'box', via: [], allowance: 1 } } } : loop
  );
  return { ...site, marks: [...site.marks, box], loops };
}

const textOf = (site: Site, things: readonly Thing[]): string =>
  writeThings({ site: extractThings(site, things), things, standing: site.marks });

describe('copied things as text', () => {
  it('come back as they were, and only they', () => {
    const reading = readThings(textOf(fullSite(), THINGS));
    expect(reading).toMatchObject({ kind: 'things', things: THINGS });
    if (reading.kind !== 'things') return;
    expect(reading.site.loops).toEqual(fullSite().loops.slice(0, 2));
    expect(reading.site.circuits.map(({ id }) => id)).toEqual(['C1']);
    expect(reading.site.readings).toEqual([]);
  });

  it('bring the mark that a way leads to only as a place, never as a thing', () => {
    const site = ledSite();
    const reading = readThings(textOf(site, [{ kind: 'loop', id: 'L1' }]));
    if (reading.kind !== 'things') throw new Error(reading.kind);
    expect(reading.things).toEqual([{ kind: 'loop', id: 'L1' }]);
    expect(reading.site.marks).toEqual([]);
    // Into the same plan the way goes on; into another there is nothing that it could lead to.
    const here = insertCopies(site, reading.site, [0, 3], reading.standing).site.loops.at(-1);
    expect(here?.tail.route?.to).toBe('box');
    const elsewhere = insertCopies(emptySite(), reading.site, [0, 3], reading.standing).site.loops.at(-1);
    expect(elsewhere?.tail.route).toBeUndefined();
  });
});

describe('text that is none of ours', () => {
  it.each(['', 'hello', '{}', '[1, 2]', '{"format": "kerfline-site"}', JSON.stringify(fullSite())])(
    'is left alone: %.30s',
    (text) => {
      expect(readThings(text).kind).toBe('foreign');
    }
  );

  it('is refused in words where it only looks like ours', () => {
    const text = textOf(fullSite(), THINGS);
    const damaged = [
      text.slice(0, -20),
      text.replace('"version": 1', '"version": 7'),
      text.replace('"turns": 3', '"turns": 3000'),
      text.replace('"wire": "awg14"', '"wire": "rope"'),
      text.replace('"things": [', '"things": [{"kind": "ghost", "id": "x"}, '),
      text.replace('"site": {', '"site": {"__proto__": {"a": 1}, ')
    ];
    for (const each of damaged) {
      expect(each).not.toBe(text);
      const reading = readThings(each);
      expect(reading.kind).toBe('refused');
      if (reading.kind === 'refused') expect(reading.problems[0]?.message).toMatch(/\w+/);
    }
  });

  it('never makes more than it says: a thing that is not there is none', () => {
    const text = textOf(fullSite(), THINGS).replace(
      '"things": [',
      '"things": [{"kind": "loop", "id": "L77"}, '
    );
    const reading = readThings(text);
    expect(reading).toMatchObject({ kind: 'things', things: THINGS });
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { emptySite, readSite, writeSite } from '#plan/read';
import type { Shape, Site } from '#plan/schema';
import { everyShape } from './shapes/examples';
import { archived } from '../archive/documents';

function siteOf(text: string): Site {
  const reading = readSite(text);
  if (!reading.ok) throw new Error(reading.problems.map(({ message }) => message).join('\n'));
  return reading.site;
}

// JSON has no negative zero: it comes back as zero.
const coordinate = fc.double({ min: -900, max: 900, noNaN: true }).map((value) => value + 0);
const name = fc.string({ unit: 'grapheme', maxLength: 40 });
const extra = fc.dictionary(
  name
    .filter((key) => !['__proto__', 'constructor', 'prototype', 'id', 'name'].includes(key))
    .map((key) => `x-${key}`),
  fc.oneof(name, coordinate, fc.boolean(), fc.constant(null), fc.array(coordinate, { maxLength: 3 })),
  { maxKeys: 3, noNullPrototype: true }
);

const loop = fc
  .tuple(fc.constantFrom<Shape>(...everyShape), name, fc.integer({ min: 1, max: 50 }), extra)
  .map(([shape, title, turns, more]) => ({
    ...more,
    name: title,
    turns,
    wire: 'awg14',
    slot: { depth: 0.05, width: 0.008, relativePermittivity: 4 },
    tail: { length: 1 },
    shape
  }));

const site = fc
  .tuple(
    name,
    fc.array(loop, { maxLength: 4 }),
    fc.array(fc.tuple(coordinate, coordinate), { maxLength: 3 }),
    extra
  )
  .map(([title, loops, stands, more]) => ({
    ...more,
    ...emptySite(title),
    loops: loops.map((each, index) => ({ ...each, id: `L${index}` })),
    probes: stands.map((at) => ({ vehicle: 'car', at, heading: 90 }))
  }));

describe('writeSite', () => {
  it('writes what readSite gives back unchanged', () => {
    fc.assert(
      fc.property(site, (document) => {
        const text = writeSite(document);
        expect(siteOf(text)).toEqual(document);
        expect(writeSite(siteOf(text))).toBe(text);
      })
    );
  });

  it('does not depend on the order in which fields were set', () => {
    const document = siteOf(archived('v1-full'));
    const shuffled = Object.fromEntries(Object.entries(document).reverse()) as unknown as Site;
    const declared = (text: string) =>
      Object.keys(JSON.parse(text) as object).filter((key) => key !== 'plannedBy');
    expect(declared(writeSite(shuffled))).toEqual(declared(writeSite(document)));
  });

  it('ends with a line break and keeps a point on one line', () => {
    const text = writeSite(siteOf(archived('v1-full')));
    expect(text.endsWith('}\n')).toBe(true);
    expect(text).toContain('"centre": [0, -3]');
  });

  it('writes an impossible drawing too, so that no work is lost', () => {
    const impossible = { ...emptySite(), temperature_C: 1_000 };
    expect(JSON.parse(writeSite(impossible))).toMatchObject({ temperature_C: 1_000 });
    expect(readSite(writeSite(impossible)).ok).toBe(false);
  });
});

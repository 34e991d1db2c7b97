import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  addCircuitFor,
  connectCircuit,
  joinInParallel,
  moveString,
  placeLoop,
  removeThings,
  setReversed,
  shiftLoop,
  splitCircuit,
  wireTogether,
  type WiringPlace
} from '#plan/edits/index';
import { COUNTS } from '#plan/bounds';
import { readSite, writeSite } from '#plan/read';
import type { Site } from '#plan/schema';
import { fullSite } from './site';

/** "L1+L2|L3": loops of a string joined by +, strings by |; a reversed loop has a minus. */
const wiringOf = (site: Site): Record<string, string> =>
  Object.fromEntries(
    site.circuits.map(({ id, strings }) => [
      id,
      strings
        .map((string) => string.map(({ loop, reversed }) => (reversed ? `-${loop}` : loop)).join('+'))
        .join('|')
    ])
  );

describe('putting a loop elsewhere', () => {
  it('before or after another loop, keeping its winding sense', () => {
    const site = fullSite();
    expect(wiringOf(placeLoop(site, 'L2', { kind: 'before', loop: 'L1' }))).toEqual({
      C1: '-L2+L1',
      C2: 'L3'
    });
    expect(wiringOf(placeLoop(site, 'L2', { kind: 'after', loop: 'L3' }))).toEqual({
      C1: 'L1',
      C2: 'L3+-L2'
    });
  });

  it('as a string of its own, at any place among the strings', () => {
    const two = placeLoop(fullSite(), 'L2', { kind: 'string', circuit: 'C1', at: 1 });
    expect(wiringOf(two)).toEqual({ C1: 'L1|-L2', C2: 'L3' });
    const three = placeLoop(two, 'L3', { kind: 'string', circuit: 'C1', at: 1 });
    expect(wiringOf(three)).toEqual({ C1: 'L1|L3|-L2' });
    expect(wiringOf(moveString(three, 'C1', 2, 0))).toEqual({ C1: '-L2|L1|L3' });
  });

  it('leaves no empty circuit behind, and no reading of it', () => {
    const site = fullSite();
    const next = placeLoop(site, 'L3', { kind: 'after', loop: 'L1' });
    expect(wiringOf(next)).toEqual({ C1: 'L1+L3+-L2' });
    expect(next.readings).toEqual([{ circuit: 'C1', q: 20 }, { note: 'rain' }]);
  });

  it('takes it out into a circuit like the one it comes from', () => {
    const next = placeLoop(fullSite(), 'L2', { kind: 'circuit' });
    expect(wiringOf(next)).toEqual({ C1: 'L1', C2: 'L3', C3: '-L2' });
    expect(next.circuits[2]).toMatchObject({ name: 'Loop L2', leadIn: { cable: 'k1', length: 40 } });
    expect(next.circuits[2]?.channel?.tripThreshold).toBe(0.001);
  });

  it('wires a loop that was in no circuit', () => {
    const site = fullSite();
    expect(wiringOf(placeLoop(site, 'L4', { kind: 'after', loop: 'L3' }))['C2']).toBe('L3+L4');
    expect(wiringOf(placeLoop(site, 'L4', { kind: 'circuit' }))['C3']).toBe('L4');
  });

  it('changes nothing where there is nothing to change', () => {
    const site = fullSite();
    expect(placeLoop(site, 'L3', { kind: 'circuit' })).toBe(site);
    expect(placeLoop(site, 'L3', { kind: 'string', circuit: 'C2', at: 5 })).toBe(site);
    expect(placeLoop(site, 'L1', { kind: 'before', loop: 'L2' })).toBe(site);
    expect(placeLoop(site, 'L1', { kind: 'after', loop: 'L1' })).toBe(site);
    expect(placeLoop(site, 'L1', { kind: 'after', loop: 'L4' })).toBe(site);
    expect(placeLoop(site, 'none', { kind: 'circuit' })).toBe(site);
    expect(addCircuitFor(site, 'L1', 'twice')).toBe(site);
    expect(addCircuitFor(site, 'none', 'none')).toBe(site);
  });

  it('earlier and later within its string, to the ends and no further', () => {
    const site = fullSite();
    const later = shiftLoop(site, 'L1', 1);
    expect(wiringOf(later)['C1']).toBe('-L2+L1');
    expect(shiftLoop(later, 'L1', 1)).toBe(later);
    expect(wiringOf(shiftLoop(later, 'L1', -1))).toEqual(wiringOf(site));
  });
});

describe('wiring several loops together', () => {
  const ALL = ['L1', 'L2', 'L3', 'L4'];

  it('puts four loops of three origins into two equal strings in one step', () => {
    const next = wireTogether(fullSite(), ALL, 'series-parallel');
    expect(wiringOf(next)).toEqual({ C1: 'L1+-L2|L3+L4' });
    expect(next.readings).toHaveLength(2);
  });

  it('refuses two equal strings of an odd number', () => {
    const site = fullSite();
    expect(wireTogether(site, ['L1', 'L2', 'L3'], 'series-parallel')).toBe(site);
  });

  it('puts circuits side by side with their strings, and one circuit’s loops side by side', () => {
    const site = fullSite();
    expect(wiringOf(joinInParallel(site, ['C1', 'C2']))).toEqual({ C1: 'L1+-L2|L3' });
    expect(wiringOf(wireTogether(site, ['L1'], 'parallel'))).toEqual({ C1: 'L1|-L2', C2: 'L3' });
  });

  it('keeps a channel if any of the circuits has one', () => {
    const off = connectCircuit(fullSite(), 'C1', false);
    expect(wireTogether(off, ['L1', 'L3'], 'series').circuits[0]?.channel).toMatchObject({
      unit: 'U1',
      number: 2
    });
  });

  it('begins a circuit for loops that have none', () => {
    const bare: Site = { ...fullSite(), circuits: [], readings: [] };
    expect(wiringOf(wireTogether(bare, ALL, 'series-parallel'))).toEqual({ C1: 'L1+L2|L3+L4' });
    expect(wireTogether(bare, ['L1'], 'series')).toBe(bare);
    expect(wireTogether(bare, ['L1', 'L2', 'L3'], 'series-parallel')).toBe(bare);
  });

  it('refuses more loops than a circuit may hold', () => {
    const site = fullSite();
    const loops = Array.from({ length: COUNTS.loopsPerCircuit + 1 }, (_, index) => ({
      ...site.loops[0]!,
      id: `N${index}`
    }));
    const many: Site = { ...site, loops, circuits: [], readings: [] };
    const ids = loops.map(({ id }) => id);
    expect(wireTogether(many, ids, 'series')).toBe(many);
    const most = wireTogether(many, ids.slice(1), 'series');
    expect(most.circuits[0]?.strings[0]).toHaveLength(COUNTS.loopsPerCircuit);
    expect(placeLoop(most, 'N0', { kind: 'after', loop: 'N1' })).toBe(most);
  });
});

const SEED = 314_159;
const loop = fc.constantFrom('L1', 'L2', 'L3', 'L4', 'none');
const circuit = fc.constantFrom('C1', 'C2', 'C3', 'C4', 'none');
const number = fc.constantFrom(-1, 0, 1, 2, 9, 0.5, Number.NaN);
const place: fc.Arbitrary<WiringPlace> = fc.oneof(
  fc
    .tuple(fc.constantFrom('before' as const, 'after' as const), loop)
    .map(([kind, id]) => ({ kind, loop: id })),
  fc.tuple(circuit, number).map(([id, at]) => ({ kind: 'string' as const, circuit: id, at })),
  fc.constant({ kind: 'circuit' as const })
);
type Edit = (site: Site) => Site;
const edit: fc.Arbitrary<Edit> = fc.oneof(
  {
    weight: 4,
    arbitrary: fc.tuple(loop, place).map(
      ([id, to]): Edit =>
        (site) =>
          placeLoop(site, id, to)
    )
  },
  fc
    .tuple(
      fc.array(loop, { maxLength: 4 }),
      fc.constantFrom('series' as const, 'parallel' as const, 'series-parallel' as const)
    )
    .map(
      ([ids, how]): Edit =>
        (site) =>
          wireTogether(site, ids, how)
    ),
  fc.tuple(circuit, number, number).map(
    ([id, from, to]): Edit =>
      (site) =>
        moveString(site, id, from, to)
  ),
  fc.tuple(loop, fc.constantFrom(-1 as const, 1 as const)).map(
    ([id, by]): Edit =>
      (site) =>
        shiftLoop(site, id, by)
  ),
  fc.tuple(circuit, loop, fc.boolean()).map(
    ([id, one, on]): Edit =>
      (site) =>
        setReversed(site, id, one, on)
  ),
  circuit.map(
    (id): Edit =>
      (site) =>
        splitCircuit(site, id)
  ),
  {
    weight: 1,
    arbitrary: loop.map(
      (id): Edit =>
        (site) =>
          removeThings(site, [{ kind: 'loop', id }])
    )
  }
);

describe('any sequence of wiring', () => {
  it('leaves a document that can be opened, with every loop wired at most once and no wired loop lost', () => {
    let changes = 0;
    fc.assert(
      fc.property(fc.array(edit, { minLength: 5, maxLength: 30, size: 'max' }), (list) => {
        let site = fullSite();
        for (const apply of list) {
          const next = apply(site);
          if (next === site) continue;
          changes += 1;
          const read = readSite(writeSite(next));
          expect(read.ok ? [] : read.problems.map(({ message }) => message)).toEqual([]);
          const wired = next.circuits.flatMap(({ strings }) => strings.flat().map((entry) => entry.loop));
          expect(new Set(wired).size).toBe(wired.length);
          const before = site.circuits.flatMap(({ strings }) => strings.flat().map((entry) => entry.loop));
          const here = new Set(next.loops.map(({ id }) => id));
          expect(before.filter((id) => here.has(id) && !wired.includes(id))).toEqual([]);
          site = next;
        }
      }),
      { seed: SEED, numRuns: 250 }
    );
    expect(changes).toBeGreaterThan(500);
  }, 60_000);
});

import { describe, expect, test } from 'vitest';
import { readSite } from '#plan/read';
import type { Site } from '#plan/schema';
import { circuitWith } from '#plan/wiring';
import { common, commonCircuit, refsOf, subjectOf } from '#ui/details/subject';

function siteOf(fields: object): Site {
  const reading = readSite(JSON.stringify({ format: 'kerfline-site', version: 1, ...fields }));
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.site;
}

const loop = (id: string, x: number) => ({
  id,
  name: `Loop ${id}`,
  turns: 3,
  wire: 'awg14',
  slot: { depth: 0.05, width: 0.008 },
  shape: { kind: 'rectangle', centre: [x, 0], width: 1.8, length: 1.8 }
});
const circuit = (id: string, loops: string[]) => ({
  id,
  strings: [loops.map((each) => ({ loop: each }))],
  leadIn: { cable: 'pair-14', length: 30 }
});

const site = siteOf({
  lanes: [
    {
      id: 'lane1',
      centreline: [
        [0, -10],
        [0, 10]
      ],
      width: 3.5
    }
  ],
  marks: [{ id: 'm1', kind: 'gate', points: [[0, 0]] }],
  loops: [loop('L1', 0), loop('L2', 4), loop('L3', 8), loop('L4', 12)],
  circuits: [circuit('C1', ['L1', 'L2']), circuit('C2', ['L3'])],
  probes: [{ vehicle: 'car', at: [0, 0] }]
});
const loops = (...ids: string[]) => site.loops.filter(({ id }) => ids.includes(id));

describe('what the details are about', () => {
  test('nothing selected: the site', () => {
    expect(subjectOf(site, [])).toEqual({ kind: 'site' });
  });

  test.each([
    [{ kind: 'lane', id: 'lane1' } as const, 'lane'],
    [{ kind: 'mark', id: 'm1' } as const, 'mark'],
    [{ kind: 'probe', id: '0' } as const, 'vehicle']
  ])('%o', (ref, kind) => {
    expect(subjectOf(site, [ref]).kind).toBe(kind);
  });

  test('some loops: those loops', () => {
    const refs = ['L3', 'L1'].map((id) => ({ kind: 'loop' as const, id }));
    expect(subjectOf(site, refs)).toEqual({ kind: 'loops', loops: loops('L1', 'L3') });
  });

  test('things of several kinds', () => {
    const refs = [
      { kind: 'loop', id: 'L1' },
      { kind: 'lane', id: 'lane1' }
    ] as const;
    expect(subjectOf(site, refs)).toEqual({ kind: 'several', count: 2 });
  });

  test('something that is gone: the site', () => {
    expect(subjectOf(site, [{ kind: 'loop', id: 'gone' }])).toEqual({ kind: 'site' });
    expect(subjectOf(site, [{ kind: 'probe', id: '7' }])).toEqual({ kind: 'site' });
  });
});

describe('circuits of loops', () => {
  test('a loop knows its circuit, or that it has none', () => {
    expect(circuitWith(site, 'L2')?.id).toBe('C1');
    expect(circuitWith(site, 'L4')).toBeUndefined();
  });

  test('loops have a circuit in common only if it is the same one', () => {
    expect(commonCircuit(site, loops('L1', 'L2'))?.id).toBe('C1');
    expect(commonCircuit(site, loops('L1', 'L3'))).toBeNull();
    expect(commonCircuit(site, loops('L1', 'L4'))).toBeNull();
    expect(commonCircuit(site, loops('L4'))).toBeNull();
  });
});

test('a circuit is selected by its loops, each thing once, unknown ids not at all', () => {
  expect(refsOf(site, ['C1', 'L2', 'lane1', 'm1', 'nobody'])).toEqual([
    { kind: 'loop', id: 'L1' },
    { kind: 'loop', id: 'L2' },
    { kind: 'lane', id: 'lane1' },
    { kind: 'mark', id: 'm1' }
  ]);
});

test('a value is common when all have it', () => {
  expect(common(loops('L1', 'L2'), ({ turns }) => turns)).toBe(3);
  expect(common(loops('L1', 'L2'), ({ id }) => id)).toBeNull();
  expect(common([], () => 1)).toBeNull();
});

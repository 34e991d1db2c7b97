/** A lower threshold is offered where a unit can be set to it and where it helps those who are missed. */
import { expect, test } from 'vitest';
import type { Loop, Site } from '#plan/schema';
import { channel, circuit, lane, loop, siteOf, unit } from '../support/sites';
import { keysOf, next, numberIn, walk } from './support';

const siteWith = (shape: Loop['shape'], tripThreshold: number, ...detect: readonly string[]): Site =>
  siteOf({
    lanes: [lane('A', 0)],
    loops: [loop('L1', shape)],
    units: [unit('U1')],
    circuits: [circuit('C1', ['L1'], { detect, channel: channel('U1', 1, { tripThreshold }) })]
  });
const lowered = (site: Site, ...answers: readonly string[]) =>
  walk(site, 'misses motorcycles', 'C1', ...answers).end!.remedies.filter(({ key }) =>
    key.startsWith('cycles.lower.')
  );

test('riders beside a loop are offered no threshold that no unit has', () => {
  const shape = { kind: 'quadrupole', centre: [0, 0], width: 1.8, length: 1.8, rotation: 0 } as const;
  const site = siteWith({ ...shape, centre: [0, 0] }, 0.002, 'motorcycle');
  const step = next(walk(site, 'misses motorcycles', 'C1'));
  expect(step.id).toBe('where');
  // half a metre outside the wires
  expect(numberIn(step.facts[0]!, 'response')).toBeLessThan(1e-4);
  expect(lowered(site, 'where:there')).toEqual([]);
});

test('a rider who is seen nowhere is offered one for his best path', () => {
  const shape = { kind: 'quadrupole', centre: [0, 0], width: 1.8, length: 1.8, rotation: 0 } as const;
  const { end } = walk(
    siteWith({ ...shape, centre: [0, 0] }, 0.02, 'motorcycle'),
    'misses motorcycles',
    'C1'
  );
  expect(end!.id).toBe('end-never');
  const best = numberIn(end!.ruledOut[0]!, 'best');
  const [lower] = end!.remedies;
  expect(keysOf([lower!])).toEqual(['cycles.lower.alone']);
  expect(numberIn(lower!, 'threshold') / best).toBeCloseTo(0.8, 1);
});

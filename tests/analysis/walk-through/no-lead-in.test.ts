/** Loops whose tails reach the cabinet: nothing is said of a lead-in of no length. */
import { expect, test } from 'vitest';
import type { WalkEnd } from '#analysis/walk-through/results';
import { channel, circuit, loop, siteOf, square, unit } from '../support/sites';
import { keysOf, walk } from './support';

const siteWith = (length: number) =>
  siteOf({
    loops: [loop('L1', square(0, 0), { tail: { length: 12 } })],
    units: [unit('U1')],
    circuits: [circuit('C1', ['L1'], { leadIn: { cable: 'pair-14', length }, channel: channel('U1', 1) })]
  });

const endWith = (length: number, last: string): WalkEnd =>
  walk(siteWith(length), 'always calling', 'C1', 'occupied:no', 'shown:fault', last).end!;

test.each([
  ['resistance:less', 'end-short', 'end.short.leadIn'],
  ['resistance:open', 'end-open', 'end.open.half']
] as const)('%s', (last, id, key) => {
  const [with_, without] = [endWith(30, last), endWith(0, last)];
  expect([with_.id, without.id]).toEqual([id, id]);
  expect(keysOf([...with_.facts, ...with_.remedies])).toContain(key);
  expect(keysOf([...without.facts, ...without.remedies])).not.toContain(key);
});

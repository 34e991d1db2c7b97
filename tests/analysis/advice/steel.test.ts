/** Choices over steel are read off three solutions: against each choice solved by itself. */
import { describe, expect, it } from 'vitest';
import { adviseTurns } from '#analysis/advice/advise-turns';
import { solveAlone } from '#analysis/electrical/alone';
import { PATIENCE } from '../../physics/support/arbitraries';
import { relativeError } from '../../physics/support/reference';
import { circuit, loop, siteOf, square, unit } from '../support/sites';

type Json = Readonly<Record<string, unknown>>;

const outline = [
  [-3, -3],
  [3, -3],
  [3, 9],
  [-3, 9]
];
const mat: Json = { id: 's1', kind: 'mat', depth: 0.12, pitch: 0.15, barRadius: 0.006, outline };
const plate: Json = { id: 's1', kind: 'plate', depth: 0.3, outline };
const quadrupole: Json = { kind: 'quadrupole', centre: [0, 0], width: 1.8, length: 2.4 };
const WISH = { least_H: 50e-6, most_H: 700e-6, leastQ: 5 };

describe('choices over steel', { timeout: PATIENCE }, () => {
  it.each([
    ['a mat', square(0, 0), mat, {}],
    ['a plate', square(0, 0), plate, {}],
    ['a mat, under a slot that two cells share', quadrupole, mat, {}],
    ['a mat, where one loop of two changes', square(0, 0), mat, { loop: 'L1' }]
  ] as readonly (readonly [string, Json, Json, Json])[])(
    'are those of the circuit solved: %s',
    (_, shape, steel, wish) => {
      const site = siteOf({
        loops: [loop('L1', shape), loop('L2', square(0, 4), { turns: 2 })],
        circuits: [circuit('C1', ['L1', 'L2'])],
        units: [unit('U1')],
        steel: [steel]
      });
      const { choices, loops } = adviseTurns(site, 'C1', { ...WISH, ...wish })!;
      const bare = adviseTurns({ ...site, steel: [] }, 'C1', { ...WISH, ...wish })!.choices;
      for (const [turns, wire] of [
        [1, 'awg18'],
        [2, 'awg12'],
        [4, 'awg14']
      ] as const) {
        const is = (each: { turns: number; wire: string }) => each.turns === turns && each.wire === wire;
        const choice = choices.find(is)!;
        const changed = {
          ...site,
          loops: site.loops.map((each) => (loops.includes(each.id) ? { ...each, turns, wire } : each))
        };
        const { solved } = solveAlone(changed, site.circuits[0]!)!;
        expect(relativeError(choice.inductance_H, solved.inductance)).toBeLessThan(1e-3);
        expect(relativeError(choice.resistance_ohm, solved.resistance)).toBeLessThan(3e-3);
        // and the steel does matter
        expect(choice.inductance_H).toBeLessThan(0.97 * bare.find(is)!.inductance_H);
      }
    }
  );
});

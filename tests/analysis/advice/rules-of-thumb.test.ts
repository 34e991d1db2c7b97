import { describe, expect, it } from 'vitest';
import { adviseTurns } from '#analysis/advice/advise-turns';
import { thumbInductance, wiredUp } from '#analysis/advice/rules-of-thumb';
import { circuit, loop, siteOf, unit } from '../support/sites';

const FOOT = 0.3048;
const WISH = { least_H: 50e-6, most_H: 700e-6, leastQ: 5 };

describe('the rule of thumb', () => {
  it('gives 72 µH for three turns of 6 × 6 ft: FHWA-IP-90-002 chapter 2 [M]', () => {
    expect(thumbInductance(24 * FOOT, 3)).toBeCloseTo(72e-6, 12);
  });

  it.each([6, 10, 20, 30, 40, 50])(
    'lies within +15/−16 %% of the physics for one to three turns of 6 × %i ft [M]',
    (feet) => {
      const site = siteOf({
        loops: [loop('L1', { kind: 'rectangle', centre: [0, 0], width: 6 * FOOT, length: feet * FOOT })],
        circuits: [circuit('C1', ['L1'])],
        units: [unit('U1')]
      });
      const { rows } = adviseTurns(site, 'C1', WISH)!.rulesOfThumb!;
      const errors = rows.filter(({ turns }) => turns <= 3).map(({ error }) => error);
      expect(errors).toHaveLength(3);
      for (const error of errors) {
        expect(error).toBeLessThan(0.155);
        expect(error).toBeGreaterThan(-0.165);
      }
    }
  );

  it('says nothing of a shape with two cells', () => {
    const site = siteOf({
      loops: [loop('L1', { kind: 'quadrupole', centre: [0, 0], width: 1.8, length: 3 })],
      circuits: [circuit('C1', ['L1'])],
      units: [unit('U1')]
    });
    expect(adviseTurns(site, 'C1', WISH)!.rulesOfThumb).toBeNull();
  });

  it('adds the lead-in, 20 to 24 µH per 100 ft (test-loop figure notes, NEMA TS 1), and asks loops to outweigh it', () => {
    const site = siteOf({
      loops: [loop('L1', { kind: 'rectangle', centre: [0, 0], width: 6 * FOOT, length: 6 * FOOT })],
      circuits: [circuit('C1', ['L1'], { leadIn: { cable: 'pair-14', length: 250 * FOOT } })],
      units: [unit('U1')]
    });
    const rules = adviseTurns(site, 'C1', { ...WISH, least_H: 90e-6 })!.rulesOfThumb!;
    expect(rules.leadIn_H).toBeGreaterThan(50e-6);
    expect(rules.leadIn_H).toBeLessThan(60e-6);
    // 12, 36 and 72 µH: two turns and the lead-in make 90, three alone outweigh it
    expect(rules.turns).toBe(rules.leadIn_H + 36e-6 >= 90e-6 ? 2 : 3);
    expect(rules.leastTurnsForLeadIn).toBe(3);
  });
});

describe('loops that do not see one another', () => {
  const of = (...strings: readonly (readonly string[])[]) =>
    siteOf({
      loops: ['a', 'b', 'c', 'd'].map((id, k) =>
        loop(id, { kind: 'circle', centre: [9 * k, 0], diameter: 2 })
      ),
      circuits: [circuit('C1', [], { strings: strings.map((string) => string.map((id) => ({ loop: id }))) })],
      units: [unit('U1')]
    }).circuits[0]!;

  it.each([
    [[['a'], ['b'], ['c'], ['d']], 0.25],
    [[['a', 'b', 'c', 'd']], 4],
    [
      [
        ['a', 'b'],
        ['c', 'd']
      ],
      1
    ],
    [[['a'], ['b', 'c', 'd']], 0.75]
  ])('add in series and share in parallel: %j is %f of one', (strings, share) => {
    expect(wiredUp(of(...strings), () => 80e-6)).toBeCloseTo(share * 80e-6, 15);
  });
});

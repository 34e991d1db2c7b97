import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { TurnsAdvice, TurnsChoice, TurnsWish } from '#analysis/advice/advice';
import { adviseTurns } from '#analysis/advice/advise-turns';
import { createAssessor } from '#analysis/assess';
import { builtInWires } from '#plan/catalogue/wires';
import type { Site } from '#plan/schema';
import { between, PATIENCE, SEED } from '../../physics/support/arbitraries';
import { relativeError } from '../../physics/support/reference';
import { channel, circuit, loop, siteOf, square, unit } from '../support/sites';

type Json = Readonly<Record<string, unknown>>;

/** 50 to 700 µH and Q of 5: what a unit must accept, NEMA TS 1/TS 2, from memory [M]. */
const WISH: TurnsWish = { least_H: 50e-6, most_H: 700e-6, leastQ: 5 };
const FOOT = 0.3048;

const siteWith = (over: Json = {}): Site =>
  siteOf({
    loops: [loop('L1', square(0, 0))],
    circuits: [circuit('C1', ['L1'])],
    units: [unit('U1')],
    ...over
  });
const advise = (site: Site, wish: Partial<TurnsWish> = {}): TurnsAdvice =>
  adviseTurns(site, 'C1', { ...WISH, ...wish })!;
const choiceOf = ({ choices }: TurnsAdvice, turns: number, wire = 'awg14'): TurnsChoice =>
  choices.find((choice) => choice.turns === turns && choice.wire === wire)!;
const codesOf = (choice: TurnsChoice): string[] => choice.objections.map(({ code }) => code);
const refusals = ({ objections }: TurnsChoice) => objections.filter(({ refuses }) => refuses);

describe('a choice of turns and wire', { timeout: PATIENCE }, () => {
  it('has the figures that the drawing would have with it', () => {
    const advice = advise(siteWith());
    for (const [turns, wire] of [
      [2, 'awg12'],
      [4, 'awg18']
    ] as const) {
      const drawn = siteWith({ loops: [loop('L1', square(0, 0), { turns, wire })] });
      const found = createAssessor().assess(drawn, 'prepared');
      const [terminals, own] = [found.circuits[0]!, found.loops[0]!];
      const choice = choiceOf(advice, turns, wire);
      expect(relativeError(choice.inductance_H, terminals.inductance_H)).toBeLessThan(1e-9);
      expect(relativeError(choice.resistance_ohm, terminals.resistance_ohm)).toBeLessThan(1e-9);
      expect(relativeError(choice.q, terminals.q)).toBeLessThan(1e-9);
      expect(
        relativeError(choice.resonanceRatio, own.selfResonance_Hz / terminals.frequency_Hz)
      ).toBeLessThan(1e-9);
      expect(choice.cover_m).toBeCloseTo(own.cover_m, 12);
      expect(choice.wireLength_m).toBeCloseTo(own.wireLength_m, 12);
    }
  });

  it('runs from one turn of every wire to what is far beyond the window or out of the slot, 12 at most', () => {
    const advice = advise(siteWith(), { most_H: 150e-6 });
    for (const { id } of builtInWires) {
      const rows = advice.choices.filter(({ wire }) => wire === id);
      expect(rows.map(({ turns }) => turns)).toEqual(rows.map((_, k) => k + 1));
      const last = rows[rows.length - 1]!;
      expect(last.inductance_H > 300e-6 || last.cover_m < 0 || last.turns === 12).toBe(true);
      for (const row of rows.slice(0, -1)) {
        expect(row.inductance_H).toBeLessThanOrEqual(300e-6);
        expect(row.cover_m).toBeGreaterThanOrEqual(0);
      }
    }
  });

  it('carries half of the change to the terminals where lead-in and loops are alike', () => {
    const far = siteWith({
      loops: [loop('L1', square(0, 0))],
      circuits: [circuit('C1', ['L1'], { leadIn: { cable: 'k', length: 100 } })],
      cables: [
        { id: 'k', resistancePerMetre_ohm: 0.01, inductancePerMetre_H: 1e-6, capacitancePerMetre_F: 0 }
      ]
    });
    const choice = choiceOf(advise(far), 3);
    const loops = choice.inductance_H - 100e-6;
    // the loop's own capacitance raises it by some thousandths
    expect(choice.loopShare).toBeCloseTo(loops / choice.inductance_H, 2);
    expect(codesOf(choice)).toContain('lead-in-heavy');
  });

  it('is refused for each reason by figure and limit', () => {
    const advice = advise(siteWith(), { least_H: 80e-6, most_H: 120e-6, leastQ: 24 });
    const objection = (choice: TurnsChoice, code: string) =>
      choice.objections.find((each) => each.code === code);
    const one = choiceOf(advice, 1);
    expect(objection(one, 'inductance-low')).toEqual({
      code: 'inductance-low',
      value: one.inductance_H,
      limit: 80e-6,
      refuses: true
    });
    expect(codesOf(choiceOf(advice, 4))).toContain('inductance-high');
    expect(codesOf(choiceOf(advice, 3, 'awg18'))).toContain('q-low');
    expect(codesOf(choiceOf(advice, 3))).toEqual([]);
  });

  it('does not go into a slot that is too narrow, nor stand out of one that is too shallow', () => {
    const slot = { depth: 0.02, width: 0.0036 };
    const advice = advise(siteWith({ loops: [loop('L1', square(0, 0), { slot })] }));
    // insulated diameters of the catalogue: 3.4 mm goes in, 3.8 mm does not
    expect(codesOf(choiceOf(advice, 2))).toContain('slot-narrow');
    expect(codesOf(choiceOf(advice, 2, 'awg16'))).not.toContain('slot-narrow');
    // six turns of 3.4 mm are 20.4 mm
    expect(codesOf(choiceOf(advice, 6, 'awg16'))).toContain('slot-full');
    expect(codesOf(choiceOf(advice, 5, 'awg16'))).toContain('cover-thin');
    expect(codesOf(choiceOf(advice, 5, 'awg16'))).not.toContain('slot-full');
    // cautions come after refusals
    const order = choiceOf(advice, 6, 'awg16').objections.map(({ refuses }) => refuses);
    expect(order).toEqual([...order].sort((a, b) => Number(b) - Number(a)));
  });
});

describe('the advice', { timeout: PATIENCE }, () => {
  it('for 60 to 80 µH of a 6 × 6 ft loop is three turns of 14 AWG: the standard test loop, NEMA TS 1 [S]', () => {
    const site = siteWith({
      loops: [
        loop(
          'L1',
          { ...square(0, 0, 6 * FOOT), cornerCut: FOOT },
          { slot: { depth: 0.0381, width: 0.00635 } }
        )
      ],
      circuits: [circuit('C1', ['L1'], { leadIn: { cable: 'pair-14', length: 0 } })]
    });
    const { best, why } = advise(site, { least_H: 60e-6, most_H: 80e-6 });
    expect(best).toMatchObject({ turns: 3, wire: 'awg14' });
    expect(why).toMatchObject({ wire: 'drawn', oneTurnFewer: { code: 'inductance-low', limit: 60e-6 } });
  });

  it('keeps to what was asked for, with as few turns as that takes, whatever the window', () => {
    fc.assert(
      fc.property(between(40e-6, 300e-6), between(1.3, 4), between(4, 25), (least_H, span, leastQ) => {
        const advice = advise(siteWith(), { least_H, most_H: least_H * span, leastQ });
        const { best, nearest, why, choices } = advice;
        const possible = choices.filter((choice) => refusals(choice).length === 0);
        expect(best === null).toBe(possible.length === 0);
        expect(nearest === null).toBe(best !== null);
        expect(why === null).toBe(best === null);
        if (!best) {
          expect(refusals(nearest!).length).toBeGreaterThan(0);
          return;
        }
        expect(best.inductance_H).toBeGreaterThanOrEqual(least_H);
        expect(best.inductance_H).toBeLessThanOrEqual(least_H * span);
        expect(best.q).toBeGreaterThanOrEqual(leastQ);
        expect(why!.qRatio).toBeCloseTo(best.q / leastQ, 12);
        for (const other of possible)
          if (other.objections.length <= best.objections.length)
            expect(other.turns).toBeGreaterThanOrEqual(best.turns);
      }),
      { seed: SEED, numRuns: 15 }
    );
  });

  it('takes a turn more where fewer would drown in the lead-in', () => {
    const site = siteWith({
      circuits: [circuit('C1', ['L1'], { leadIn: { cable: 'pair-12', length: 100 } })]
    });
    const { best, choices } = advise(site);
    expect(best!.objections).toEqual([]);
    const fewer = choices.filter(({ turns, wire }) => turns < best!.turns && wire === best!.wire);
    expect(fewer.some((choice) => refusals(choice).length === 0)).toBe(true);
    for (const choice of fewer) expect(codesOf(choice)).toContain('lead-in-heavy');
  });

  it('leaves the drawn wire for one with more Q where that is short, and for the thinnest that is ample otherwise', () => {
    const drawn = (wire: string) => siteWith({ loops: [loop('L1', square(0, 0), { wire })] });
    const ample = advise(drawn('awg18'), { leastQ: 5 });
    expect([ample.best!.wire, ample.why!.wire]).toEqual(['awg18', 'drawn']);
    // at three turns 18 AWG has a Q of some 23, 16 AWG of 25, 12 AWG of 27
    const demanding = advise(drawn('awg18'), { leastQ: 16, least_H: 80e-6 });
    expect(choiceOf(demanding, 3, 'awg18').q).toBeLessThan(1.5 * 16);
    expect(choiceOf(demanding, 3, 'awg16').q).toBeGreaterThan(1.5 * 16);
    expect([demanding.best!.turns, demanding.best!.wire, demanding.why!.wire]).toEqual([
      3,
      'awg16',
      'thinnest'
    ]);
    const strict = advise(drawn('awg18'), { leastQ: 20, least_H: 80e-6 });
    for (const { q, turns } of strict.choices) if (turns === 3) expect(q).toBeLessThan(1.5 * 20);
    expect([strict.best!.turns, strict.best!.wire, strict.why!.wire]).toEqual([3, 'awg12', 'highest-q']);
  });

  it('says which limit stands in the way where nothing satisfies', () => {
    const advice = advise(siteWith(), { least_H: 70e-6, most_H: 72e-6 });
    expect(advice.best).toBeNull();
    for (const { code } of refusals(advice.nearest!)) expect(code).toMatch(/^inductance/);
    const hopeless = advise(siteWith(), { leastQ: 1_000 });
    expect(codesOf(hopeless.nearest!)[0]).toBe('q-low');
  });

  it('changes the one loop that may change, and of all loops the same', () => {
    const site = siteWith({
      loops: [loop('L1', square(0, 0)), loop('L2', square(0, 5), { turns: 2 })],
      circuits: [circuit('C1', ['L1', 'L2'])]
    });
    const both = advise(site);
    const second = advise(site, { loop: 'L2' });
    expect([both.loops, second.loops]).toEqual([['L1', 'L2'], ['L2']]);
    // two loops of three turns, in both: what the drawing has with L2 at three
    expect(relativeError(choiceOf(second, 3).inductance_H, choiceOf(both, 3).inductance_H)).toBeLessThan(
      1e-9
    );
    expect(choiceOf(second, 1).inductance_H).toBeGreaterThan(choiceOf(both, 1).inductance_H);
    expect(choiceOf(second, 1).wireLength_m).toBeCloseTo(choiceOf(both, 1).wireLength_m / 2, 12);
  });

  it("knows the site's own wires, and the frequency follows the setting", () => {
    const own = { id: 'thick', conductorDiameter: 0.003, insulatedDiameter: 0.005 };
    const site = siteWith({
      wires: [own],
      circuits: [circuit('C1', ['L1'], { channel: channel('U1', 1, { frequency_Hz: null }) })]
    });
    const advice = advise(site);
    const [two, three] = [choiceOf(advice, 2, 'thick'), choiceOf(advice, 3, 'thick')];
    // f = 1/(2π√(LC)) but for losses
    expect(
      relativeError(two.frequency_Hz / three.frequency_Hz, Math.sqrt(three.inductance_H / two.inductance_H))
    ).toBeLessThan(5e-3);
  });

  it('is none for a circuit or a loop that is not there', () => {
    expect(adviseTurns(siteWith(), 'C9', WISH)).toBeNull();
    expect(adviseTurns(siteWith(), 'C1', { ...WISH, loop: 'L9' })).toBeNull();
  });
});

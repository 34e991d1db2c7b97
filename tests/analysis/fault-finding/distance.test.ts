/** How far a short is told to lie, where contact resistance or the lead-in's end come into it. */
import { describe, expect, it } from 'vitest';

import { wireOf } from '#plan/catalogue/wires';
import { fault, figure, number } from './support/prepared';
import { AT_CABINET, diagnosed, prepared, readingsUnder, site } from './support/readings';

/** Of annealed copper at 20 °C, the international standard of 1913 (IACS). */
const COPPER_RESISTIVITY = 1.7241e-8;
const LEAD_IN = 80;
const short = (distance_m: number, resistance_ohm: number) =>
  fault('short in lead-in', null, { distance_m, resistance_ohm });
const distancesUnder = (distance_m: number, resistance_ohm: number) =>
  diagnosed(readingsUnder([short(distance_m, resistance_ohm)], [AT_CABINET])).distances;

describe('a distance', () => {
  it('is told from inductance alone where the resistance is more than the whole lead-in has', () => {
    const ohms = number(prepared, [short(60, 3)], figure('cabinet', 'resistanceDc_ohm'));
    const whole = number(prepared, [short(LEAD_IN, 1e-6)], figure('cabinet', 'resistanceDc_ohm'));
    expect(ohms).toBeGreaterThan(whole);
    const distances = distancesUnder(60, 3);
    expect(distances.map(({ from }) => from)).toEqual(['inductance']);
    expect(distances[0]!.low).toBeLessThan(60);
    expect(distances[0]!.high).toBeGreaterThan(60);
    expect(distances[0]!.told.key).toBe('distance.inductance');
  });

  it('by resistance lies beyond that by inductance where the contact is bad, and both say that they disagree', () => {
    const [byResistance, byInductance] = distancesUnder(20, 0.9);
    expect(byInductance!.distance_m).toBeCloseTo(20, 0);
    // ohms of the contact over ohms a metre of the pair, from the copper's own constants
    const area = Math.PI * (wireOf('awg14', site)!.conductorDiameter / 2) ** 2;
    const perMetre = (2 * COPPER_RESISTIVITY) / area;
    // the loops lie beside the contact
    const behind = number(prepared, [], figure('cabinet', 'resistanceDc_ohm')) - 20 * perMetre;
    const added = (0.9 * behind) / (0.9 + behind);
    expect(byResistance!.distance_m / (20 + added / perMetre)).toBeCloseTo(1, 2);
    expect(byResistance!.low).toBeGreaterThan(byInductance!.high);
    for (const { told } of [byResistance!, byInductance!]) expect(told.key).toBe('distance.disagree');
  });

  it('is not told where nothing is shorted', () => {
    const splice = diagnosed(
      readingsUnder([fault('resistive splice', null, { resistance_ohm: 6 })], [AT_CABINET])
    );
    expect(splice.distances).toEqual([]);
  });
});

describe('shorted turns and direct current', () => {
  const loop = site.loops.find(({ id }) => id === 'L2')!;
  const radius = wireOf(loop.wire, site)!.conductorDiameter / 2;
  const perMetre = COPPER_RESISTIVITY / (Math.PI * radius ** 2);
  const asked = figure('loop', 'resistanceDc_ohm', { loop: 'L2' });
  /** Of one turn, and of both wires of the tail, which every current passes once. */
  const turn = 4 * 1.8 * perMetre;
  const tail = 2 * loop.tail.length * perMetre;
  const shorted = (shortedTurns: number, resistance_ohm: number) =>
    number(prepared, [fault('shorted turns', 'L2', { shortedTurns, resistance_ohm })], asked);

  it.each([1, 2, 3])(
    '%i of four turns leave the others and the tail, beside which the contact lies',
    (turns) => {
      for (const contact of [0.01, 0.05, 1]) {
        const bridged = turns * turn;
        const closed = (4 - turns) * turn + tail + (bridged * contact) / (bridged + contact);
        expect(shorted(turns, contact) / closed).toBeCloseTo(1, 3);
      }
    }
  );

  it('a contact of no account takes the turns away, one of mega-ohms nothing', () => {
    expect(shorted(1, 1e6) / number(prepared, [], asked)).toBeCloseTo(1, 5);
    expect(number(prepared, [], asked) / (4 * turn + tail)).toBeCloseTo(1, 3);
  });
});

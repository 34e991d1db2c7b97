/** What geometry does, as it comes out of sweeps, against laws that do not come from this program. */
import { describe, expect, it } from 'vitest';
import { createMeans } from '#analysis/means';
import { finish } from '#analysis/steps';
import type { Figure } from '#analysis/sweep/results';
import { sweepInSteps } from '#analysis/sweep/sweep';
import type { Variable } from '#plan/variables/variable';
import type { Site } from '#plan/schema';
import { evenly, smallSite } from './support';

const curve = (
  site: Site,
  variable: Variable,
  values: readonly number[],
  figure: Figure,
  place = { offset_m: 0, along_m: 0 }
): readonly number[] =>
  finish(
    sweepInSteps(
      site,
      { x: { variable, values }, family: null, designs: null, figures: [figure], place },
      createMeans()
    )
  )!.figures[0]!.values[0]!.map((value) => value!);

const site = smallSite(1);
const of = (kind: Figure['kind'], subject: string, more: Partial<Figure> = {}): Figure => ({
  kind,
  subject,
  ...more
});

describe('turns', () => {
  const turns = evenly(1, 6, 6);
  const inductances = curve(site, { kind: 'turns', subject: 'L1' }, turns, of('loopInductance', 'L1'));

  it('the inductance goes nearly with their square, and more nearly the thinner they lie', () => {
    // two turns that share all their flux have four times the inductance of one: L = N²·L1 is the limit from above
    const ratios = inductances.map((value, k) => value / (inductances[0]! * turns[k]! ** 2));
    ratios.slice(1).forEach((ratio, k) => {
      expect(ratio).toBeLessThan(ratios[k]!);
      expect(ratio).toBeGreaterThan(0.5);
    });
    const thin: Site = {
      ...site,
      wires: [
        {
          id: 'thin',
          name: 'thin',
          conductorDiameter: 1e-3,
          insulatedDiameter: 1.001e-3,
          insulationPermittivity: 2
        }
      ],
      loops: site.loops.map((loop) => ({ ...loop, wire: 'thin' }))
    };
    const [one, two] = curve(thin, { kind: 'turns', subject: 'L1' }, [1, 2], of('loopInductance', 'L1'));
    expect(two! / (4 * one!)).toBeGreaterThan(ratios[1]!);
    expect(two! / (4 * one!)).toBeLessThan(1);
  });
});

describe('a lead-in dilutes', () => {
  /** Without capacitance and losses the lead-in is an inductance in series. */
  const perMetre = 7e-7;
  const bare: Site = {
    ...site,
    cables: [{ id: 'plain', name: 'plain', resistancePerMetre_ohm: 1e-6, inductancePerMetre_H: perMetre, capacitancePerMetre_F: 0 }], // prettier-ignore
    loops: site.loops.map((loop) => ({ ...loop, tail: { length: 0 } })),
    circuits: site.circuits.map((circuit) => ({
      ...circuit,
      leadIn: { cable: 'plain', length: 0 },
      channel: circuit.channel && { ...circuit.channel, frequency_Hz: 20_000 }
    }))
  };

  it('the response by the lead-in’s share of the inductance: L/(L + l·L′)', () => {
    const lengths = [0, 20, 60, 150];
    const length: Variable = { kind: 'leadInLength', subject: 'C1' };
    const responses = curve(bare, length, lengths, of('response', 'C1', { vehicle: 'car' }));
    const inductances = curve(bare, length, lengths, of('inductance', 'C1'));
    const [own] = inductances;
    lengths.forEach((l, k) => {
      const share = own! / (own! + l * perMetre);
      // the copper's losses and the loop's own capacitance are what is left
      expect(responses[k]! / responses[0]! / share).toBeCloseTo(1, 5);
      expect(inductances[k]! / (own! + l * perMetre)).toBeCloseTo(1, 5);
    });
  });
});

describe('vehicles', () => {
  it('the higher the less', () => {
    const heights = [0.3, 0.45, 0.7, 1.1];
    const figure = of('response', 'C1', { vehicle: 'car', path: 'standing' });
    const responses = curve(site, { kind: 'vehicleHeight', subject: 'car' }, heights, figure);
    responses.slice(1).forEach((value, k) => expect(value).toBeLessThan(responses[k]!));
  }, 30_000);

  it('the farther along the less, and the same before and behind', () => {
    const figure = of('response', 'C1', { vehicle: 'car', path: 'standing' });
    const values = curve(site, { kind: 'along', subject: null }, [-4, -3, -2, 2, 3, 4], figure);
    expect(values[0]).toBeLessThan(values[1]!);
    expect(values[1]).toBeLessThan(values[2]!);
    values.slice(0, 3).forEach((value, k) => expect(value / values[5 - k]!).toBeCloseTo(1, 6));
  });

  it('coupling falls with the distance of two loops', () => {
    const gap: Variable = { kind: 'gap', subject: 'L1', other: 'L2' };
    const values = curve(smallSite(), gap, [0.2, 0.5, 1, 2, 4], of('coupling', 'L1', { other: 'L2' }));
    values.slice(1).forEach((value, k) => expect(Math.abs(value)).toBeLessThan(Math.abs(values[k]!)));
    // far away two loops are dipoles side by side, which fall with the cube of their distance
    const far = curve(smallSite(), gap, [38.2, 78.2], of('mutual', 'L1', { other: 'L2' }));
    expect(Math.log(far[0]! / far[1]!) / Math.log(80 / 40)).toBeCloseTo(3, 1);
  });
});

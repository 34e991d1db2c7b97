/** Turns of a loop that are shorted among themselves, against the closed form of two coupled coils. */
import { describe, expect, it } from 'vitest';
import { createMeans } from '#analysis/means';
import { windingOf } from '#analysis/electrical/winding-of';
import { turnInductances } from '#physics/inductance/turns';
import { dcResistancePerMetre, internalImpedance } from '#physics/wire/round-wire';
import { evaluate } from '#analysis/sweep/figures/index';
import type { FigureKind } from '#analysis/sweep/results';
import { networkOf } from '#analysis/sweep/shorted';
import { trialsOf } from '#analysis/sweep/trial';
import { experimentOn } from '#plan/variables/index';
import { wireOf } from '#plan/catalogue/wires';
import { soundState } from '#analysis/fault-finding/network/state';
import type { Site } from '#plan/schema';
import { smallSite, withMat } from './support';

const means = createMeans();
const read = (site: Site, kind: FigureKind, subject: string, turns: number): number =>
  evaluate(
    { ...experimentOn(site), shorted: turns === 0 ? null : { loop: 'L1', turns } },
    { kind, subject, vehicle: 'car' },
    means
  )!;

const given = (site: Site): Site => ({
  ...site,
  circuits: site.circuits.map((circuit) => ({
    ...circuit,
    channel: circuit.channel && { ...circuit.channel, frequency_Hz: 45_000 }
  }))
});

describe.each([
  ['on a setting', smallSite(1)],
  ['at a given frequency', given(smallSite(1))],
  ['over a mat', withMat(smallSite(1))]
])('%s', (_, site) => {
  it('with no turn shorted the network is the sound circuit', () => {
    const trial = trialsOf(means).of({ ...experimentOn(site), shorted: { loop: 'L1', turns: 1 } });
    const surveyed = trial.survey.circuits.get('C1')!;
    const { design, meterWith } = networkOf(trial, surveyed)!;
    const meter = meterWith(null);
    const says = (quantity: 'inductance_H' | 'q' | 'frequency_Hz' | 'resistanceDc_ohm'): number =>
      meter.read(soundState(design), {
        ...{ quantity, vehicle: null, testPoint: 'unit', loop: null },
        ...{ meterFrequency_Hz: null, temperature_C: null, setting: null }
      }) as number;
    // a meter looks for the frequency of a channel between points of a grid: there it is good to a ten-millionth
    const most = surveyed.readout.frequencyFrom === 'given' ? 1e-8 : 5e-7;
    for (const quantity of ['inductance_H', 'q', 'frequency_Hz', 'resistanceDc_ohm'] as const)
      expect(Math.abs(says(quantity) / surveyed.readout[quantity] - 1)).toBeLessThan(most);
  });

  it('a short takes inductance, Q and response, and the channel runs faster', () => {
    for (const kind of ['inductance', 'q', 'response', 'resistanceDc', 'loopInductance'] as const)
      expect(read(site, kind, kind === 'loopInductance' ? 'L1' : 'C1', 1)).toBeLessThan(
        read(site, kind, kind === 'loopInductance' ? 'L1' : 'C1', 0)
      );
    expect(read(site, 'frequency', 'C1', 1)).toBeGreaterThan(read(site, 'frequency', 'C1', 0));
  });
});

it('the loop is that of two coupled coils, one of them shorted', () => {
  // L − ω²M²·Lr/(Rr² + ω²Lr²): the transformer's equation with its second winding closed
  const site = given(smallSite(1));
  const [loop] = site.loops;
  const wire = wireOf('awg14', site)!;
  const winding = windingOf(loop!, { conductor: wire.conductorDiameter, insulated: wire.insulatedDiameter });
  const turns = turnInductances(winding);
  const frequency = read(site, 'frequency', 'C1', 1);
  const omega = 2 * Math.PI * frequency;
  const inner = internalImpedance(wire.conductorDiameter / 2, frequency, site.temperature_C);
  const perTurn = winding.wireLength / 3;
  const internal = (count: number): number => count * perTurn * inner.inductance;
  // the middle one of three
  const whole = turns.reduce((sum, value) => sum + value, 0) + internal(3);
  const own = turns[4]! + internal(1);
  const mutual = turns[3]! + turns[4]! + turns[5]! + internal(1);
  const resistance =
    perTurn * Math.max(inner.resistance, dcResistancePerMetre(wire.conductorDiameter / 2, 20));
  const expected = whole - (omega ** 2 * mutual ** 2 * own) / (resistance ** 2 + omega ** 2 * own ** 2);
  // proximity losses of the ring, a few hundredths of its resistance, are not in the closed form
  expect(read(site, 'loopInductance', 'L1', 1) / expected).toBeCloseTo(1, 2);
});

it('where every turn is shorted nothing is left that would see a vehicle', () => {
  const site = smallSite(1);
  expect(read(site, 'response', 'C1', 3)).toBeCloseTo(0, 9);
  expect(read(site, 'response', 'C1', 0)).toBeGreaterThan(0.01);
});

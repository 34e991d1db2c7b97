/** The plane that stands for steel nobody drew, against mats and plates that are drawn and computed bar by bar. */
import { describe, expect, it } from 'vitest';
import { channel, circuit, lane, loop, siteOf, square, unit } from '../support/sites';
import { figure, number, preparedOf } from './support/prepared';

const PLATE = { kind: 'plate', centre: [0, 0], width: 1.2, length: 2.4, height: 0.4 };
const base = {
  loops: [loop('L1', square(0, 0)), loop('L2', square(0, 2.3), { turns: 4 })],
  circuits: [
    circuit('C1', ['L1', 'L2'], { channel: channel('U1', 1, { frequency_Hz: null, frequencySetting: 2 }) })
  ],
  units: [unit('U1')],
  lanes: [lane('A', 0)],
  vehicles: [{ id: 'car', name: 'Car', parts: [PLATE] }]
};
const outline = [
  [-3, -3],
  [3, -3],
  [3, 5.3],
  [-3, 5.3]
];
const mat = (depth: number, pitch: number, barRadius: number) => ({
  ...{ id: 'S1', kind: 'mat', depth, pitch, barRadius, outline }
});

/** Built exactly as drawn: without ranges nothing has to be computed bar by bar but the drawing. */
const EXACT = {
  dimensions_m: 0,
  depth_m: 0,
  wirePitch_m: 0,
  leadInLength_m: 0,
  temperature_C: 0,
  relativePermittivity: 0,
  vehicleHeight_m: 0
};

const sound = preparedOf(siteOf(base), 'C1', ['car']);
const steels = sound.hypotheses.filter(({ kind }) => kind === 'steel near');
const l = figure('pull-box', 'inductance_H');
const q = figure('pull-box', 'q');
const response = figure('unit', 'deltaLOverL', { vehicle: 'car' });

const at = (variant: number | undefined, depth_m: number) => ({
  ...{ kind: 'steel near' as const, subject: null, variant, values: { depth_m } }
});

/** The depth of the plane that takes as much inductance. */
const depthFor = (wanted: number, variant: number | undefined): number => {
  const depths = steels[0]!.unknowns[0]!.values;
  let [low, high] = [depths[0]!, depths.at(-1)!];
  for (let step = 0; step < 50; step++) {
    const middle = (low + high) / 2;
    if (number(sound, [at(variant, middle)], l) < wanted) low = middle;
    else high = middle;
  }
  return low;
};

describe('steel that nobody drew', () => {
  it.each([
    ['thick bars, near', mat(0.09, 0.15, 0.006)],
    ['thin bars, near', mat(0.1, 0.2, 0.003)],
    ['thick bars, deep', mat(0.2, 0.2, 0.006)],
    ['a plate', { id: 'S1', kind: 'plate', depth: 0.25, outline }]
  ])(
    'can be %s: the plane that takes as much inductance takes alike from Q, from each loop and from a vehicle',
    (_, steel) => {
      const real = preparedOf(siteOf({ ...base, steel: [steel], tolerances: EXACT }), 'C1', ['car']);
      const wanted = number(real, [], l);
      expect(wanted).toBeLessThan(0.95 * number(sound, [], l));
      const tried = steels.map(({ variant }) => at(variant, depthFor(wanted, variant)));
      const loss = (faults: Parameters<typeof number>[1], of = sound): number => 1 / number(of, faults, q);
      const off = tried.map((each) => Math.abs(loss([each]) / loss([], real) - 1));
      const best = tried[off.indexOf(Math.min(...off))]!;
      expect(Math.min(...off)).toBeLessThan(0.25);
      for (const id of ['L1', 'L2']) {
        const alone = figure('loop', 'inductance_H', { loop: id });
        expect(number(sound, [best], alone) / number(real, [], alone)).toBeCloseTo(1, 1.5);
      }
      expect(number(sound, [best], response) / number(real, [], response)).toBeGreaterThan(0.8);
      expect(number(sound, [best], response) / number(real, [], response)).toBeLessThan(1.25);
    }
  );

  it('takes from a vehicle more than from the inductance', () => {
    const [low] = steels[1]!.unknowns[0]!.values as [number];
    const near = at(steels[1]!.variant, low + 0.1);
    expect(number(sound, [near], response)).toBeGreaterThan(number(sound, [], response));
  });
});

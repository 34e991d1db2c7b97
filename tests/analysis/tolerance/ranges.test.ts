/** Plausible ranges of whole circuits: against published figures where there are any, and how they move with the tolerances. */
import { describe, expect, it } from 'vitest';
import { TOLERANCE_INPUTS, type PlausibleRange, type ToleranceInput } from '#analysis/results';
import type { Tolerances } from '#plan/schema';
import { PATIENCE } from '../../physics/support/arbitraries';
import { relativeError } from '../../physics/support/reference';
import { channel, circuit, loop, square } from '../support/sites';
import { FIGURES, figuresOf, onSetting, siteWith, studyOf, type Study } from './study';

type Json = Readonly<Record<string, unknown>>;

const NONE: Required<Tolerances> = {
  dimensions_m: 0,
  depth_m: 0,
  wirePitch_m: 0,
  leadInLength_m: 0,
  temperature_C: 0,
  relativePermittivity: 0,
  vehicleHeight_m: 0
};
const USUAL: Required<Tolerances> = {
  dimensions_m: 0.02,
  depth_m: 0.01,
  wirePitch_m: 0.0004,
  leadInLength_m: 2,
  temperature_C: 15,
  relativePermittivity: 3,
  vehicleHeight_m: 0.05
};
const within = (tolerances: Partial<Tolerances>, over: Json = {}, vehicles: readonly string[] = []): Study =>
  studyOf(siteWith({ tolerances: { ...NONE, ...tolerances }, ...over }), vehicles);

const half = (range: PlausibleRange, input: ToleranceInput): number =>
  range.contributions.find((each) => each.input === input)?.halfWidth ?? 0;
const width = ({ low, high }: PlausibleRange): number => high - low;
const all = ({ ranges }: Study): PlausibleRange[] => [
  ...FIGURES.map((figure) => ranges[figure]),
  ...ranges.responses.map(({ worst }) => worst)
];

describe('plausible ranges of a circuit', { timeout: PATIENCE }, () => {
  it('are the figures themselves without tolerances', () => {
    const study = within({}, {}, ['car']);
    const figures = figuresOf(study.alone);
    for (const name of FIGURES) {
      expect(study.ranges[name].contributions).toEqual([]);
      expect(study.ranges[name].low).toBe(study.ranges[name].high);
      expect(relativeError(study.ranges[name].low, figures[name])).toBeLessThan(1e-12);
    }
    const { worst } = study.ranges.responses[0]!;
    expect(worst.low).toBe(worst.high);
    expect(worst.low).toBeCloseTo(study.responses[0]!.worst, 12);
  });

  it('hold the figure as designed and name the largest contribution first', () => {
    const study = within(USUAL, {}, ['car', 'motorcycle']);
    const values = [
      ...FIGURES.map((figure) => figuresOf(study.alone)[figure]),
      ...study.responses.map(({ worst }) => worst)
    ];
    all(study).forEach(({ low, high, contributions }, k) => {
      expect(low).toBeLessThan(values[k]!);
      expect(high).toBeGreaterThan(values[k]!);
      const halves = contributions.map(({ halfWidth }) => halfWidth);
      expect(halves).toEqual([...halves].sort((a, b) => b - a));
    });
  });

  it('take the temperature coefficient of copper, 0.00393 /K at 20 °C (IEC 60028), for direct-current resistance', () => {
    const { ranges, alone } = within({ temperature_C: 15 });
    expect(half(ranges.resistanceDc_ohm, 'temperature')).toBeCloseTo(alone.resistanceDc * 0.00393 * 15, 9);
  });

  it('take 3.07 Ω per 1000 ft of one wire at 75 °C for the lead-in, NEC chapter 9 table 8', () => {
    const { ranges } = within({ leadInLength_m: 2 }, { temperature_C: 75 });
    expect(relativeError(half(ranges.resistanceDc_ohm, 'leadInLength'), (4 * 3.07) / 304.8)).toBeLessThan(
      0.01
    );
  });

  it('take 20 to 24 µH per 100 ft of lead-in pair, test-loop figure notes, NEMA TS 1', () => {
    const { ranges } = within({ leadInLength_m: 2 });
    const per100ft = (half(ranges.inductance_H, 'leadInLength') / 2) * 30.48;
    expect(per100ft).toBeGreaterThan(20e-6);
    expect(per100ft).toBeLessThan(24e-6);
  });

  it('take four sides a turn longer by the tolerance, in direct-current resistance: 1.7241e-8 Ω·m, IEC 60028', () => {
    const { ranges } = within({ dimensions_m: 0.02 });
    const wire = (3 * 4 * 0.02 * 1.7241e-8) / (Math.PI * 0.000814 ** 2);
    expect(relativeError(half(ranges.resistanceDc_ohm, 'dimensions'), wire)).toBeLessThan(1e-3);
  });

  it('of a frequency setting move half as much as inductance does, in proportion: f = 1/(2π√(LC))', () => {
    const { ranges, alone } = within({ dimensions_m: 0.02 });
    const share = half(ranges.inductance_H, 'dimensions') / alone.solved.inductance;
    const moved = half(ranges.frequency_Hz, 'dimensions') / alone.solved.frequency;
    expect(relativeError(moved, share / 2)).toBeLessThan(0.02);
  });

  it('leave a given frequency alone', () => {
    const given = channel('U1', 1, { frequency_Hz: 50_000 });
    const { ranges } = within(USUAL, { circuits: [circuit('C1', ['L1'], { channel: given })] });
    expect(ranges.frequency_Hz).toMatchObject({ low: 50_000, high: 50_000, contributions: [] });
  });

  it('of an inductance hardly know how deep the loop lies, and those of a response do', () => {
    const { ranges } = within({ depth_m: 0.01 }, {}, ['car']);
    // its capacitance to the ground does
    expect(width(ranges.inductance_H)).toBeLessThan(1e-4 * ranges.inductance_H.low);
    // a centimetre deeper is a centimetre higher for the vehicle
    const lifted = within({ vehicleHeight_m: 0.01 }, {}, ['car']).ranges.responses[0]!.worst;
    const deeper = ranges.responses[0]!.worst;
    expect(relativeError(width(deeper), width(lifted))).toBeLessThan(0.01);
  });

  it.each(TOLERANCE_INPUTS)('grow with the tolerance, and in proportion to a small one: %s', (input) => {
    const key = {
      dimensions: 'dimensions_m',
      depth: 'depth_m',
      wirePitch: 'wirePitch_m',
      leadInLength: 'leadInLength_m',
      temperature: 'temperature_C',
      permittivity: 'relativePermittivity',
      vehicleHeight: 'vehicleHeight_m'
    }[input] as keyof Tolerances;
    const study = (factor: number): PlausibleRange[] =>
      all(within({ [key]: USUAL[key]! * factor }, {}, ['car', 'motorcycle']));
    const [tenth, fifth, whole, double] = [0.1, 0.2, 1, 2].map(study) as [
      PlausibleRange[],
      PlausibleRange[],
      PlausibleRange[],
      PlausibleRange[]
    ];
    let moved = 0;
    tenth.forEach((small, k) => {
      const size = Math.abs(small.low);
      if (width(small) < 1e-9 * size) return;
      moved++;
      expect(relativeError(width(fifth[k]!), 2 * width(small))).toBeLessThan(0.02);
      expect(width(whole[k]!)).toBeGreaterThan(width(fifth[k]!));
      expect(width(double[k]!)).toBeGreaterThan(width(whole[k]!));
    });
    expect(moved).toBeGreaterThan(0);
  });

  it('of all tolerances together are wider than those of any one', () => {
    const together = within(USUAL, {}, ['car']);
    for (const key of Object.keys(USUAL) as (keyof Tolerances)[])
      all(within({ [key]: USUAL[key] }, {}, ['car'])).forEach((range, k) => {
        expect(width(range)).toBeLessThanOrEqual(width(all(together)[k]!) * (1 + 1e-9));
      });
  });

  it('stay with what can be built: no lead-in shorter than nothing, no wheel under the road', () => {
    const none = within(
      { leadInLength_m: 2, vehicleHeight_m: 2 },
      { circuits: [circuit('C1', ['L1'], { ...onSetting, leadIn: { cable: 'pair-14', length: 0 } })] },
      ['car', 'bicycle']
    );
    expect(none.ranges.inductance_H.low).toBeCloseTo(none.alone.solved.inductance, 9);
    expect(none.ranges.inductance_H.high).toBeGreaterThan(1.01 * none.alone.solved.inductance);
    for (const { worst } of none.ranges.responses) {
      expect(Number.isFinite(worst.low)).toBe(true);
      expect(worst.high).toBeLessThanOrEqual(0);
    }
  });

  it('take a loop no nearer to the road than a slot can be cut', () => {
    const deep = within({ depth_m: 0.5 }, {}, ['car']).ranges.responses[0]!.worst;
    const shallowest = studyOf(
      siteWith({
        loops: [loop('L1', square(0, 0), { tail: { length: 4 }, slot: { depth: 0.005, width: 0.008 } })]
      }),
      ['car']
    ).responses[0]!.worst;
    expect(relativeError(deep.low, shallowest)).toBeLessThan(0.02);
  });

  it('have no range for a vehicle that is not prepared', () => {
    expect(within(USUAL).ranges.responses).toEqual([]);
  });

  it.each(['quadrupole', 'diagonal'] as const)('of a %s: all figures have one', (kind) => {
    const shape = { kind, centre: [0, 0], width: 1.8, length: 2.4 };
    const study = within(USUAL, { loops: [loop('L1', shape)] }, ['car']);
    for (const range of all(study)) expect(width(range)).toBeGreaterThan(0);
  });

  it('of a square drawn as a polygon are those of the square', () => {
    const points = [
      [-0.9, -0.9],
      [0.9, -0.9],
      [0.9, 0.9],
      [-0.9, 0.9]
    ];
    const drawn = within(USUAL, { loops: [loop('L1', { kind: 'polygon', points })] }, ['car']);
    const box = within(USUAL, { loops: [loop('L1', square(0, 0))] }, ['car']);
    all(drawn).forEach((range, k) => {
      const other = all(box)[k]!;
      expect(relativeError(range.low, other.low)).toBeLessThan(1e-9);
      expect(relativeError(range.high, other.high)).toBeLessThan(1e-9);
    });
  });
});

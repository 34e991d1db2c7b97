/** Plausible ranges of loops alone: what a meter reads at the pull box. */
import { describe, expect, it } from 'vitest';
import { createAssessor } from '#analysis/assess';
import type { LoopRanges, LoopReadout } from '#analysis/results';
import { PATIENCE } from '../../physics/support/arbitraries';
import { channel, circuit, loop, QUICK_VEHICLES, siteOf, square, unit } from '../support/sites';

type Json = Readonly<Record<string, unknown>>;

const NONE = {
  dimensions_m: 0,
  depth_m: 0,
  wirePitch_m: 0,
  leadInLength_m: 0,
  temperature_C: 0,
  relativePermittivity: 0,
  vehicleHeight_m: 0
};
const FIGURES = ['inductance_H', 'resistance_ohm', 'resistanceDc_ohm', 'selfResonance_Hz'] as const;
const valueOf = (readout: LoopReadout): Record<(typeof FIGURES)[number], number> => ({
  ...readout,
  resistance_ohm: readout.resistanceAc_ohm
});

const assess = (tolerances: Json, over: Json = {}) => {
  const { circuits, loops } = createAssessor().assess(
    siteOf({
      loops: [loop('L1', square(0, 0)), loop('L2', square(4, 0, 1.2), { turns: 5, wire: 'awg18' })],
      circuits: [circuit('C1', ['L2', 'L1'], { channel: channel('U1', 1) })],
      units: [unit('U1')],
      vehicles: QUICK_VEHICLES,
      tolerances: { ...NONE, ...tolerances },
      ...over
    }),
    'complete'
  );
  return { ranges: circuits[0]!.ranges!.loops, loops };
};
const MAT = { id: 's', kind: 'mat', depth: 0.15, pitch: 0.2, barRadius: 0.005, outline: [[-2, -2], [6, -2], [6, 2], [-2, 2]] }; // prettier-ignore

describe('ranges of loops alone', { timeout: PATIENCE }, () => {
  it.each<[string, Json]>([
    ['in the road', {}],
    ['over a mat', { steel: [MAT] }]
  ])('without tolerances are the figures themselves, by the ids of the drawing: %s', (_, over) => {
    const { ranges, loops } = assess({}, over);
    expect(ranges.map(({ id }) => id)).toEqual(['L2', 'L1']);
    for (const range of ranges) {
      const wanted = valueOf(loops.find(({ id }) => id === range.id)!);
      for (const figure of FIGURES) {
        expect(range[figure].contributions).toEqual([]);
        expect(range[figure].low / wanted[figure]).toBeCloseTo(1, 9);
      }
    }
  });

  it('hold the figures, and each figure moves with what it depends on', () => {
    const { ranges, loops } = assess({
      depth_m: 0.01,
      wirePitch_m: 3e-4,
      temperature_C: 20,
      relativePermittivity: 3
    });
    for (const range of ranges) {
      const wanted = valueOf(loops.find(({ id }) => id === range.id)!);
      for (const figure of FIGURES) {
        expect(range[figure].low).toBeLessThan(wanted[figure]);
        expect(range[figure].high).toBeGreaterThan(wanted[figure]);
      }
    }
    const inputs = (figure: keyof Omit<LoopRanges, 'id'>) =>
      ranges[0]![figure].contributions.map(({ input }) => input);
    expect(inputs('resistanceDc_ohm')).toEqual(['temperature']);
    expect(inputs('inductance_H')[0]).toBe('wirePitch');
    expect(inputs('selfResonance_Hz')).toContain('permittivity');
    expect(inputs('inductance_H')).not.toContain('permittivity');
  });

  it('of the direct-current resistance: 0.393 % for each kelvin', () => {
    const { ranges, loops } = assess({ temperature_C: 10 });
    const { low, high } = ranges[1]!.resistanceDc_ohm;
    const at20 = loops.find(({ id }) => id === 'L1')!.resistanceDc_ohm;
    expect((high - low) / 2 / at20).toBeCloseTo(0.0393, 6);
  });
});

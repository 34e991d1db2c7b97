import { describe, expect, it } from 'vitest';
import type { Cable } from '#plan/schema';
import { CABLE_CONSTANTS, computedConstant } from '#ui/catalogue/constants';

const INCH = 0.0254;
/** 14 AWG at 0.130 in between the axes. */
const pair: Cable = {
  id: 'k1',
  name: '',
  conductorDiameter: 1.628e-3,
  spacing: 0.13 * INCH,
  relativePermittivity: 2.3
};
const [resistance, inductance] = CABLE_CONSTANTS;

describe('the constants of a cable', () => {
  it('are written in the units of the display system', () => {
    // 7.77 Ω per 1000 ft is 25.5 mΩ/m, 21 µH per 100 ft is 0.689 µH/m: 0.3048 m to the foot.
    expect((7.77 / 304.8) * resistance!.scale.imperial).toBeCloseTo(7.77, 12);
    expect((7.77 / 304.8) * resistance!.scale.metric).toBeCloseTo(25.49, 2);
    expect((21e-6 / 30.48) * inductance!.scale.imperial).toBeCloseTo(21, 12);
    expect((21e-6 / 30.48) * inductance!.scale.metric).toBeCloseTo(0.689, 3);
  });

  it('are computed from the conductors, whatever is stated', () => {
    // Two-wire line formula [C]: 19.1 µH per 100 ft at 20 kHz; at 50 kHz the internal part is a little smaller.
    const shown =
      computedConstant({ ...pair, inductancePerMetre_H: 1e-6 }, inductance!, 20)! *
      inductance!.scale.imperial;
    expect(shown).toBeLessThan(19.1);
    expect(shown).toBeGreaterThan(18);
  });

  it('are not computed without a geometry', () => {
    const stated: Cable = { id: 'k1', name: '', conductorDiameter: 1.628e-3, inductancePerMetre_H: 1e-6 };
    expect(computedConstant(stated, inductance!, 20)).toBeNull();
  });
});

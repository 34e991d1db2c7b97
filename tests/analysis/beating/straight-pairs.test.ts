import { expect, it } from 'vitest';
import { straightCoupling } from '#analysis/beating/straight-pairs';
import { USUAL_MUTUAL } from '#plan/catalogue/conduits';

it('the usual coupling of twisted lead-ins is about a fiftieth of what straight pairs would have', () => {
  // (µ0/2π)·ln(8·8/(12·4)), wires in a row at 0, 4, 8 and 12 mm from the first: hand calculation
  expect(straightCoupling()).toBeCloseTo(2e-7 * Math.log(64 / 48), 12);
  expect(straightCoupling() / USUAL_MUTUAL).toBeGreaterThan(45);
  expect(straightCoupling() / USUAL_MUTUAL).toBeLessThan(60);
});

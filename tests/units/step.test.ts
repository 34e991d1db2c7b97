import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { QUANTITY_KINDS, type QuantityKind, type UnitSystem } from '#units/kind';
import { GRID_STEPS, gridStep, NUDGE } from '#units/plan-steps';
import { stepped } from '#units/step';

const inch = 0.0254;

describe('stepped', () => {
  it.each<[number, QuantityKind, UnitSystem, 1 | -1, boolean, number]>([
    [1.8, 'length', 'metric', 1, false, 1.85],
    [1.8, 'length', 'metric', -1, false, 1.75],
    [1.83, 'length', 'metric', 1, false, 1.85],
    [1.83, 'length', 'metric', -1, false, 1.8],
    [1.8, 'length', 'metric', 1, true, 2.3],
    [72 * inch, 'length', 'imperial', 1, false, 73 * inch],
    [72 * inch, 'length', 'imperial', 1, true, 82 * inch],
    [0.05, 'smallLength', 'metric', 1, false, 0.051],
    [0.25 * inch, 'smallLength', 'imperial', 1, false, 0.3 * inch],
    [45, 'angle', 'metric', 1, true, 55],
    [3, 'count', 'metric', -1, false, 2],
    [3, 'count', 'metric', -1, true, 0],
    [50e3, 'frequency', 'metric', 1, false, 51e3],
    [20, 'temperature', 'imperial', 1, false, (69 - 32) / 1.8],
    [0.0016, 'ratio', 'metric', 1, false, 0.0017],
    [0.02, 'ratio', 'metric', 1, false, 0.021],
    [0.6, 'ratio', 'metric', -1, false, 0.59],
    [2.5, 'plain', 'metric', 1, false, 2.6]
  ])('%f as %s, %s, direction %i, coarse %s, becomes %f', (value, kind, system, direction, coarse, next) => {
    expect(stepped(value, kind, system, direction, coarse)).toBeCloseTo(next, 12);
  });

  it('always moves in its direction, and back to where it was from a round value', () => {
    const kinds = fc.constantFrom(...QUANTITY_KINDS.filter((kind) => kind !== 'ratio'));
    const systems = fc.constantFrom<UnitSystem>('metric', 'imperial');
    fc.assert(
      fc.property(fc.double({ min: 0, max: 50, noNaN: true }), kinds, systems, (value, kind, system) => {
        const up = stepped(value, kind, system, 1);
        expect(up).toBeGreaterThan(value);
        const upAgain = stepped(up, kind, system, 1);
        expect(stepped(upAgain, kind, system, -1)).toBeCloseTo(up, 9);
      })
    );
  });

  it('leaves what is not finite alone', () => {
    expect(stepped(Number.NaN, 'length', 'metric', 1)).toBeNaN();
  });
});

describe('steps of the plan', () => {
  it('are whole centimetres, or whole parts and multiples of an inch', () => {
    expect(NUDGE.metric).toBe(0.01);
    expect(NUDGE.imperial / inch).toBe(0.5);
    for (const step of GRID_STEPS.metric) expect((step * 100) % 1).toBeCloseTo(0, 9);
    for (const step of GRID_STEPS.imperial) expect(step / inch).toBeCloseTo(Math.round(step / inch), 9);
  });

  it.each(['metric', 'imperial'] as const)(
    'divide one another in %s, so that a finer grid holds the coarser',
    (system) => {
      const steps = GRID_STEPS[system];
      for (const [index, step] of steps.slice(1).entries()) {
        const times = step / (steps[index] ?? Number.NaN);
        expect(times).toBeGreaterThan(1.5);
        expect(times).toBeCloseTo(Math.round(times), 9);
      }
    }
  );

  it('choose the finest grid that is not closer than asked', () => {
    expect(gridStep(0.03, 'metric')).toBe(0.05);
    expect(gridStep(0.5, 'metric')).toBe(0.5);
    expect(gridStep(0.2, 'imperial')).toBe(0.3048);
    expect(gridStep(1e6, 'metric')).toBe(100);
  });
});

/** Random loops that a designer could draw. */
import fc from 'fast-check';
import type { Winding } from '#physics/inductance/winding';
import type { Loop, Shape } from '#plan/schema';
import { drawnWinding } from './windings';

/** Fixed, so that a failure can be repeated. */
export const SEED = 20_251_125;
/** Milliseconds, for machines that are busy with other tests at the same time. */
export const PATIENCE = 60_000;

export const between = (min: number, max: number): fc.Arbitrary<number> =>
  fc.double({ min, max, noNaN: true });

/** Centre within `spread` metres of the origin. */
export const shapes = (spread: number): fc.Arbitrary<Shape> => {
  const centre = fc.tuple(between(-spread, spread), between(-spread, spread));
  const box = { centre, width: between(0.5, 3), length: between(0.5, 8), rotation: between(-180, 180) };
  return fc.oneof(
    fc
      .record({ ...box, kind: fc.constant('rectangle' as const), share: between(0, 0.45) })
      .map(({ share, ...rest }) => ({ ...rest, cornerCut: share * Math.min(rest.width, rest.length) })),
    fc.record({ ...box, kind: fc.constant('quadrupole' as const) }),
    fc.record({ ...box, kind: fc.constant('diagonal' as const) }),
    fc.record({ kind: fc.constant('circle' as const), centre, diameter: between(0.5, 3) })
  );
};

export const loops = (spread = 4): fc.Arbitrary<Loop> =>
  fc.record({
    id: fc.constant('L'),
    name: fc.constant(''),
    turns: fc.integer({ min: 1, max: 5 }),
    wire: fc.constantFrom('awg12', 'awg14', 'awg16', 'awg18', 'mm2-1.5', 'mm2-2.5'),
    slot: fc.record({
      depth: between(0.03, 0.1),
      width: fc.constant(0.008),
      relativePermittivity: fc.constant(4)
    }),
    tail: fc.constant({ length: 0 }),
    shape: shapes(spread)
  });

export const windings = (spread = 4): fc.Arbitrary<Winding> => loops(spread).map(drawnWinding);

/** How far a vehicle's images in steel count: by the share of the vehicle and of each loop that is over it. */
import { describe, expect, it } from 'vitest';
import { standing } from '#analysis/electrical/standing';
import type { Part } from '#physics/vehicle/parts';
import type { Point, Steel } from '#plan/schema';

const CAR: Part = { kind: 'plate', x: 0, y: 0, height: 0.45, width: 1.6, length: 4.2 };
const mat = (x: number, y: number, width: number, length: number, depth = 0.15): Steel => ({
  id: 's',
  kind: 'plate',
  depth,
  outline: [[x, y], [x + width, y], [x + width, y + length], [x, y + length]] as Point[] // prettier-ignore
});
const at = (y: number) => ({ x: 0, y, heading: 90 });

describe('a vehicle over steel', () => {
  it('counts fully with a quarter of it and the whole loop over the steel', () => {
    const steel = mat(-2, -3, 4, 6);
    expect(standing([CAR], at(0), [{ steel, covers: [1, 0.5] }], 5e4)).toEqual({
      depth: 0.15,
      shares: [1, 0.5]
    });
    // the front fifth of its samples alone is over it: four fifths of what is enough
    const ahead = standing([CAR], at(-3 - 0.4 * 4.2), [{ steel, covers: [1] }], 5e4)!;
    expect(ahead.shares[0]! ** 2).toBeCloseTo(0.8, 12);
  });

  it('does not count beside it, nor where no loop is over it', () => {
    const steel = mat(-2, -3, 4, 6);
    expect(standing([CAR], at(9), [{ steel, covers: [1] }], 5e4)).toBeNull();
    expect(standing([CAR], at(0), [{ steel, covers: [0] }], 5e4)).toBeNull();
  });

  it('goes by the piece under most of it', () => {
    const under = mat(-2, -3, 4, 6, 0.2);
    const cover = mat(-0.3, -0.3, 0.6, 0.6, 0.01);
    const pieces = [
      { steel: cover, covers: [1] },
      { steel: under, covers: [1] }
    ];
    expect(standing([CAR], at(0), pieces, 5e4)!.depth).toBe(0.2);
  });
});

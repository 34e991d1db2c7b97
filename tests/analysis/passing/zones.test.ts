import { describe, expect, it } from 'vitest';
import type { Profile } from '#analysis/passing/results';
import { responseAt, strongestOf, zonesOf } from '#analysis/passing/zones';

/** Values a metre apart from −2 m on. */
const profile = (...values: number[]): Profile => ({
  circuit: 'C',
  vehicle: 'V',
  from: -2,
  step: 1,
  values: Float64Array.from(values)
});

describe('zones', () => {
  it('run from where the response rises over the threshold to where it falls below the release', () => {
    // rises through 2 halfway between −1 and 0; falls through 1 three quarters of the way from 2 to 3
    expect(zonesOf(profile(0, 1, 3, 4, 4, 0), 2, 1)).toEqual([{ from_m: -0.5, to_m: 2.75 }]);
  });

  it('are two where the response falls below the release between, and one where it does not', () => {
    const twice = profile(0, 4, 0, 4, 0);
    expect(zonesOf(twice, 2, 1)).toEqual([
      { from_m: -1.5, to_m: -0.25 },
      { from_m: 0.5, to_m: 1.75 }
    ]);
    const sagging = profile(0, 4, 1.5, 4, 0);
    expect(zonesOf(sagging, 2, 1)).toEqual([{ from_m: -1.5, to_m: 1.75 }]);
    // without hysteresis the sag is a gap
    expect(zonesOf(sagging, 2, 2)).toHaveLength(2);
  });

  it('are none below the threshold, and touch it where the response just reaches it', () => {
    expect(zonesOf(profile(0, 1.9, 1.9, 0), 2, 1)).toEqual([]);
    expect(zonesOf(profile(0, 2, 0), 2, 1)).toEqual([{ from_m: -1, to_m: -0.5 }]);
    expect(zonesOf(profile(), 2, 1)).toEqual([]);
  });

  it('begin and end with the profile where the vehicle is detected there already', () => {
    expect(zonesOf(profile(3, 3, 0), 2, 1)[0]!.from_m).toBe(-2);
    expect(zonesOf(profile(0, 3, 3), 2, 1)[0]!.to_m).toBe(0);
  });
});

describe('a response at a place', () => {
  it('is straight between the values, and nothing outside', () => {
    const given = profile(0, 2, 6);
    expect([-2, -1.5, -1, -0.25, 0].map((along) => responseAt(given, along))).toEqual([0, 1, 2, 5, 6]);
    expect([-2.1, 0.1, 50].map((along) => responseAt(given, along))).toEqual([0, 0, 0]);
  });

  it('is strongest at its largest value', () => {
    expect(strongestOf(profile(0, 2, 6, 5))).toEqual({ along_m: 0, response: 6 });
    expect(strongestOf(profile()).response).toBe(0);
  });
});

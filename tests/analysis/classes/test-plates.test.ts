/** The plates of the catalogue against the standard circuit that they are solved from. */
import { describe, expect, it } from 'vitest';
import { solveHeight, standardEffect } from '#analysis/classes/solve-height';
import { standardCircuit } from '#analysis/classes/standard-circuit';
import { testPlates } from '#plan/catalogue/test-plates';
import { PATIENCE } from '../../physics/support/arbitraries';
import { relativeError } from '../../physics/support/reference';

/** ΔL/L and ΔL, H, of the classes: NEMA TS 1 section 15, from memory [M]. */
const CLASSES = [
  ['class-motorcycle-small', 0.0013, 0.12e-6],
  ['class-motorcycle-large', 0.0032, 0.3e-6],
  ['class-automobile', 0.032, 3e-6]
] as const;

const plateOf = (id: string) => {
  const plate = testPlates.find((each) => each.id === id)!;
  const [part] = plate.parts;
  if (part?.kind !== 'plate') throw new Error(`${id} is no plate`);
  return { plate, size: { width: part.width, length: part.length }, height: part.height };
};

describe('the standard circuit', () => {
  it('has 60 to 80 µH of loop behind 20 to 24 µH of lead-in: test-loop figure notes, NEMA TS 1 [S]', () => {
    const { solved, frequency } = standardCircuit();
    expect(frequency).toBe(solved.frequency);
    expect(solved.loops[0]!.inductance).toBeGreaterThan(60e-6);
    expect(solved.loops[0]!.inductance).toBeLessThan(80e-6);
    expect(solved.inductance - solved.loops[0]!.inductance).toBeGreaterThan(20e-6);
    expect(solved.inductance - solved.loops[0]!.inductance).toBeLessThan(24e-6);
  });
});

describe('a test plate', { timeout: PATIENCE }, () => {
  it('is there for every class and no other', () => {
    expect(testPlates.map(({ id }) => id)).toEqual(CLASSES.map(([id]) => id));
  });

  it.each(CLASSES)('gives the class figure on the standard circuit: %s, %f', (id, share, henries) => {
    const { plate, size, height } = plateOf(id);
    expect(plate.onStandardLoop).toBe(-share);
    const effect = standardEffect(size, height);
    expect(relativeError(effect, -share)).toBeLessThan(2e-3);
    // both figures of a class are rounded to two digits
    expect(relativeError(-effect * standardCircuit().solved.inductance, henries)).toBeLessThan(0.05);
  });

  it.each(CLASSES)('lies at the height that is solved for: %s', (id, share) => {
    const { size, height } = plateOf(id);
    expect(relativeError(height, solveHeight(size, -share))).toBeLessThan(1e-3);
  });

  it('answers less the higher it lies, so that there is one height', () => {
    const { size } = plateOf('class-automobile');
    const effects = [0.2, 0.3, 0.45, 0.6, 0.9, 1.5].map((height) => -standardEffect(size, height));
    effects.slice(1).forEach((effect, k) => expect(effect).toBeLessThan(effects[k]!));
  });

  it('cannot give more than a sheet against the road, and the search says so', () => {
    expect(() => solveHeight({ width: 0.4, length: 0.9 }, -0.5)).toThrow(RangeError);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { format } from '#units/format';
import { formatForEdit } from '#units/format-for-edit';
import { QUANTITY_KINDS, type QuantityKind, type UnitSystem } from '#units/kind';
import { parseQuantity } from '#units/parse';
import { accepted } from './accepted';

const SYSTEMS: readonly UnitSystem[] = ['metric', 'imperial'];
const CASES = QUANTITY_KINDS.flatMap((kind) => SYSTEMS.map((system) => [kind, system] as const));
const SEED = 20251125;
/** Milliseconds, for machines that are busy with other tests at the same time. */
const PATIENCE = 60_000;
const TENTH_OF_A_MILLIMETRE = 1e-4;

function values(kind: QuantityKind): fc.Arbitrary<number> {
  if (kind === 'count') return fc.nat({ max: 1_000_000_000 });
  if (kind === 'length') return fc.double({ min: -1e4, max: 1e4, noNaN: true });
  if (kind === 'smallLength') return fc.double({ min: -2, max: 2, noNaN: true });
  if (kind === 'temperature') return fc.double({ min: -90, max: 500, noNaN: true });
  const mantissa = fc.double({ min: -10, max: 10, noNaN: true });
  const scaled = fc
    .tuple(mantissa, fc.integer({ min: -15, max: 12 }))
    .map(([m, exponent]) => m * 10 ** exponent);
  // Nearer to nought doubles have fewer digits than the allowance asks for.
  return scaled.filter((value) => value === 0 || Math.abs(value) > 1e-290);
}

/** Temperatures have no natural nought, so there 10⁻⁹ is meant of a degree when the value is small. */
function allowance(kind: QuantityKind, value: number): number {
  if (kind === 'length') return TENTH_OF_A_MILLIMETRE;
  if (kind === 'smallLength') return 1e-6;
  return 1e-9 * (kind === 'temperature' ? Math.max(1, Math.abs(value)) : Math.abs(value));
}

/** The first value for which `holds` is false, or null. */
function counterexample(
  kind: QuantityKind,
  runs: number,
  holds: (value: number) => boolean
): [number] | null {
  return fc.check(fc.property(values(kind), holds), { numRuns: runs, seed: SEED }).counterexample;
}

describe('an edit field gives back what it shows, and a second time it shows the same', () => {
  it.each(CASES)('%s, %s', { timeout: PATIENCE }, (kind, system) => {
    const isKept = (value: number): boolean => {
      const shown = formatForEdit(value, kind, system);
      const back = accepted(shown, kind, system);
      return Math.abs(back - value) <= allowance(kind, value) && formatForEdit(back, kind, system) === shown;
    };
    expect(counterexample(kind, 10_000, isKept)).toBeNull();
  });
});

describe('feet and inches as shown on the plan', () => {
  it('are read back within 0.1 mm', { timeout: PATIENCE }, () => {
    const isNear = (metres: number): boolean => {
      const back = accepted(format(metres, 'length', 'imperial').text, 'length', 'metric');
      return Math.abs(back - metres) <= TENTH_OF_A_MILLIMETRE;
    };
    expect(counterexample('length', 10_000, isNear)).toBeNull();
  });

  it('are read back exactly for every sixteenth of an inch up to twenty feet', { timeout: PATIENCE }, () => {
    const wrong: string[] = [];
    for (let sixteenths = -3840; sixteenths <= 3840; sixteenths += 1) {
      const metres = (sixteenths / 16) * 0.0254;
      const text = formatForEdit(metres, 'length', 'imperial');
      if (text.includes('.') || Math.abs(accepted(text, 'length', 'imperial') - metres) > 1e-12)
        wrong.push(text);
    }
    expect(wrong).toEqual([]);
  });
});

describe('arbitrary text', () => {
  const likely = fc.string({
    unit: fc.constantFrom(...'0123456789.,\'"-+*/() ftinmcs½′″µΩ%°eE'),
    maxLength: 16
  });
  const texts = fc.oneof(fc.string(), fc.string({ unit: 'grapheme' }), likely, likely);

  it(
    'never throws, gives a finite number or a reason, and an echo that reads as the value',
    { timeout: PATIENCE },
    () => {
      const isSound = (text: string, [kind, system]: readonly [QuantityKind, UnitSystem]): boolean => {
        const result = parseQuantity(text, kind, system);
        if (!result.ok) return result.reason.trim() !== '';
        const echoed = accepted(result.echo, kind, system);
        const slack = allowance(kind, result.value) + 1e-9 * Math.abs(result.value);
        return Number.isFinite(result.value) && Math.abs(echoed - result.value) <= slack;
      };
      const property = fc.property(texts, fc.constantFrom(...CASES), isSound);
      expect(fc.check(property, { numRuns: 5000, seed: SEED }).counterexample).toBeNull();
    }
  );
});

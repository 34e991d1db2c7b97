/** Rows of the published figures of the field: who checks which, and the title that names fact, source and mark. */
import { expect } from 'vitest';
import { referenceOf, relativeError } from './reference';

export interface TradeFact {
  readonly id: string;
  readonly fact: string;
  readonly inputs: Readonly<Record<string, number | string>>;
  readonly expected: {
    readonly quantity: string;
    readonly value?: number;
    readonly tolerance?: number;
    readonly min?: number;
    readonly max?: number;
  };
  readonly source: string;
  readonly mark: 'S' | 'C' | 'M';
}

const { cases } = referenceOf<TradeFact>('trade-facts');

/** Beginnings of ids that a whole circuit is needed for. */
const BY_WHOLE_CIRCUITS = [
  'test-loop-inductance',
  'lead-in-pair-inductance',
  'class-',
  'unit-',
  'test-configuration-',
  'car-on-100uH',
  'quadrupole-answers-less',
  'round-and-octagon-alike',
  'dead-spot-in-the-middle',
  'deep-loop-answers-less',
  'acceptance-',
  'test-loop-size',
  'clear-of-',
  'operating-band'
];
/**
 * Rows that no formula and no circuit answers: the insulation of a new loop is measured, the twist of a pair does not enter
 * its constants, and what an output does in time is no electrical property of the loop.
 */
const ELSEWHERE = ['insulation-', 'twist-fhwa', 'pulse-output'];

const startsWith = (row: TradeFact, beginnings: readonly string[]): boolean =>
  beginnings.some((beginning) => row.id.startsWith(beginning));

export const circuitFacts = cases.filter((row) => startsWith(row, BY_WHOLE_CIRCUITS));
export const formulaFacts = cases.filter(
  (row) => !startsWith(row, BY_WHOLE_CIRCUITS) && !startsWith(row, ELSEWHERE)
);

const MARKS = { S: 'read in the source', C: 'from a cited closed form', M: 'from memory of the source' };
export const titleOf = ({ id, fact, source, mark }: TradeFact): string =>
  `${fact} — ${source}, ${MARKS[mark]} [${mark}] (${id})`;

export const numberOf = (row: TradeFact, name: string): number => {
  const value = row.inputs[name];
  if (typeof value !== 'number') throw new Error(`${row.id} has no number ${name}`);
  return value;
};

export const expectFact = ({ expected }: TradeFact, found: number): void => {
  const { value, tolerance, min, max } = expected;
  if (value !== undefined && tolerance !== undefined)
    expect(relativeError(found, value)).toBeLessThanOrEqual(tolerance);
  else expect(min ?? max).toBeDefined();
  if (min !== undefined) expect(found).toBeGreaterThanOrEqual(min);
  if (max !== undefined) expect(found).toBeLessThanOrEqual(max);
};

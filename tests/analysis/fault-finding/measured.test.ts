/** A visit's figures with what is odd about each. */
import { describe, expect, it } from 'vitest';
import { measuredFigures, valueOf } from '#analysis/fault-finding/measured';
import type { ExpectedFigure, MeasuredFigure } from '#analysis/fault-finding/results';
import { USUAL_ACCURACY } from '#plan/catalogue/instruments';
import type { Quantity, Reading } from '#plan/schema';
import { site } from './support/readings';

const expected = (quantity: Quantity, value: number, over: Partial<ExpectedFigure> = {}): ExpectedFigure => ({
  ...{ testPoint: 'cabinet', loop: null, quantity, value, low: 0.95 * value, high: 1.05 * value },
  ...{ contributions: [], frequency_Hz: null, vehicle: null, limits: [] },
  ...over
});

const figure = (reading: Reading, ...held: readonly ExpectedFigure[]): MeasuredFigure =>
  measuredFigures({ ...site, readings: [{ circuit: 'C1', testPoint: 'cabinet', ...reading }] }, 0, held)[0]!;

describe('a measured figure', () => {
  it('has its meter’s deviation where it was read; over the range, where it should have been', () => {
    const { share, floor } = USUAL_ACCURACY.resistanceDc_ohm;
    const held = expected('resistanceDc_ohm', 2);
    expect(figure({ resistanceDc_ohm: 40 }, held).meterDeviation).toBeCloseTo(
      (40 * share + floor) / 1.96,
      12
    );
    expect(figure({ overRange: ['resistanceDc_ohm'] }, held).meterDeviation).toBeCloseTo(
      (2 * share + floor) / 1.96,
      12
    );
  });

  it('names the limit that it breaks, and on which side', () => {
    const limits = [{ id: 'a', least: 1, most: 3 }];
    const held = expected('resistanceDc_ohm', 2, { low: 0.2, high: 8, limits });
    expect(figure({ resistanceDc_ohm: 0.5 }, held).doubt).toEqual({
      key: 'doubt.under',
      values: { value: { value: 0.5, kind: 'resistance' }, other: { value: 1, kind: 'resistance' } }
    });
    expect(figure({ resistanceDc_ohm: 5 }, held).doubt).toEqual({
      key: 'doubt.over',
      values: { value: { value: 5, kind: 'resistance' }, other: { value: 3, kind: 'resistance' } }
    });
    expect(figure({ resistanceDc_ohm: 2 }, held).doubt).toBeNull();
  });

  it('is asked about where it lies far out of the circuit’s own range, which is told; a limit that it breaks goes before', () => {
    const held = expected('resistanceDc_ohm', 4);
    const ohms = (value: number) => ({ value, kind: 'resistance' });
    expect(figure({ resistanceDc_ohm: 1 }, held)).toMatchObject({
      verdict: 'low',
      doubt: {
        key: 'doubt.far.below.resistanceDc_ohm',
        values: { value: ohms(1), low: ohms(0.95 * 4), high: ohms(1.05 * 4) }
      }
    });
    expect(figure({ inductance_H: 1.5e-3 }, expected('inductance_H', 1e-4)).doubt!.key).toBe(
      'doubt.far.above.inductance_H'
    );
    const limited = { ...held, limits: [{ id: 'a', least: 2, most: null }] };
    expect(figure({ resistanceDc_ohm: 1 }, limited).doubt!.key).toBe('doubt.under');
  });

  it('tells what was meant, and what no circuit can be', () => {
    expect(figure({ inductance_H: 0.1 }, expected('inductance_H', 1e-4)).doubt).toEqual({
      key: 'doubt.meant',
      values: { value: { value: 0.1, kind: 'inductance' }, other: { value: 1e-4, kind: 'inductance' } }
    });
    expect(figure({ q: 900 }, expected('q', 20)).doubt!.key).toBe('doubt.q');
  });
});

describe('a value that is told', () => {
  it('is the drop of a response', () => {
    expect(valueOf('deltaLOverL', -0.02)).toEqual({ value: 0.02, kind: 'ratio' });
    expect(valueOf('q', 12)).toEqual({ value: 12, kind: 'plain' });
  });
});

import { describe, expect, it } from 'vitest';
import { checkReadingsInSteps, type CheckedFigure } from '#analysis/fault-finding/checked';
import { conditionsOf } from '#analysis/fault-finding/conditions';
import { expectedInSteps } from '#analysis/fault-finding/expected';
import { recordRowsOf, summaryOf } from '#analysis/fault-finding/record';
import { finish } from '#analysis/steps';
import { demoSite } from '#plan/demo';
import type { Reading, Site } from '#plan/schema';
import { loopsIn } from '#plan/wiring';
import { checkedAsIf } from '../../support/field-check';

const site = demoSite();
const circuit = site.circuits[0]!;
const loop = loopsIn(circuit)[0]!;
const atCabinet = (reading: Reading): Reading => ({ circuit: circuit.id, testPoint: 'cabinet', ...reading });

function resistanceOf(readings: readonly Reading[]): CheckedFigure | null {
  const read: Site = { ...site, readings: [...readings] };
  const rows = recordRowsOf(read, checkedAsIf(read)[0]!);
  const found = rows.find((row) => row.testPoint === 'cabinet' && row.quantity === 'resistanceDc_ohm');
  return found?.measured ?? null;
}

describe('which reading stands in the record', () => {
  const commissioned = atCabinet({ at: '2031-05-04T10:00', resistanceDc_ohm: 1, isCommissioning: true });
  const again = atCabinet({ at: '2031-05-04T11:00', resistanceDc_ohm: 2, isCommissioning: true });
  const later = atCabinet({ at: '2032-05-04T10:00', resistanceDc_ohm: 3 });
  const undated = atCabinet({ resistanceDc_ohm: 4 });

  it.each([
    ['the newest commissioning one, whatever came later', [again, later, commissioned, undated], 2],
    ['without one the newest', [later, undated], 3],
    ['a dated one rather than an undated one', [undated, later], 3],
    ['of two alike the one entered later', [later, { ...later, resistanceDc_ohm: 5 }], 5]
  ] as const)('%s', (_, readings, value) => {
    expect(resistanceOf(readings)?.value).toBe(value);
  });

  it('is none where nothing was read, or elsewhere only', () => {
    expect(resistanceOf([])).toBeNull();
    expect(resistanceOf([{ circuit: circuit.id, testPoint: 'loop', loop, resistanceDc_ohm: 1 }])).toBeNull();
  });

  it('an over-range insulation counts as measured', () => {
    const read: Site = { ...site, readings: [atCabinet({ overRange: ['insulation_ohm'] })] };
    const rows = recordRowsOf(read, checkedAsIf(read)[0]!);
    const row = rows.find((each) => each.testPoint === 'cabinet' && each.quantity === 'insulation_ohm')!;
    expect(row.measured).toMatchObject({ value: null, verdict: 'fits' });
    expect(summaryOf(rows)).toMatchObject({ measured: 1, worst: 'fits' });
  });

  it('the worst verdict of the circuit is a broken limit before anything else', () => {
    const read: Site = {
      ...site,
      readings: [atCabinet({ resistanceDc_ohm: 3, insulation_ohm: 1e6 })]
    };
    expect(summaryOf(recordRowsOf(read, checkedAsIf(read)[0]!)).worst).toBe('beyond a limit');
    expect(summaryOf([])).toEqual({ measured: 0, listed: 0, worst: null });
  });
});

describe('readings held against what is expected', () => {
  const warm: Reading = atCabinet({ at: '2031-05-04', temperature_C: 45, resistanceDc_ohm: 0.66 });
  const read: Site = {
    ...site,
    readings: [warm, { circuit: circuit.id, testPoint: 'loop', loop, inductance_H: 7.8e-5, q: 30 }],
    fieldCheck: { instruments: [{ id: 'i1', name: 'Bridge', accuracies: [], testFrequency_Hz: 1000 }] }
  };
  const checked = finish(checkReadingsInSteps(read));

  it('each under its own temperature', () => {
    const [figure] = checked[0]!.measured;
    const [usual] = finish(expectedInSteps(read, circuit.id));
    const [hot] = finish(expectedInSteps(read, circuit.id, { temperature_C: 45 }));
    const of = (from: typeof usual) =>
      from!.figures.find((each) => each.testPoint === 'cabinet' && each.quantity === 'resistanceDc_ohm')!;
    expect(figure!.expected).toEqual(of(hot));
    expect(of(hot).value).toBeGreaterThan(of(usual).value! * 1.05);
  });

  it('a reading of another circuit is not among them', () => {
    expect(checked).toHaveLength(site.circuits.length);
    expect(checked.map(({ measured }) => measured.length)).toEqual([
      3,
      ...site.circuits.slice(1).map(() => 0)
    ]);
  });

  it('the test frequency comes from the reading, else from its instrument', () => {
    expect(conditionsOf(read, { instruments: ['i1'] })).toEqual({ meterFrequency_Hz: 1000 });
    expect(conditionsOf(read, { instruments: ['i1'], meterFrequency_Hz: 5e4 })).toEqual({
      meterFrequency_Hz: 5e4
    });
    expect(conditionsOf(read, { instruments: ['gone'] })).toEqual({});
  });

  it('a record lists no pull box of a single loop, no Q of a unit, and vehicles that are asked for only', () => {
    const rows = recordRowsOf(read, checked[0]!);
    expect(rows.some(({ testPoint }) => testPoint === 'pull-box')).toBe(false);
    expect(rows.some(({ testPoint, quantity }) => testPoint === 'unit' && quantity === 'q')).toBe(false);
    expect(rows.flatMap(({ vehicle }) => vehicle ?? [])).toEqual(circuit.detect);
    expect(rows.map(({ testPoint }) => testPoint)).toEqual(
      rows.map(({ testPoint }) => testPoint).toSorted((a, b) => ORDER.indexOf(a) - ORDER.indexOf(b))
    );
  });
});

const ORDER = ['loop', 'pull-box', 'cabinet', 'unit'];

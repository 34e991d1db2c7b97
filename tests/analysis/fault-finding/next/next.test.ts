import { describe, expect, it } from 'vitest';
import { costOf, howTo } from '#analysis/fault-finding/next/how';
import type { Quantity, TestPoint } from '#plan/schema';
import { fault } from '../support/prepared';
import { AT_CABINET, diagnosed, readingsUnder, site } from '../support/readings';

const gated = { marks: [{ id: 'm', kind: 'gate' as const, points: [] }] };
const keysOf = (told: readonly { readonly key: string }[]): string[] => told.map(({ key }) => key);

describe('the next best measurement', () => {
  // from the cabinet a bad splice and thinner wire look alike in resistance: the loops alone tell
  const answer = diagnosed(
    readingsUnder([fault('missing loop', 'L1')], [{ ...AT_CABINET, quantities: ['resistanceDc_ohm'] }])
  );

  it('is none that was taken, and each can be taken where it stands', () => {
    expect(answer.next.length).toBeGreaterThan(0);
    for (const { testPoint, quantity } of answer.next) {
      expect([testPoint, quantity]).not.toEqual(['cabinet', 'resistanceDc_ohm']);
      expect(howTo(site, { testPoint, quantity })).not.toBeNull();
    }
  });

  it('comes in the order of what it tells, less what it costs', () => {
    const worth = answer.next.map(
      ({ information, testPoint, quantity }) => information - costOf(testPoint, quantity)
    );
    expect(worth).toEqual([...worth].sort((a, b) => b - a));
    for (const { information } of answer.next) expect(information).toBeGreaterThan(0);
  });

  it('tells the leading causes apart: their readings differ there', () => {
    const [best] = answer.next;
    const lead = best!.separates.filter(({ cause }) => answer.causes[cause]!.probability > 0.05);
    expect(lead.length).toBeGreaterThan(1);
    expect(lead.some((a) => lead.some((b) => a.high < b.low))).toBe(true);
  });

  it('says where mains, traffic, a tester and a gate may hurt', () => {
    expect(keysOf(howTo(site, { testPoint: 'cabinet', quantity: 'insulation_ohm' })!.safety)).toEqual([
      'safety.mains',
      'safety.tester'
    ]);
    expect(keysOf(howTo(site, { testPoint: 'loop', quantity: 'q' })!.safety)).toEqual(['safety.traffic']);
    expect(keysOf(howTo(gated as never, { testPoint: 'unit', quantity: 'deltaLOverL' })!.safety)).toEqual([
      'safety.mains',
      'safety.traffic',
      'safety.gate'
    ]);
    expect(howTo(site, { testPoint: 'unit', quantity: 'insulation_ohm' })).toBeNull();
  });

  it('minds the road where the splice is opened for it, and the gate wherever its unit loses the loop', () => {
    const safetyAt = (testPoint: TestPoint, quantity: Quantity) =>
      keysOf(howTo(gated, { testPoint, quantity })!.safety);
    // its wires are parted at the pull box as well
    expect(keysOf(howTo(site, { testPoint: 'cabinet', quantity: 'insulationBetween_ohm' })!.safety)).toEqual([
      'safety.mains',
      'safety.traffic',
      'safety.tester'
    ]);
    expect(safetyAt('cabinet', 'resistanceDc_ohm')).toEqual(['safety.mains', 'safety.gate']);
    expect(safetyAt('loop', 'inductance_H')).toEqual(['safety.traffic', 'safety.gate']);
    expect(safetyAt('unit', 'frequency_Hz')).toEqual(['safety.mains']);
  });

  it('costs more at an opened splice than at the cabinet', () => {
    expect(costOf('loop', 'q')).toBeGreaterThan(costOf('pull-box', 'q'));
    expect(costOf('pull-box', 'q')).toBeGreaterThan(costOf('cabinet', 'q'));
  });

  it('costs more with a tester than with a meter, more with a vehicle, and most where wires are parted for it', () => {
    expect(costOf('cabinet', 'insulation_ohm')).toBeGreaterThan(costOf('cabinet', 'resistanceDc_ohm'));
    expect(costOf('cabinet', 'insulationBetween_ohm')).toBeGreaterThan(costOf('cabinet', 'insulation_ohm'));
    expect(costOf('unit', 'deltaLOverL')).toBeGreaterThan(costOf('unit', 'frequency_Hz'));
  });
});

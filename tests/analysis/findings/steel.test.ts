/** Findings about steel: when they speak, and that they give the numbers they speak of. */
import { describe, expect, it } from 'vitest';
import { createAssessor } from '#analysis/assess';
import { findingsOf } from '#analysis/findings/index';
import type { Finding, SteelCost } from '#analysis/results';
import { circuit, loop, siteOf, square, unit } from '../support/sites';

const outline = [[-2, -2], [2, -2], [2, 2], [-2, 2]]; // prettier-ignore
const mat = (depth: number) => ({ id: 's1', kind: 'mat', depth, pitch: 0.15, barRadius: 0.006, outline });
const siteWith = (steel: readonly object[], detect = ['car']) =>
  siteOf({
    loops: [loop('L1', square(0, 0))],
    circuits: [circuit('C1', ['L1'], { name: 'Exit', detect })],
    units: [unit('U1')],
    steel
  });

/** The rule alone, on a cost as the circuit's readout would carry it. */
function withCost(cost: Partial<SteelCost>, detect?: string[]): Finding | undefined {
  const site = siteWith([], detect);
  const result = createAssessor().assess(site, 'prepared');
  const [readout] = result.circuits;
  const steel: SteelCost = {
    withoutSteel: readout!.cold,
    inductanceShare: 0.02,
    qShare: 0.1,
    responses: [{ vehicle: 'car', withoutSteel: -0.03, share: 0.05 }],
    statedShare: 0.1,
    clearDepth_m: 0.3,
    ...cost
  };
  return findingsOf(site, { ...result, circuits: [{ ...readout!, steel }] }).find(
    ({ code }) => code === 'steel-near'
  );
}

describe('steel near a circuit', () => {
  it('is a caution when it costs a vehicle that is asked for more than a tenth', () => {
    const found = withCost({ responses: [{ vehicle: 'car', withoutSteel: -0.03, share: 0.18 }] });
    expect(found).toMatchObject({ severity: 'caution', subject: 'C1', selects: ['L1'] });
    expect(found!.message).toContain('2.00 % of the inductance of Exit');
    expect(found!.message).toContain('18.0 % of the least response to: car');
    expect(found!.advice).toContain('300 mm');
  });

  it('is one too when it costs more than a tenth of the inductance', () => {
    expect(withCost({ inductanceShare: 0.11 })).toBeDefined();
    expect(withCost({ inductanceShare: 0.11, clearDepth_m: null })!.advice).toContain('No depth to 2 m');
  });

  it('is none below that, nor for a vehicle that nobody asked for', () => {
    expect(withCost({})).toBeUndefined();
    const bus = { responses: [{ vehicle: 'bus', withoutSteel: -0.02, share: 0.5 }] };
    expect(withCost(bus)).toBeUndefined();
    expect(withCost(bus, ['bus'])).toBeDefined();
  });
});

describe('steel in the way of the saw', () => {
  const met = (depth: number): Finding | undefined =>
    createAssessor()
      .assess(siteWith([mat(depth)]), 'prepared')
      .findings.find(({ code }) => code === 'steel-in-slot');

  it('is a problem: bars of 12 mm at 52 mm begin at 46 mm, in a slot of 50 mm', () => {
    expect(met(0.052)).toMatchObject({ severity: 'problem', subject: 'L1', selects: ['L1', 's1'] });
    expect(met(0.052)!.message).toMatch(/50 mm deep, meets steel at 46 mm/);
  });

  it('is none where the slot ends above it', () => {
    expect(met(0.06)).toBeUndefined();
  });
});

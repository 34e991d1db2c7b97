import { describe, expect, it } from 'vitest';
import { createAssessor } from '#analysis/assess';
import type { CircuitRanges, CircuitReadout, PlausibleRange } from '#analysis/results';
import { reportText } from '#exchange/report-text';
import { reportOf } from '#exchange/report';
import { circuit, loop, siteOf, square, unit } from '../analysis/support/sites';

const site = siteOf({
  name: 'Kiln Lane',
  loops: [loop('L1', square(0, 0))],
  circuits: [circuit('C1', ['L1'])],
  units: [unit('U1')]
});
const report = reportOf(site, 'kiln.json', createAssessor().assess(site, 'prepared'), []);

const range = (low: number, high: number, input: 'depth' | 'leadInLength' = 'depth'): PlausibleRange => ({
  low,
  high,
  method: 'linear',
  contributions: [{ input, halfWidth: (high - low) / 2 }]
});
const ranges: CircuitRanges = {
  inductance_H: range(92e-6, 98e-6),
  resistance_ohm: range(1, 1.2, 'leadInLength'),
  resistanceDc_ohm: range(0.6, 0.7),
  q: range(20, 30),
  frequency_Hz: range(49_000, 51_000),
  loops: [
    {
      id: 'L1',
      inductance_H: range(71e-6, 75e-6),
      resistance_ohm: range(0.3, 0.4),
      resistanceDc_ohm: range(0.16, 0.18),
      selfResonance_Hz: range(8e5, 1e6)
    }
  ],
  responses: [{ vehicle: 'car', worst: range(-0.034, -0.03) }]
};
const withCircuit = (patch: Partial<CircuitReadout>): string =>
  reportText({ ...report, circuits: report.circuits.map((each) => ({ ...each, ...patch })) }, 'metric');

const linesAfter = (text: string, title: string): string[] => {
  const lines = text.split('\n');
  const start = lines.indexOf(title);
  expect(start).toBeGreaterThan(0);
  return lines.slice(start + 1, lines.indexOf('', start));
};

describe('the text report', () => {
  it('splits the resistance into causes that add up to it', () => {
    const [head, row] = linesAfter(withCircuit({}), 'Where the resistance at the terminals comes from');
    expect(head!.trim().split(/\s{2,}/)).toEqual([
      'circuit',
      'copper',
      'skin',
      'proximity',
      'lead-in',
      'sum'
    ]);
    const ohms = [...row!.matchAll(/([\d.]+) (m?)Ω/g)].map(([, number, milli]) =>
      milli ? Number(number) / 1e3 : Number(number)
    );
    const sum = ohms.slice(0, -1).reduce((a, b) => a + b, 0);
    expect(sum).toBeCloseTo(ohms.at(-1)!, 2);
  });

  it('says where every figure plausibly lies and what moves it', () => {
    const lines = linesAfter(withCircuit({ ranges }), 'Plausible ranges, nineteen times in twenty');
    expect(lines).toHaveLength(9);
    expect(lines.join('\n')).toMatch(/C1\s+L1 alone, L\s+71\.00 µH … 75\.00 µH\s+slot depth/);
    expect(lines.join('\n')).toMatch(/C1\s+L\s+92\.00 µH … 98\.00 µH\s+slot depth/);
    expect(lines.join('\n')).toMatch(/C1\s+R\s+1\.00 Ω … 1\.20 Ω\s+lead-in length/);
    expect(lines.join('\n')).toMatch(/C1\s+ΔL\/L car\s+−3\.40 % … −3\.00 %/);
  });

  it('shows cold before hot, and more resistance when hot', () => {
    const [, cold, hot] = linesAfter(withCircuit({}), 'Cold and hot, dry and wet');
    expect(cold).toContain('cold, −20 °C');
    expect(hot).toContain('hot, 50 °C');
  });

  it('leaves out what is not there, and shows it when it is', () => {
    const bare = withCircuit({ ranges: null, classes: null, steel: null });
    for (const title of ['Plausible ranges', 'Standard test plates', 'What the steel'])
      expect(bare).not.toContain(title);
    const plates = withCircuit({
      classes: [{ vehicle: 'plate-a', onStandardLoop: -0.032, best: -0.03, worst: -0.02, margin: 12.5 }]
    });
    const [, plate] = linesAfter(plates, 'Standard test plates');
    expect(plate).toMatch(/C1\s+plate-a\s+−3\.20 %\s+−3\.00 %\s+−2\.00 %\s+12\.5/);
    const [first] = report.circuits;
    const steel = withCircuit({
      steel: {
        withoutSteel: { ...first!.cold, inductance_H: 100e-6 },
        inductanceShare: 0.12,
        qShare: 0.2,
        responses: [{ vehicle: 'car', withoutSteel: -0.03, share: 0.15 }],
        statedShare: 0.1,
        clearDepth_m: 0.24
      }
    });
    const [, inductance, , response] = linesAfter(steel, 'What the steel in the pavement costs');
    expect(inductance).toMatch(/C1\s+L\s+100\.0 µH\s+12\.0 %\s+240 mm/);
    expect(response).toMatch(/C1\s+ΔL\/L car\s+−3\.00 %\s+15\.0 %/);
  });
});

// 500 loops, the most that a site holds, are 500 · 499 / 2 pairs
it('has a line for every pair of a site that is full', () => {
  const couplings = Array.from({ length: 124_750 }, (_, k) => ({
    a: `L${k}`,
    b: 'L2',
    mutual_H: 1e-7,
    k: 0.01
  }));
  const coupling = { loops_H: 1e-7, steel_H: 0, conduits_H: 0 };
  const pair = { k: 0.01, coupling, separation_Hz: 900, ripple: 1e-4, ratio: 0.1, verdict: 'clear' };
  const beats = couplings.map(({ a, b }) => ({ ...pair, a, b })) as unknown as typeof report.beats;
  const of = (part: Partial<typeof report>) =>
    reportText({ site: 'Full', file: 'full.json', ...part }, 'metric').split('\n');
  for (const part of [{ couplings }, { beats }])
    expect(of(part).filter((line) => /L2 /.test(line)).length).toBeGreaterThanOrEqual(124_750);
});

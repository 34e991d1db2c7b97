/** Every figure of a sweep is the very number that an assessment of the same drawing says. */
import { describe, expect, it } from 'vitest';
import { createAssessor } from '#analysis/assess';
import { createMeans } from '#analysis/means';
import { evaluate } from '#analysis/sweep/figures/index';
import { figuresOf } from '#analysis/sweep/figures-of';
import type { Figure } from '#analysis/sweep/results';
import type { Assessment } from '#analysis/results';
import { experimentOn } from '#plan/variables/index';
import type { Site } from '#plan/schema';
import { smallSite, withMat } from './support';

const priced = (site: Site): Site => ({
  ...site,
  estimate: { currency: 'EUR', prices: [{ item: 'wire:awg14', price: 1.2 }] }
});

/** As a reader of the report would look it up. */
const stated = (figure: Figure, said: Assessment): number | null => {
  const loop = said.loops.find(({ id }) => id === figure.subject);
  const circuit = said.circuits.find(({ id }) => id === figure.subject);
  const pair = said.couplings.find(({ a, b }) => a === figure.subject && b === figure.other);
  const beat = said.beats.find(({ a, b }) => a === figure.subject && b === figure.other);
  const passed = circuit?.responses.find(({ vehicle }) => vehicle === figure.vehicle);
  switch (figure.kind) {
    case 'loopInductance':
      return loop!.inductance_H;
    case 'loopResistance':
      return loop!.resistanceAc_ohm;
    case 'selfResonance':
      return loop!.selfResonance_Hz;
    case 'cover':
      return loop!.cover_m;
    case 'inductance':
      return circuit!.inductance_H;
    case 'resistance':
      return circuit!.resistance_ohm;
    case 'resistanceDc':
      return circuit!.resistanceDc_ohm;
    case 'q':
      return circuit!.q;
    case 'frequency':
      return circuit!.frequency_Hz;
    case 'response':
      return 0 - (figure.path === 'best' ? passed!.best : passed!.worst);
    case 'margin':
      return 0 + passed!.margin!;
    case 'neighbour': {
      const drops = circuit!.neighbours.map(({ deltaLOverL }) => -deltaLOverL);
      return drops.length === 0 ? null : Math.max(...drops);
    }
    case 'mutual':
      return pair!.mutual_H;
    case 'coupling':
      return pair!.k;
    case 'separation':
      return beat?.separation_Hz ?? null;
    case 'ripple':
      return beat?.ripple ?? null;
    case 'beatRatio':
      return beat?.ratio ?? null;
    case 'wire':
      return said.quantities!.wire_m;
    case 'sawCut':
      return said.quantities!.sawCut_m;
    case 'cost':
      return said.quantities!.cost;
  }
};

describe.each([
  ['two loops', priced(smallSite())],
  ['two loops, a mat of bars under one', withMat(smallSite())]
])('%s', (_, site) => {
  const said = createAssessor().assess(site, 'complete');
  const means = createMeans();
  const all = figuresOf(site);
  const both = [
    ...all,
    ...all.filter(({ kind }) => kind === 'response').map((f) => ({ ...f, path: 'best' as const }))
  ];
  const experiment = experimentOn(site);

  it.each(both.map((figure) => [Object.values(figure).join(' '), figure] as const))('%s', (_name, figure) => {
    const value = evaluate(experiment, figure, means);
    expect(value).toBe(stated(figure, said));
    expect(value === null || Number.isFinite(value)).toBe(true);
  });

  it('has figures of every kind that the drawing can have', () => {
    const kinds = new Set(all.map(({ kind }) => kind));
    expect(kinds.size).toBe(site.estimate ? 20 : 19);
    expect(both.filter((figure) => evaluate(experiment, figure, means) !== null).length).toBeGreaterThan(40);
  });
});

it('a vehicle that stands changes what a placed one does', () => {
  const [x, y, along, offset] = [0, 0, 0.7, 0.4];
  const site: Site = {
    ...smallSite(1),
    probes: [{ vehicle: 'car', at: [x + offset, y + along], heading: 90 }]
  };
  const [probe] = createAssessor().assess(site, 'complete').probes;
  const figure: Figure = { kind: 'response', subject: 'C1', vehicle: 'car', path: 'standing' };
  const experiment = { ...experimentOn(site), offset_m: offset, along_m: along };
  expect(evaluate(experiment, figure, createMeans())).toBe(-probe!.circuits[0]!.deltaLOverL);
});

it('a path in the middle of the lane is the one that a car takes', () => {
  const site = smallSite(1);
  const means = createMeans();
  const of = (path: Figure['path'], offset_m = 0) =>
    evaluate(
      { ...experimentOn(site), offset_m },
      { kind: 'response', subject: 'C1', vehicle: 'car', path: path! },
      means
    )!;
  expect(of('offset')).toBe(of('worst'));
  // off the middle the body leaves the loop on one side
  expect(of('offset', 1.2)).toBeLessThan(of('offset'));
  expect(of('offset', 1.2)).toBeCloseTo(of('offset', -1.2), 5);
});

import { describe, expect, it } from 'vitest';
import { createAssessor } from '#analysis/assess';
import type { Beat } from '#analysis/results';
import { createSurveyor } from '#analysis/survey';
import type { Site } from '#plan/schema';
import { referenceOf, relativeError } from '../../physics/support/reference';
import { channel, circuit, loop, QUICK_VEHICLES, siteOf, square, unit } from '../support/sites';

type Json = Readonly<Record<string, unknown>>;

const on = (name: string): Json => ({ channel: channel(name, 1), leadIn: { cable: 'pair-14', length: 30 } });
const pair = (gap: number, fields: Json = {}): Site =>
  siteOf({
    temperatureRange_C: [20, 20],
    loops: [loop('L1', square(0, 0)), loop('L2', square(1.8 + gap, 0))],
    circuits: [circuit('C1', ['L1'], on('U1')), circuit('C2', ['L2'], on('U2'))],
    units: [unit('U1'), unit('U2')],
    vehicles: QUICK_VEHICLES,
    ...fields
  });
const beatOf = (site: Site): Beat => createAssessor().assess(site, 'prepared').beats[0]!;

describe('lead-ins in one conduit', () => {
  const conduit = (over: Json = {}): Json => ({ id: 'D1', circuits: ['C1', 'C2'], length: 40, ...over });

  it('couple by their length times the stated figure, or the usual one', () => {
    const usual = beatOf(pair(30, { conduits: [conduit()] }));
    expect(usual.coupling.conduits_H).toBeCloseTo(40e-9, 15);
    const stated = beatOf(pair(30, { conduits: [conduit({ mutualPerMetre_H: 2e-8 })] }));
    expect(stated.coupling.conduits_H).toBeCloseTo(800e-9, 15);
    const two = beatOf(pair(30, { conduits: [conduit(), conduit({ id: 'D2', length: 10 })] }));
    expect(two.coupling.conduits_H).toBeCloseTo(50e-9, 15);
  });

  it('do not when only one of the two lies in it', () => {
    expect(beatOf(pair(30, { conduits: [conduit({ circuits: ['C1'] })] })).coupling.conduits_H).toBe(0);
  });

  it('always make it worse: their sign is not known', () => {
    // side by side the loops oppose each other, one inside the other they aid
    for (const site of [{}, { loops: [loop('L1', square(0, 0)), loop('L2', square(0, 0, 1.2))] }]) {
      const without = beatOf(pair(0.5, site));
      const withIt = beatOf(pair(0.5, { ...site, conduits: [conduit()] }));
      expect(Math.abs(withIt.k)).toBeGreaterThan(Math.abs(without.k));
      expect(Math.sign(withIt.k)).toBe(Math.sign(without.k));
      const grown = Math.abs(withIt.k / without.k) - 1;
      expect(relativeError(grown, 40e-9 / Math.abs(without.coupling.loops_H))).toBeLessThan(1e-9);
      expect(withIt.ratio).toBeGreaterThan(without.ratio);
    }
  });
});

interface SideBySide {
  readonly name: string;
  readonly mutual_H: number;
  readonly k: number;
  readonly site: Readonly<Record<string, unknown>>;
}

describe('two designs beside each other', () => {
  const { cases, generator } = referenceOf<SideBySide>('couplings');
  it.each(cases)(
    `couple at their terminals as one nodal system of both has it (${generator}): $name`,
    ({ site, mutual_H, k }) => {
      const beat = beatOf(siteOf(site));
      expect(relativeError(beat.coupling.loops_H, mutual_H)).toBeLessThan(TERMINALS);
      expect(relativeError(beat.k, k)).toBeLessThan(TERMINALS);
    }
  );
});
/** Currents count by their part in phase with the terminals'; what a lead-in's losses turn is left out. */
const TERMINALS = 2e-3;

describe('loops of two circuits', () => {
  it('couple with the sense in which they are wound', () => {
    const turned = circuit('C2', ['L2'], { ...on('U2'), strings: [[{ loop: 'L2', reversed: true }]] });
    const plain = beatOf(pair(0.5));
    const reversed = beatOf(pair(0.5, { circuits: [circuit('C1', ['L1'], on('U1')), turned] }));
    expect(relativeError(reversed.coupling.loops_H, -plain.coupling.loops_H)).toBeLessThan(1e-9);
    expect(relativeError(reversed.ratio, plain.ratio)).toBeLessThan(1e-9);
  });

  it('of a string add up with their senses: two that oppose hardly reach a third on their axis of symmetry', () => {
    const string = (reversed: boolean): Json => ({
      ...on('U2'),
      strings: [[{ loop: 'L2' }, { loop: 'L3', reversed }]]
    });
    const site = (reversed: boolean): Site =>
      pair(0, {
        loops: [loop('L1', square(0, 0)), loop('L2', square(0, 2.4)), loop('L3', square(0, -2.4))],
        circuits: [circuit('C1', ['L1'], on('U1')), circuit('C2', ['L2', 'L3'], string(reversed))]
      });
    const aiding = Math.abs(beatOf(site(false)).coupling.loops_H);
    const opposing = Math.abs(beatOf(site(true)).coupling.loops_H);
    expect(opposing).toBeLessThan(1e-6 * aiding);
  });
});

describe('steel under both', () => {
  const mat = (over: Json = {}): Json => ({
    id: 'S1',
    kind: 'mat',
    depth: 0.12,
    pitch: 0.2,
    barRadius: 0.006,
    outline: [[-4, -4], [9, -4], [9, 4], [-4, 4]], // prettier-ignore
    ...over
  });

  /** What one lattice of every mesh under both loops, as a circuit of the two would have it, adds to their coupling: a share of it. */
  const solvedTogether = (site: Site): number => {
    const survey = createSurveyor().survey(site);
    const [a, b] = ['L1', 'L2'].map((id) => survey.modelled.get(id)!.model);
    return survey.means.steel([a!, b!], site)!.at(50_000)[0]![1]!.re / survey.means.mutual(a!, b!);
  };

  it.each([
    [0.3, 0.12, 0.2],
    [0.8, 0.12, 0.2],
    [0.3, 0.2, 0.3],
    [0.8, 0.2, 0.3],
    [1.7, 0.12, 0.3],
    [3, 0.2, 0.3],
    [0.8, 0.4, 0.2]
  ])(
    'takes most of their coupling away, as one lattice under both says: %f m apart, %f m deep',
    (gap, depth, pitch) => {
      const site = pair(gap, { steel: [mat({ depth, pitch })] });
      const { loops_H, steel_H } = beatOf(site).coupling;
      const together = solvedTogether(site);
      // what is left decides: within a sixth of it
      expect(relativeError(1 + steel_H / loops_H, 1 + together)).toBeLessThan(1 / 6);
      expect(Math.abs(steel_H / loops_H - together)).toBeLessThan(0.06);
      expect(Math.sign(steel_H)).toBe(-Math.sign(loops_H));
    }
  );

  it('counts as far as the loops lie over it, and not where it lies under one of them only', () => {
    const coupling = (outline: readonly (readonly number[])[]): number =>
      beatOf(pair(0.5, { steel: [mat({ outline })] })).coupling.steel_H;
    const both = coupling([[-4, -4], [9, -4], [9, 4], [-4, 4]]); // prettier-ignore
    const half = coupling([[-4, -4], [2.3, -4], [2.3, 4], [-4, 4]]); // prettier-ignore
    expect(both).toBeGreaterThan(0);
    expect(half).toBeGreaterThan(0.2 * both);
    expect(half).toBeLessThan(0.8 * both);
    expect(coupling([[-4, -4], [1.2, -4], [1.2, 4], [-4, 4]])).toBe(0); // prettier-ignore
  });

  it('of a plate is the image in it: at its surface nothing is left', () => {
    const plate = { id: 'S1', kind: 'plate', depth: 0.051, outline: [[-9, -9], [14, -9], [14, 9], [-9, 9]] }; // prettier-ignore
    const { loops_H, steel_H } = beatOf(pair(0.8, { steel: [plate] })).coupling;
    expect(Math.abs(loops_H + steel_H)).toBeLessThan(0.02 * Math.abs(loops_H));
  });

  it('does not depend on the order of the circuits, also on frequencies far apart', () => {
    const given = (name: string, frequency_Hz: number): Json => ({
      ...on(name),
      channel: channel(name, 1, { frequency_Hz })
    });
    const site = pair(0.8, {
      steel: [mat()],
      circuits: [circuit('C1', ['L1'], given('U1', 25_000)), circuit('C2', ['L2'], given('U2', 95_000))]
    });
    const swapped: Site = { ...site, circuits: [...site.circuits].reverse() };
    expect(beatOf(swapped).coupling).toEqual(beatOf(site).coupling);
  });

  it('counts in k, with its sign', () => {
    const site = pair(0.8, { steel: [mat()] });
    const found = createAssessor().assess(site, 'prepared');
    const { k, coupling } = found.beats[0]!;
    const [one, other] = found.circuits;
    const wanted = (coupling.loops_H + coupling.steel_H) / Math.sqrt(one!.inductance_H * other!.inductance_H);
    expect(relativeError(k, wanted)).toBeLessThan(1e-12);
    expect(Math.abs(coupling.steel_H)).toBeGreaterThan(0.2 * Math.abs(coupling.loops_H));
  });

  it('is computed again where the same steel lies deeper', () => {
    const assessor = createAssessor();
    const sites = [0.12, 0.3].map((depth) => pair(0.8, { steel: [mat({ depth })] }));
    const steelIn = (site: Site): number => assessor.assess(site, 'prepared').beats[0]!.coupling.steel_H;
    const [shallow, deep] = sites.map(steelIn);
    expect(deep).toBeLessThan(0.9 * shallow!);
    expect(deep).toBe(beatOf(sites[1]!).coupling.steel_H);
  });
});

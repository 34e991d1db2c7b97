import { describe, expect, it } from 'vitest';
import { createAssessor } from '#analysis/assess';
import type { Assessment, ProbeReadout } from '#analysis/results';
import type { Site } from '#plan/schema';
import { PATIENCE } from '../../physics/support/arbitraries';
import { relativeError } from '../../physics/support/reference';
import { CAR, channel, circuit, loop, QUICK_VEHICLES, siteOf, square, unit } from '../support/sites';

const others = QUICK_VEHICLES.filter(({ id }) => id !== 'car');
const site = (over: Readonly<Record<string, unknown>>): Site =>
  siteOf({ units: [unit('U1')], vehicles: [CAR, ...others], ...over });
const assessor = createAssessor();
const assess = (over: Readonly<Record<string, unknown>>): Assessment => assessor.assess(site(over));
const probeOf = (over: Readonly<Record<string, unknown>>): ProbeReadout => assess(over).probes[0]!;

const OVER = [{ vehicle: 'car', at: [0, 0], heading: 90 }];
const one = { loops: [loop('L1', square(0, 0))], circuits: [circuit('C1', ['L1'])], probes: OVER };

describe('a placed vehicle', { timeout: PATIENCE }, () => {
  it('lowers every inductance and raises the frequency by half of it', () => {
    const found = assess(one);
    const { circuits, loops } = found.probes[0]!;
    const [row] = circuits;
    expect(loops[0]!.deltaL_H).toBeLessThan(0);
    expect(row!.deltaL_H).toBeLessThan(0);
    expect(relativeError(row!.deltaLOverL, row!.deltaL_H / found.circuits[0]!.inductance_H)).toBeLessThan(
      1e-9
    );
    expect(relativeError(row!.deltaF_Hz, (-row!.deltaLOverL / 2) * 50_000)).toBeLessThan(1e-12);
  });

  it('changes the terminals by less, as a share, than the loop: the lead-in dilutes it', () => {
    const cable = {
      id: 'k',
      resistancePerMetre_ohm: 0.02,
      inductancePerMetre_H: 7e-7,
      capacitancePerMetre_F: 0
    };
    for (const length of [0, 30, 300]) {
      const circuits = [circuit('C1', ['L1'], { leadIn: { cable: 'k', length } })];
      const found = assess({ ...one, circuits, cables: [cable] });
      const [before, loopChange] = [found.loops[0]!.inductance_H, found.probes[0]!.loops[0]!.deltaL_H];
      const wanted = loopChange / (before + 7e-7 * length);
      // the loop's own capacitance adds less than 1 %
      expect(relativeError(found.probes[0]!.circuits[0]!.deltaLOverL, wanted)).toBeLessThan(0.01);
    }
  });

  it('is detected from the threshold on', () => {
    const share = -probeOf(one).circuits[0]!.deltaLOverL;
    const withThreshold = (tripThreshold: number): boolean =>
      probeOf({ ...one, circuits: [circuit('C1', ['L1'], { channel: channel('U1', 1, { tripThreshold }) })] })
        .circuits[0]!.detected;
    expect(withThreshold(share * 0.999)).toBe(true);
    expect(withThreshold(share * 1.001)).toBe(false);
    const without = probeOf({ ...one, circuits: [circuit('C1', ['L1'], { channel: null })] });
    expect(without.circuits[0]!.detected).toBe(false);
  });

  it('over one of two equal loops in series counts half; in parallel less than half', () => {
    const single = probeOf({
      ...one,
      circuits: [circuit('C1', ['L1'], { leadIn: { cable: 'pair-14', length: 0 } })]
    });
    const two = (strings: unknown): number =>
      probeOf({
        loops: [loop('L1', square(0, 0)), loop('L2', square(0, 60))],
        circuits: [circuit('C1', [], { strings, leadIn: { cable: 'pair-14', length: 0 } })],
        probes: OVER
      }).circuits[0]!.deltaLOverL;
    const alone = single.circuits[0]!.deltaLOverL;
    expect(relativeError(two([[{ loop: 'L1' }, { loop: 'L2' }]]), alone / 2)).toBeLessThan(0.01);
    // ΔL/L of L1·L2/(L1+L2) is ΔL1/L1·L2/(L1+L2), a half to first order
    expect(relativeError(two([[{ loop: 'L1' }], [{ loop: 'L2' }]]), alone / 2)).toBeLessThan(0.05);
  });

  it('changes two loops in series by their cross terms too: one reversed beside another tells', () => {
    const two = (reversed: boolean): number =>
      probeOf({
        loops: [loop('L1', square(-1, 0)), loop('L2', square(1, 0))],
        circuits: [circuit('C1', [], { strings: [[{ loop: 'L1' }, { loop: 'L2', reversed }]] })],
        probes: OVER
      }).circuits[0]!.deltaL_H;
    // a plate over both lowers ΔL_12 too: in one sense it adds twice, in the other it is taken off
    expect(two(false)).toBeLessThan(1.05 * two(true));
  });

  it('far away changes next to nothing: under 1e-5 of the inductance', () => {
    const { loops } = assess({ ...one, probes: [{ vehicle: 'car', at: [0, 8], heading: 90 }] });
    const { loops: changes } = probeOf({ ...one, probes: [{ vehicle: 'car', at: [0, 8], heading: 90 }] });
    expect(Math.abs(changes[0]!.deltaL_H)).toBeLessThan(1e-5 * loops[0]!.inductance_H);
  });

  it('is reported for every loop and circuit, and each probe by itself', () => {
    const { probes } = assess({
      ...one,
      loops: [loop('L1', square(0, 0)), loop('L2', square(5, 0))],
      probes: [...OVER, { vehicle: 'bicycle', at: [5.9, 0], heading: 90 }]
    });
    expect(probes.map(({ vehicle }) => vehicle)).toEqual(['car', 'bicycle']);
    for (const { loops, circuits } of probes) {
      expect(loops.map(({ id }) => id)).toEqual(['L1', 'L2']);
      expect(circuits.map(({ id }) => id)).toEqual(['C1']);
    }
    expect(probes[1]!.loops[1]!.deltaL_H).toBeLessThan(100 * probes[1]!.loops[0]!.deltaL_H);
  });
});

describe('heading', { timeout: PATIENCE }, () => {
  it('90 lies along +y: a car along a long loop answers otherwise than across it', () => {
    const long = { kind: 'rectangle', centre: [0, 0], width: 1.8, length: 12 };
    const at = (heading: number): number =>
      probeOf({ loops: [loop('L1', long)], circuits: [], probes: [{ vehicle: 'car', at: [0, 0], heading }] })
        .loops[0]!.deltaL_H;
    expect(at(90)).toBeLessThan(1.3 * at(0));
    expect(relativeError(at(270), at(90))).toBeLessThan(1e-9);
  });
});

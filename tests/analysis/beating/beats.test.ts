import { describe, expect, it } from 'vitest';
import { createAssessor } from '#analysis/assess';
import { verdictOf } from '#analysis/beating/rate';
import type { Assessment, Beat } from '#analysis/results';
import { relativeError } from '../../physics/support/reference';
import { channel, circuit, loop, QUICK_VEHICLES, siteOf, square, unit } from '../support/sites';

type Json = Readonly<Record<string, unknown>>;

/** Neither day nor season shifts a frequency. */
const EVEN = { temperatureRange_C: [20, 20] };

/** Two loops with a gap between them, each on its own channel; vehicles are not prepared, so nothing sweeps. */
const pair = (first: Json, second: Json, units: readonly Json[], gap = 0.5): Assessment =>
  createAssessor().assess(
    siteOf({
      ...EVEN,
      loops: [loop('L1', square(0, 0)), loop('L2', square(1.8 + gap, 0))],
      circuits: [circuit('C1', ['L1'], { channel: first }), circuit('C2', ['L2'], { channel: second })],
      units,
      vehicles: QUICK_VEHICLES
    }),
    'prepared'
  );
const beatOf = (...given: Parameters<typeof pair>): Beat => pair(...given).beats[0]!;

describe('pairs that can run at the same time', () => {
  const at = (name: string, number: number): Json => channel(name, number);

  it('are channels of different units, whether these scan in turn or not', () => {
    const units = [unit('U1'), unit('U2')];
    expect(pair(at('U1', 1), at('U2', 1), units).beats.map(({ a, b }) => [a, b])).toEqual([['C1', 'C2']]);
    const atOnce = [unit('U1', { scansInTurn: false }), unit('U2')];
    expect(pair(at('U1', 1), at('U2', 1), atOnce).beats).toHaveLength(1);
  });

  it('are channels of one unit that does not scan, and never of one that does', () => {
    expect(pair(at('U1', 1), at('U1', 2), [unit('U1', { scansInTurn: false })]).beats).toHaveLength(1);
    expect(pair(at('U1', 1), at('U1', 2), [unit('U1')]).beats).toEqual([]);
  });

  it('are not two circuits on one channel: they share its oscillator, which is a finding of its own', () => {
    const found = pair(at('U1', 1), at('U1', 1), [unit('U1', { scansInTurn: false })]);
    expect(found.beats).toEqual([]);
    expect(found.findings.map(({ code }) => code)).toContain('channel-taken');
  });
});

describe('a beat', () => {
  const units = [unit('U1'), unit('U2')];
  const given = (name: string, frequency_Hz: number, tripThreshold = 0.001): Json =>
    channel(name, 1, { frequency_Hz, tripThreshold });

  it('has the distance of the frequencies, and k with the sign of loops that oppose one another', () => {
    const beat = beatOf(given('U1', 50_000), given('U2', 51_500), units);
    expect(beat.separation_Hz).toBe(1_500);
    expect(beat.k).toBeLessThan(0);
  });

  it('has k = M/√(L1·L2) with the inductance at the terminals: less than that of the loops alone', () => {
    const cable = { resistancePerMetre_ohm: 0.02, inductancePerMetre_H: 7e-7, capacitancePerMetre_F: 0 };
    const leadIn = { cable: 'k', length: 100 };
    const found = createAssessor().assess(
      siteOf({
        loops: [loop('L1', square(0, 0)), loop('L2', square(2.3, 0))],
        circuits: [
          circuit('C1', ['L1'], { channel: given('U1', 50_000), leadIn }),
          circuit('C2', ['L2'], { channel: given('U2', 50_000), leadIn })
        ],
        cables: [{ id: 'k', ...cable }],
        units
      }),
      'prepared'
    );
    const [one, other] = found.circuits;
    const wanted = found.couplings[0]!.mutual_H / Math.sqrt(one!.inductance_H * other!.inductance_H);
    // a loop's own capacitance lets a little more current through it than through the terminals
    expect(relativeError(found.beats[0]!.k, wanted)).toBeLessThan(0.01);
    expect(relativeError(one!.inductance_H, found.loops[0]!.inductance_H + 100 * 7e-7)).toBeLessThan(0.005);
    expect(Math.abs(found.beats[0]!.k)).toBeLessThan(0.6 * Math.abs(found.couplings[0]!.k));
  });

  it('of equal circuits on one frequency ripples by |k| and is judged by the lower threshold', () => {
    const beat = beatOf(given('U1', 50_000, 0.002), given('U2', 50_000, 0.0005), units);
    expect(relativeError(beat.ripple, Math.abs(beat.k))).toBeLessThan(1e-9);
    expect(relativeError(beat.ratio, Math.abs(beat.k) / 0.0005)).toBeLessThan(1e-9);
    const swapped = beatOf(given('U1', 50_000, 0.0005), given('U2', 50_000, 0.002), units);
    expect(relativeError(swapped.ratio, beat.ratio)).toBeLessThan(1e-9);
  });

  it('is averaged by the measuring time: |k|·2·f1/(f1 + f2)/(π·Δf·T)', () => {
    const beat = beatOf(given('U1', 51_500), given('U2', 50_000), units);
    const drive = Math.sqrt(1) * ((2 * 51_500) / (51_500 + 50_000));
    const wanted = (Math.abs(beat.k) * drive) / (Math.PI * 1_500 * 0.005);
    // both circuits have nearly the same inductance; it falls a little with frequency
    expect(relativeError(beat.ripple, wanted)).toBeLessThan(0.01);
  });

  it.each([
    ['clear', 0.2],
    ['watch', 0.05],
    ['false calls likely', 1e-3]
  ])('is %s under a threshold of %f', (verdict, tripThreshold) => {
    // M = 9 × −0.2581 µH at a gap of a foot (Neumann): |k| is about 0.025 at the terminals
    const beat = beatOf(given('U1', 50_000, tripThreshold), given('U2', 50_000, tripThreshold), units, 0.3);
    expect(Math.abs(beat.k)).toBeCloseTo(0.025, 2);
    expect(beat.verdict).toBe(verdict);
  });

  it.each([
    [0.2499, 'clear'],
    [0.25, 'watch'],
    [1, 'watch'],
    [1.001, 'false calls likely']
  ])('of %f times the threshold is %s: a quarter and the whole are still to be watched', (ratio, verdict) => {
    expect(verdictOf(ratio)).toBe(verdict);
  });

  it('counts how far a vehicle moves the lower frequency towards the higher', () => {
    const site = siteOf({
      ...EVEN,
      loops: [loop('L1', square(0, 0)), loop('L2', square(2.3, 0))],
      circuits: [
        circuit('C1', ['L1'], { channel: given('U1', 50_000) }),
        circuit('C2', ['L2'], { channel: given('U2', 51_500) })
      ],
      units,
      vehicles: QUICK_VEHICLES
    });
    const found = createAssessor().assess(site);
    const deepest = Math.min(...found.circuits[0]!.responses.map(({ best }) => best));
    expect(deepest).toBeLessThan(-1e-4);
    expect(found.beats[0]!.separation_Hz).toBeCloseTo(51_500 - 50_000 / Math.sqrt(1 + deepest), 6);
  });
});

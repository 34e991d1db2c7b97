/**
 * The closed forms of `beat.ts` against direct integration of two coupled, amplitude-limited oscillators. The bounds, 25 %
 * and 10 % over 1 kHz for k = 0.005 … 0.02 and separations of 0.4 … 3 kHz at 50 kHz, are what the law was asked to hold.
 */
import { describe, expect, it } from 'vitest';
import { averagingOf, driveOf } from '#physics/coupling/beat';
import { cycleFrequencies, measuredFrequency, swingOf } from '#physics/coupling/frequency-meter';
import { crossingsOf, meanOf, oscillator, within } from '../support/beating';
import { relativeError } from '../support/reference';

const CARRIER = 50e3;
const SETTLED = 0.005;
const COUPLINGS = [0.005, 0.01, 0.02] as const;
const SEPARATIONS = [400, 500, 700, 1_010, 1_500, 2_000, 3_000] as const;
const GRID = COUPLINGS.flatMap((k) => SEPARATIONS.map((separation) => [k, separation] as const));

interface Make {
  readonly q: number;
  readonly excess: number;
}

/** Swing of either over what the law says of it, and the beat. */
const judge = (k: number, separation: number, { q, excess }: Make, L2 = 1e-4, f1 = CARRIER) => {
  const f2 = f1 + separation;
  const duration = SETTLED + Math.max(0.002, 5 / Math.abs(separation));
  const crossings = crossingsOf(oscillator(f1, q, excess), oscillator(f2, q, excess, L2), k, duration).map(
    (all) => within(all, SETTLED, duration)
  );
  const laws = [(k / 2) * f1 * driveOf(1e-4, L2, f1, f2), (k / 2) * f2 * driveOf(L2, 1e-4, f2, f1)] as const;
  return {
    ratios: crossings.map((each, side) => swingOf(cycleFrequencies(each)) / laws[side]!),
    beat: meanOf(crossings[1]!) - meanOf(crossings[0]!)
  };
};

describe('the swing ±(k/2)·f', () => {
  it.each(GRID)('of k %f at %f Hz apart, Q 8, firmly limited', (k, separation) => {
    for (const ratio of judge(k, separation, { q: 8, excess: 4 }).ratios)
      expect(Math.abs(ratio - 1)).toBeLessThan(separation > 1_000 ? 0.1 : 0.25);
  });

  const first = GRID.filter(([k, separation]) => (k * CARRIER) / separation < 0.34);
  it.each(first)('of k %f at %f Hz apart, whatever Q and limiting', (k, separation) => {
    for (const q of [5, 12, 40])
      for (const excess of [1.5, 4])
        for (const ratio of judge(k, separation, { q, excess }).ratios)
          expect(Math.abs(ratio - 1)).toBeLessThan(0.11);
  });

  it.each(GRID.filter(([k, separation]) => (k * CARRIER) / separation <= 0.7))(
    'of k %f at %f Hz apart grows with √(1 + (kf/Δf)²) where the limiting is soft and Q high',
    (k, separation) => {
      const { ratios, beat } = judge(k, separation, { q: 40, excess: 1.5 });
      const strength = (k * CARRIER) / separation;
      // limiting makes the two amplitudes unequal, the one swing as much larger as the other is smaller
      const mean = Math.sqrt(ratios[0]! * ratios[1]!);
      expect(relativeError(mean, Math.hypot(1, strength))).toBeLessThan(0.06);
      // a few beats do not begin and end on a whole one
      expect(relativeError(beat, separation * Math.hypot(1, strength))).toBeLessThan(0.06);
      expect(Math.max(...ratios)).toBeLessThan(1 + strength / 2 + 0.02);
    }
  );

  it('ends where two of high Q lock: at k·f over the separation', () => {
    const { ratios, beat } = judge(0.02, 400, { q: 20, excess: 2 });
    expect(Math.abs(beat)).toBeLessThan(5);
    expect(Math.max(...ratios)).toBeLessThan(0.05);
  });
});

describe('the weight √(L1/L2)·2·f1/(f1 + f2)', () => {
  it.each([
    [2e-4, 2_000],
    [4e-4, 3_000],
    [4e-4, -3_000],
    [2.5e-5, 3_000],
    [1e-4, 5_000],
    [1e-4, -5_000],
    [3e-4, 5_000]
  ])('of a second tank of %f H, %f Hz away', (L2, separation) => {
    for (const { q, excess } of [
      { q: 8, excess: 4 },
      { q: 20, excess: 2 }
    ]) {
      const f2 = CARRIER + separation;
      judge(0.01, separation, { q, excess }, L2).ratios.forEach((ratio, side) => {
        // the frequency of a whole cycle is a mean over it
        const turn = (Math.PI * separation) / [CARRIER, f2][side]!;
        expect(Math.abs(ratio / (Math.sin(turn) / turn) - 1)).toBeLessThan(0.1);
      });
    }
  });

  it('is nearer than f1/f2 where the frequencies are further apart', () => {
    const separation = 8_000;
    const { ratios } = judge(0.01, separation, { q: 20, excess: 2 });
    const f2 = CARRIER + separation;
    const [low, high] = ratios.map((ratio, side) => {
      const turn = (Math.PI * separation) / [CARRIER, f2][side]!;
      return ratio / (Math.sin(turn) / turn);
    });
    const plain = [CARRIER / f2 / driveOf(1, 1, CARRIER, f2), f2 / CARRIER / driveOf(1, 1, f2, CARRIER)];
    expect(Math.abs(low! - 1)).toBeLessThan(Math.abs(low! - plain[0]!));
    expect(Math.abs(high! - 1)).toBeLessThan(Math.abs(high! - plain[1]!));
  });
});

describe('averaging, min(1, 1/(π·Δf·T))', () => {
  const separation = 2_000;
  const k = 0.01;
  const end = 0.012;
  const crossings = crossingsOf(
    oscillator(CARRIER, 8, 4),
    oscillator(CARRIER + separation, 8, 4),
    k,
    end
  ).map((all) => within(all, SETTLED, end));
  const beat = meanOf(crossings[1]!) - meanOf(crossings[0]!);

  /** Half the range of what a unit reads that begins at any time of a beat. */
  const rippleOver = (all: readonly number[], time: number): number => {
    const readings: number[] = [];
    for (let n = 0; n < 200; n++) {
      const reading = measuredFrequency(all, all[0]! + (n * 1.5) / 200 / separation, time);
      if (reading !== null) readings.push(reading);
    }
    return swingOf(readings);
  };

  it.each([0, 1])('bounds what any measuring time reads of oscillator %i', (side) => {
    const all = crossings[side]!;
    const swing = swingOf(cycleFrequencies(all));
    let closest = 0;
    for (let beats = 0.1; beats < 9; beats += 0.02) {
      const time = beats / beat;
      const share = rippleOver(all, time) / (swing * averagingOf(beat, time));
      expect(share).toBeLessThan(1.05);
      if (beats > 1) closest = Math.max(closest, share);
    }
    expect(closest).toBeGreaterThan(0.95);
  });

  it.each([0.5, 1.5, 2.5, 4.5, 7.5])('is reached by the worst of times: %f beats', (beats) => {
    for (const all of crossings) {
      const swing = swingOf(cycleFrequencies(all));
      const share = rippleOver(all, beats / beat) / swing;
      // |sin(πx)/(πx)| with sin(πx) = ±1
      expect(relativeError(share, 1 / (Math.PI * beats))).toBeLessThan(0.06);
    }
  });

  it.each([1, 2, 5])('and nearly nothing is left after whole beats: %i', (beats) => {
    for (const all of crossings)
      expect(rippleOver(all, beats / beat)).toBeLessThan(0.03 * swingOf(cycleFrequencies(all)));
  });

  const near = GRID.filter(([coupling, apart]) => (coupling * CARRIER) / apart <= 1);
  it.each(near)(
    'with the law bounds a beat or longer, k %f at %f Hz, whatever Q and limiting',
    (coupling, apart) => {
      for (const { q, excess } of [
        { q: 5, excess: 4 },
        { q: 40, excess: 1.5 }
      ]) {
        const until = SETTLED + 4 / apart;
        const heard = crossingsOf(
          oscillator(CARRIER, q, excess),
          oscillator(CARRIER + apart, q, excess),
          coupling,
          until
        );
        heard.forEach((all, side) => {
          const settled = within(all, SETTLED, until);
          const f = [CARRIER, CARRIER + apart][side]!;
          const law = (coupling / 2) * f * driveOf(1, 1, f, 2 * CARRIER + apart - f);
          for (const beats of [1, 1.5, 2.4]) {
            const readings: number[] = [];
            for (let n = 0; n < 60; n++) {
              const reading = measuredFrequency(settled, settled[0]! + (n * 1.2) / 60 / apart, beats / apart);
              if (reading !== null) readings.push(reading);
            }
            expect(readings.length).toBeGreaterThan(50);
            expect(swingOf(readings) / (law * averagingOf(apart, beats / apart))).toBeLessThan(1.15);
          }
        });
      }
    }
  );
});

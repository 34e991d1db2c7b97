import { describe, expect, it } from 'vitest';
import { createBeatSimulator } from '#analysis/beat-simulation/simulate-in-steps';
import type { BeatSimulation, SimulationWish } from '#analysis/beat-simulation/simulation';
import { finish } from '#analysis/steps';
import { emptySite } from '#plan/empty';
import { pairChosen, pairsOf } from '#ui/frequencies/simulator/pairs-offered';
import { hertzText, nameOfSide, noticeOf, summaryOf, worstWords } from '#ui/frequencies/simulator/wording';

const site = emptySite('');
const simulator = createBeatSimulator();
const simulated = (wish: Partial<SimulationWish> = {}): BeatSimulation =>
  finish(
    simulator(site, {
      circuits: null,
      extraDistance_m: 0,
      separation_Hz: null,
      measuringTime_s: null,
      ...wish
    })
  )!;

describe('the pairs that are offered', () => {
  const beats = [
    { a: 'C1', b: 'C2', ratio: 0.1 },
    { a: 'C1', b: 'C3', ratio: 2 }
  ];

  it('are those of the drawing, the worst first, and an invented one', () => {
    expect(pairsOf(beats).map(({ circuits }) => circuits)).toEqual([['C1', 'C3'], ['C1', 'C2'], null]);
    expect(pairsOf([]).map(({ circuits }) => circuits)).toEqual([null]);
  });

  it('stay chosen as long as they are there', () => {
    const second = pairsOf(beats)[1]!;
    expect(pairChosen(pairsOf(beats), second.key)).toEqual(second);
    expect(pairChosen(pairsOf([]), second.key).circuits).toBeNull();
    expect(pairChosen(pairsOf(beats), null).circuits).toEqual(['C1', 'C3']);
  });
});

describe('words of a simulation', () => {
  it('give hertz as far as they read well', () => {
    expect([169.7, 1_100, 4_000, 17_790].map((hertz) => hertzText(site, hertz))).toEqual([
      '170 Hz',
      '1100 Hz',
      '4000 Hz',
      '17.8 kHz'
    ]);
  });

  it('say nothing more where the law holds', () => {
    expect(noticeOf(site, simulated())).toBeNull();
  });

  it('say where the coupling is strong for the separation, too strong, or has locked the two', () => {
    expect(noticeOf(site, simulated({ separation_Hz: 650 }))).toContain('falls short');
    expect(noticeOf(site, { ...simulated(), strength: 1.2 })).toContain('no longer holds');
    expect(noticeOf(site, simulated({ separation_Hz: 0 }))).toContain('into step');
  });

  it('say when the verdict on the drawing comes about', () => {
    expect(worstWords(site, { ratio: 0.4, separation_Hz: 320 })).toContain(
      'At worst ×0.40 of the threshold, 320 Hz apart.'
    );
    expect(worstWords(site, { ratio: 2.7, separation_Hz: 0 })).toContain(
      '×2.7 of the threshold, where the bands overlap'
    );
  });

  it('name the side that suffers more, and by how much', () => {
    const found = simulated();
    const text = summaryOf(site, found);
    expect(text).toContain('1100 Hz apart');
    const worse = found.sides[1].ratio > found.sides[0].ratio ? 1 : 0;
    expect(text.startsWith(nameOfSide(site, found.sides[worse], worse))).toBe(true);
    expect(text).toContain(`±${hertzText(site, found.sides[worse].seen.swing_Hz)}`);
  });
});

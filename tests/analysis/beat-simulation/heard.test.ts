import { describe, expect, it } from 'vitest';
import { averagedSwing, meanFrequency, meanOverBeats, type Heard } from '#analysis/beat-simulation/heard';

const [CARRIER, SWING, BEAT] = [50_000, 300, 400];

/** Crossings of an oscillator at CARRIER + SWING·cos(2π·BEAT·t), by Newton's method on its whole cycles. */
const heardFor = (duration: number): Heard => {
  const crossings: number[] = [];
  const omega = 2 * Math.PI * BEAT;
  for (let n = 0; ; n++) {
    let t = n / CARRIER;
    for (let k = 0; k < 6; k++)
      t -=
        (CARRIER * t + (SWING / omega) * Math.sin(omega * t) - n) / (CARRIER + SWING * Math.cos(omega * t));
    if (t > duration) return { crossings, slopes: crossings.map(() => 1) };
    crossings.push(t);
  }
};

describe('the mean over whole beats', () => {
  it('is the carrier, where one more quarter of a beat would put the mean to one side', () => {
    const heard = heardFor(2.25 / BEAT);
    // a quarter from the top of the swing: 2/π of it, in 2.25 quarters of nine
    expect(meanFrequency(heard) - CARRIER).toBeGreaterThan(15);
    expect(Math.abs(meanOverBeats(heard, BEAT) - CARRIER)).toBeLessThan(0.5);
  });

  it('is that of everything where there is no whole beat, or none at all', () => {
    const heard = heardFor(0.5 / BEAT);
    expect(meanOverBeats(heard, BEAT)).toBe(meanFrequency(heard));
    expect(meanOverBeats(heard, 0)).toBe(meanFrequency(heard));
  });
});

describe('the swing of averaged readings', () => {
  it.each([0.25, 0.5, 1.5])(
    'over %f of a beat is |sin(πx)/(πx)| of the swing, at the worst of beginnings',
    (share) => {
      const left = Math.abs(Math.sin(Math.PI * share) / (Math.PI * share));
      const found = averagedSwing(heardFor(6 / BEAT), share / BEAT, BEAT);
      expect(Math.abs(found / (SWING * left) - 1)).toBeLessThan(0.02);
    }
  );
});

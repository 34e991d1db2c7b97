/** Even braking and starting as stints whose nodes lie on the parabola, so close that the chords keep to it. */
import type { Stint } from './course';
import { CHORD } from './practice';

/** From one speed to another at a rate (m/s², above 0), no longer than `most` seconds. A chord errs by rate·dt²/8. */
export function ramp(
  time: number,
  from: number,
  to: number,
  rate: number,
  most = Infinity
): readonly Stint[] {
  const whole = Math.min(most, Math.abs(to - from) / rate);
  const count = Math.ceil(whole / Math.sqrt((8 * CHORD) / rate) - 1e-9);
  const step = whole / count;
  const change = Math.sign(to - from) * rate * step;
  return Array.from({ length: count }, (_, k) => ({
    until: time + (k + 1) * step,
    speed: from + change * (k + 0.5)
  }));
}

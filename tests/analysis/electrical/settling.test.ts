/** Where the channel of a unit settles: f = (1 − 1/8Q²)/(2π√(L·C)), whatever the capacitance of the lead-in. */
import { describe, expect, it } from 'vitest';
import { createAssessor } from '#analysis/assess';
import type { CircuitReadout } from '#analysis/results';
import { relativeError } from '../../physics/support/reference';
import { channel, circuit, loop, siteOf, square, unit } from '../support/sites';

const read = (turns: number, length: number, setting: number): CircuitReadout =>
  createAssessor().assess(
    siteOf({
      loops: [loop('L1', square(0, 0), { turns })],
      circuits: [
        circuit('C1', ['L1'], {
          leadIn: { cable: 'pair-14', length },
          channel: channel('U1', 1, { frequency_Hz: null })
        })
      ],
      units: [unit('U1', { settings_F: [setting] })]
    }),
    'prepared'
  ).circuits[0]!;

describe('a channel settles', () => {
  // 305 m is the 1000 ft of the test configurations of NEMA TS 1 (from memory)
  it.each([
    [3, 30, 1e-7],
    [3, 305, 1e-7],
    [3, 305, 2.2e-8],
    [6, 305, 6.8e-8],
    [6, 305, 2.2e-8],
    [6, 305, 1e-8],
    [8, 600, 6.8e-8],
    [1, 30, 1e-6]
  ])('%d turns behind %d m on a setting of %d F', (turns, length, setting) => {
    const { frequencyFrom, frequency_Hz, inductance_H, q } = read(turns, length, setting);
    expect(frequencyFrom).toBe('setting');
    expect(inductance_H).toBeGreaterThan(0);
    const wanted = (1 - 1 / (8 * q * q)) / (2 * Math.PI * Math.sqrt(inductance_H * setting));
    expect(relativeError(frequency_Hz, wanted)).toBeLessThan(1e-6);
  });

  it('lower the longer the lead-in and the larger the setting', () => {
    const lengths = [0, 50, 150, 300, 600, 1_200];
    const settings = [1e-8, 2.2e-8, 6.8e-8, 1.5e-7, 4.7e-7];
    const byLength = lengths.map((length) => read(6, length, 2.2e-8).frequency_Hz);
    const bySetting = settings.map((setting) => read(6, 300, setting).frequency_Hz);
    for (const list of [byLength, bySetting])
      list.slice(1).forEach((value, k) => expect(value).toBeLessThan(list[k]!));
  });
});

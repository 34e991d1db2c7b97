import { describe, expect, test } from 'vitest';
import type { Assessment, ProbeReadout } from '#analysis/results';
import { emptySite } from '#plan/read';
import type { Circuit, Site } from '#plan/schema';
import { callsOf, loopCalls, watchedProbe } from '#ui/plan/calls';

const circuit = (id: string, loop: string, tripThreshold: number | null): Circuit => ({
  id,
  name: id,
  strings: [[{ loop, reversed: false }]],
  leadIn: { cable: 'pair-14', length: 30 },
  channel:
    tripThreshold === null
      ? null
      : {
          unit: 'U1',
          number: 1,
          frequencySetting: 1,
          frequency_Hz: null,
          tripThreshold,
          releaseRatio: 0.6,
          output: { mode: 'presence', delay_s: 0, extension_s: 0, longestPresence_s: null }
        },
  detect: []
});

const site: Site = {
  ...emptySite(),
  circuits: [circuit('C1', 'L1', 0.002), circuit('C2', 'L2', 0.001), circuit('C3', 'L3', null)],
  probes: [
    { vehicle: 'car', at: [0, 0], heading: 90 },
    { vehicle: 'van', at: [5, 0], heading: 90 }
  ]
};

const readout = (vehicle: string, at: readonly [number, number], drops: readonly number[]): ProbeReadout => ({
  vehicle,
  at,
  circuits: drops.map((drop, index) => ({
    id: `C${index + 1}`,
    deltaL_H: -drop * 1e-4,
    deltaLOverL: -drop,
    deltaF_Hz: 0,
    detected: drop > 0.002
  })),
  loops: []
});

const assessment = (probes: readonly ProbeReadout[], pending = false): Assessment => ({
  pending,
  isFollowed: false,
  loops: [],
  couplings: [],
  circuits: [],
  probes,
  channels: [],
  beats: [],
  weakerBeats: 0,
  beyondModel: [],
  passes: null,
  detectionHeights: null,
  calls: null,
  quantities: null,
  findings: []
});

const both = assessment([
  readout('car', [0, 0], [0.004, 0.0005, 0.01]),
  readout('van', [5, 0], [0.001, 0.003, 0])
]);

describe('the vehicle that is watched', () => {
  test('is the selected one, else the first, else none', () => {
    expect(watchedProbe(site, [{ kind: 'probe', id: '1' }])).toBe(1);
    expect(watchedProbe(site, [{ kind: 'loop', id: 'L1' }])).toBe(0);
    expect(watchedProbe(emptySite(), [])).toBeNull();
  });
});

describe('the calls', () => {
  test('are shares of each circuit’s own threshold', () => {
    const calls = callsOf(site, both, 0);
    expect(calls.map(({ circuit: id }) => id)).toEqual(['C1', 'C2', 'C3']);
    expect(calls.map(({ share }) => share)).toEqual([2, 0.5, null]);
    expect(calls.map(({ isDetected }) => isDetected)).toEqual([true, false, true]);
  });

  test('are of the right vehicle while others are still being prepared', () => {
    const partial = assessment([readout('van', [5, 0], [0.001, 0.003, 0])], true);
    expect(callsOf(site, partial, 0)).toEqual([]);
    expect(callsOf(site, partial, 1)[1]?.share).toBe(3);
  });

  test('are none before the first answer', () => {
    expect(callsOf(site, null, 0)).toEqual([]);
  });
});

test('a loop glows for the vehicle that it answers to most, and not at all without a threshold', () => {
  expect([...loopCalls(site, both)]).toEqual([
    ['L1', { ratio: 2 }],
    ['L2', { ratio: 3 }]
  ]);
});

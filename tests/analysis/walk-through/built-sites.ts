/** Sites built so that what is wrong with them is known. */
import type { Site } from '#plan/schema';
import { channel, circuit, lane, loop, siteOf, square, unit } from '../support/sites';

const two = { channels: 2, scansInTurn: false };

/** Two loops side by side on units of their own, tuned alike. */
export const beating: Site = siteOf({
  lanes: [lane('A', 0), lane('B', 3.5)],
  loops: [loop('L1', square(0, 0)), loop('L2', square(2.6, 0)), loop('L3', square(30, 0))],
  units: [unit('U1', two), unit('U2', two), unit('U3', two)],
  circuits: [
    circuit('C1', ['L1'], {
      name: 'Left',
      channel: channel('U1', 1, { frequency_Hz: null, frequencySetting: 2, tripThreshold: 0.0004 })
    }),
    circuit('C2', ['L2'], {
      name: 'Right',
      channel: channel('U2', 1, { frequency_Hz: null, frequencySetting: 2, tripThreshold: 0.0004 })
    }),
    circuit('C3', ['L3'], {
      name: 'Far',
      channel: channel('U3', 1, { frequency_Hz: null, frequencySetting: 4, tripThreshold: 0.0004 })
    })
  ]
});

/** One loop on a long lead-in, alone on its unit, with a threshold that no two-wheeler reaches. */
export const insensitive: Site = siteOf({
  lanes: [lane('A', 0)],
  loops: [loop('L1', square(0, 0))],
  units: [unit('U1', { channels: 1 })],
  circuits: [
    circuit('C1', ['L1'], {
      name: 'Only',
      leadIn: { cable: 'pair-14', length: 200 },
      detect: ['car', 'motorcycle'],
      channel: channel('U1', 1, { tripThreshold: 0.01 })
    })
  ]
});

/** A gate close by, a pulse output with a delay, and a loop that sees the lane beside. */
export const gated: Site = siteOf({
  lanes: [lane('A', 0), lane('B', 3.2)],
  marks: [
    {
      id: 'g',
      kind: 'gate',
      points: [
        [-2, 2],
        [2, 2]
      ]
    }
  ],
  loops: [loop('L1', square(0.6, 0, 2.6)), loop('L2', square(3.6, 8))],
  units: [unit('U1'), unit('U2')],
  circuits: [
    circuit('C1', ['L1'], {
      name: 'Gate',
      detect: ['motorcycle'],
      channel: channel('U1', 1, {
        tripThreshold: 0.0001,
        output: { mode: 'pulse', delay_s: 2, extension_s: 0, longestPresence_s: null }
      })
    }),
    circuit('C2', ['L2'], {
      name: 'Other',
      channel: channel('U2', 1, {
        frequency_Hz: 60_000,
        tripThreshold: 0.0001,
        output: { mode: 'presence', delay_s: 1, extension_s: 3, longestPresence_s: 240 }
      })
    })
  ]
});

/** Too few turns for a unit that wants more inductance, and nothing that it is asked for reaches its threshold. */
export const outOfRange: Site = siteOf({
  lanes: [lane('A', 0, { largestVehicle: 'lorry-articulated' })],
  loops: [loop('L1', square(0, 0), { turns: 1 })],
  units: [unit('U1', { inductanceRange_H: [5e-5, 2e-3] })],
  circuits: [
    circuit('C1', ['L1'], {
      name: 'Thin',
      detect: ['bicycle', 'motorcycle'],
      channel: channel('U1', 1, { tripThreshold: 0.02 })
    })
  ]
});

/** Short loop, high lorry: lost between its axles. */
export const highLorry: Site = siteOf({
  lanes: [lane('A', 0, { largestVehicle: 'lorry-articulated' })],
  loops: [loop('L1', square(0, 0, 1.2))],
  units: [unit('U1')],
  circuits: [
    circuit('C1', ['L1'], {
      name: 'Bay',
      detect: ['lorry', 'lorry-articulated', 'motorcycle'],
      channel: channel('U1', 1, { tripThreshold: 0.004, releaseRatio: 0.9 })
    })
  ]
});

export const BUILT: readonly (readonly [string, Site])[] = [
  ['two that beat', beating],
  ['one that is insensitive', insensitive],
  ['one at a gate', gated],
  ['one out of range', outOfRange],
  ['one under a high lorry', highLorry]
];

/** Plausible ranges against the circuit itself, solved for thousands of samples with every input off at once. */
import { describe, expect, it } from 'vitest';
import { channel, circuit, loop, square } from '../support/sites';
import { PATIENCE } from '../../physics/support/arbitraries';
import { bruteForce, onSetting, siteWith, studyOf } from './study';

type Json = Readonly<Record<string, unknown>>;

const SAMPLES = 2_500;
/** Of the sampled width. The samples' own ends scatter by one or two per cent of it. */
const LINEAR = 0.05;
const BENT = 0.04;

const quadrupole = (id: string, y: number): Json =>
  loop(id, { kind: 'quadrupole', centre: [0, y], width: 1.8, length: 3 }, { turns: 2 });

const CASES: readonly (readonly [name: string, over: Json])[] = [
  ['one loop at the usual tolerances', {}],
  [
    'a small loop of many turns behind a long thin lead-in, at a given frequency',
    {
      loops: [loop('L1', square(0, 0, 0.6), { turns: 5 })],
      circuits: [
        circuit('C1', ['L1'], {
          leadIn: { cable: 'pair-18', length: 200 },
          channel: channel('U1', 1, { frequency_Hz: 80_000 })
        })
      ]
    }
  ],
  [
    'tolerances so wide that everything bends',
    {
      tolerances: {
        dimensions_m: 0.2,
        depth_m: 0.04,
        wirePitch_m: 0.0015,
        leadInLength_m: 15,
        temperature_C: 40,
        relativePermittivity: 8,
        vehicleHeight_m: 0.15
      }
    }
  ],
  [
    'two quadrupoles in series',
    { loops: [quadrupole('L1', 0), quadrupole('L2', 4)], circuits: [circuit('C1', ['L1', 'L2'], onSetting)] }
  ],
  [
    'a round loop in concrete that conducts',
    {
      loops: [loop('L1', { kind: 'circle', centre: [0, 0], diameter: 1.8 })],
      pavement: { material: 'concrete', relativePermittivity: 8, conductivity_S_m: 0.05 }
    }
  ],
  [
    'four loops in series and in parallel',
    {
      loops: [0, 1, 2, 3].map((k) => loop(`L${k}`, square(0, 3 * k))),
      circuits: [
        circuit('C1', [], {
          ...onSetting,
          strings: [
            [{ loop: 'L0' }, { loop: 'L1' }],
            [{ loop: 'L2' }, { loop: 'L3' }]
          ]
        })
      ]
    }
  ]
];

describe('a plausible range', { timeout: PATIENCE }, () => {
  it.each(CASES)('ends where nineteen in twenty samples end: %s', (_, over) => {
    for (const { name, value, given, low, high } of bruteForce(
      studyOf(siteWith(over), ['car', 'motorcycle']),
      SAMPLES
    )) {
      const allowed = (given.method === 'linear' ? LINEAR : BENT) * (high - low);
      expect(Math.abs(given.low - low), `${name} low (${given.method})`).toBeLessThanOrEqual(allowed);
      expect(Math.abs(given.high - high), `${name} high (${given.method})`).toBeLessThanOrEqual(allowed);
      expect(value).toBeGreaterThanOrEqual(given.low);
      expect(value).toBeLessThanOrEqual(given.high);
    }
  });

  it('is straight where the figure is and bent where it bends: resistance in the heat, response to a height', () => {
    const { ranges } = studyOf(siteWith(), ['car']);
    expect(ranges.resistanceDc_ohm.method).toBe('linear');
    expect(ranges.responses[0]!.worst.method).toBe('sampled');
  });
});

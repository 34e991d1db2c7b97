import { describe, expect, it } from 'vitest';
import type { PassReadout } from '#analysis/passing/results';
import { besideOf, blocksOf, doublesOf, verdictOf } from '#ui/passing/across/rows';
import { pathText } from '#ui/passing/across/words';

const pass = (more: Partial<PassReadout>): PassReadout => ({
  circuit: 'C1',
  vehicle: 'car',
  lane: 'lane1',
  isServed: true,
  wanted: true,
  offset_m: 0,
  response: 0.01,
  at: [0, 0],
  heading: 90,
  margin: 10,
  detections: 1,
  zone: null,
  gaps: [],
  ...more
});

describe('passes across a lane', () => {
  const passes = [
    pass({ vehicle: 'lorry', wanted: false, response: 0.0001 }),
    pass({ offset_m: 0.8, response: 0.008 }),
    pass({ offset_m: -0.8, response: 0.009 }),
    pass({ vehicle: 'bicycle', offset_m: 0, response: 0.0004 }),
    pass({ vehicle: 'bicycle', offset_m: 0.9, response: 0.002 }),
    pass({ lane: 'lane2', response: 0.02 }),
    pass({ isServed: false, lane: 'lane3' })
  ];

  it('are a block for each lane that a circuit serves', () => {
    expect(blocksOf(passes).map(({ circuit, lane }) => [circuit, lane])).toEqual([
      ['C1', 'lane1'],
      ['C1', 'lane2']
    ]);
    expect(blocksOf([])).toEqual([]);
  });

  it('are read from left to right, those asked for first, with the weakest of those marked', () => {
    const [block] = blocksOf(passes);
    expect(block!.rows.map(({ vehicle, isWeakest }) => [vehicle, isWeakest])).toEqual([
      ['car', false],
      ['bicycle', true],
      ['lorry', false]
    ]);
    const [car, bicycle] = block!.rows;
    expect(car!.paths.map(({ offset_m }) => offset_m)).toEqual([-0.8, 0.8]);
    expect(car!.worst.offset_m).toBe(0.8);
    expect(bicycle!.worst.offset_m).toBe(0);
  });
});

describe('how a vehicle fares', () => {
  it.each([
    [[1, 1], 'each-once'],
    [[1, 0], 'missed-somewhere'],
    [[0, 0], 'missed'],
    [[2, 1], 'several-times'],
    [[2, 0], 'missed-somewhere']
  ] as const)('with %j detections on its paths: %s', (detections, verdict) => {
    expect(verdictOf({ paths: detections.map((each) => pass({ detections: each })) })).toBe(verdict);
  });

  it('is not told without a threshold', () => {
    expect(verdictOf({ paths: [pass({ margin: null, detections: 0 })] })).toBe('no-threshold');
  });
});

describe('traffic beside and double counts', () => {
  it('are the strongest of each lane and vehicle, the nearest to a call first', () => {
    const beside = (more: Partial<PassReadout>) => pass({ isServed: false, wanted: false, ...more });
    const rows = besideOf([
      beside({ response: 0.0001, margin: 0.1 }),
      beside({ response: 0.0003, margin: 0.3, offset_m: 0.8 }),
      beside({ vehicle: 'lorry', response: 0.0005, margin: 0.5 }),
      pass({})
    ]);
    expect(
      rows.map(({ strongest, middle }) => [strongest.vehicle, strongest.margin, middle?.margin])
    ).toEqual([
      ['lorry', 0.5, 0.5],
      ['car', 0.3, 0.1]
    ]);
  });

  it('are counted in the circuit’s own lanes only', () => {
    expect(
      doublesOf([pass({}), pass({ detections: 2 }), pass({ detections: 2, isServed: false })])
    ).toHaveLength(1);
  });
});

describe('a path', () => {
  it('is said by its side and distance', () => {
    const metric = { displayUnits: 'metric' } as const;
    expect([-0.85, 0, 1.2].map((offset) => pathText(metric, offset))).toEqual([
      '0.85 m left',
      'middle',
      '1.20 m right'
    ]);
  });
});

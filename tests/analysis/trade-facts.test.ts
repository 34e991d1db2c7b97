/** Published figures of the field that need a whole drawing. Each row of the reference file is one test, or says why not. */
import { describe, expect, it } from 'vitest';
import { createAssessor } from '#analysis/assess';
import type { Assessment } from '#analysis/results';
import { PATIENCE } from '../physics/support/arbitraries';
import { relativeError } from '../physics/support/reference';
import { circuitFacts, expectFact, numberOf, titleOf, type TradeFact } from '../physics/support/trade-facts';
import { channel, circuit, lane, loop, QUICK_VEHICLES, siteOf, square, unit } from './support/sites';

type Json = Readonly<Record<string, unknown>>;

const FEET_100 = 30.48;
const SIX_FEET = 1.8288;
const assessor = createAssessor();
/** The catalogue's own but for two that nothing here is about. */
const vehicles = QUICK_VEHICLES.filter(({ id }) => ['bus', 'motorcycle-small'].includes(String(id)));
const assess = (loops: readonly Json[], over: Json = {}): Assessment =>
  assessor.assess(
    siteOf({
      loops,
      circuits: [
        circuit(
          'C1',
          loops.map(({ id }) => String(id)),
          { leadIn: { cable: 'pair-14', length: FEET_100 } }
        )
      ],
      units: [unit('U1')],
      vehicles,
      ...over
    })
  );

/** 6 × 6 ft, corners cut 12 in, 3 turns of 14 AWG, slot 1-1/2 in deep and 1/4 in wide. */
const testLoop = (over: Json = {}, at: readonly [number, number] = [0, 0]): Json =>
  loop(
    'L1',
    { ...square(at[0], at[1], SIX_FEET), cornerCut: 0.3048 },
    { slot: { depth: 0.0381, width: 0.00635 }, ...over }
  );
const testCircuit = assess([testLoop()]);

const configuration = (row: TradeFact): Assessment => {
  const leadIn = { cable: 'pair-14', length: numberOf(row, 'leadInLength') };
  const sizes = row.inputs['loops'] as unknown as readonly {
    width: number;
    length: number;
    turns?: number;
  }[];
  const loops = sizes.map(({ width, length, turns = 3 }, k) =>
    loop(`L${k + 1}`, { kind: 'rectangle', centre: [k * 2.7, 0], width, length }, { turns })
  );
  const ids = loops.map(({ id }) => ({ loop: String(id) }));
  const strings = ids.length === 4 ? [ids.slice(0, 2), ids.slice(2)] : [ids];
  return assess(loops, { circuits: [circuit('C1', [], { strings, leadIn })] });
};

/** A square of steel level with the road, so far to the side of the test loop: change of the terminals' inductance. */
const besideSteel = (gap: number, side: number): number => {
  const near = SIX_FEET / 2 + gap;
  const outline = [
    [near, -side / 2],
    [near + side, -side / 2],
    [near + side, side / 2],
    [near, side / 2]
  ];
  const steel = [{ id: 's1', kind: 'plate', depth: 0.02, outline }];
  const found = assess([testLoop()], { steel }).circuits[0]!.inductance_H;
  return found / testCircuit.circuits[0]!.inductance_H - 1;
};
const accepted = (id: string): TradeFact => circuitFacts.find((each) => each.id === id)!;

const answerOf = (found: Assessment, vehicle: string): number =>
  found.circuits[0]!.responses.find((each) => each.vehicle === vehicle)!.best;
/** Bicycle at a place beside the middle of a loop, share of the loop's own inductance. */
const bicycleOver = (shape: Json, x: number, y = 0, depth = 0.05): number => {
  const found = assess([loop('L1', shape, { slot: { depth, width: 0.008 } })], {
    probes: [{ vehicle: 'bicycle', at: [x, y], heading: 90 }]
  });
  return found.probes[0]!.loops[0]!.deltaL_H / found.loops[0]!.inductance_H;
};
const circle: Json = { kind: 'circle', centre: [0, 0], diameter: 1.8 };
/** Eight sides as wide as the circle. */
const octagon: Json = {
  kind: 'polygon',
  points: Array.from({ length: 8 }, (_, k) => {
    const angle = (Math.PI / 4) * (k + 0.5);
    const r = 0.9 / Math.cos(Math.PI / 8);
    return [r * Math.cos(angle), r * Math.sin(angle)];
  })
};

/** Share of a circuit's inductance that the smallest of the printed classes changes. */
const SMALLEST_CLASS = (
  accepted('class-small-motorcycle').expected as unknown as { readonly deltaLOverL: number }
).deltaLOverL;

const CHECKS: readonly (readonly [beginning: string, check: (row: TradeFact) => void])[] = [
  [
    'test-loop-inductance',
    (row) => {
      const [depth, tolerance] = [numberOf(row, 'slotDepth'), numberOf(row, 'slotDepthTolerance')];
      for (const each of [depth - tolerance, depth, depth + tolerance])
        expectFact(
          row,
          assess([testLoop({ slot: { depth: each, width: numberOf(row, 'slotWidth') } })]).loops[0]!
            .inductance_H
        );
    }
  ],
  [
    'lead-in-pair-inductance',
    (row) => {
      const long = assess([testLoop()], {
        circuits: [circuit('C1', ['L1'], { leadIn: { cable: 'pair-14', length: 1 } })]
      });
      const none = assess([testLoop()], {
        circuits: [circuit('C1', ['L1'], { leadIn: { cable: 'pair-14', length: 0 } })]
      });
      expectFact(row, long.circuits[0]!.inductance_H - none.circuits[0]!.inductance_H);
    }
  ],
  [
    'class-',
    (row) => {
      // both figures of a class, each rounded to two digits, bound the inductance of the test circuit
      const { deltaLOverL, deltaL_H } = row.expected as unknown as { deltaLOverL: number; deltaL_H: number };
      const half = (value: number): number => 0.5 * 10 ** (Math.floor(Math.log10(value)) - 1);
      const found = testCircuit.circuits[0]!.inductance_H;
      expect(found).toBeGreaterThan((deltaL_H - half(deltaL_H)) / (deltaLOverL + half(deltaLOverL)));
      expect(found).toBeLessThan((deltaL_H + half(deltaL_H)) / (deltaLOverL - half(deltaLOverL)));
    }
  ],
  [
    'test-loop-size',
    (row) => {
      const { width, length, cornerCut } = row.expected as unknown as Record<string, number>;
      const shape = { kind: 'rectangle', centre: [0, 0], width, length, cornerCut };
      const found = assess([testLoop({ shape })]).loops[0]!;
      expectFact(accepted('test-loop-inductance'), found.inductance_H);
      // four sides less both cuts, and four cuts
      const around = 2 * (width! + length!) - 8 * cornerCut! + 4 * Math.SQRT2 * cornerCut!;
      expect(relativeError(found.slotLength_m, around)).toBeLessThan(1e-9);
    }
  ],
  [
    'clear-of-steel',
    (row) => {
      // a plate twice as wide as the loop changes it less than the smallest vehicle from there on
      for (const gap of [1, 1.5]) {
        const change = besideSteel(gap * row.expected.min!, 2 * SIX_FEET);
        expect(change).toBeLessThanOrEqual(0);
        expect(-change).toBeLessThan(SMALLEST_CLASS / 4);
      }
      expect(-besideSteel(0.1, 2 * SIX_FEET)).toBeGreaterThan(2 * SMALLEST_CLASS);
    }
  ],
  [
    'clear-of-covers',
    (row) => {
      const { min, max } = row.expected;
      const cover = 0.6;
      expect(-besideSteel(0.05, cover)).toBeGreaterThan(SMALLEST_CLASS);
      expect(-besideSteel(min!, cover)).toBeLessThan(SMALLEST_CLASS / 2);
      expect(-besideSteel(max!, cover)).toBeLessThan(SMALLEST_CLASS / 10);
    }
  ],
  [
    'operating-band',
    (row) => {
      const at = (frequency_Hz: number) =>
        assess([testLoop()], {
          circuits: [
            circuit('C1', ['L1'], {
              leadIn: { cable: 'pair-14', length: FEET_100 },
              channel: channel('U1', 1, { frequency_Hz })
            })
          ]
        }).circuits[0]!;
      // an ordinary circuit stays inductive over the whole of it, and capacitance shows at the upper edge
      const [low, high] = [at(row.expected.min!), at(row.expected.max!)];
      const usual = testCircuit.circuits[0]!;
      expect(relativeError(low.inductance_H, usual.inductance_H)).toBeLessThan(0.05);
      expect(high.inductance_H).toBeGreaterThan(1.1 * usual.inductance_H);
      expect(low.q).toBeLessThan(usual.q);
      expect(high.q).toBeGreaterThan(usual.q);
    }
  ],
  ['unit-inductance-range', (row) => expectFact(row, testCircuit.circuits[0]!.inductance_H)],
  ['unit-q', (row) => expectFact(row, testCircuit.circuits[0]!.q)],
  [
    'test-configuration-',
    (row) => {
      const { inductance_H, q } = configuration(row).circuits[0]!;
      expectFact(accepted('unit-inductance-range'), inductance_H);
      expectFact(accepted('unit-q'), q);
    }
  ],
  [
    'car-on-100uH',
    (row) => {
      const found = assess([loop('L1', square(0, 0, 2.2))], {
        probes: [{ vehicle: 'car', at: [0, 0], heading: 90 }]
      });
      expect(relativeError(found.loops[0]!.inductance_H, numberOf(row, 'inductance'))).toBeLessThan(0.1);
      const share = found.probes[0]!.loops[0]!.deltaL_H / row.expected.value!;
      expect(Math.abs(Math.log10(share))).toBeLessThan(0.5);
    }
  ],
  [
    'quadrupole-answers-less',
    () => {
      const of = (kind: string, vehicle: string): number =>
        answerOf(
          assess([loop('L1', { kind, centre: [0, 0], width: 1.8, length: 6 }, { turns: 2 })], {
            lanes: [lane('a', 0)]
          }),
          vehicle
        );
      for (const vehicle of ['car', 'lorry', 'van'])
        expect(-of('quadrupole', vehicle)).toBeLessThan(-of('rectangle', vehicle));
    }
  ],
  [
    'round-and-octagon-alike',
    () => {
      for (const [x, y] of [
        [0.9, 0],
        [0.8, 0.3],
        [0.6, 0.2]
      ] as const)
        expect(relativeError(bicycleOver(octagon, x, y), bicycleOver(circle, x, y))).toBeLessThan(0.15);
    }
  ],
  [
    'dead-spot-in-the-middle',
    () => {
      for (const shape of [circle, octagon])
        expect(-bicycleOver(shape, 0)).toBeLessThan(-0.05 * bicycleOver(shape, 0.85));
    }
  ],
  [
    'deep-loop-answers-less',
    (row) => {
      const usual = -bicycleOver(circle, 0.85);
      expect(-bicycleOver(circle, 0.85, 0, numberOf(row, 'depth'))).toBeLessThan(usual / 3);
    }
  ],
  ['acceptance-resistance', (row) => expectFact(row, testCircuit.circuits[0]!.resistance_ohm)],
  [
    'acceptance-q',
    (row) => {
      expect(testCircuit.circuits[0]!.frequency_Hz).toBe(numberOf(row, 'frequency'));
      expectFact(row, testCircuit.circuits[0]!.q);
    }
  ],
  [
    'acceptance-loop',
    (row) => {
      const slot = { depth: numberOf(row, 'slotDepth'), width: numberOf(row, 'slotWidth') };
      expectFact(row, assess([testLoop({ slot })]).loops[0]!.inductance_H);
    }
  ]
];

describe('what a whole circuit answers', { timeout: PATIENCE }, () => {
  it.each(circuitFacts.map((row) => [titleOf(row), row] as const))('%s', (_, row) => {
    const check = CHECKS.find(([beginning]) => row.id.startsWith(beginning))?.[1];
    if (!check) throw new Error(`nothing checks ${row.id}`);
    check(row);
  });

  it('is what a file with the defaults says: 50 kHz, 14 AWG pair', () => {
    expect(testCircuit.circuits[0]!.frequencyFrom).toBe('given');
    expect(channel('U1', 1)).toMatchObject({ frequency_Hz: 50_000 });
  });
});

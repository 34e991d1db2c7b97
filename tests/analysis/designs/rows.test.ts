import { describe, expect, it } from 'vitest';
import { findingRows } from '#analysis/designs/finding-rows';
import type { DesignResults } from '#analysis/designs/results';
import { designRows, type RowFigure } from '#analysis/designs/rows';
import type { Finding, Severity } from '#analysis/results';

interface Given {
  readonly L?: number;
  readonly q?: number;
  readonly worst?: number;
  readonly best?: number;
  readonly margin?: number | null;
  readonly wanted?: boolean;
  readonly pickUp?: number;
  readonly ratio?: number;
  readonly wire?: number;
  readonly cost?: number;
  readonly currency?: string | null;
  readonly circuit?: string;
  readonly findings?: readonly Finding[];
}

/** Only what rows are made from. */
const results = (given: Given): DesignResults =>
  ({
    design: null,
    circuits: [
      {
        id: given.circuit ?? 'C1',
        inductance_H: given.L ?? 1e-4,
        resistance_ohm: 1,
        q: given.q ?? 20,
        frequency_Hz: 40_000,
        responses: [
          {
            vehicle: 'car',
            best: given.best ?? -0.02,
            worst: given.worst ?? -0.01,
            margin: given.margin === undefined ? 5 : given.margin,
            wanted: given.wanted ?? true
          }
        ],
        neighbours: [{ lane: 'lane2', vehicle: 'lorry', deltaLOverL: -(given.pickUp ?? 0.001) }]
      }
    ],
    beats: [{ a: 'C1', b: 'C2', separation_Hz: 4_000, ratio: given.ratio ?? 0.2 }],
    quantities: {
      wire_m: given.wire ?? 30,
      sawCut_m: 12,
      sealant_m3: 0.005,
      leadIn_m: 20,
      work_h: 8,
      currency: given.currency === undefined ? 'EUR' : given.currency,
      costWithContingency: given.cost ?? 1_000
    },
    findings: given.findings ?? [],
    pass: null
  }) as unknown as DesignResults;

const row = (figure: RowFigure, ...given: readonly Given[]) =>
  designRows(given.map(results)).find((each) => each.figure === figure)!;

describe('rows of designs', () => {
  it('mark what is better and worse against the first', () => {
    const better: readonly (readonly [RowFigure, Given, Given])[] = [
      ['q', { q: 20 }, { q: 22 }],
      ['margin', { margin: 1.2 }, { margin: 1.6 }],
      ['margin', { margin: 1.6 }, { margin: 6 }],
      ['response', { worst: -0.01, margin: 1 }, { worst: -0.012, margin: 1.2 }],
      ['neighbour', { pickUp: 0.002 }, { pickUp: 0.001 }],
      ['beatRatio', { ratio: 0.5 }, { ratio: 0.2 }],
      ['wire', { wire: 40 }, { wire: 30 }],
      ['cost', { cost: 1_200 }, { cost: 1_000 }]
    ];
    for (const [figure, from, to] of better) {
      expect([figure, row(figure, from, to).marks]).toEqual([figure, [null, 'better']]);
      expect([figure, row(figure, to, from).marks]).toEqual([figure, [null, 'worse']]);
    }
  });

  it('like less of everything that is built in, and no separation of itself', () => {
    const more = (each: DesignResults): DesignResults => ({
      ...each,
      beats: each.beats.map((beat) => ({ ...beat, separation_Hz: 2 * beat.separation_Hz })),
      quantities: { ...each.quantities!, sawCut_m: 24, sealant_m3: 0.01, leadIn_m: 40, work_h: 16 }
    });
    const rows = designRows([results({}), more(results({}))]);
    const markOf = (figure: RowFigure) => rows.find((each) => each.figure === figure)!.marks[1];
    expect((['sawCut', 'sealant', 'leadIn', 'work'] as const).map(markOf)).toEqual(Array(4).fill('worse'));
    expect(markOf('separation')).toBeNull();
  });

  it('call neither more nor less inductance better', () => {
    const { marks, differs } = row('inductance', { L: 1e-4 }, { L: 2e-4 });
    expect(marks).toEqual([null, null]);
    expect(differs).toBe(true);
  });

  it('differ only as far as anybody could read', () => {
    expect(row('inductance', { L: 1.2341e-4 }, { L: 1.23414e-4 })).toMatchObject({
      differs: false,
      marks: [null, 'same']
    });
    expect(row('inductance', { L: 1.234e-4 }, { L: 1.235e-4 }).differs).toBe(true);
    expect(row('neighbour', { pickUp: 0 }, { pickUp: 1e-9 }).differs).toBe(false);
  });

  it('praise nobody for seeing a vehicle better that was not asked for', () => {
    const marks = row('response', { wanted: false, worst: -0.01 }, { wanted: false, worst: -0.02 }).marks;
    expect(marks).toEqual([null, null]);
  });

  it('call a response of twice the threshold ample, and more of it neither better nor worse', () => {
    for (const figure of ['margin', 'response'] as const) {
      const { marks, differs } = row(figure, { worst: -0.02, margin: 76 }, { worst: -0.014, margin: 53 });
      expect([figure, differs, marks]).toEqual([figure, true, [null, null]]);
      expect(row(figure, { worst: -0.02, margin: 2 }, { worst: -0.019, margin: 1.9 }).marks).toEqual([
        null,
        'worse'
      ]);
    }
    // thresholds of 0.011 and of 0.005: on the best path 1.8 and 4 of them, and so 2.7 and 6
    const best = (margin: number, worst: number) =>
      row('bestResponse', { worst, margin, best: -0.02 }, { worst, margin, best: -0.03 }).marks[1];
    expect(best(1, -0.011)).toBe('better');
    expect(best(1, -0.005)).toBeNull();
  });

  it('leave empty what a design does not have', () => {
    const [first, second] = designRows([results({ circuit: 'C1' }), results({ circuit: 'C2' })]).filter(
      ({ figure }) => figure === 'q'
    );
    expect(first).toMatchObject({ circuit: 'C1', values: [20, null], differs: true, marks: [null, null] });
    expect(second).toMatchObject({ circuit: 'C2', values: [null, 20], differs: true });
    expect(row('margin', { margin: null }, { margin: 3 }).values).toEqual([null, 3]);
  });

  it('have no cost where nothing has a price', () => {
    expect(row('cost', { currency: null }, { currency: null })).toBeUndefined();
  });

  it('hold three designs against the first of them', () => {
    expect(row('wire', { wire: 30 }, { wire: 20 }, { wire: 40 }).marks).toEqual([null, 'better', 'worse']);
  });

  it('have a key each', () => {
    const keys = designRows([results({}), results({ circuit: 'C2' })]).map(({ key }) => key);
    expect(new Set(keys).size).toBe(keys.length);
  });
});

const finding = (severity: Severity, message: string, subject = 'C1'): Finding => ({
  severity,
  code: 'undetected',
  subject,
  selects: [],
  message,
  advice: ''
});

describe('findings of designs', () => {
  it('are better where they are gone or less grave', () => {
    const [found] = findingRows([
      results({ findings: [finding('problem', 'misses a car')] }),
      results({ findings: [finding('caution', 'misses a car at the edge')] }),
      results({})
    ]);
    expect(found).toMatchObject({ differs: true, marks: [null, 'better', 'better'] });
    expect(found?.findings.map((each) => each?.severity ?? null)).toEqual(['problem', 'caution', null]);
  });

  it('are worse where they are new', () => {
    expect(findingRows([results({}), results({ findings: [finding('note', 'x')] })])[0]?.marks).toEqual([
      null,
      'worse'
    ]);
  });

  it('of one kind about one thing are told apart by what they say, not by their figures', () => {
    const rows = findingRows([
      results({
        findings: [finding('problem', 'misses a car: 0.02 %'), finding('caution', 'misses a bus: 0.1 %')]
      }),
      results({
        findings: [finding('caution', 'misses a bus: 0.3 %'), finding('problem', 'misses a car: 0.04 %')]
      })
    ]);
    expect(rows.map(({ differs }) => differs)).toEqual([false, false]);
  });
});

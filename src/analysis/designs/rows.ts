/**
 * Designs side by side, row by row: every result with its value in each design, whether it differs as far as anybody could
 * read, and whether it is better or worse than in the first. What counts as better stands in one table. Values are SI;
 * responses are −ΔL/L.
 */
import type { DesignResults } from './results';

export const ROW_GROUPS = ['circuits', 'vehicles', 'neighbours', 'beats', 'quantities'] as const;
export type RowGroup = (typeof ROW_GROUPS)[number];

/**
 * Which way each figure is better; 'neither' where more and less are as good. `digits`: how fine it is worth reading, and
 * whatever is equal to so many significant digits is the same.
 */
export const ROW_FIGURES = {
  inductance: { group: 'circuits', better: 'neither', digits: 4 },
  resistance: { group: 'circuits', better: 'neither', digits: 3 },
  q: { group: 'circuits', better: 'more', digits: 3 },
  frequency: { group: 'circuits', better: 'neither', digits: 4 },
  margin: { group: 'vehicles', better: 'more', digits: 2 },
  response: { group: 'vehicles', better: 'more', digits: 3 },
  bestResponse: { group: 'vehicles', better: 'more', digits: 3 },
  neighbour: { group: 'neighbours', better: 'less', digits: 2 },
  separation: { group: 'beats', better: 'neither', digits: 3 },
  beatRatio: { group: 'beats', better: 'less', digits: 2 },
  wire: { group: 'quantities', better: 'less', digits: 3 },
  sawCut: { group: 'quantities', better: 'less', digits: 3 },
  sealant: { group: 'quantities', better: 'less', digits: 3 },
  leadIn: { group: 'quantities', better: 'less', digits: 3 },
  work: { group: 'quantities', better: 'less', digits: 3 },
  cost: { group: 'quantities', better: 'less', digits: 4 }
} as const satisfies Record<
  string,
  {
    readonly group: RowGroup;
    readonly better: 'more' | 'less' | 'neither';
    readonly digits: number;
  }
>;
export type RowFigure = keyof typeof ROW_FIGURES;

/**
 * In trip thresholds: a response from here on is ample, and more of it neither better nor worse. Half of it may be lost to a
 * higher vehicle, another path or a deeper slot before a call is missed; a choice of this program, no published figure.
 */
const AMPLE = 2;

/** As against the first design; null where nobody can say, or there is nothing to compare. */
export type Mark = 'better' | 'worse' | 'same' | null;

interface RowSubject {
  /** A circuit; of a pair the first. Null for the whole site. */
  readonly circuit: string | null;
  /** Of a pair the second. */
  readonly other: string | null;
  readonly vehicle: string | null;
  /** The lane beside in which the vehicle drives. */
  readonly lane: string | null;
}

export interface DesignRow extends RowSubject {
  /** Unique among the rows. */
  readonly key: string;
  readonly figure: RowFigure;
  /** By design; null where the design has none. */
  readonly values: readonly (number | null)[];
  readonly differs: boolean;
  /** By design; the first is always null. */
  readonly marks: readonly Mark[];
}

type Entry = RowSubject & {
  readonly figure: RowFigure;
  readonly value: number;
  readonly isPlain?: boolean;
  readonly isAmple?: boolean;
};

const NOBODY: RowSubject = { circuit: null, other: null, vehicle: null, lane: null };

/** `isPlain`: more and less are as good, since nobody asked for it. `isAmple`: so they are among those that have enough. */
function* entriesOf({ circuits, beats, quantities }: DesignResults): Generator<Entry> {
  for (const circuit of circuits) {
    const of = (figure: RowFigure, value: number): Entry => ({
      ...NOBODY,
      circuit: circuit.id,
      figure,
      value
    });
    yield of('inductance', circuit.inductance_H);
    yield of('resistance', circuit.resistance_ohm);
    yield of('q', circuit.q);
    yield of('frequency', circuit.frequency_Hz);
    for (const { vehicle, best, worst, margin, wanted } of circuit.responses) {
      const isPlain = !wanted;
      const isAmple = margin !== null && margin >= AMPLE;
      // the threshold is the same for both: what the worst path reaches, the best reaches by as much more
      const isBestAmple = margin !== null && worst < 0 && margin * best <= AMPLE * worst;
      if (margin !== null) yield { ...of('margin', margin), vehicle, isPlain, isAmple };
      yield { ...of('response', -worst), vehicle, isPlain, isAmple };
      yield { ...of('bestResponse', -best), vehicle, isPlain, isAmple: isBestAmple };
    }
    for (const { lane, vehicle, deltaLOverL } of circuit.neighbours)
      yield { ...of('neighbour', -deltaLOverL), vehicle, lane };
  }
  for (const { a, b, separation_Hz, ratio } of beats) {
    yield { ...NOBODY, circuit: a, other: b, figure: 'separation', value: separation_Hz };
    yield { ...NOBODY, circuit: a, other: b, figure: 'beatRatio', value: ratio };
  }
  if (!quantities) return;
  const { wire_m, sawCut_m, sealant_m3, leadIn_m, work_h, currency, costWithContingency } = quantities;
  yield { ...NOBODY, figure: 'wire', value: wire_m };
  yield { ...NOBODY, figure: 'sawCut', value: sawCut_m };
  yield { ...NOBODY, figure: 'sealant', value: sealant_m3 };
  yield { ...NOBODY, figure: 'leadIn', value: leadIn_m };
  yield { ...NOBODY, figure: 'work', value: work_h };
  // without a price nothing is known to cost anything
  if (currency !== null) yield { ...NOBODY, figure: 'cost', value: costWithContingency };
}

const keyOf = ({ figure, circuit, other, vehicle, lane }: Omit<Entry, 'value'>): string =>
  JSON.stringify([figure, circuit, other, vehicle, lane]);

/** Equal to so many significant digits; whatever is under a hundred millionth is nothing. */
const alike = (a: number, b: number, digits: number): boolean =>
  a === b || rounded(a, digits) === rounded(b, digits);
const NOTHING = 1e-8;
const rounded = (value: number, digits: number): number =>
  Math.abs(value) < NOTHING ? 0 : Number(value.toPrecision(digits));

function markOf(value: number | null, first: number | null, figure: RowFigure, isPlain: boolean): Mark {
  const { better, digits } = ROW_FIGURES[figure];
  if (value === null || first === null) return null;
  if (alike(value, first, digits)) return 'same';
  if (better === 'neither' || isPlain) return null;
  return value > first === (better === 'more') ? 'better' : 'worse';
}

/** In the order of `ROW_GROUPS`, and within it that of the first design in which a row comes up. */
export function designRows(results: readonly DesignResults[]): readonly DesignRow[] {
  const found = new Map<
    string,
    {
      readonly entry: Entry;
      readonly values: (number | null)[];
      isPlain: boolean;
      readonly ample: Set<number>;
    }
  >();
  results.forEach((result, index) => {
    for (const entry of entriesOf(result)) {
      const key = keyOf(entry);
      const row = found.get(key) ?? {
        entry,
        values: results.map(() => null),
        isPlain: false,
        ample: new Set()
      };
      row.values[index] = entry.value;
      row.isPlain ||= entry.isPlain ?? false;
      if (entry.isAmple) row.ample.add(index);
      found.set(key, row);
    }
  });
  const rows = [...found].map(([key, { entry, values, isPlain, ample }]): DesignRow => {
    const { figure, circuit, other, vehicle, lane } = entry;
    const first = values[0] ?? null;
    const { digits } = ROW_FIGURES[figure];
    return {
      key,
      figure,
      circuit,
      other,
      vehicle,
      lane,
      values,
      differs: values.some((value) =>
        value === null || first === null ? value !== first : !alike(value, first, digits)
      ),
      marks: values.map((value, index) =>
        index === 0 ? null : markOf(value, first, figure, isPlain || (ample.has(0) && ample.has(index)))
      )
    };
  });
  return ROW_GROUPS.flatMap((group) => rows.filter(({ figure }) => ROW_FIGURES[figure].group === group));
}

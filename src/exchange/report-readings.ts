/**
 * Readings in the report: per circuit and visit what was read, what was expected, and which causes explain it. Every figure
 * stands under the name of its quantity, which has its unit: `inductance_H.measured`.
 */
import type { VisitReport } from '#analysis/fault-finding/readings-report';
import type {
  CauseKind,
  Diagnosis,
  FigureVerdict,
  Limit,
  MeasuredFigure
} from '#analysis/fault-finding/results';
import type { Quantity, Reading, Site, TestPoint } from '#plan/schema';
import { textTold } from '#analysis/fault-finding/told-text';

interface Interval {
  readonly value: number;
  /** Nineteen times in twenty. */
  readonly low: number;
  readonly high: number;
}

interface ReportedFigure {
  /** Null where the meter was over its range. */
  readonly measured: number | null;
  readonly expected: number | null;
  readonly low: number | null;
  readonly high: number | null;
  readonly limits: readonly Limit[];
  /** One standard deviation of the meter alone. */
  readonly meterDeviation: number;
  /** In standard deviations of meter and tolerances together. */
  readonly deviations: number | null;
  readonly verdict: FigureVerdict;
}

type ReportedReading = {
  readonly id: string | null;
  readonly at: string | null;
  readonly testPoint: TestPoint;
  readonly loop: string | null;
  readonly by: string | null;
  readonly isCommissioning: boolean;
  readonly temperature_C: number | null;
} & { readonly [Q in Quantity]?: ReportedFigure };

interface ReportedCause {
  readonly probability: number;
  readonly faults: readonly ({ readonly kind: CauseKind; readonly subject: string | null } & Readonly<
    Record<string, Interval | string | null>
  >)[];
  readonly remedy: string;
  readonly evidence: readonly {
    readonly testPoint: TestPoint | null;
    readonly loop: string | null;
    readonly quantity: Quantity | null;
    /** Natural logarithm; negative: against. */
    readonly weight: number;
    readonly text: string;
  }[];
}

export interface ReportedVisit {
  readonly circuit: string;
  readonly day: string | null;
  /** No cause is claimed. */
  readonly fits: boolean;
  readonly readings: readonly ReportedReading[];
  readonly causes: readonly ReportedCause[];
  readonly distances: readonly {
    readonly from: 'resistance' | 'inductance';
    readonly distance_m: Interval;
    readonly leadIn_m: number;
  }[];
}

const figureOf = ({
  value,
  expected,
  meterDeviation,
  deviations,
  verdict
}: MeasuredFigure): ReportedFigure => ({
  measured: value,
  expected: expected?.value ?? null,
  low: expected?.low ?? null,
  high: expected?.high ?? null,
  limits: expected?.limits ?? [],
  meterDeviation,
  deviations,
  verdict
});

function readingsOf(
  { figures }: Diagnosis,
  site: Site,
  places: readonly number[]
): readonly ReportedReading[] {
  return places.flatMap((place) => {
    const own = figures.filter(({ reading }) => reading === place);
    const [first] = own;
    const reading: Reading | undefined = site.readings[place];
    if (!first || !reading) return [];
    return [
      {
        id: reading.id ?? null,
        at: reading.at ?? null,
        testPoint: first.testPoint,
        loop: first.loop,
        by: reading.by ?? null,
        isCommissioning: reading.isCommissioning ?? false,
        temperature_C: reading.temperature_C ?? null,
        ...Object.fromEntries(own.map((figure) => [figure.quantity, figureOf(figure)]))
      }
    ];
  });
}

const causesOf = ({ causes, figures }: Diagnosis, { displayUnits }: Site): readonly ReportedCause[] =>
  causes.map(({ probability, faults, remedy, evidence }) => ({
    probability,
    faults: faults.map(({ kind, subject, estimates }) => ({
      kind,
      subject,
      ...Object.fromEntries(estimates.map(({ name, value, low, high }) => [name, { value, low, high }]))
    })),
    remedy: textTold('causes', remedy, displayUnits),
    evidence: evidence.map(({ figure, weight, told }) => {
      const about = figure === null ? undefined : figures[figure];
      return {
        testPoint: about?.testPoint ?? null,
        loop: about?.loop ?? null,
        quantity: about?.quantity ?? null,
        weight,
        text: textTold('causes', told, displayUnits)
      };
    })
  }));

export const readingsOfReport = (site: Site, visits: readonly VisitReport[]): readonly ReportedVisit[] =>
  visits.map(({ circuit, day, readings, diagnosis }) => ({
    circuit,
    day,
    fits: diagnosis.fits,
    readings: readingsOf(diagnosis, site, readings),
    causes: causesOf(diagnosis, site),
    distances: diagnosis.distances.map(({ from, distance_m, low, high, total_m }) => ({
      from,
      distance_m: { value: distance_m, low, high },
      leadIn_m: total_m
    }))
  }));

/**
 * What the commissioning record says of a circuit: each figure that is expected with what was measured on the day. Of
 * several readings of one figure the newest commissioning one counts; without any, the newest.
 */
import { READING_QUANTITIES, TEST_POINTS, type Circuit, type Quantity, type Site } from '#plan/schema';
import { loopsIn } from '#plan/wiring';
import type { CheckedCircuit, CheckedFigure } from './checked';
import type { ExpectedFigure, FigureVerdict, MeasuringPlace } from './results';

export interface RecordRow extends MeasuringPlace {
  readonly quantity: Quantity;
  /** Of a response: whose. */
  readonly vehicle: string | null;
  /** Where something was measured, under the conditions in which it was. */
  readonly expected: ExpectedFigure | null;
  readonly measured: CheckedFigure | null;
}

type Read = Pick<Site, 'circuits' | 'readings'>;
type Key = Pick<RecordRow, 'testPoint' | 'loop' | 'quantity' | 'vehicle'>;

const vehicleOf = (site: Read, { quantity, reading, expected }: CheckedFigure): string | null =>
  quantity === 'deltaLOverL' ? (site.readings[reading]?.vehicle ?? expected?.vehicle ?? null) : null;

const keyOf = ({ testPoint, loop, quantity, vehicle }: Key): string =>
  JSON.stringify([testPoint, loop, quantity, vehicle]);

/** Whether `a` counts rather than `b`: undated readings are older than all others, of equals the one entered later counts. */
function countsBefore(site: Read, a: CheckedFigure, b: CheckedFigure): boolean {
  const [one, other] = [site.readings[a.reading], site.readings[b.reading]];
  const isFirst = (one?.isCommissioning ?? false) !== (other?.isCommissioning ?? false);
  if (isFirst) return one?.isCommissioning === true;
  const [here, there] = [one?.at ?? '', other?.at ?? ''];
  return here === there ? a.reading > b.reading : here > there;
}

/**
 * What is worth taking: expected of a meter, or at least limited. A response only of vehicles that the circuit is asked to
 * detect; the pull box only where loops are spliced there; and no unit shows a Q.
 */
function isListed(
  { quantity, testPoint, vehicle, value, limits }: ExpectedFigure,
  circuit: Circuit
): boolean {
  if (quantity === 'deltaLOverL' && vehicle !== null && !circuit.detect.includes(vehicle)) return false;
  if (testPoint === 'pull-box' && loopsIn(circuit).length === 1) return false;
  if (testPoint === 'unit' && quantity === 'q') return false;
  return value !== null || limits.length > 0;
}

/** In the order in which they are taken: from the loop to the unit. */
export function recordRowsOf(site: Read, checked: CheckedCircuit): readonly RecordRow[] {
  const circuit = site.circuits.find(({ id }) => id === checked.circuit);
  const rows = new Map<string, RecordRow>();
  for (const figure of checked.figures) {
    const { testPoint, loop, quantity, vehicle } = figure;
    const key = { testPoint, loop, quantity, vehicle: quantity === 'deltaLOverL' ? vehicle : null };
    if (circuit && isListed(figure, circuit))
      rows.set(keyOf(key), { ...key, expected: figure, measured: null });
  }
  for (const measured of checked.measured) {
    const { testPoint, loop, quantity } = measured;
    const key = { testPoint, loop, quantity, vehicle: vehicleOf(site, measured) };
    const before = rows.get(keyOf(key));
    if (before?.measured && countsBefore(site, before.measured, measured)) continue;
    rows.set(keyOf(key), { ...key, expected: measured.expected, measured });
  }
  const loops = circuit ? loopsIn(circuit) : [];
  const detect = circuit?.detect ?? [];
  const rank = ({ testPoint, loop, quantity, vehicle }: RecordRow): readonly number[] => [
    TEST_POINTS.indexOf(testPoint),
    loop === null ? -1 : loops.indexOf(loop),
    READING_QUANTITIES.indexOf(quantity),
    // one that nobody asks for comes last
    vehicle === null || !detect.includes(vehicle) ? detect.length : detect.indexOf(vehicle)
  ];
  const compared = (a: RecordRow, b: RecordRow): number => {
    const other = rank(b);
    return (
      rank(a)
        .map((own, at) => own - other[at]!)
        .find((difference) => difference !== 0) ?? 0
    );
  };
  return [...rows.values()].toSorted(compared);
}

/** The worse comes first. */
const GRAVITY: readonly FigureVerdict[] = [
  'beyond a limit',
  'in doubt',
  'high',
  'low',
  'no expectation',
  'fits'
];

export interface RecordSummary {
  readonly measured: number;
  readonly listed: number;
  /** Null where nothing was measured. */
  readonly worst: FigureVerdict | null;
}

export function summaryOf(rows: readonly RecordRow[]): RecordSummary {
  const verdicts = new Set(rows.flatMap(({ measured }) => measured?.verdict ?? []));
  return {
    measured: rows.filter(({ measured }) => measured !== null).length,
    listed: rows.length,
    worst: GRAVITY.find((verdict) => verdicts.has(verdict)) ?? null
  };
}

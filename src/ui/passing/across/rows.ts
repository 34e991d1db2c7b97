/** Passes on every path across a lane, ordered for reading. Pure. */
import type { PassReadout } from '#analysis/passing/results';

export interface VehicleRow {
  readonly vehicle: string;
  readonly wanted: boolean;
  /** From the left of the lane to the right. */
  readonly paths: readonly PassReadout[];
  /** Where least of it is to be seen. */
  readonly worst: PassReadout;
  /** It is asked for, and no other that is asked for answers so weakly. */
  readonly isWeakest: boolean;
}

/** A circuit in one of its lanes. */
export interface LaneBlock {
  readonly key: string;
  readonly circuit: string;
  readonly lane: string | null;
  /** Those asked for first. */
  readonly rows: readonly VehicleRow[];
}

const keyOf = ({ circuit, lane }: PassReadout): string => JSON.stringify([circuit, lane]);

const weaker = (a: PassReadout, b: PassReadout): PassReadout => (b.response < a.response ? b : a);

function grouped(passes: readonly PassReadout[], key: (pass: PassReadout) => string): PassReadout[][] {
  const groups = new Map<string, PassReadout[]>();
  for (const pass of passes) groups.set(key(pass), [...(groups.get(key(pass)) ?? []), pass]);
  return [...groups.values()];
}

export function blocksOf(passes: readonly PassReadout[]): readonly LaneBlock[] {
  const served = passes.filter(({ isServed }) => isServed);
  return grouped(served, keyOf).map((ofLane) => {
    const rows = grouped(ofLane, ({ vehicle }) => vehicle).map((paths) => ({
      vehicle: paths[0]!.vehicle,
      wanted: paths[0]!.wanted,
      paths: [...paths].sort((a, b) => a.offset_m - b.offset_m),
      worst: paths.reduce(weaker)
    }));
    const wanted = rows.filter((row) => row.wanted);
    const weakest = wanted.length > 0 ? wanted.map(({ worst }) => worst).reduce(weaker) : null;
    return {
      key: keyOf(ofLane[0]!),
      circuit: ofLane[0]!.circuit,
      lane: ofLane[0]!.lane,
      rows: rows
        .map((row) => ({ ...row, isWeakest: row.worst === weakest }))
        .sort((a, b) => Number(b.wanted) - Number(a.wanted))
    };
  });
}

export interface BesideRow {
  readonly strongest: PassReadout;
  /** In the middle of its lane, where that was tried. */
  readonly middle: PassReadout | null;
}

/** Of traffic beside, each circuit, lane and vehicle; what comes nearest to a call first. */
export const besideOf = (passes: readonly PassReadout[]): readonly BesideRow[] =>
  grouped(
    passes.filter(({ isServed }) => !isServed),
    (pass) => JSON.stringify([keyOf(pass), pass.vehicle])
  )
    .map((same) => ({
      strongest: same.reduce((best, pass) => (pass.response > best.response ? pass : best)),
      middle: same.find(({ offset_m }) => offset_m === 0) ?? null
    }))
    .sort((a, b) => (b.strongest.margin ?? 0) - (a.strongest.margin ?? 0));

/** Vehicles that are counted more than once in one passage. */
export const doublesOf = (passes: readonly PassReadout[]): readonly PassReadout[] =>
  passes.filter(({ isServed, detections }) => isServed && detections > 1);

/** How a vehicle fares over all its paths. */
export type Verdict = 'each-once' | 'missed-somewhere' | 'missed' | 'several-times' | 'no-threshold';

export function verdictOf({ paths }: Pick<VehicleRow, 'paths'>): Verdict {
  if (paths.some(({ margin }) => margin === null)) return 'no-threshold';
  if (paths.every(({ detections }) => detections === 0)) return 'missed';
  if (paths.some(({ detections }) => detections === 0)) return 'missed-somewhere';
  return paths.some(({ detections }) => detections > 1) ? 'several-times' : 'each-once';
}

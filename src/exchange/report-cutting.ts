/** The cutting plan in the report: every quantity with its unit in its name. */
import { cautionText } from '#analysis/takeoff/how';
import type { CutKind, CuttingPlan, SetOut } from '#analysis/takeoff/results';
import { valueSaid } from '#analysis/takeoff/said-values';
import type { DisplayUnits, Point } from '#plan/schema';

interface ReportedSetOut {
  readonly station_m: number;
  /** Positive to the left of the baseline. */
  readonly offset_m: number;
}

interface ReportedCut {
  readonly id: string;
  readonly order: number;
  readonly loop: string;
  readonly sharedWith: readonly string[];
  readonly kind: CutKind;
  readonly from: Point;
  readonly to: Point;
  /** Of a round cut, which is set out from its middle. */
  readonly centre: Point | null;
  readonly radius_m: number | null;
  readonly length_m: number;
  readonly depth_m: number;
  readonly width_m: number;
  /** How far it runs past its ends. */
  readonly overcutFrom_m: number;
  readonly overcutTo_m: number;
  readonly setOutFrom: ReportedSetOut | null;
  readonly setOutTo: ReportedSetOut | null;
}

export interface ReportedCutting {
  /** Name of what stations and offsets are measured from. */
  readonly baseline: string | null;
  readonly cuts: readonly ReportedCut[];
  readonly holes: readonly {
    readonly loop: string;
    readonly at: Point;
    readonly diameter_m: number;
    readonly depth_m: number;
    readonly setOut: ReportedSetOut | null;
  }[];
  /** Home runs that are not drawn: only their length is known. */
  readonly unplaced: readonly {
    readonly loop: string;
    readonly length_m: number;
    readonly depth_m: number;
    readonly width_m: number;
  }[];
  /** By depth and width; the blade's way is length and overcut together. */
  readonly totals: readonly {
    readonly depth_m: number;
    readonly width_m: number;
    readonly length_m: number;
    readonly overcut_m: number;
  }[];
  /** What the figures leave out, and what whoever saws has to mind; in the language and units of the site's findings. */
  readonly cautions: readonly { readonly code: string; readonly message: string }[];
}

const setOutOf = (setOut: SetOut | null | undefined): ReportedSetOut | null =>
  setOut ? { station_m: setOut.station, offset_m: setOut.offset } : null;

export const cuttingOf = (
  { baseline, cuts, holes, unplaced, totals, cautions }: CuttingPlan,
  units: DisplayUnits
): ReportedCutting => ({
  baseline: baseline?.name ?? null,
  cuts: cuts.map(
    ({ circle, length, depth, width, overcut, setOut, id, order, loop, sharedWith, kind, from, to }) => ({
      id,
      order,
      loop,
      sharedWith,
      kind,
      from,
      to,
      centre: circle?.centre ?? null,
      radius_m: circle?.radius ?? null,
      length_m: length,
      depth_m: depth,
      width_m: width,
      overcutFrom_m: overcut.from,
      overcutTo_m: overcut.to,
      setOutFrom: setOutOf(setOut?.from),
      setOutTo: setOutOf(setOut?.to)
    })
  ),
  holes: holes.map(({ loop, at, diameter, depth, setOut }) => ({
    loop,
    at,
    diameter_m: diameter,
    depth_m: depth,
    setOut: setOutOf(setOut)
  })),
  unplaced: unplaced.map(({ loop, length, depth, width }) => ({
    loop,
    length_m: length,
    depth_m: depth,
    width_m: width
  })),
  totals: totals.map(({ depth, width, length, overcut }) => ({
    depth_m: depth,
    width_m: width,
    length_m: length,
    overcut_m: overcut
  })),
  cautions: cautions.map((each) => ({ code: each.key, message: cautionText(each, valueSaid(units)) }))
});

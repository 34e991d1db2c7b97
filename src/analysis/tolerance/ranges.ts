/**
 * Where a circuit's figures plausibly lie if it is built and used within the site's tolerances. Every input is moved to
 * both ends of its tolerance and the circuit solved anew; with a frequency setting the frequency follows, so it has a
 * range of its own. A response is taken where the vehicle stands at the worst path's strongest place as designed.
 */
import type { Placement } from '#physics/field/filaments';
import type { Circuit, Site } from '#plan/schema';
import type { Alone, AloneMeans } from '../electrical/alone';
import type { VehicleBody } from '../electrical/bodies';
import type { SolvedCircuit } from '../electrical/circuit-model';
import { clearanceOf, raised } from '../electrical/raised';
import { changeOf } from '../electrical/vehicle-effect';
import type { CircuitRanges, PlausibleRange, VehicleResponse } from '../results';
import { finish, type Steps } from '../steps';
import { rangesOfLoops } from './loop-ranges';
import { rangeOf, type Bend, type Shifted } from './range';
import { shiftsOf, toleranceOf, type ShiftedCircuit, type Shifts } from './shifts';

export interface RangeMeans extends AloneMeans {
  /** Null while the vehicle is still being prepared: its response then has no range. */
  readonly bodyOf: (vehicle: { readonly id: string }) => VehicleBody | null;
}

type Standing = Pick<VehicleResponse, 'vehicle' | 'worstAt' | 'worstHeading'>;

type FigureRanges = Omit<CircuitRanges, 'responses' | 'loops'>;

const FIGURES: Readonly<Record<keyof FigureRanges, (alone: Alone) => number>> = {
  inductance_H: ({ solved }) => solved.inductance,
  resistance_ohm: ({ solved }) => solved.resistance,
  resistanceDc_ohm: ({ resistanceDc }) => resistanceDc,
  q: ({ solved }) => solved.q,
  frequency_Hz: ({ solved }) => solved.frequency
};

/** Of any figure of the circuit by itself. */
export const rangeIn = ({ nominal, pairs }: Shifts, figure: (alone: Alone) => number): PlausibleRange =>
  rangeOf(
    figure(nominal),
    pairs.map(({ input, below, above }) => ({
      input,
      below: { share: below.share, value: figure(below.alone) },
      above: { share: above.share, value: figure(above.alone) }
    }))
  );

const rangesOfFigures = (shifts: Shifts): FigureRanges => ({
  inductance_H: rangeIn(shifts, FIGURES.inductance_H),
  resistance_ohm: rangeIn(shifts, FIGURES.resistance_ohm),
  resistanceDc_ohm: rangeIn(shifts, FIGURES.resistanceDc_ohm),
  q: rangeIn(shifts, FIGURES.q),
  frequency_Hz: rangeIn(shifts, FIGURES.frequency_Hz)
});

/** ΔL/L of the vehicle at its place on a circuit as it is, and on one whose loops lie as in that one. */
interface Effects {
  of(solved: SolvedCircuit, body: VehicleBody): number;
  onSameLoops(solved: SolvedCircuit): number;
}

/**
 * Over steel the fine mesh of a lifted vehicle would have to be made anew for each plane: there the quick mesh says by what
 * share a response changes, which it knows much better than the response itself (tests say how well).
 */
const effectsAt = (nominal: SolvedCircuit, placement: Placement, body: VehicleBody): Effects => {
  const effectOf = (solved: SolvedCircuit, change: ReturnType<typeof changeOf>): number =>
    solved.inductanceWith((i, j) => change[i]![j]!) / solved.inductance - 1;
  const asDrawn = changeOf(nominal, body, placement);
  if (!nominal.steel)
    return {
      of: (solved, vehicle) => effectOf(solved, changeOf(solved, vehicle, placement)),
      onSameLoops: (solved) => effectOf(solved, asDrawn)
    };
  const quick = effectOf(nominal, changeOf(nominal, body, placement, 'coarse'));
  const scale = quick === 0 ? 1 : effectOf(nominal, asDrawn) / quick;
  return {
    of: (solved, vehicle) => scale * effectOf(solved, changeOf(solved, vehicle, placement, 'coarse')),
    onSameLoops: (solved) => effectOf(solved, asDrawn)
  };
};

/** Of one vehicle; `height` is the tolerance of its height, metres. */
const rangeOfResponse = (
  { nominal, pairs }: Shifts,
  { worstAt: [x, y], worstHeading: heading }: Omit<Standing, 'vehicle'>,
  body: VehicleBody,
  height: number
): PlausibleRange => {
  const effects = effectsAt(nominal.solved, { x, y, heading }, body);
  const value = effects.onSameLoops(nominal.solved);
  const under = ({ share, alone: { solved }, isMoved }: ShiftedCircuit): Shifted => ({
    share,
    value: isMoved ? effects.of(solved, body) : effects.onSameLoops(solved)
  });
  const lifted = (by: number): Shifted => {
    const shift = Math.max(-clearanceOf(body), by);
    return shift === 0
      ? { share: 0, value }
      : { share: shift / height, value: effects.of(nominal.solved, raised(body, shift)) };
  };
  const bends: Bend[] = pairs.map(({ input, below, above }) => ({
    input,
    below: under(below),
    above: under(above)
  }));
  if (height > 0) bends.push({ input: 'vehicleHeight', below: lifted(-height), above: lifted(height) });
  return rangeOf(value, bends);
};

/**
 * In steps: every yield is a place where something more urgent may come in. `solved` is the circuit as drawn;
 * `responses` those whose ranges are wanted.
 */
export function* rangesInSteps(
  site: Site,
  circuit: Circuit,
  solved: SolvedCircuit,
  responses: readonly Standing[],
  means: RangeMeans
): Steps<CircuitRanges> {
  const shifts = yield* shiftsOf(site, circuit, solved, means);
  const figures = rangesOfFigures(shifts);
  const height = toleranceOf(site, 'vehicleHeight');
  const ranges: { vehicle: string; worst: PlausibleRange }[] = [];
  for (const standing of responses) {
    const body = means.bodyOf({ id: standing.vehicle });
    if (!body) continue;
    ranges.push({ vehicle: standing.vehicle, worst: rangeOfResponse(shifts, standing, body, height) });
    yield;
  }
  const loops = rangesOfLoops(
    shifts,
    circuit.strings.flat().map(({ loop }) => loop)
  );
  return { ...figures, loops, responses: ranges };
}

/** The same at once. */
export const rangesOf = (...given: Parameters<typeof rangesInSteps>): CircuitRanges =>
  finish(rangesInSteps(...given));

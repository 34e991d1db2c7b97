/**
 * Causes and what they predict, written down figure by figure: what is made of them follows by hand. Nothing strays but
 * the meter, by a known deviation.
 */
import type { AskedFigure, Hypothesis, Predicted, Unknown } from '#analysis/fault-finding/forward/contract';
import type { Placed } from '#analysis/fault-finding/inference/observe';
import type { Seen } from '#analysis/fault-finding/inference/likelihood';
import type { Particle } from '#analysis/fault-finding/inference/refine';
import type { Suspect } from '#analysis/fault-finding/inference/suspect';
import { NINETEEN_IN_TWENTY } from '#analysis/fault-finding/judge';
import { entriesFrom, type Entry } from '#analysis/fault-finding/ranked';
import type { CauseKind } from '#analysis/fault-finding/results';

/** A meter that errs by one standard deviation of `deviation`, whatever it reads. */
export const meterOf = (deviation: number) => ({ share: 0, floor: NINETEEN_IN_TWENTY * deviation });

export const placedAt = (
  figure: number,
  asked: AskedFigure,
  value: number | null,
  deviation: number
): Placed => ({
  figure,
  observed: { asked, value, accuracy: meterOf(deviation), isBaseline: false }
});

interface PlaceGiven {
  readonly predicted?: readonly Predicted[];
  readonly spans?: readonly (readonly [number, number])[];
  readonly values?: readonly number[];
  /** Of the suspect's probability; even where it is left out. */
  readonly share?: number;
  readonly logLikelihood?: number;
  /** In the place of `predicted` and `logLikelihood`. */
  readonly look?: Seen;
  readonly unmodelled?: number;
}

export interface SuspectGiven {
  readonly faults: readonly {
    readonly kind: CauseKind;
    readonly subject?: string | null;
    readonly unknowns?: readonly Unknown['scale'][];
  }[];
  readonly probability: number;
  readonly places?: readonly PlaceGiven[];
  readonly isUnknown?: boolean;
}

const seen = (predicted: readonly Predicted[], logLikelihood: number): Seen => ({
  logLikelihood,
  logNormal: logLikelihood,
  misfit: 0,
  predicted,
  spread: { inputs: [], derivatives: predicted.map(() => []), model: predicted.map(() => 0) },
  numbers: predicted.flatMap((each, k) => (typeof each === 'number' ? [k] : [])),
  factor: null
});

const hypothesis = ({ kind, subject = null, unknowns = [] }: SuspectGiven['faults'][number]): Hypothesis => ({
  kind,
  subject,
  unknowns: unknowns.map((scale): Unknown => ({ name: 'turns', scale, values: [1, 2], weights: [0.5, 0.5] }))
});

export const suspectOf = ({
  faults,
  probability,
  places = [{}],
  isUnknown = false
}: SuspectGiven): Suspect & { readonly probability: number } => ({
  hypotheses: faults.map(hypothesis),
  isUnknown,
  probability,
  logMass: Math.log(probability),
  particles: places.map(
    ({
      predicted = [],
      spans = [],
      values = [],
      share = 1 / places.length,
      logLikelihood = 0,
      look = seen(predicted, logLikelihood)
    }): Particle<Seen> => ({
      values,
      spans,
      logMass: Math.log(probability * share),
      look
    })
  ),
  unmodelled: places.map(({ unmodelled = 0 }) => unmodelled)
});

/** As they are shown. */
export const entriesOf = (...given: readonly SuspectGiven[]): readonly Entry[] =>
  entriesFrom({ suspects: given.map(suspectOf) });

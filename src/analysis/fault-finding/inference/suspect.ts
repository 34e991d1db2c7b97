/** One cause, or two at once, with what the readings leave of its unknowns. */
import type { ConcreteFault, Hypothesis, UnknownName } from '../forward/contract';
import { apartOf, type Seen } from './likelihood';
import { logSum } from './normal';
import { refine, type Particle } from './refine';
import type { Care, Scene } from './scene';

export interface Suspect {
  /** None: nothing wrong. */
  readonly hypotheses: readonly Hypothesis[];
  /** Something that none of the models holds; then there are no hypotheses either. */
  readonly isUnknown: boolean;
  /** ln (prior × likelihood), of all its places together. */
  readonly logMass: number;
  readonly particles: readonly Particle<Seen>[];
  /** Of each particle: a share by which every number may be off by itself. Only where no model holds. */
  readonly unmodelled: readonly number[];
}

/** What a place in the space of unknowns of these hypotheses stands for; values in their order. */
export const faultsAt = (
  hypotheses: readonly Hypothesis[],
  values: readonly number[]
): readonly ConcreteFault[] => {
  let at = 0;
  return hypotheses.map(({ kind, subject, variant, unknowns }) => {
    const known: Partial<Record<UnknownName, number>> = {};
    for (const { name } of unknowns) known[name] = values[at++]!;
    return { kind, subject, variant, values: known };
  });
};

/** Looks at the network that one cause may take. */
const BUDGET = 160;
const BUDGET_OF_PAIRS = 200;

/** `care` as for a scene's looks. */
export const suspectOf = (
  scene: Scene,
  hypotheses: readonly Hypothesis[],
  logPrior: number,
  care: Care
): Suspect => {
  const particles = refine<Seen>(
    {
      axes: hypotheses.flatMap(({ unknowns }) => unknowns),
      look: (values) => scene.look(faultsAt(hypotheses, values), care),
      apart: apartOf(scene.observed)
    },
    hypotheses.length > 1 ? BUDGET_OF_PAIRS : BUDGET
  );
  const within = particles.map((each) => ({ ...each, logMass: each.logMass + logPrior }));
  return {
    hypotheses,
    isUnknown: false,
    logMass: logSum(within.map(({ logMass }) => logMass)),
    particles: within,
    unmodelled: within.map(() => 0)
  };
};

export const likeliest = ({ particles }: Suspect): Particle<Seen> =>
  particles.reduce((best, each) => (each.logMass > best.logMass ? each : best));

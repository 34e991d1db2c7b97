/** The circuit solved with one input at a time off by its tolerance, below and above. */
import { tolerancesOf } from '#plan/catalogue/tolerances';
import type { Circuit, Site } from '#plan/schema';
import {
  createModeller,
  mutualOf,
  solveAlone,
  type Alone,
  type AloneMeans,
  type Modeller
} from '../electrical/alone';
import { circuitDcResistance, type CircuitMeans, type ModelledLoop } from '../electrical/circuit-input';
import type { SolvedCircuit } from '../electrical/circuit-model';
import type { LoopModel } from '../electrical/loop-model';
import { TOLERANCE_INPUTS, type ToleranceInput } from '../results';
import type { Steps } from '../steps';
import { built, limitsOf, type CircuitInputKey, type Limits } from './disturb';

export interface ShiftedCircuit {
  /** Of the tolerance; 0 where there is no room. */
  readonly share: number;
  readonly alone: Alone;
  /** Whether the wires lie elsewhere: what a vehicle does to the loops then differs. */
  readonly isMoved: boolean;
}

interface ShiftedPair {
  readonly input: CircuitInputKey;
  readonly below: ShiftedCircuit;
  readonly above: ShiftedCircuit;
}

export interface Shifts {
  readonly nominal: Alone;
  readonly pairs: readonly ShiftedPair[];
}

export const toleranceOf = (site: Site, input: ToleranceInput): number => {
  const stated = tolerancesOf(site);
  return {
    dimensions: stated.dimensions_m,
    depth: stated.depth_m,
    wirePitch: stated.wirePitch_m,
    leadInLength: stated.leadInLength_m,
    temperature: stated.temperature_C,
    permittivity: stated.relativePermittivity,
    vehicleHeight: stated.vehicleHeight_m
  }[input];
};

/** Loops coupled by less keep their mutual inductance: it would change by some hundredths of next to nothing. */
const FAINT = 1e-3;

/** How each input leaves what the nominal circuit knows. */
type Reach = 'nothing' | 'place' | 'form';
const REACH: Readonly<Record<CircuitInputKey, Reach>> = {
  dimensions: 'form',
  depth: 'place',
  wirePitch: 'form',
  leadInLength: 'nothing',
  temperature: 'nothing',
  permittivity: 'nothing'
};

/** Models of the circuit at hand by loop: the changed loop's model stands for the drawn one's. */
type Drawn = ReadonlyMap<LoopModel, LoopModel>;

const mutualFor = (reach: Reach, nominal: SolvedCircuit, drawn: Drawn): CircuitMeans['mutual'] => {
  const models = nominal.input.loops.map(({ model }) => model);
  const known = (a: LoopModel, b: LoopModel): number =>
    nominal.input.mutual(models.indexOf(a), models.indexOf(b));
  return (a, b) => {
    const [was, other] = [drawn.get(a)!, drawn.get(b)!];
    const before = known(was, other);
    if (reach !== 'form') return before;
    return Math.abs(before) < FAINT * Math.sqrt(was.external * other.external) ? before : mutualOf(a, b);
  };
};

const shifted = (
  { site, circuit, nominal, means, modeller, limits }: Given,
  input: CircuitInputKey,
  wanted: number
): ShiftedCircuit => {
  const [least, most] = limits[input];
  const amount = Math.min(most, Math.max(least, wanted));
  if (amount === 0) return { share: 0, alone: nominal, isMoved: false };
  const reach = REACH[input];
  const changed = built(site, circuit, { [input]: amount });
  const drawn = new Map<LoopModel, LoopModel>();
  const modelOf: Modeller = (loop, wire) => {
    const before = nominal.loops.get(loop.id)!.model;
    const model = reach === 'nothing' ? before : modeller(loop, wire);
    if (model) drawn.set(model, before);
    return model;
  };
  // what steel does to loops that stay where they are is known
  const steel = reach === 'nothing' ? () => nominal.solved.input.steel : means.steel;
  const alone = solveAlone(
    changed.site,
    changed.circuit,
    { ...means, steel },
    modelOf,
    mutualFor(reach, nominal.solved, drawn)
  );
  return alone
    ? { share: amount / Math.abs(wanted), alone, isMoved: reach !== 'nothing' }
    : { share: 0, alone: nominal, isMoved: false };
};

interface Given {
  readonly site: Site;
  readonly circuit: Circuit;
  readonly nominal: Alone;
  readonly means: AloneMeans;
  readonly modeller: Modeller;
  readonly limits: Limits;
}

const isOfCircuit = (input: ToleranceInput): input is CircuitInputKey => input !== 'vehicleHeight';

/** What is known of the circuit as drawn. */
const nominalOf = (site: Site, circuit: Circuit, solved: SolvedCircuit): Alone => {
  const loops = new Map(
    solved.input.loops.map(({ model }, k): readonly [string, ModelledLoop] => {
      // equal circuits share a solution: the names are this one's
      const { loop: id } = circuit.strings.flat()[k]!;
      return [id, { loop: site.loops.find((each) => each.id === id)!, model }];
    })
  );
  return { solved, resistanceDc: circuitDcResistance(circuit, site, loops), loops };
};

/** In steps, one solution each. An input without a tolerance has no pair. */
export function* shiftsOf(
  site: Site,
  circuit: Circuit,
  solved: SolvedCircuit,
  means: AloneMeans
): Steps<Shifts> {
  const nominal = nominalOf(site, circuit, solved);
  const given = {
    ...{ site, circuit, nominal, means },
    modeller: createModeller(means),
    limits: limitsOf(site, circuit)
  };
  const pairs: ShiftedPair[] = [];
  for (const input of TOLERANCE_INPUTS) {
    const tolerance = toleranceOf(site, input);
    if (!isOfCircuit(input) || tolerance === 0) continue;
    const below = shifted(given, input, -tolerance);
    yield;
    const above = shifted(given, input, tolerance);
    yield;
    pairs.push({ input, below, above });
  }
  return { nominal, pairs };
}

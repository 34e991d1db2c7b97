/** Where the model does not bear figures out, or what is drawn cannot be built: by the rules of the findings. */
import { ROUGHEST, roughnessOf } from '#physics/vehicle/roughness';
import type { CatalogueVehicle } from '#plan/catalogue/vehicles';
import { loopsIn } from '#plan/wiring';
import { nearResonance, notOscillating } from '../findings/channels';
import { cover, slotWidth } from '../findings/cover';
import { createContext, type FindingRule } from '../findings/finding';
import { impossibleShape } from '../findings/shape';
import { steelInSlot } from '../findings/steel-near';
import { LOW_VEHICLE, USUAL_LARGEST, vehiclesOn } from '../passing/in-play';
import { neighbourLines } from '../passing/paths';
import type { CircuitReadout } from '../results';
import type { Figure, SweepWish } from './results';
import type { Trial } from './trial';

const RULES: readonly FindingRule[] = [
  impossibleShape,
  slotWidth,
  // wires out of their slot
  (context) => cover(context).filter(({ severity }) => severity === 'problem'),
  steelInSlot,
  notOscillating,
  nearResonance
];

/** Loops and circuits whose figures are asked for, with the loops of these circuits. */
const concerned = ({ site }: Trial, figures: readonly Figure[]): ReadonlySet<string> => {
  const ids = new Set(
    figures.flatMap(({ subject, other }) => [subject, other]).filter((id) => typeof id === 'string')
  );
  const circuits = site.circuits.filter((circuit) => ids.has(circuit.id));
  return new Set([...ids, ...circuits.flatMap(loopsIn)]);
};

/** What a figure follows from of all that drives. */
const vehiclesFor = (trial: Trial, figure: Figure): readonly (CatalogueVehicle | undefined)[] => {
  const { site, survey, vehicle } = trial;
  const surveyed = survey.circuits.get(figure.subject ?? '');
  if (!surveyed) return [];
  switch (figure.kind) {
    case 'response':
    case 'margin':
      return [vehicle(figure.vehicle ?? surveyed.circuit.detect[0])];
    case 'neighbour':
      return neighbourLines(surveyed.loops, site).flatMap(({ lane }) =>
        [lane?.largestVehicle ?? USUAL_LARGEST, LOW_VEHICLE].map(vehicle)
      );
    case 'separation':
    case 'ripple':
    case 'beatRatio':
      // the deepest response says how far a channel is pulled
      return [surveyed, survey.circuits.get(figure.other ?? '')].flatMap((each) =>
        each ? vehiclesOn(each.circuit, site) : []
      );
    default:
      return [];
  }
};

/** Without vehicles: the rules above look at none. */
const bare = { isFollowing: false, responses: [], neighbours: [], ranges: null, classes: null, steel: null };

export const doubtsOf = (trial: Trial, { figures }: Pick<SweepWish, 'figures'>): boolean => {
  const { site, survey } = trial;
  const driven = new Set(figures.flatMap((figure) => vehiclesFor(trial, figure)));
  const isRough = [...driven].some(
    (vehicle) => vehicle !== undefined && roughnessOf(trial.bodyOf(vehicle).fine) > ROUGHEST
  );
  if (isRough) return true;
  const ids = concerned(trial, figures);
  const circuits = [...survey.circuits.values()]
    .filter(({ circuit }) => ids.has(circuit.id))
    .map(({ circuit, readout }): CircuitReadout => {
      const own = new Set(loopsIn(circuit));
      const resonances = survey.loops
        .filter(({ id }) => own.has(id))
        .map(({ selfResonance_Hz }) => selfResonance_Hz);
      return { ...readout, ...bare, id: circuit.id, selfResonance_Hz: Math.min(...resonances) };
    });
  const context = createContext(
    { ...site, loops: site.loops.filter(({ id }) => ids.has(id)) },
    {
      ...{ pending: false, isFollowed: false, loops: survey.loops, couplings: [], circuits },
      ...{ beyondModel: [], probes: [], channels: [], beats: [], weakerBeats: 0 },
      ...{ passes: null, detectionHeights: null, calls: null, quantities: null }
    }
  );
  return RULES.some((rule) => rule(context).length > 0);
};

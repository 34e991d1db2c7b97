/** One experiment, with what its figures are made of: each part made when a figure first asks for it. */
import { vehicleOf, vehiclesOf, type CatalogueVehicle } from '#plan/catalogue/vehicles';
import type { Site } from '#plan/schema';
import type { Experiment } from '#plan/variables/variable';
import { createBodyStore, type VehicleBody } from '../electrical/bodies';
import type { Means } from '../means';
import { createPassKeeper } from '../passes';
import { vehicleResponses, type PassMeans } from '../passing/responses';
import type { VehicleResponse } from '../results';
import type { Survey, SurveyedCircuit } from '../survey';

export interface Trial {
  readonly experiment: Experiment;
  readonly site: Site;
  readonly survey: Survey;
  readonly bodyOf: (vehicle: CatalogueVehicle) => VehicleBody;
  /** Undefined for one that is not there. */
  readonly vehicle: (id: string | undefined) => CatalogueVehicle | undefined;
  /** For passes over the circuit, which are kept. */
  readonly passMeans: (surveyed: SurveyedCircuit) => PassMeans;
  /** Of all vehicles that a circuit shows. */
  readonly responses: (surveyed: SurveyedCircuit) => readonly VehicleResponse[];
}

export interface Trials {
  readonly of: (experiment: Experiment) => Trial;
}

/** Numbers of bodies that were made for trials alone begin here: no worker's own store gets that far. */
const FIRST_KEY = 1e9;

const kept = new WeakMap<Means, Trials>();

/**
 * What was made with the same means: equal drawings share their passes. Vehicles at other heights than the drawing's have a
 * store of their own, so that they push none of those out that the drawing itself needs.
 */
export const trialsOf = (means: Means): Trials => {
  const known = kept.get(means) ?? createTrials(means);
  kept.set(means, known);
  return known;
};

const createTrials = ({ surveyor, bodies }: Means): Trials => {
  const keeper = createPassKeeper(surveyor);
  const varied = createBodyStore(FIRST_KEY);
  const listed = new Set(vehiclesOf({ vehicles: [] }).map(({ parts }) => JSON.stringify(parts)));
  const bodyOf = (vehicle: CatalogueVehicle): VehicleBody => {
    const isUsual = bodies.has(vehicle) || listed.has(JSON.stringify(vehicle.parts));
    return (isUsual ? bodies : varied).get(vehicle);
  };
  return {
    of: (experiment) => {
      const { site } = experiment;
      const survey = surveyor.survey(site);
      const passMeans: Trial['passMeans'] = (surveyed) => keeper.meansFor(surveyed, site, { bodyOf });
      const made = new Map<string, readonly VehicleResponse[]>();
      return {
        ...{ experiment, site, survey, bodyOf, passMeans },
        vehicle: (id) => (id === undefined ? undefined : vehicleOf(id, site)),
        responses: (surveyed) => {
          const { circuit, solved, loops } = surveyed;
          const found =
            made.get(circuit.id) ?? vehicleResponses(circuit, solved, loops, site, passMeans(surveyed));
          made.set(circuit.id, found);
          return found;
        }
      };
    }
  };
};

/** What the steel in the pavement costs a circuit, and how deep it would have to lie to cost little. */
import { acceptedSteelCostOf } from '#plan/catalogue/tolerances';
import type { CatalogueVehicle } from '#plan/catalogue/vehicles';
import type { Point, Site } from '#plan/schema';
import type { VehicleBody } from './electrical/bodies';
import { quickEffect } from './electrical/vehicle-effect';
import { studyCircuit } from './readouts/circuits';
import type { SteelCost, Terminals, VehicleResponse } from './results';
import type { Steps } from './steps';
import type { Survey, SurveyedCircuit } from './survey';

const DEEPEST = 2;
/** To two centimetres: nobody places a mat more exactly. */
const FINE_ENOUGH = 0.02;
/** Steel is no nearer to a slot's bottom than this: the saw would meet it. */
const JUST_BELOW = 0.01;

interface Given {
  readonly survey: Survey;
  readonly surveyed: SurveyedCircuit;
  /** The same circuit of the drawing without steel. */
  readonly bare: SurveyedCircuit;
  readonly responses: readonly VehicleResponse[];
  readonly bareResponses: readonly VehicleResponse[];
  /** The vehicle whose response decides, and its body. */
  readonly vehicle: { readonly id: CatalogueVehicle['id']; readonly body: VehicleBody } | null;
}

const terminalsOf = ({ readout }: SurveyedCircuit): Terminals => ({
  frequency_Hz: readout.frequency_Hz,
  inductance_H: readout.inductance_H,
  resistance_ohm: readout.resistance_ohm,
  q: readout.q,
  resistanceDc_ohm: readout.resistanceDc_ohm
});

const lost = (without: number, withSteel: number): number => (without === 0 ? 0 : 1 - withSteel / without);

/** In steps: every yield is a place where something more urgent may come in. */
export function* steelCost(given: Given): Steps<SteelCost> {
  const { surveyed, bare, responses, bareResponses } = given;
  const without = terminalsOf(bare);
  return {
    withoutSteel: without,
    inductanceShare: lost(without.inductance_H, surveyed.readout.inductance_H),
    qShare: lost(without.q, surveyed.readout.q),
    responses: bareResponses.flatMap(({ vehicle, worst }) => {
      const now = responses.find((each) => each.vehicle === vehicle);
      return now ? [{ vehicle, withoutSteel: worst, share: lost(worst, now.worst) }] : [];
    }),
    statedShare: acceptedSteelCostOf(given.survey.site),
    clearDepth_m: yield* clearDepth(given)
  };
}

/** The steel moved so that its uppermost piece lies at `depth`, the others as far below it as they are. */
const movedTo = (site: Site, depth: number): Site => {
  const uppermost = Math.min(...site.steel.map((steel) => steel.depth));
  return {
    ...site,
    steel: site.steel.map((steel) => ({ ...steel, depth: steel.depth - uppermost + depth }))
  };
};

function* clearDepth({ survey, surveyed, bare, bareResponses, vehicle }: Given): Steps<number | null> {
  const response = bareResponses.find(({ vehicle: id }) => id === vehicle?.id);
  if (!vehicle || !response) return null;
  const [x, y]: Point = response.worstAt;
  const placement = { x, y, heading: response.worstHeading };
  const without = quickEffect(bare.solved, vehicle.body, placement);
  const accepted = acceptedSteelCostOf(survey.site);
  const near = { ...survey.site, steel: (surveyed.solved.steel?.pieces ?? []).map((piece) => piece.steel) };
  const costs = (depth: number): boolean => {
    const study = studyCircuit(surveyed.circuit, movedTo(near, depth), survey.modelled, survey.means);
    return study !== null && lost(without, quickEffect(study.solved, vehicle.body, placement)) > accepted;
  };
  // no shallower than the bottom of the deepest slot
  let shallow = Math.max(...surveyed.loops.map(({ slot }) => slot.depth)) + JUST_BELOW;
  let deep = DEEPEST;
  if (costs(deep)) return null;
  yield;
  if (!costs(shallow)) return shallow;
  while (deep - shallow > FINE_ENOUGH) {
    yield;
    const middle = (deep + shallow) / 2;
    if (costs(middle)) shallow = middle;
    else deep = middle;
  }
  return deep;
}

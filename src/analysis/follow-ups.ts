/**
 * What follows the first answer to an edit, in steps short enough that the next edit does not wait for long: passes over
 * steel, then per circuit the cost of steel.
 */
import type { CatalogueVehicle } from '#plan/catalogue/vehicles';
import type { BodyStore, VehicleBody } from './electrical/bodies';
import type { PassKeeper } from './passes';
import { RecentCache } from './recent-cache';
import type { CircuitRanges, ClassMargin, SteelCost } from './results';
import type { Survey, SurveyedCircuit, Surveyor } from './survey';

type BodyOf = (vehicle: CatalogueVehicle) => VehicleBody | null;

export interface FollowUps {
  next(survey: Survey, bodyOf: BodyOf): boolean;
  isLeft(survey: Survey, bodyOf: BodyOf): boolean;
  /** What is there already. */
  resultsOf(
    surveyed: SurveyedCircuit,
    survey: Survey
  ): {
    readonly ranges: CircuitRanges | null;
    readonly classes: readonly ClassMargin[] | null;
    readonly steel: SteelCost | null;
  };
}

export const createFollowUps = (surveyor: Surveyor, keeper: PassKeeper, bodies: BodyStore): FollowUps => {
  void surveyor;
  void bodies;
  void RecentCache;
  const next = (survey: Survey, bodyOf: BodyOf): boolean =>
    [...survey.circuits.values()].some((each) => keeper.followNext(each, survey, bodyOf));
  return { next, isLeft: () => false, resultsOf: () => ({ ranges: null, classes: null, steel: null }) };
};

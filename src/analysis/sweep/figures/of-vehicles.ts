/** What vehicles change at the terminals: −ΔL/L of passes on the usual paths, on one path, and of one that stands. */
import type { CatalogueVehicle } from '#plan/catalogue/vehicles';
import type { Placement } from '#physics/field/filaments';
import { changeOf } from '../../electrical/vehicle-effect';
import { headingOf, onLine } from '../../passing/lane-line';
import { distinctLines, extentAlong, servedLines } from '../../passing/paths';
import { neighbourResponses, passesOver } from '../../passing/responses';
import { strongestOnPath, type Strongest } from '../../passing/strongest';
import type { SurveyedCircuit } from '../../survey';
import type { Figure } from '../results';
import { shortedResponse } from '../shorted';
import type { Trial } from '../trial';
import type { FigureMaker } from './figure';

interface Driven {
  readonly trial: Trial;
  readonly surveyed: SurveyedCircuit;
  readonly vehicle: CatalogueVehicle;
}

/** On the usual paths, the weakest first: as an assessment takes them. */
const usualPasses = ({ trial, surveyed, vehicle }: Driven): readonly Strongest[] =>
  passesOver(vehicle, surveyed.solved, surveyed.loops, trial.site, trial.passMeans(surveyed)) ?? [];

/** On the path at the experiment's offset, of each lane that the circuit serves. */
const offsetPasses = ({ trial, surveyed, vehicle }: Driven): readonly Strongest[] => {
  const { solved, loops } = surveyed;
  const { offset_m } = trial.experiment;
  const body = trial.bodyOf(vehicle);
  const made = trial.passMeans(surveyed).remember(`at ${offset_m} ${body.key}`, () =>
    distinctLines(servedLines(loops, trial.site)).map((line) => {
      const extents = loops.map((loop) => extentAlong(loop, line));
      return strongestOnPath(solved, body, vehicle, line, offset_m, extents);
    })
  );
  return [...made].sort((a, b) => b.deltaLOverL - a.deltaLOverL);
};

const placementOf = ({ at, heading }: Pick<Strongest, 'at' | 'heading'>): Placement => ({
  x: at[0],
  y: at[1],
  heading
});

/** So far along from the middle of the circuit's own loops, in the first lane that it serves. */
const standingPlace = ({ trial, surveyed }: Driven): Placement => {
  const { loops } = surveyed;
  const [line] = servedLines(loops, trial.site);
  const extents = loops.map((loop) => extentAlong(loop, line!));
  const middle = (Math.min(...extents.map(([from]) => from)) + Math.max(...extents.map(([, to]) => to))) / 2;
  const { along_m, offset_m } = trial.experiment;
  return placementOf({ at: onLine(line!, middle + along_m, offset_m), heading: headingOf(line!) });
};

/** As a placed vehicle's. */
const changeAt = ({ trial, surveyed: { solved }, vehicle }: Driven, place: Placement): number => {
  const change = changeOf(solved, trial.bodyOf(vehicle), place);
  const deltaL = solved.inductanceWith((i, j) => change[i]![j]!) - solved.inductance;
  return deltaL / solved.inductance;
};

const passFor = (driven: Driven, path: Figure['path']): Strongest | undefined => {
  if (path === 'offset') return offsetPasses(driven)[0];
  const passes = usualPasses(driven);
  return path === 'best' ? passes[passes.length - 1] : passes[0];
};

/** ΔL/L; null where nothing passes. */
const effect = (driven: Driven, path: Figure['path']): number | null => {
  const { trial, surveyed, vehicle } = driven;
  const body = trial.bodyOf(vehicle);
  if (path === 'standing') {
    const place = standingPlace(driven);
    const shorted = shortedResponse(trial, surveyed, body, place);
    return shorted === undefined ? changeAt(driven, place) : shorted;
  }
  const pass = passFor(driven, path);
  if (!pass) return null;
  const shorted = shortedResponse(trial, surveyed, body, placementOf(pass));
  return shorted === undefined ? pass.deltaLOverL : shorted;
};

/** −0 is nothing. */
const drop = (change: number | null): number | null => (change === null ? null : 0 - change);

/** Of the vehicle named, or of the first that the circuit must call. */
export const response: FigureMaker = (trial, { subject, vehicle: id, path }) => {
  const surveyed = trial.survey.circuits.get(subject ?? '');
  const vehicle = surveyed && trial.vehicle(id ?? surveyed.circuit.detect[0]);
  return surveyed && vehicle ? drop(effect({ trial, surveyed, vehicle }, path)) : null;
};

/** Over the trip threshold; null without a channel. */
export const margin: FigureMaker = (trial, figure) => {
  const threshold = trial.survey.circuits.get(figure.subject ?? '')?.circuit.channel?.tripThreshold;
  const value = threshold === undefined ? null : response(trial, figure);
  return value === null ? null : value / threshold!;
};

/** The most that the traffic of the lanes beside does to the circuit; null without such a lane. */
export const neighbour: FigureMaker = (trial, { subject }) => {
  const surveyed = trial.survey.circuits.get(subject ?? '');
  if (!surveyed) return null;
  const { solved, loops } = surveyed;
  if (trial.experiment.shorted && loops.some(({ id }) => id === trial.experiment.shorted?.loop)) return null;
  const found = neighbourResponses(solved, loops, trial.site, trial.passMeans(surveyed));
  return found.length === 0 ? null : drop(Math.min(...found.map(({ deltaLOverL }) => deltaLOverL)));
};

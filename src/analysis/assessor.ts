/**
 * A drawing in, everything that follows from it out. The first answer to an edit holds what a gesture can wait for; passes
 * over steel, plausible ranges and class margins follow in further answers, one step at a time.
 */
import { ROUGHEST, roughnessOf } from '#physics/vehicle/roughness';
import { vehicleOf } from '#plan/catalogue/vehicles';
import type { Site } from '#plan/schema';
import { loopsIn } from '#plan/wiring';
import { createCallKeeper } from './calls-keeper';
import { createRemedyKeeper } from './beating/remedy-keeper';
import { beatsOf, createSceneKeeper, type BeatScene } from './beating/scene';
import { channelReadout, createSettingsKeeper } from './beating/tanks';
import { findingsOf } from './findings/index';
import { createFollowUps } from './follow-ups';
import { keptOf } from './kept';
import type { LaterMeans } from './later';
import type { Means } from './means';
import { createPassKeeper } from './passes';
import { vehiclesInPlay } from './passing/in-play';
import { couplingsOf } from './readouts/couplings';
import { createFluxCache, probeReadout } from './readouts/probes';
import type { Assessment, CircuitReadout } from './results';
import { readyVehicles, type Ready } from './ready';
import type { Survey } from './survey';

/**
 * 'prepared' answers at once with what is ready, says what is missing, and serves loops far from a placed vehicle with
 * its quick mesh (the page). 'all' prepares every vehicle first and takes its fine mesh for every loop. 'complete' also
 * waits for everything that follows (reports).
 */
type Thoroughness = 'prepared' | 'all' | 'complete';

export interface Assessor {
  assess(site: Site, thoroughness?: Thoroughness): Assessment;
  /** Prepares one more vehicle of the site; false when all are ready. */
  prepareNext(site: Site): boolean;
  /** Takes one more step of what follows the first answer; false when nothing is left. */
  followNext(site: Site): boolean;
  /** Drives every vehicle that is ready over a circuit, so that an assessment finds it done; over steel it follows. */
  driveOver(site: Site, circuit: string): void;
  /** All that is left to follow needs the means that come later, and they have not come. */
  isWaiting(site: Site): boolean;
}

/** `later`: null until it has come. */
export const createAssessorWith = (means: Means, later: () => LaterMeans | null): Assessor => {
  const { surveyor, bodies } = means;
  const kept = keptOf(means);
  const keeper = createPassKeeper(surveyor, kept.passes);
  const followUps = createFollowUps(surveyor, keeper, bodies, kept.following);
  const fluxes = createFluxCache();
  const settingsOf = createSettingsKeeper();
  const remedies = createRemedyKeeper(surveyor, () => later()?.remediesInSteps ?? null, kept.remedies);
  const sceneOf = createSceneKeeper();
  const calls = createCallKeeper(surveyor, () => later()?.calls ?? null, kept.calls);

  const assess = (site: Site, thoroughness: Thoroughness = 'all'): Assessment => {
    const isPage = thoroughness === 'prepared';
    if (!isPage) while (prepareNext(site));
    if (thoroughness === 'complete') while (followNext(site));
    const survey = surveyor.survey(site);
    const ready = readyVehicles(site, bodies);
    const passes = new Map(
      [...survey.circuits.values()].map((each) => [
        each.circuit.id,
        keeper.passesOver(each, survey, ready, !isPage)
      ])
    );
    const circuits = [...survey.circuits.values()].map((each): CircuitReadout => {
      const own = new Set(loopsIn(each.circuit));
      return {
        ...each.readout,
        // equal circuits share what is kept
        id: each.circuit.id,
        selfResonance_Hz: Math.min(
          ...survey.loops.filter(({ id }) => own.has(id)).map(({ selfResonance_Hz }) => selfResonance_Hz)
        ),
        ...passes.get(each.circuit.id)!,
        ...followUps.resultsOf(each, survey, ready)
      };
    });
    const scene = sceneOf(survey, (id) => passes.get(id)!.responses);
    const isFollowed =
      isPage && (followUps.isLeft(survey, ready) || calls.isLeft(survey) || remedies.isLeft(scene));
    const result = {
      pending: !ready.isComplete,
      isFollowed,
      loops: survey.loops,
      couplings: couplingsOf(survey),
      circuits,
      beyondModel: vehiclesInPlay(site).flatMap((vehicle) => {
        const body = ready.bodyOf(vehicle);
        return body && roughnessOf(body.fine) > ROUGHEST ? [vehicle.id] : [];
      }),
      probes: site.probes.flatMap((probe) => {
        const vehicle = vehicleOf(probe.vehicle, site);
        const body = vehicle && ready.bodyOf(vehicle);
        return vehicle && body ? [probeReadout(probe, vehicle, body, site, survey, fluxes, !isPage)] : [];
      }),
      channels: scene.tanks.map((tank) =>
        channelReadout(tank, settingsOf(tank, survey.circuits.get(tank.circuit.id)!.key, survey))
      ),
      beats: beatsOf(scene, (pair) => remedies.of(scene, pair)),
      weakerBeats: 0,
      ...pathsOf(survey, ready),
      calls: calls.of(survey),
      quantities: later()?.quantitiesOf(site) ?? null
    };
    return { ...result, findings: findingsOf(site, result) };
  };

  /** Of all circuits, or not yet. */
  const pathsOf = (survey: Survey, ready: Ready): Pick<Assessment, 'passes' | 'detectionHeights'> => {
    const found = [...survey.circuits.values()].map((each) => followUps.passesOf(each, survey, ready));
    const known = found.filter((each) => each !== null);
    if (known.length < found.length) return { passes: null, detectionHeights: null };
    return {
      passes: known.flatMap(({ passes }) => passes),
      detectionHeights: known.flatMap(({ detectionHeights }) => detectionHeights)
    };
  };

  const prepareNext = (site: Site): boolean => {
    const missing = vehiclesInPlay(site).find((vehicle) => !bodies.has(vehicle));
    if (missing) bodies.get(missing);
    return missing !== undefined;
  };

  /** Once nothing else follows. */
  const settledScene = (survey: Survey, ready: Ready): BeatScene =>
    sceneOf(survey, (id) => keeper.passesOver(survey.circuits.get(id)!, survey, ready, true).responses);

  const followNext = (site: Site): boolean => {
    const survey = surveyor.survey(site);
    const ready = readyVehicles(site, bodies);
    return followUps.next(survey, ready) || calls.next(survey) || remedies.next(settledScene(survey, ready));
  };

  const driveOver = (site: Site, circuit: string): void => {
    const survey = surveyor.survey(site);
    const surveyed = survey.circuits.get(circuit);
    if (surveyed && !surveyed.solved.steel)
      keeper.passesOver(surveyed, survey, readyVehicles(site, bodies), true);
  };

  const isWaiting = (site: Site): boolean => {
    if (later()) return false;
    const survey = surveyor.survey(site);
    const ready = readyVehicles(site, bodies);
    if (!ready.isComplete || followUps.isLeft(survey, ready)) return false;
    return calls.isLeft(survey) || remedies.isLeft(settledScene(survey, ready));
  };

  return { assess, prepareNext, followNext, driveOver, isWaiting };
};

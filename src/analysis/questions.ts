/**
 * What can be asked beside the assessment of a drawing: each kind of question with its answer, and who answers it. Work
 * that takes longer than a gesture may is a question; its steps say how far it is.
 */
import type { Site } from '#plan/schema';
import type { TurnsAdvice, TurnsWish } from './advice/advice';
import { adviseTurnsInSteps } from './advice/advise-turns';
import type { BeatSimulation, SimulationWish } from './beat-simulation/simulation';
import { createBeatSimulator } from './beat-simulation/simulate-in-steps';
import { calibrateInSteps, type CalibrationAnswer, type CalibrationWish } from './calibration/calibrate';
import { compareDesignsInSteps } from './designs/compare-designs';
import type { DesignResults, DesignsWish } from './designs/results';
import { checkReadingsInSteps, type CheckedCircuit } from './fault-finding/checked';
import { diagnoseInSteps } from './fault-finding/diagnose';
import { expectedInSteps } from './fault-finding/expected';
import { readingsReportInSteps, type VisitReport } from './fault-finding/readings-report';
import type { CircuitExpectation, Diagnosis, DiagnosisWish, MeterConditions } from './fault-finding/results';
import { drawCurrentsInSteps } from './field-picture/draw-currents';
import { drawFieldInSteps } from './field-picture/draw-field';
import type { CurrentsPicture, CurrentsWish, FieldPicture, FieldWish } from './field-picture/results';
import type { FrequencyPlan, PlanWish } from './frequency-plan/plan';
import { createFrequencyPlanner } from './frequency-plan/plan-in-steps';
import type { Goal, GoalWish } from './goal/results';
import { seekGoalInSteps } from './goal/seek-goal';
import {
  calibrateHeightInSteps,
  type HeightAnswer,
  type HeightWish
} from './height-calibration/calibrate-height';
import type { CallsPicture, CallsWish, Trace, TraceWish } from './calls/results';
import { callSimulatorOf } from './calls/simulate';
import { createMapper } from './map/response-map';
import type { MapWish, ResponseMap } from './map/results';
import { createMeans, type Means } from './means';
import { curvesInSteps } from './passing/curves';
import type { PassPicture, PassWish } from './passing/results';
import { measureInSteps } from './speed-pair/measure-in-steps';
import type { PairPicture, SpeedWish } from './speed-pair/results';
import type { Steps } from './steps';
import type { SweepPicture, SweepWish } from './sweep/results';
import { sweepInSteps } from './sweep/sweep';
import type { Walk, WalkWish } from './walk-through/results';
import { walkInSteps } from './walk-through/walk';

export interface Questions {
  /** Which turns and which wire suit a circuit; null for a circuit that cannot be advised on. */
  readonly 'advise-turns': {
    readonly asked: { readonly circuit: string; readonly wish: TurnsWish };
    readonly answer: TurnsAdvice | null;
  };
  /** Which settings let no two channels beat, as far as settings can. */
  readonly 'plan-frequencies': { readonly asked: PlanWish; readonly answer: FrequencyPlan };
  /** Two channels let run in time; null where one of them is not there or does not oscillate. */
  readonly 'simulate-beat': { readonly asked: SimulationWish; readonly answer: BeatSimulation | null };
  /** What a frequency read on the site says of a setting's capacitance; null where it says nothing. */
  readonly 'calibrate-setting': {
    readonly asked: CalibrationWish;
    readonly answer: CalibrationAnswer | null;
  };
  /** How far a vehicle must be lifted to answer as was measured; null where nothing answers. */
  readonly 'calibrate-height': { readonly asked: HeightWish; readonly answer: HeightAnswer | null };
  /** Vehicles driven along a way; null where the way is not there. */
  readonly 'drive-along': { readonly asked: PassWish; readonly answer: PassPicture | null };
  /** A vehicle at every node of a grid over the plan; null where the vehicle is not there. */
  readonly 'response-map': { readonly asked: MapWish; readonly answer: ResponseMap | null };
  /** The drawing's traffic, and what the outputs make of it; null for a drawing without traffic. */
  readonly 'simulate-calls': { readonly asked: CallsWish; readonly answer: CallsPicture | null };
  /** A part of it in detail, one trace a channel; none without traffic. */
  readonly 'trace-calls': { readonly asked: TraceWish; readonly answer: readonly Trace[] };
  /** Vehicles driven over two circuits that measure speed; null where they do not follow one another in a lane. */
  readonly 'measure-speed': { readonly asked: SpeedWish; readonly answer: PairPicture | null };
  /** What every meter should say, also under other conditions than the usual; of all circuits, or of the one named. */
  readonly 'expect-readings': {
    readonly asked: { readonly circuit?: string; readonly conditions?: MeterConditions };
    readonly answer: readonly CircuitExpectation[];
  };
  /** Every reading of the site held against what is expected of it, a circuit at a time. */
  readonly 'check-readings': {
    readonly asked: Readonly<Record<string, never>>;
    readonly answer: readonly CheckedCircuit[];
  };
  /** What explains the readings of every visit of every circuit. */
  readonly 'evaluate-readings': {
    readonly asked: Readonly<Record<string, never>>;
    readonly answer: readonly VisitReport[];
  };
  /** What explains a circuit's readings; null for one that is not there, cannot be computed or has none. */
  readonly diagnose: { readonly asked: DiagnosisWish; readonly answer: Diagnosis | null };
  /** Designs of the site side by side; without those that are not there. */
  readonly 'compare-designs': { readonly asked: DesignsWish; readonly answer: readonly DesignResults[] };
  /** A number of the drawing run over a range; null where a variable or a figure is not there. */
  readonly sweep: { readonly asked: SweepWish; readonly answer: SweepPicture | null };
  /** The smallest change of one number that makes a finding go away. */
  readonly 'seek-goal': { readonly asked: GoalWish; readonly answer: Goal };
  /** The magnetic field over a plane; null where its source or its vehicle is not there. */
  readonly 'draw-field': { readonly asked: FieldWish; readonly answer: FieldPicture | null };
  /** The currents in a vehicle; null where its source or its vehicle is not there. */
  readonly 'draw-currents': { readonly asked: CurrentsWish; readonly answer: CurrentsPicture | null };
  /** The next step of a way through a complaint; null for a circuit that is not there or cannot be computed. */
  readonly 'walk-through': { readonly asked: WalkWish; readonly answer: Walk | null };
}

export type QuestionKind = keyof Questions;
export type Asked<K extends QuestionKind> = Questions[K]['asked'];
export type AnswerTo<K extends QuestionKind> = Questions[K]['answer'];

type Answerers = {
  readonly [K in QuestionKind]: (site: Site, asked: Asked<K>) => Steps<AnswerTo<K>>;
};

export type Answerer = <K extends QuestionKind>(kind: K, site: Site, asked: Asked<K>) => Steps<AnswerTo<K>>;

/** `means`: what the answers share with one another, and with the assessments of the same worker. */
export const createAnswerer = (means: Means = createMeans()): Answerer => {
  const calls = callSimulatorOf(means);
  const answerers: Answerers = {
    'advise-turns': (site, { circuit, wish }) => adviseTurnsInSteps(site, circuit, wish),
    'plan-frequencies': createFrequencyPlanner(),
    'simulate-beat': createBeatSimulator(),
    'calibrate-setting': (site, wish) => calibrateInSteps(site, wish),
    'calibrate-height': (site, wish) => calibrateHeightInSteps(site, wish, means),
    'drive-along': (site, wish) => curvesInSteps(site, wish, means),
    'response-map': createMapper(means),
    'simulate-calls': calls.simulate,
    'trace-calls': calls.trace,
    'measure-speed': (site, wish) => measureInSteps(site, wish, means),
    'expect-readings': (site, { circuit, conditions }) => expectedInSteps(site, circuit, conditions, means),
    'check-readings': (site) => checkReadingsInSteps(site, means),
    'evaluate-readings': (site) => readingsReportInSteps(site, means),
    diagnose: (site, wish) => diagnoseInSteps(site, wish, means),
    'compare-designs': (site, wish) => compareDesignsInSteps(site, wish, means),
    sweep: (site, wish) => sweepInSteps(site, wish, means),
    'seek-goal': (site, wish) => seekGoalInSteps(site, wish, means),
    'draw-field': (site, wish) => drawFieldInSteps(site, wish, means),
    'draw-currents': (site, wish) => drawCurrentsInSteps(site, wish, means),
    'walk-through': (site, wish) => walkInSteps(site, wish, means)
  };
  return (kind, site, asked) => answerers[kind](site, asked);
};

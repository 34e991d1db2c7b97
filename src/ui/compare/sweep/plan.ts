/** From what is chosen and what is drawn to what is asked. Pure but for what is chosen. */
import { figuresOf } from '#analysis/sweep/figures-of';
import type { Figure, SweepPicture, SweepWish } from '#analysis/sweep/results';
import type { Ref } from '#editor/types';
import { experimentOn, rangeOf, valueOf, variablesOf } from '#plan/variables/index';
import type { Experiment, Variable, VariableRange } from '#plan/variables/variable';
import type { Site } from '#plan/schema';
import { circuitWith } from '#plan/wiring';
import { figureKey } from '../words/figure';
import { sameVariable } from '../words/variable';
import type { Curves, Span, sweepChoices } from './choices.svelte';
import { spanOf, valuesOf, type Use } from './spans';

export const MOST_FIGURES = 3;

/** A number with what it can be and what it is run through. */
interface Chosen {
  readonly variable: Variable;
  readonly range: VariableRange;
  readonly span: Span;
  readonly values: readonly number[];
  /** In the design; null where it has none. */
  readonly present: number | null;
}

export interface SweepPlan {
  readonly experiment: Experiment;
  readonly variables: readonly Variable[];
  readonly figures: readonly Figure[];
  readonly x: Chosen;
  /** Null unless a second number is chosen and there is one. */
  readonly second: Chosen | null;
  readonly curves: Curves;
  readonly shown: readonly Figure[];
  readonly wish: SweepWish;
}

type Choices = typeof sweepChoices;

/** Those that can be varied. */
const variable = (experiment: Experiment): readonly Variable[] =>
  variablesOf(experiment.site).filter((each) => rangeOf(experiment, each) !== null);

function chosenFor(experiment: Experiment, of: Variable, use: Use, choices: Choices): Chosen {
  const range = rangeOf(experiment, of)!;
  const present = valueOf(experiment, of);
  const span = spanOf(range, choices.spanOf(of, use), use, present);
  return { variable: of, range, span, values: valuesOf(range, span), present };
}

/** What was chosen, while it is there; else the same number of what is selected; else the first. */
function wanted(
  variables: readonly Variable[],
  chosen: Variable | null,
  selection: readonly Ref[]
): Variable | undefined {
  const still = chosen && variables.find((each) => sameVariable(each, chosen));
  if (still) return still;
  const selected = selection.find(({ kind }) => kind === 'loop')?.id;
  const own = variables.filter(({ subject, kind }) => subject === selected && kind !== 'leadInLength');
  return own.find(({ kind }) => kind === (chosen?.kind ?? 'turns')) ?? own[0] ?? variables[0];
}

/** Another number of the same thing, or of any. */
const another = (variables: readonly Variable[], x: Variable): Variable | undefined =>
  variables.find(({ subject, kind }) => subject === x.subject && kind !== x.kind) ??
  variables.find((each) => !sameVariable(each, x));

/** Of the circuit that the number has to do with: what it has, and how well it detects. */
function usualFigures(site: Site, figures: readonly Figure[], { subject }: Variable): readonly Figure[] {
  const own = subject === null ? undefined : circuitWith(site, subject);
  const circuit = own?.id ?? site.circuits.find(({ id }) => id === subject)?.id ?? site.circuits[0]?.id;
  const of = figures.filter((figure) => figure.subject === circuit);
  const asked = site.circuits.find(({ id }) => id === circuit)?.detect[0];
  const inductance = of.find(({ kind }) => kind === 'inductance');
  const response =
    of.find(({ kind, vehicle }) => kind === 'response' && vehicle === asked) ??
    of.find(({ kind }) => kind === 'response');
  const usual = [inductance, response].flatMap((figure) => figure ?? []);
  return usual.length > 0 ? usual : figures.slice(0, 1);
}

/** Chosen ones that are still there: the list knows them by their usual path. */
function shownFigures(
  site: Site,
  figures: readonly Figure[],
  chosen: readonly Figure[] | null,
  x: Variable
): readonly Figure[] {
  const keyOf = (each: Figure) => figureKey(each.path === undefined ? each : { ...each, path: 'worst' });
  const known = new Set(figures.map(keyOf));
  const still = (chosen ?? []).filter((figure) => known.has(keyOf(figure)));
  return (still.length > 0 ? still : usualFigures(site, figures, x)).slice(0, MOST_FIGURES);
}

/** Null where the drawing has nothing to vary or to look at. */
export function planOf(site: Site, selection: readonly Ref[], choices: Choices): SweepPlan | null {
  const experiment = experimentOn(site, choices.place);
  const variables = variable(experiment);
  const figures = figuresOf(site);
  const varied = wanted(variables, choices.x, selection);
  if (!varied || figures.length === 0) return null;
  const isMap = choices.curves === 'map';
  const hasSecond = isMap || choices.curves === 'family';
  const x = chosenFor(experiment, varied, isMap ? 'across' : 'axis', choices);
  const others = variables.filter((each) => !sameVariable(each, varied));
  const chosenSecond = choices.second && others.find((each) => sameVariable(each, choices.second!));
  const other = hasSecond ? (chosenSecond ?? another(variables, varied)) : undefined;
  const second = other ? chosenFor(experiment, other, isMap ? 'up' : 'family', choices) : null;
  const kept = choices.curves === 'designs' ? (site.variants ?? []) : [];
  const shown = shownFigures(site, figures, choices.figures, varied);
  return {
    experiment,
    variables,
    figures,
    x,
    second,
    curves: choices.curves,
    shown,
    wish: {
      x: { variable: varied, values: x.values },
      family: second ? { variable: second.variable, values: second.values } : null,
      designs: kept.length > 0 ? [null, ...kept.slice(0, 5).map(({ id }) => id)] : null,
      figures: shown,
      place: choices.place
    }
  };
}

const isSame = (a: Variable | undefined, b: Variable | undefined): boolean =>
  a && b ? sameVariable(a, b) : a === b;

/** Whether a picture is of what is chosen: one of what was chosen before would be shown under the new names. */
export const isOf = ({ x, second, shown, wish }: SweepPlan, picture: SweepPicture): boolean =>
  isSame(picture.x.variable, x.variable) &&
  isSame(picture.family?.variable, second?.variable) &&
  (picture.designs === null) === (wish.designs === null) &&
  picture.figures.length === shown.length &&
  picture.figures.every(({ figure }, n) => figureKey(figure) === figureKey(shown[n]!));

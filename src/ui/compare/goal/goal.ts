/** Findings and the numbers that may clear them. Pure. */
import { candidatesFrom } from '#analysis/goal/candidates';
import type { Finding, Severity } from '#analysis/results';
import { figuresOf } from '#analysis/sweep/figures-of';
import type { Figure, FigureKind } from '#analysis/sweep/results';
import { experimentOn, rangeOf, valueOf, variablesOf } from '#plan/variables/index';
import type { Variable, VariableKind } from '#plan/variables/variable';
import type { Site } from '#plan/schema';
import { loopsIn } from '#plan/wiring';

const GRAVITY: Readonly<Record<Severity, number>> = { problem: 0, caution: 1, note: 2 };

/** Where they are named by something else than the drawing, or are not in it. */
const BESIDE: ReadonlySet<VariableKind> = new Set(['offset', 'along', 'shortedTurns']);
/** What somebody who designs loops cannot choose: tried only where asked for. */
const GIVEN: ReadonlySet<VariableKind> = new Set([...BESIDE, 'vehicleHeight', 'temperature', 'permittivity']);

/** Of one code and subject there is one finding at a time, but for those of vehicles: the gravest stands for them. */
export function findingsIn(findings: readonly Finding[]): readonly Finding[] {
  const sorted = [...findings].sort((a, b) => GRAVITY[a.severity] - GRAVITY[b.severity]);
  return sorted.filter((each, at) => at === sorted.findIndex((other) => isSame(other, each)));
}

export const isSame = (a: Pick<Finding, 'code' | 'subject'>, b: Pick<Finding, 'code' | 'subject'>): boolean =>
  a.code === b.code && a.subject === b.subject;

export const findingKey = ({ code, subject }: Pick<Finding, 'code' | 'subject'>): string =>
  JSON.stringify([code, subject]);

/** Loops, circuits, units and steel that a finding is about, with what hangs on them. */
function concerned(site: Site, { code, subject, selects }: Finding): ReadonlySet<string> {
  const ids = new Set([subject, ...selects]);
  // it names the circuit that loses, not what takes
  if (code === 'steel-near') for (const { id } of site.steel) ids.add(id);
  for (const circuit of site.circuits) {
    const loops = loopsIn(circuit);
    if (!ids.has(circuit.id) && !loops.some((loop) => ids.has(loop))) continue;
    for (const id of [circuit.id, ...loops, circuit.channel?.unit ?? '']) ids.add(id);
  }
  return ids;
}

/** All that can be changed in the drawing. */
export const numbersOf = (site: Site): readonly Variable[] =>
  variablesOf(site).filter((each) => !BESIDE.has(each.kind) && rangeOf(experimentOn(site), each) !== null);

/** Those of what the finding is about, that a designer may choose. */
export function numbersFor(site: Site, numbers: readonly Variable[], finding: Finding): readonly Variable[] {
  const ids = concerned(site, finding);
  return numbers.filter(({ kind, subject }) => !GIVEN.has(kind) && subject !== null && ids.has(subject));
}

/** What no current depends on: whatever was driven over the loops stays as it is, and a try costs next to nothing. */
const QUICK: ReadonlySet<VariableKind> = new Set(['tripThreshold', 'measuringTime']);
/** Of a try of one of them, against any other. */
const QUICK_SHARE = 0.02;

/** How long a search with this number may take, against one try: what is tried if nothing helps. */
export function effortOf(site: Site, variable: Variable): number {
  const experiment = experimentOn(site);
  const [from, range] = [valueOf(experiment, variable), rangeOf(experiment, variable)];
  if (from === null || !range) return 0;
  const [up, down] = candidatesFrom(from, range);
  return (QUICK.has(variable.kind) ? QUICK_SHARE : 1) * (1 + up.length + down.length);
}

/** Those that take least come first, so that answers come from the start. */
export const quickestFirst = (site: Site, variables: readonly Variable[]): readonly Variable[] =>
  variables
    .map((variable) => ({ variable, effort: effortOf(site, variable) }))
    .sort((a, b) => a.effort - b.effort)
    .map(({ variable }) => variable);

const FIGURES: Readonly<Record<string, FigureKind>> = {
  'low-q': 'q',
  'inductance-range': 'inductance',
  'frequency-band': 'frequency',
  undetected: 'margin',
  'detected-in-part': 'margin',
  'missed-at-edge': 'margin',
  'next-lane': 'neighbour',
  'next-lane-edge': 'neighbour',
  beating: 'beatRatio',
  cover: 'cover',
  'slot-width': 'cover',
  turns: 'loopInductance',
  resonance: 'selfResonance'
};
const MOST_FIGURES = 3;

/** The results by which a finding is judged, or those of what it is about. */
export function figuresFor(site: Site, finding: Finding): readonly Figure[] | null {
  const ids = concerned(site, finding);
  const own = figuresOf(site).filter(({ subject, other }) => {
    if (subject === null || !ids.has(subject)) return false;
    return other === undefined || ids.has(other);
  });
  const kind = FIGURES[finding.code];
  const exact = own.filter((figure) => figure.kind === kind);
  const subjects = exact.filter(({ subject, other }) =>
    other === undefined ? subject === finding.subject : `${subject} + ${other}` === finding.subject
  );
  const found = subjects.length > 0 ? subjects : exact;
  const shown = found.length > 0 ? found : own.filter((figure) => figure.kind === 'inductance');
  return shown.length > 0 ? shown.slice(0, MOST_FIGURES) : null;
}

/** How large a change is against what the number is: 0.33 for 4 turns in place of 3. From nought, and of choices: by steps of the range. */
export function shareOf(site: Site, variable: Variable, from: number, to: number): number {
  const range = rangeOf(experimentOn(site), variable);
  if (range?.choices || from === 0)
    return Math.abs(to - from) / Math.max(1e-9, (range?.most ?? 1) - (range?.least ?? 0));
  return Math.abs(to - from) / Math.abs(from);
}

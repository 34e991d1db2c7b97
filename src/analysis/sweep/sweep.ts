/** A number of the drawing run over a range: every point is an experiment of its own, evaluated like any other. */
import type { Site } from '#plan/schema';
import { experimentOn, valueOf, withValue } from '#plan/variables/index';
import type { Experiment } from '#plan/variables/variable';
import { designSite } from '#plan/variants';
import type { Means } from '../means';
import type { Steps } from '../steps';
import { doubtsOf } from './doubts';
import { figureIn } from './figures/index';
import { limitsOf } from './limits';
import type { SweepPicture, SweepPoint, SweepWish } from './results';
import { trialsOf } from './trial';

type Row = Experiment | null;

/** Of each value of the family, or of each design; null where there is no such. */
const rowsOf = (present: Experiment, { family, designs }: SweepWish): readonly Row[] => {
  if (family) return family.values.map((value) => withValue(present, family.variable, value));
  if (!designs) return [present];
  return designs.map((design) => {
    const site = designSite(present.site, design);
    return site && { ...present, site };
  });
};

/** Whether every variable and every figure's subject is there, in one of the rows at least. */
const isPossible = (rows: readonly Row[], { x, figures }: SweepWish): boolean => {
  const there = rows.filter((row) => row !== null);
  const ids = new Set(
    there.flatMap(({ site: { loops, circuits } }) => [...loops, ...circuits]).map(({ id }) => id)
  );
  return (
    there.some((row) => valueOf(row, x.variable) !== null) &&
    figures.every(
      ({ subject, other }) =>
        (subject === null || ids.has(subject)) && (other === undefined || ids.has(other))
    )
  );
};

export function* sweepInSteps(site: Site, wish: SweepWish, means: Means): Steps<SweepPicture | null> {
  const present = experimentOn(site, wish.place);
  const rows = rowsOf(present, wish);
  if (!isPossible(rows, wish)) return null;
  const trials = trialsOf(means);
  const { x, family, designs, figures } = wish;
  const values: (number | null)[][][] = figures.map(() => rows.map(() => []));
  const doubtful: SweepPoint[] = [];
  const points = rows.length * x.values.length;
  let done = 0;
  for (const [row, base] of rows.entries())
    for (const [at, value] of x.values.entries()) {
      const experiment = base && withValue(base, x.variable, value);
      const trial = experiment && trials.of(experiment);
      for (const [n, figure] of figures.entries()) {
        values[n]![row]!.push(trial && figureIn(trial, figure));
        yield (done + (n + 1) / figures.length) / points;
      }
      // a row that has no such number at all says nothing about this value of it
      const isRefused = !trial && base !== null && valueOf(base, x.variable) !== null;
      if (isRefused || (trial && doubtsOf(trial, wish))) doubtful.push({ row, at });
      done += 1;
    }
  const now = trials.of(present);
  return {
    ...{ x, family, designs },
    present: { x: valueOf(present, x.variable), family: family && valueOf(present, family.variable) },
    figures: figures.map((figure, at) => ({
      figure,
      values: values[at]!,
      present: figureIn(now, figure),
      limits: limitsOf(site, figure, wish)
    })),
    doubtful
  };
}

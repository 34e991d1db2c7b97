/** Where the vehicle of an experiment is, so that the plan shows it there: the same place as its figures are of. */
import { headingOf, onLine } from '#analysis/passing/lane-line';
import { extentAlong, servedLines } from '#analysis/passing/paths';
import { vehicleOf } from '#plan/catalogue/vehicles';
import type { Lesson } from '#plan/lesson';
import type { Probe, Site } from '#plan/schema';
import type { Experiment } from '#plan/variables/variable';

type Figures = Lesson['experiment']['figures'];

/** Only of a vehicle at one place: what passes on several paths, or on the worst of them, is not shown at any. */
const atOnePlace = (figures: Figures) => figures.find(({ path }) => path === 'standing' || path === 'offset');

/** Null for an experiment without such a vehicle. */
export function vehicleIn(
  { experiment: { figures } }: Pick<Lesson, 'experiment'>,
  live: Experiment
): Probe | null {
  const figure = atOnePlace(figures);
  const { site, along_m, offset_m } = live;
  const circuit = site.circuits.find(({ id }) => id === figure?.subject);
  const vehicle = figure?.vehicle ?? circuit?.detect[0];
  if (!figure || !circuit || vehicle === undefined || !vehicleOf(vehicle, site)) return null;
  const loops = circuit.strings.flat().flatMap(({ loop }) => site.loops.find(({ id }) => id === loop) ?? []);
  const [line] = servedLines(loops, site);
  if (!line) return null;
  const extents = loops.map((loop) => extentAlong(loop, line));
  const middle = (Math.min(...extents.map(([from]) => from)) + Math.max(...extents.map(([, to]) => to))) / 2;
  const along = figure.path === 'standing' ? along_m : 0;
  return { vehicle, at: onLine(line, middle + along, offset_m), heading: headingOf(line) };
}

/** The drawing with its vehicle where the experiment has it, in the place of those that stand on the plan. */
export function vehiclePlaced(lesson: Pick<Lesson, 'experiment'>, live: Experiment): Site {
  const probe = vehicleIn(lesson, live);
  return probe ? { ...live.site, probes: [probe] } : live.site;
}

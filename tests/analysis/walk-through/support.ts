/** Sites walked through without a page. */
import { createMeans } from '#analysis/means';
import { finish } from '#analysis/steps';
import { figuresInSteps } from '#analysis/walk-through/figures/gather';
import type { Place } from '#analysis/walk-through/node';
import type { Complaint, Said, Walk } from '#analysis/walk-through/results';
import { walkInSteps } from '#analysis/walk-through/walk';
import type { Site } from '#plan/schema';

/** One of each for a whole file: a vehicle is made ready once. */
const means = createMeans();

export const walk = (site: Site, complaint: Complaint, circuit: string, ...answers: string[]): Walk =>
  finish(walkInSteps(site, { complaint, circuit, answers }, means))!;

type Known = Omit<Place, 'about'> | null;

/** The figures are the same for all complaints, and dear. */
const places = new WeakMap<Site, Map<string, Known>>();

/** Everything that any complaint asks of the site; null without a channel. */
export function placeOf(site: Site, circuit: string): Known {
  const known = places.get(site) ?? new Map<string, Known>();
  places.set(site, known);
  if (!known.has(circuit)) {
    const figures = finish(figuresInSteps(site, circuit, ['beats', 'passes', 'heights'], means))!;
    const { channel, unit } = figures;
    known.set(circuit, channel && unit ? { ...figures, channel, unit } : null);
  }
  return known.get(circuit) ?? null;
}

export const keysOf = (saids: readonly Said[]): readonly string[] => saids.map(({ key }) => key);

/** The number in what is said. */
export function numberIn({ key, values }: Said, name: string): number {
  const value = values[name];
  if (value === undefined || typeof value === 'string' || 'day' in value)
    throw new Error(`${key} has no number ${name}`);
  return value.value;
}

/** The answer that follows, whatever the steps before were. */
export const next = ({ steps }: Walk) => steps.at(-1)!;

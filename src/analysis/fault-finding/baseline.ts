/**
 * Readings of commissioning day that later ones are held against: where they fit the drawing, they say what the drawing's
 * tolerances leave open, and a later figure that has moved since is found although it still lies within them.
 */
import type { Site } from '#plan/schema';
import type { AskedFigure, Prepared } from './forward/contract';
import type { Observed } from './inference/observed';
import { sceneOf } from './inference/scene';
import { visitsOf } from './visits';
import type { Baseline } from './assumptions';

/** Places of the newest visit before the readings that were chosen, of which all are commissioning readings; none: empty. */
export const baselineReadings = (
  site: Site,
  circuit: string,
  chosen: readonly number[]
): readonly number[] => {
  if (chosen.some((place) => site.readings[place]?.isCommissioning === true)) return [];
  const oldest = chosen.map((place) => site.readings[place]?.at ?? '').sort()[0] ?? '';
  const visits = visitsOf(site, circuit).map(({ readings }) =>
    readings.filter((place) => {
      const reading = site.readings[place];
      return reading?.isCommissioning === true && (reading.at ?? '') <= oldest && !chosen.includes(place);
    })
  );
  return visits.find((readings) => readings.length > 0) ?? [];
};

const INSULATION: ReadonlySet<AskedFigure['quantity']> = new Set(['insulation_ohm', 'insulationBetween_ohm']);

/** Misfit above what chance leaves once in some hundred. */
const fits = (misfit: number, count: number): boolean => misfit < count + 2.5 * Math.sqrt(2 * count) + 2;

/** Insulation is as good as it happens to be that day: it says nothing of another. */
export const baselineOf = (
  prepared: Prepared,
  observed: readonly Observed[]
): { readonly observed: readonly Observed[]; readonly baseline: Baseline } => {
  const told = observed.filter(({ asked, value }) => value !== null && !INSULATION.has(asked.quantity));
  if (told.length === 0) return { observed: [], baseline: 'none' };
  const { nominal } = sceneOf(
    prepared,
    told.map((each) => ({ ...each, isBaseline: false }))
  );
  const isSound = nominal.numbers.length === told.length && fits(nominal.misfit, told.length);
  return isSound ? { observed: told, baseline: 'used' } : { observed: [], baseline: 'refused' };
};

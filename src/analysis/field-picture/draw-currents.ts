/**
 * The currents that a loop or a circuit drives in a vehicle, per ampere at the source's terminals. Steel in the pavement, and
 * what it does to the loop's field, is left out.
 */
import type { Site } from '#plan/schema';
import type { Means } from '../means';
import type { Steps } from '../steps';
import { drivenIn } from './driven';
import type { CurrentsPicture, CurrentsWish, PlateCurrents } from './results';
import { sourceOf } from './source';

export function* drawCurrentsInSteps(
  site: Site,
  { source: wished, vehicle }: CurrentsWish,
  means: Means
): Steps<CurrentsPicture | null> {
  const source = sourceOf(site, wished, means);
  if (!source) return null;
  yield 0;
  const driven = drivenIn(site, vehicle, source, means);
  if (!driven) return null;
  const { parts, currents } = driven;
  const plates = currents.sheets.map(({ xs, ys, z, psi }): PlateCurrents => ({
    xs: [...xs],
    ys: [...ys],
    z_m: z,
    psi: Float64Array.from(psi, (_, k) => psi[(k % xs.length) * ys.length + Math.floor(k / xs.length)]!)
  }));
  const ringParts = parts.flatMap(({ kind }, part) => (kind === 'ring' ? [part] : []));
  const rings = currents.rings.map((current, k) => ({ part: ringParts[k]!, current }));
  return { vehicle, plates, rings };
}

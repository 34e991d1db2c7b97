/** Detector units. One that a circuit is connected to cannot be removed, nor lose what its channels use. */
import { COUNTS } from '../bounds';
import { unitLike } from '../catalogue/units';
import { unit as unitSchema, type Site, type Unit } from '../schema';
import { hasOneEach } from '../unit-settings';
import { freeId, kept, mapped, patched, withList, type Patch } from './list';

const isSoundUnit = (unit: Unit): boolean => {
  const [least, most] = unit.inductanceRange_H;
  return unitSchema.safeParse(unit).success && least < most && hasOneEach(unit);
};

/** No connected channel may be left without its number or its setting. */
const suits = (site: Site, unit: Unit): boolean =>
  site.circuits.every(
    ({ channel }) =>
      channel?.unit !== unit.id ||
      (channel.number <= unit.channels && channel.frequencySetting <= unit.settings_F.length)
  );

/** A unit with the figures of another, of the catalogue or of the site. */
export const newUnit = (site: Site, from: Unit, name: string): Unit =>
  unitLike(from, { id: freeId(site.units, 'U'), name });

export function addUnit(site: Site, unit: Unit): Site {
  const taken = site.units.some(({ id }) => id === unit.id);
  if (taken || site.units.length >= COUNTS.units || !isSoundUnit(unit)) return site;
  return { ...site, units: [...site.units, unit] };
}

/** The same site when nothing changes or the result would not be sound. Settings have edits of their own. */
export function updateUnit(site: Site, id: string, patch: Patch<Omit<Unit, 'id'>>): Site {
  const units = mapped(site.units, (unit) => {
    if (unit.id !== id) return unit;
    const next = patched<Unit>(unit, patch);
    return next === unit || (isSoundUnit(next) && suits(site, next)) ? next : unit;
  });
  return withList(site, 'units', units);
}

/** Ids of the circuits that are connected to it. */
export const usesOfUnit = (site: Site, id: string): readonly string[] =>
  site.circuits.filter(({ channel }) => channel?.unit === id).map((circuit) => circuit.id);

export const removeUnit = (site: Site, id: string): Site =>
  usesOfUnit(site, id).length > 0
    ? site
    : withList(
        site,
        'units',
        kept(site.units, (unit) => unit.id !== id)
      );

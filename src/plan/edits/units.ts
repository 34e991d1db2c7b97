import { unit as unitSchema, type Site, type Unit } from '../schema';
import { mapped, patched, withList, type Patch } from './list';

/** No connected channel may be left without its number or its setting. */
function isSound(site: Site, unit: Unit): boolean {
  const [least, most] = unit.inductanceRange_H;
  if (!unitSchema.safeParse(unit).success || least >= most) return false;
  return site.circuits.every(
    ({ channel }) =>
      channel?.unit !== unit.id ||
      (channel.number <= unit.channels && channel.frequencySetting <= unit.settings_F.length)
  );
}

export function updateUnit(site: Site, id: string, patch: Patch<Omit<Unit, 'id'>>): Site {
  const units = mapped(site.units, (unit) => {
    if (unit.id !== id) return unit;
    const next = patched(unit, patch);
    return next === unit || isSound(site, next) ? next : unit;
  });
  return withList(site, 'units', units);
}

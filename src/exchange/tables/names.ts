/** What things of a site are called in a table. */
import { cableOf } from '#plan/catalogue/cables';
import { vehicleOf } from '#plan/catalogue/vehicles';
import { wireOf } from '#plan/catalogue/wires';
import { t } from '#i18n/message';
import type { Mark, Site } from '#plan/schema';
import { clean } from '../sheet/text/clean';

interface Named {
  readonly id: string;
  readonly name: string;
}

export const nameOf = ({ id, name }: Named): string => clean(name) || clean(id);

const called = (thing: Named | undefined, id: string): string => (thing ? nameOf(thing) : clean(id));
const within = (things: readonly Named[], id: string): string =>
  called(
    things.find((each) => each.id === id),
    id
  );

export const loopName = ({ loops }: Pick<Site, 'loops'>, id: string): string => within(loops, id);
export const circuitName = ({ circuits }: Pick<Site, 'circuits'>, id: string): string => within(circuits, id);
export const laneName = ({ lanes }: Pick<Site, 'lanes'>, id: string): string => within(lanes, id);
export const unitName = ({ units }: Pick<Site, 'units'>, id: string): string => within(units, id);
export const wireName = (site: Pick<Site, 'wires'>, id: string): string => called(wireOf(id, site), id);
export const cableName = (site: Pick<Site, 'cables'>, id: string): string => called(cableOf(id, site), id);
export const vehicleName = (site: Pick<Site, 'vehicles'>, id: string): string =>
  called(vehicleOf(id, site), id);

export const isUnnamed = ({ text }: Mark): boolean => clean(text ?? '').trim() === '';

/** A mark without a text is called by its kind, and counted where there are more such. */
export function markName({ marks }: Pick<Site, 'marks'>, mark: Mark): string {
  if (!isUnnamed(mark)) return clean(mark.text!);
  const kind = t(`mark.${mark.kind}`);
  const alike = marks.filter((other) => other.kind === mark.kind && isUnnamed(other));
  return alike.length === 1 ? kind : t('sheet.markName', { kind, number: alike.indexOf(mark) + 1 });
}

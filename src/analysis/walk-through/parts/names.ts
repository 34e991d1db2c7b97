/** What things are called in what is said. */
import { listed } from '#i18n/locale';
import type { Site } from '#plan/schema';
import { loopsIn } from '#plan/wiring';
import { called, calledVehicle } from '../../findings/finding';
import type { Place } from '../node';

const nameIn = (things: readonly { readonly id: string; readonly name: string }[], id: string): string =>
  called(things.find((each) => each.id === id) ?? { id, name: '' });

type Of = Pick<Place, 'site'>;

export const circuitName = ({ site }: Of, id: string): string => nameIn(site.circuits, id);
export const loopName = ({ site }: Of, id: string): string => nameIn(site.loops, id);
export const laneName = ({ site }: Of, id: string): string => nameIn(site.lanes, id);
export const unitName = ({ site }: Of, id: string): string => nameIn(site.units, id);
export const vehicleName = ({ site }: Of, id: string): string => calledVehicle(id, site);

export const own = (place: Pick<Place, 'circuit'>): string => called(place.circuit);
export const ownUnit = (place: Pick<Place, 'unit'>): string => called(place.unit);
export const ownLoops = (place: Pick<Place, 'site' | 'circuit'>): string =>
  listed(loopsIn(place.circuit).map((id) => loopName(place, id)));

/** Circuits on a unit. */
export const circuitsOn = ({ circuits }: Pick<Site, 'circuits'>, unit: string) =>
  circuits.filter(({ channel }) => channel?.unit === unit);

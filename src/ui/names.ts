/** What things are called where people read. */
import type { Circuit, Lane, Loop, Site } from '#plan/schema';
import { vehicleOf } from '#plan/catalogue/vehicles';

interface Named {
  readonly id: string;
  readonly name: string;
}

export const nameOf = ({ id, name }: Named): string => (name.trim() === '' ? id : name);

const nameIn = (things: readonly Named[], id: string): string => {
  const thing = things.find((each) => each.id === id);
  return thing ? nameOf(thing) : id;
};

export const loopName = (site: { readonly loops: readonly Loop[] }, id: string): string =>
  nameIn(site.loops, id);
export const laneName = (site: { readonly lanes: readonly Lane[] }, id: string): string =>
  nameIn(site.lanes, id);
export const circuitName = (site: { readonly circuits: readonly Circuit[] }, id: string): string =>
  nameIn(site.circuits, id);

export function vehicleName(site: Pick<Site, 'vehicles'>, id: string): string {
  const vehicle = vehicleOf(id, site);
  return vehicle ? nameOf(vehicle) : id;
}

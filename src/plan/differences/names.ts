/** What things are called in the design that they stand in. */
import { cableOf } from '../catalogue/cables';
import { vehicleOf } from '../catalogue/vehicles';
import { wireOf } from '../catalogue/wires';
import type { Circuit, Site } from '../schema';

interface Named {
  readonly id: string;
  readonly name: string;
}

export const nameOf = ({ id, name }: Named): string => (name.trim() === '' ? id : name);

const called = (thing: Named | undefined, id: string): string => (thing ? nameOf(thing) : id);
const among = (things: readonly Named[], id: string): string =>
  called(
    things.find((each) => each.id === id),
    id
  );

export const wireName = (id: string, site: Site): string => called(wireOf(id, site), id);
export const cableName = (id: string, site: Site): string => called(cableOf(id, site), id);
export const vehicleName = (id: string, site: Site): string => called(vehicleOf(id, site), id);
export const unitName = (id: string, site: Site): string => among(site.units, id);
export const circuitName = (id: string, site: Site): string => among(site.circuits, id);

/** Loops of a string joined by +, strings side by side by ∥, a reversed loop with a minus before it. */
export const wiringText = ({ strings }: Circuit, site: Site): string =>
  strings
    .map((string) =>
      string.map(({ loop, reversed }) => `${reversed ? '\u2212' : ''}${among(site.loops, loop)}`).join(' + ')
    )
    .join(' ∥ ');

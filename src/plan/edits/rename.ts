/** Changing an id, with everything that refers to it. */
import { loop as loopSchema, type Site } from '../schema';
import { mapped, withList } from './list';
import { renameAcceptance } from './record';

const isId = (id: string): boolean => loopSchema.shape.id.safeParse(id).success;

const isFree = (list: readonly { readonly id: string }[], from: string, to: string): boolean =>
  from !== to && isId(to) && list.some(({ id }) => id === from) && !list.some(({ id }) => id === to);

const renamed = <T extends { readonly id: string }>(
  list: readonly T[],
  from: string,
  to: string
): readonly T[] => mapped(list, (each) => (each.id === from ? { ...each, id: to } : each));

/** The same site when the new id is taken, empty or unprintable. */
export function renameLoop(site: Site, from: string, to: string): Site {
  if (!isFree(site.loops, from, to)) return site;
  const circuits = mapped(site.circuits, (circuit) =>
    withList(
      circuit,
      'strings',
      mapped(circuit.strings, (string) =>
        mapped(string, (entry) => (entry.loop === from ? { ...entry, loop: to } : entry))
      )
    )
  );
  const readings = mapped(site.readings, (reading) =>
    reading.loop === from ? { ...reading, loop: to } : reading
  );
  return { ...site, loops: renamed(site.loops, from, to), circuits, readings };
}

export function renameCircuit(site: Site, from: string, to: string): Site {
  if (!isFree(site.circuits, from, to)) return site;
  const readings = mapped(site.readings, (reading) =>
    reading.circuit === from ? { ...reading, circuit: to } : reading
  );
  const conduits = mapped(site.conduits, (conduit) =>
    withList(
      conduit,
      'circuits',
      mapped(conduit.circuits, (id) => (id === from ? to : id))
    )
  );
  const next = { ...site, circuits: renamed(site.circuits, from, to), readings, conduits };
  return renameAcceptance(next, from, to);
}

export function renameUnit(site: Site, from: string, to: string): Site {
  if (!isFree(site.units, from, to)) return site;
  const circuits = mapped(site.circuits, (circuit) =>
    circuit.channel?.unit === from ? { ...circuit, channel: { ...circuit.channel, unit: to } } : circuit
  );
  return { ...site, units: renamed(site.units, from, to), circuits };
}

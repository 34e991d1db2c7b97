import type { Site } from '../schema';
import { kept, mapped, withList } from './list';

/** What is left to do when circuits have gone: their readings go, and conduits no longer name them. */
export function forgetCircuits(site: Site, gone: ReadonlySet<string>): Site {
  if (gone.size === 0) return site;
  const readings = kept(site.readings, ({ circuit }) => circuit === undefined || !gone.has(circuit));
  const conduits = mapped(site.conduits, (conduit) =>
    withList(
      conduit,
      'circuits',
      kept(conduit.circuits, (id) => !gone.has(id))
    )
  );
  return withList(withList(site, 'readings', readings), 'conduits', conduits);
}

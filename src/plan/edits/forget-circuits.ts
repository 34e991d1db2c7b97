import type { Site } from '../schema';
import { circuitsOfVariants } from '../variants';
import { kept, mapped, withList } from './list';
import { keepAcceptances } from './record';

/**
 * What is left to do when circuits have gone: their readings and their acceptance go, but for those of circuits that a kept
 * variant still has, and conduits no longer name them.
 */
export function forgetCircuits(site: Site, gone: ReadonlySet<string>): Site {
  if (gone.size === 0) return site;
  const elsewhere = circuitsOfVariants(site);
  const isStaying = (circuit: string): boolean => !gone.has(circuit) || elsewhere.has(circuit);
  const readings = kept(site.readings, ({ circuit }) => circuit === undefined || isStaying(circuit));
  const conduits = mapped(site.conduits, (conduit) =>
    withList(
      conduit,
      'circuits',
      kept(conduit.circuits, (id) => !gone.has(id))
    )
  );
  const forgotten = withList(withList(site, 'readings', readings), 'conduits', conduits);
  return keepAcceptances(forgotten, ({ circuit }) => isStaying(circuit));
}

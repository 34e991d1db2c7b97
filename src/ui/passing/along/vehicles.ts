/** Which vehicles are driven along a way. */
import { vehicleOf } from '#plan/catalogue/vehicles';
import type { Site } from '#plan/schema';

/** Where no circuit asks for any. */
const USUAL = 'car';
/** More curves than this nobody tells apart. */
export const MOST_SHOWN = 6;

/** Those asked for on any circuit, each once, in that order. */
export const askedFor = (site: Pick<Site, 'circuits' | 'vehicles'>): readonly string[] => {
  const asked = [...new Set(site.circuits.flatMap(({ detect }) => detect))].filter((id) =>
    vehicleOf(id, site)
  );
  return asked.length > 0 ? asked : [USUAL];
};

/** Those chosen that are still there; where nothing is chosen those asked for. */
export const vehiclesShown = (
  site: Pick<Site, 'circuits' | 'vehicles'>,
  chosen: readonly string[] | null
): readonly string[] => (chosen ?? askedFor(site)).filter((id) => vehicleOf(id, site)).slice(0, MOST_SHOWN);

/** What is offered with a box to tick: those asked for, and whatever else was chosen. */
export const vehiclesListed = (
  site: Pick<Site, 'circuits' | 'vehicles'>,
  chosen: readonly string[] | null
): readonly string[] => [...new Set([...askedFor(site), ...vehiclesShown(site, chosen)])];

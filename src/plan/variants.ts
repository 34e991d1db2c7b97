/**
 * Designs of one site: the present one, which stands in the document itself, and the variants that are kept beside it. What
 * a figure depends on belongs to a design; everything else (name, pictures, readings, prices, sheet) belongs to the site and
 * is the same for all of them.
 */
import { isAlike } from './alike';
import type { Design, Site, Variant } from './schema';

/** Complete by its type: a field that a design gains is a field that must be listed here. */
const FIELDS: Readonly<Record<keyof Design, true>> = {
  temperature_C: true,
  temperatureRange_C: true,
  pavement: true,
  lanes: true,
  marks: true,
  loops: true,
  wires: true,
  cables: true,
  circuits: true,
  units: true,
  conduits: true,
  vehicles: true,
  probes: true,
  paths: true,
  traffic: true,
  steel: true,
  tolerances: true,
  acceptedSteelCost: true,
  notes: true
};
export const DESIGN_FIELDS = Object.keys(FIELDS) as readonly (keyof Design)[];

const isDesignField = (key: string): boolean => Object.hasOwn(FIELDS, key);

/** The present design; shares everything with the site. */
export function designOf(site: Site): Design {
  const found = DESIGN_FIELDS.flatMap((key) => (site[key] === undefined ? [] : [[key, site[key]] as const]));
  return Object.fromEntries(found) as unknown as Design;
}

/** The site with another present design: the same parts of the site, and nothing of the design that it had. */
export function withDesign(site: Site, design: Design): Site {
  const own = Object.entries(site).filter(([key]) => !isDesignField(key));
  const drawn = DESIGN_FIELDS.flatMap((key) =>
    design[key] === undefined ? [] : [[key, design[key]] as const]
  );
  return Object.fromEntries([...own, ...drawn]) as unknown as Site;
}

export const variantsOf = (site: Pick<Site, 'variants'>): readonly Variant[] => site.variants ?? [];

export const variantOf = (site: Pick<Site, 'variants'>, id: string | undefined): Variant | null =>
  variantsOf(site).find((each) => each.id === id) ?? null;

/** Whether a variant holds the present design exactly as it is. */
export const holdsPresent = (site: Site, { design }: Variant): boolean =>
  DESIGN_FIELDS.every((key) => isAlike(site[key], design[key]));

const KEPT = new WeakMap<Site, boolean>();

/** Whether the present design is still the one that was kept in the variant that it is a working state of. */
export function isKept(site: Site): boolean {
  const known = KEPT.get(site);
  if (known !== undefined) return known;
  const own = variantOf(site, site.variant);
  const kept = own !== null && holdsPresent(site, own);
  KEPT.set(site, kept);
  return kept;
}

/** Ids of the circuits that a variant has: readings of them stay readings of the site, whatever the present design is. */
export const circuitsOfVariants = (site: Pick<Site, 'variants'>): ReadonlySet<string> =>
  new Set(variantsOf(site).flatMap(({ design }) => design.circuits.map(({ id }) => id)));

/** Parts of the site whose change makes a variant another drawing. */
const SHARED = ['name', 'displayUnits', 'underlays', 'layers', 'readings', 'fieldCheck', 'estimate', 'sheet'] as const; // prettier-ignore

const alone = (site: Site): Site =>
  Object.fromEntries(
    Object.entries(site).filter(([key]) => key !== 'variants' && key !== 'variant')
  ) as unknown as Site;

const SITES = new WeakMap<Design, { readonly from: Site; readonly site: Site }>();

/**
 * The whole site with one of its variants as its design, to be assessed and drawn: without other variants, and without
 * readings of circuits that it does not have. The site itself for null, null for a variant that is not there. The same object
 * as long as the variant and the site's own parts are the same.
 */
export function designSite(site: Site, id: string | null): Site | null {
  if (id === null) return site;
  const variant = variantOf(site, id);
  if (!variant) return null;
  const { design } = variant;
  const known = SITES.get(design);
  if (known && SHARED.every((key) => known.from[key] === site[key])) return known.site;
  const circuits = new Set(design.circuits.map((each) => each.id));
  const rest = alone(site);
  const readings = site.readings.filter(({ circuit }) => circuit === undefined || circuits.has(circuit));
  const made = withDesign(
    { ...rest, readings: readings.length === site.readings.length ? site.readings : readings },
    design
  );
  SITES.set(design, { from: site, site: made });
  return made;
}

const WITHOUT = new WeakMap<Site, Site>();

/** For the calculation, which is sent a copy of the drawing at every step: no figure of the present design depends on others. */
export function withoutVariants(site: Site): Site {
  if (site.variants === undefined && site.variant === undefined) return site;
  const known = WITHOUT.get(site);
  if (known) return known;
  const rest = alone(site);
  WITHOUT.set(site, rest);
  return rest;
}

import { site as siteSchema, type Site } from '../schema';
import { patched, type Patch } from './list';

export type SiteFields = Pick<
  Site,
  'name' | 'displayUnits' | 'temperature_C' | 'pavement' | 'tolerances' | 'notes'
>;

const fields = siteSchema.pick({
  name: true,
  displayUnits: true,
  temperature_C: true,
  pavement: true,
  tolerances: true,
  notes: true
});

/** The same site when nothing changes or a value is outside its bounds. */
export function updateSite(site: Site, patch: Patch<SiteFields>): Site {
  const next = patched<Site>(site, patch);
  return next === site || fields.safeParse(next).success ? next : site;
}

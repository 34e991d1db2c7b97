import { site as siteSchema, type Site } from '../schema';
import { patched, type Patch } from './list';

export type SiteFields = Pick<
  Site,
  | 'name'
  | 'displayUnits'
  | 'temperature_C'
  | 'temperatureRange_C'
  | 'pavement'
  | 'tolerances'
  | 'acceptedSteelCost'
  | 'notes'
>;

const fields = siteSchema.pick({
  name: true,
  displayUnits: true,
  temperature_C: true,
  temperatureRange_C: true,
  pavement: true,
  tolerances: true,
  acceptedSteelCost: true,
  notes: true
});

const isInOrder = ({ temperatureRange_C: range }: Site): boolean =>
  range === undefined || range[0] <= range[1];

/** The same site when nothing changes, a value is outside its bounds, or the coldest day is warmer than the hottest. */
export function updateSite(site: Site, patch: Patch<SiteFields>): Site {
  const next = patched<Site>(site, patch);
  return next === site || (isInOrder(next) && fields.safeParse(next).success) ? next : site;
}

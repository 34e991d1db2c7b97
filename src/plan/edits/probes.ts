/** Vehicles placed on the plan, addressed by their index. */
import { COUNTS } from '../bounds';
import { vehicleOf } from '../catalogue/vehicles';
import { probe as probeSchema, type Probe, type Site } from '../schema';
import { mapped, patched, withList, type Patch } from './list';

const isSound = (site: Site, probe: Probe): boolean =>
  probeSchema.safeParse(probe).success && vehicleOf(probe.vehicle, site) !== undefined;

export function addProbe(site: Site, probe: Probe): Site {
  if (site.probes.length >= COUNTS.probes || !isSound(site, probe)) return site;
  return { ...site, probes: [...site.probes, probe] };
}

/** The same site when the probe is not there, nothing changes, or the result would not be sound. */
export function updateProbe(site: Site, index: number, patch: Patch<Probe>): Site {
  const probes = mapped(site.probes, (probe, at) => {
    if (at !== index) return probe;
    const next = patched(probe, patch);
    return next === probe || isSound(site, next) ? next : probe;
  });
  return withList(site, 'probes', probes);
}

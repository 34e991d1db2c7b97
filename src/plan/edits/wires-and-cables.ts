/** The user's own wires and lead-in cables, beside the built-in ones. One that is in use cannot be removed. */
import { COUNTS } from '../bounds';
import { isBuiltIn, type LeadInCable } from '../catalogue/cables';
import type { Wire } from '../catalogue/wires';
import {
  cable as cableSchema,
  wire as wireSchema,
  type Cable,
  type Circuit,
  type OwnWire,
  type Site
} from '../schema';
import { freeId, kept, mapped, patched, withList, type Patch } from './list';

const isSoundWire = (wire: OwnWire): boolean =>
  wireSchema.safeParse(wire).success && wire.insulatedDiameter > wire.conductorDiameter;

/** Every constant is stated, or there is a geometry to compute it from. */
function isSoundCable(cable: Cable): boolean {
  if (!cableSchema.safeParse(cable).success) return false;
  const { conductorDiameter, spacing } = cable;
  if (conductorDiameter !== undefined && spacing !== undefined) return spacing > conductorDiameter;
  const { resistancePerMetre_ohm, inductancePerMetre_H, capacitancePerMetre_F } = cable;
  return ![resistancePerMetre_ohm, inductancePerMetre_H, capacitancePerMetre_F].includes(undefined);
}

/** An own wire with the figures of another. */
export const newWire = (site: Site, from: Wire, name: string): OwnWire => ({
  id: freeId(site.wires, 'w'),
  name,
  conductorDiameter: from.conductorDiameter,
  insulatedDiameter: from.insulatedDiameter,
  insulationPermittivity: from.insulationPermittivity
});

/** An own cable with the geometry of another where it has one, else with what it states. */
export function newCable(site: Site, from: LeadInCable, name: string): Cable {
  const { resistancePerMetre_ohm, inductancePerMetre_H, capacitancePerMetre_F } = from;
  const { conductorDiameter, spacing, relativePermittivity } = from;
  // A built-in cable's resistance and inductance are computed for the day and the frequency; a copy goes on like that.
  const stated = isBuiltIn(from) ? {} : { resistancePerMetre_ohm, inductancePerMetre_H };
  const figures = { ...stated, capacitancePerMetre_F, conductorDiameter, spacing, relativePermittivity };
  const known = Object.entries(figures).filter(([, value]) => value !== undefined);
  return { id: freeId(site.cables, 'k'), name, ...(Object.fromEntries(known) as Partial<Cable>) };
}

export function addWire(site: Site, wire: OwnWire): Site {
  const taken = site.wires.some(({ id }) => id === wire.id);
  if (taken || site.wires.length >= COUNTS.wires || !isSoundWire(wire)) return site;
  return { ...site, wires: [...site.wires, wire] };
}

export function addCable(site: Site, cable: Cable): Site {
  const taken = site.cables.some(({ id }) => id === cable.id);
  if (taken || site.cables.length >= COUNTS.cables || !isSoundCable(cable)) return site;
  return { ...site, cables: [...site.cables, cable] };
}

/** The same site when the wire is not the site's own, nothing changes, or the result would not be sound. */
export function updateWire(site: Site, id: string, patch: Patch<Omit<OwnWire, 'id'>>): Site {
  const wires = mapped(site.wires, (wire) => {
    const next = wire.id === id ? patched<OwnWire>(wire, patch) : wire;
    return next === wire || isSoundWire(next) ? next : wire;
  });
  return withList(site, 'wires', wires);
}

/** As `updateWire`; undefined takes a stated figure away, which is refused where it could not be computed then. */
export function updateCable(site: Site, id: string, patch: Patch<Omit<Cable, 'id'>>): Site {
  const cables = mapped(site.cables, (cable) => {
    const next = cable.id === id ? patched<Cable>(cable, patch) : cable;
    return next === cable || isSoundCable(next) ? next : cable;
  });
  return withList(site, 'cables', cables);
}

/** Ids of the loops that are wound with it. */
export const usesOfWire = (site: Site, id: string): readonly string[] =>
  site.loops.filter(({ wire }) => wire === id).map((loop) => loop.id);

const cablesIn = ({ leadIn }: Circuit): readonly string[] =>
  [leadIn, ...(leadIn.further ?? [])].map(({ cable }) => cable);

/** Ids of the circuits whose lead-in has it. */
export const usesOfCable = (site: Site, id: string): readonly string[] =>
  site.circuits.filter((circuit) => cablesIn(circuit).includes(id)).map((circuit) => circuit.id);

export const removeWire = (site: Site, id: string): Site =>
  usesOfWire(site, id).length > 0
    ? site
    : withList(
        site,
        'wires',
        kept(site.wires, (wire) => wire.id !== id)
      );

export const removeCable = (site: Site, id: string): Site =>
  usesOfCable(site, id).length > 0
    ? site
    : withList(
        site,
        'cables',
        kept(site.cables, (cable) => cable.id !== id)
      );

/** One vehicle behind another: a tractor and its trailer become one vehicle that stays straight. */
import { t } from '#i18n/message';
import { COUNTS } from '../bounds';
import { vehicleOf, type CatalogueVehicle } from '../catalogue/vehicles';
import type { Site, Vehicle } from '../schema';
import { patched } from './list';
import { movedPart } from './vehicle-parts';
import { changeVehicle } from './vehicles';
import { tidyLength } from './tidy';

/** Metres between the outlines; a semitrailer reaches over its tractor, so it may be negative. */
export const COUPLING_GAP = { min: -12, max: 20 } as const;

interface Outlined {
  readonly bodyWidth: number;
  readonly bodyLength: number;
}

interface Train {
  /** How far each vehicle's own origin lies ahead of the train's, metres. */
  readonly front: number;
  readonly behind: number;
  readonly body: { readonly width: number; readonly length: number };
}

/** The train's origin is the middle of the outline of both. */
export function trainOf(front: Outlined, behind: Outlined, gap: number): Train {
  const head = front.bodyLength / 2;
  const hitch = -front.bodyLength / 2 - gap;
  const ahead = Math.max(head, hitch);
  const back = Math.min(-front.bodyLength / 2, hitch - behind.bodyLength);
  const middle = (ahead + back) / 2;
  return {
    front: tidyLength(-middle),
    behind: tidyLength(hitch - behind.bodyLength / 2 - middle),
    body: {
      width: Math.max(front.bodyWidth, behind.bodyWidth),
      length: tidyLength(ahead - back)
    }
  };
}

/** Two floors in one vehicle must be told apart. */
const behindName = (name: string): string => t('catalogue.part.behind', { name }).slice(0, COUNTS.nameLength);

/**
 * Puts the parts of another vehicle behind those of an own one, at a gap in metres. The same site for a gap out of bounds,
 * a vehicle that is not the site's own, or more parts than a vehicle may have.
 */
export const coupleVehicle = (site: Site, id: string, trailer: CatalogueVehicle, gap: number): Site =>
  changeVehicle(site, id, (vehicle) => {
    const front = vehicleOf(id, site);
    if (!front || !(gap >= COUPLING_GAP.min && gap <= COUPLING_GAP.max)) return vehicle;
    const train = trainOf(front, trailer, gap);
    const taken = new Set(vehicle.parts.map(({ name }) => name));
    const parts = [
      ...vehicle.parts.map((part) => movedPart(part, train.front)),
      ...trailer.parts
        .map((part) => movedPart(part, train.behind))
        .map((part) => (part.name && taken.has(part.name) ? { ...part, name: behindName(part.name) } : part))
    ];
    return patched<Vehicle>(vehicle, { parts, body: train.body, calibration: undefined });
  });

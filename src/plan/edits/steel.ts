/** Steel in the pavement: mats of bars and plates, each an outline at a depth. */
import { FOOT, INCH } from '#units/constants';
import { COUNTS } from '../bounds';
import { crossingSides, signedArea } from '../geometry/polygons';
import { steel as steelSchema, type Point, type Site, type Steel } from '../schema';
import { clampPoint } from './limits';
import { freeId, mapped, patched, withList, type Patch } from './list';
import { draggedCorner, outlineOfBox, steelBox, type SteelBox } from './steel-box';
import { tidyPoint } from './tidy';

type Mat = Extract<Steel, { kind: 'mat' }>;
type Plate = Extract<Steel, { kind: 'plate' }>;

/**
 * What a new mat is like, by display system: bars of about 12 mm every 150 mm, 100 mm down. Common practice; the
 * drawings of the pavement decide.
 */
const USUAL = {
  metric: { depth: 0.1, pitch: 0.15, barRadius: 0.006 },
  imperial: { depth: 4 * INCH, pitch: FOOT / 2, barRadius: INCH / 4 }
} as const;

/** As in reading: square metres. */
const SMALLEST_AREA = 1e-4;

const isSound = (steel: Steel): boolean =>
  steelSchema.safeParse(steel).success &&
  crossingSides(steel.outline) === null &&
  Math.abs(signedArea(steel.outline)) >= SMALLEST_AREA;

/** Whether a document may hold this steel. */
export const isSoundSteel = isSound;

/** A mat like the steel drawn last, or as usual. */
export function newSteel(site: Site, outline: readonly Point[]): Steel {
  const id = freeId(site.steel, 's');
  const points = outline.map((point) => tidyPoint(clampPoint(point)));
  const last = site.steel.at(-1);
  if (last) return { ...patched<Steel>(last, { locked: undefined, hidden: undefined }), id, outline: points };
  return { id, kind: 'mat', ...USUAL[site.displayUnits], outline: points };
}

export function addSteel(site: Site, steel: Steel): Site {
  const taken = site.steel.some((other) => other.id === steel.id);
  if (taken || site.steel.length >= COUNTS.steel || !isSound(steel)) return site;
  return { ...site, steel: [...site.steel, steel] };
}

function change(site: Site, id: string, next: (steel: Steel) => Steel): Site {
  const steel = mapped(site.steel, (each) => {
    if (each.id !== id) return each;
    const result = next(each);
    return result === each || isSound(result) ? result : each;
  });
  return withList(site, 'steel', steel);
}

/** Fields of both kinds; `pitch` and `barRadius` leave a plate as it is. */
export type SteelFields = Pick<Steel, 'depth' | 'outline' | 'resistivity_ohm_m' | 'relativePermeability'> &
  Pick<Mat, 'pitch' | 'barRadius'>;

/** The same site when the steel is not there, nothing changes, or the result would not be sound. */
export function updateSteel(site: Site, id: string, patch: Patch<SteelFields>): Site {
  return change(site, id, (steel) => {
    if (steel.kind === 'mat') return patched<Mat>(steel, patch);
    const fields = Object.entries(patch).filter(([key]) => key !== 'pitch' && key !== 'barRadius');
    return patched<Plate>(steel, Object.fromEntries(fields));
  });
}

/** A plate that becomes a mat gets the usual bars; a mat that becomes a plate forgets them. */
export function setSteelKind(site: Site, id: string, kind: Steel['kind']): Site {
  return change(site, id, (steel): Steel => {
    if (steel.kind === kind) return steel;
    if (kind === 'plate') {
      const kept = Object.entries(steel).filter(([key]) => key !== 'pitch' && key !== 'barRadius');
      return { ...Object.fromEntries(kept), kind } as Plate;
    }
    const { depth, pitch, barRadius } = USUAL[site.displayUnits];
    return { ...steel, kind, depth: steel.depth > 0 ? steel.depth : depth, pitch, barRadius };
  });
}

/** Dragging one corner. */
export function moveSteelPoint(site: Site, id: string, index: number, to: Point): Site {
  const steel = site.steel.find((each) => each.id === id);
  if (!steel) return site;
  const box = steelBox(steel.outline);
  const outline =
    box && Number.isInteger(index) && index >= 0 && index < 4
      ? draggedCorner(steel.outline, index, to)
      : steel.outline.map((point, at) => (at === index ? tidyPoint(clampPoint(to)) : point));
  return updateSteel(site, id, { outline });
}

/** New sides or another place for a rectangle; a site whose steel is no rectangle stays as it is. */
export function updateSteelBox(site: Site, id: string, patch: Partial<SteelBox>): Site {
  const steel = site.steel.find((each) => each.id === id);
  const box = steel && steelBox(steel.outline);
  if (!steel || !box) return site;
  const outline = outlineOfBox({ ...box, ...patch });
  // A mirrored outline keeps its corners' order: only the numbers change.
  return JSON.stringify(outline) === JSON.stringify(steel.outline)
    ? site
    : updateSteel(site, id, { outline });
}

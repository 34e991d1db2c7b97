/**
 * Keeping designs beside the present one, and going from one to another. Every edit leaves the same site where there is
 * nothing to do, a variant is not there, a name is empty or too long, or no further one fits in.
 */
import { COUNTS } from '../bounds';
import type { Site, Variant } from '../schema';
import { variant as variantSchema } from '../schema/variants';
import {
  circuitsOfVariants,
  designOf,
  DESIGN_FIELDS,
  holdsPresent,
  isKept,
  variantOf,
  variantsOf,
  withDesign
} from '../variants';
import { freeId, kept, mapped, patched, withList } from './list';
import { keepAcceptances } from './record';

const isName = (name: string): boolean =>
  name.trim() !== '' && variantSchema.shape.name.safeParse(name).success;

/** The list is left out where it is empty, and so is a `variant` that names none. */
function withVariants(site: Site, variants: readonly Variant[]): Site {
  const own = variants.some(({ id }) => id === site.variant) ? site.variant : undefined;
  return patched<Site>(site, { variants: variants.length > 0 ? variants : undefined, variant: own });
}

/** Readings and acceptances of circuits that neither the present design nor a variant has any more. */
function forgetNowhere(site: Site): Site {
  const known = new Set([...site.circuits.map(({ id }) => id), ...circuitsOfVariants(site)]);
  const isSomewhere = ({ circuit }: { readonly circuit?: string | undefined }): boolean =>
    circuit === undefined || known.has(circuit);
  return keepAcceptances(withList(site, 'readings', kept(site.readings, isSomewhere)), isSomewhere);
}

/** The present design as it stands in a variant; unknown fields of the one that stood there stay. */
function stored(site: Site, before: Variant | null): Variant['design'] {
  const unknown = Object.entries(before?.design ?? {}).filter(
    ([key]) => !(DESIGN_FIELDS as readonly string[]).includes(key)
  );
  return { ...Object.fromEntries(unknown), ...designOf(site) };
}

/** Under a new name, beside those there are. `at`: when, ISO 8601. The present design then is a working state of it. */
export function keepVariant(site: Site, name: string, at?: string): Site {
  const all = variantsOf(site);
  if (!isName(name) || all.length >= COUNTS.variants) return site;
  const id = freeId(all, 'V');
  const next: Variant = {
    id,
    name: name.trim(),
    ...(at === undefined ? {} : { kept: at }),
    design: stored(site, null)
  };
  return { ...site, variants: [...all, next], variant: id };
}

/** In the place of what the variant held. The present design then is a working state of it. */
export function keepOver(site: Site, id: string, at?: string): Site {
  const before = variantOf(site, id);
  if (!before) return site;
  if (holdsPresent(site, before)) return site.variant === id ? site : { ...site, variant: id };
  const next: Variant = {
    ...before,
    ...(at === undefined ? {} : { kept: at }),
    design: stored(site, before)
  };
  const variants = variantsOf(site).map((each) => (each === before ? next : each));
  return forgetNowhere({ ...site, variants, variant: id });
}

/** The variant's design as it was kept, in the place of the present one, which is not kept. */
export function restoreVariant(site: Site, id: string): Site {
  const variant = variantOf(site, id);
  if (!variant || (site.variant === id && isKept(site))) return site;
  return forgetNowhere({ ...withDesign(site, variant.design), variant: id });
}

/**
 * The present design kept in any case: over the variant that it is a working state of; as it is where some variant holds it
 * already; else as a new one of that name. Null where it cannot be kept.
 */
function keepPresent(site: Site, name: string, at?: string): Site | null {
  if (variantOf(site, site.variant))
    return site.variant === undefined ? null : keepOver(site, site.variant, at);
  if (variantsOf(site).some((each) => holdsPresent(site, each))) return site;
  const next = keepVariant(site, name, at);
  return next === site ? null : next;
}

/** To another variant; the present design is kept first, so that nothing is lost. */
export function switchTo(site: Site, id: string, nameForPresent: string, at?: string): Site {
  if (!variantOf(site, id) || site.variant === id) return site;
  const safe = keepPresent(site, nameForPresent, at);
  return safe ? restoreVariant(safe, id) : site;
}

/**
 * A new variant that begins as a copy of another, and is worked on from here on; null: of the present design. The present
 * design is kept first, under `nameForPresent` where it is none of the variants yet.
 */
export function branchFrom(
  site: Site,
  id: string | null,
  name: string,
  nameForPresent: string = name,
  at?: string
): Site {
  if (id === null) return keepVariant(site, name, at);
  const from = variantOf(site, id);
  const safe = from && keepPresent(site, nameForPresent, at);
  if (!safe) return site;
  // as it was kept, also where the present design has just been kept over it
  const branched = keepVariant(withDesign(safe, from.design), name, at);
  return branched.variants?.length === (safe.variants?.length ?? 0) + 1 ? forgetNowhere(branched) : site;
}

const patchVariant = (
  site: Site,
  id: string,
  patch: Pick<Partial<Variant>, 'name'> | { note?: string | undefined }
): Site =>
  withList(
    site,
    'variants',
    site.variants && mapped(site.variants, (each) => (each.id === id ? patched<Variant>(each, patch) : each))
  );

export function renameVariant(site: Site, id: string, name: string): Site {
  return isName(name) ? patchVariant(site, id, { name: name.trim() }) : site;
}

/** An empty note is none. */
export function noteVariant(site: Site, id: string, note: string): Site {
  if (!variantSchema.shape.note.safeParse(note).success) return site;
  return patchVariant(site, id, { note: note === '' ? undefined : note });
}

/** The present design stays as it is, even if it was a working state of it. */
export function removeVariant(site: Site, id: string): Site {
  const all = variantsOf(site);
  const left = kept(all, (each) => each.id !== id);
  return left === all ? site : forgetNowhere(withVariants(site, left));
}

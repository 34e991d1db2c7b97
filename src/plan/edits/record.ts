/** The commissioning record: its own words, and how each circuit was accepted. */
import type { FieldCheck, Site } from '../schema';
import { kept, mapped, patched, type Patch } from './list';
import { updateFieldCheck } from './readings';

type FieldRecord = NonNullable<FieldCheck['record']>;
export type Acceptance = NonNullable<FieldRecord['circuits']>[number];
export type RecordVerdict = Acceptance['verdict'];

/** A record that says nothing is left out. The same site when nothing changes or a value is outside its bounds. */
export function updateRecord(site: Site, patch: Patch<FieldRecord>): Site {
  const before: FieldRecord = site.fieldCheck?.record ?? {};
  const record = patched<FieldRecord>(before, patch);
  if (record === before) return site;
  return updateFieldCheck(site, { record: Object.keys(record).length > 0 ? record : undefined });
}

export const acceptanceOf = ({ fieldCheck }: Pick<Site, 'fieldCheck'>, circuit: string) =>
  fieldCheck?.record?.circuits?.find((each) => each.circuit === circuit);

function withAcceptances(site: Site, circuits: readonly Acceptance[]): Site {
  return updateRecord(site, { circuits: circuits.length > 0 ? [...circuits] : undefined });
}

/** Null: nothing is decided, and what was remarked goes with it. */
export function acceptCircuit(site: Site, circuit: string, verdict: RecordVerdict | null): Site {
  const known = acceptanceOf(site, circuit);
  if ((known?.verdict ?? null) === verdict || !site.circuits.some(({ id }) => id === circuit)) return site;
  const others = site.fieldCheck?.record?.circuits ?? [];
  if (verdict === null)
    return withAcceptances(
      site,
      others.filter((each) => each !== known)
    );
  const next: Acceptance = { ...known, circuit, verdict };
  return withAcceptances(
    site,
    known ? others.map((each) => (each === known ? next : each)) : [...others, next]
  );
}

/** Beside a verdict that there is; without one the site stays the same. */
export function remarkOnCircuit(site: Site, circuit: string, remarks: string): Site {
  const all = site.fieldCheck?.record?.circuits ?? [];
  const next = mapped(all, (each) =>
    each.circuit === circuit
      ? patched<Acceptance>(each, { remarks: remarks === '' ? undefined : remarks })
      : each
  );
  return next === all ? site : withAcceptances(site, next);
}

/** Drops those of circuits that have gone. */
export function keepAcceptances(site: Site, keep: (acceptance: Acceptance) => boolean): Site {
  const all = site.fieldCheck?.record?.circuits ?? [];
  const next = kept(all, keep);
  return next === all ? site : withAcceptances(site, next);
}

export function renameAcceptance(site: Site, from: string, to: string): Site {
  const all = site.fieldCheck?.record?.circuits ?? [];
  const next = mapped(all, (each) => (each.circuit === from ? { ...each, circuit: to } : each));
  return next === all ? site : withAcceptances(site, next);
}

/** Takes a slot for this tab, or looks at it over another tab's shoulder, and reads its newest state. */
import { t } from '#i18n/message';
import { newestVersion } from '#plan/migrations/index';
import { readSite } from '#plan/read';
import type { Site } from '#plan/schema';
import { recover, type Recovery } from '#storage/recovery';
import { refusalOf } from '#storage/refusal';
import { recordOf, slotOf, type SiteRecord, type StateStore, type Writer } from '#storage/states';
import type { Tenancy } from '#storage/tenancy';

export interface Desk {
  readonly store: StateStore;
  readonly tenancy: Tenancy;
  readonly writer: Writer;
}

export interface Entered {
  readonly slot: string;
  readonly tenure: 'own' | 'elsewhere' | 'newer release';
  readonly record: SiteRecord;
  readonly recovery: Recovery<Site>;
}

export const FORMAT = newestVersion();

const random = () => Math.random().toString(36).slice(2, 10);
export const freshOwner = (): string => `tab ${Date.now()} ${random()}`;
export const freshSlot = (): string => `slot ${Date.now()} ${random()}`;

export function readKept(text: string) {
  const reading = readSite(text);
  return reading.ok
    ? { document: reading.site }
    : { reason: reading.problems.map(({ message }) => message).join(' ') };
}

export const copyName = (name: string): string => t('keeping.copyName', { name: name.slice(0, 180) });

async function recordFor(store: StateStore, slot: string): Promise<SiteRecord> {
  const found = await store.records().catch(() => []);
  return recordOf(
    slot,
    found.find((each) => slotOf(each) === slot)
  );
}

/** Never rejects: a store that fails is in the recovery's refusal. */
export async function enterSlot(desk: Desk, slot: string, isReturning = false): Promise<Entered> {
  const { store, tenancy, writer } = desk;
  let tenure: Entered['tenure'] = (await tenancy.hold(slot, isReturning)) ? 'own' : 'elsewhere';
  if (tenure === 'own') {
    const refusal = await store.claim(slot, writer).then(() => null, refusalOf);
    // Any other refusal is said when there is something to write.
    if (refusal?.kind === 'newer') tenure = 'newer release';
  }
  const recovery = await recover(store, slot, readKept, Date.now, tenure === 'own');
  return { slot, tenure, record: await recordFor(store, slot), recovery };
}

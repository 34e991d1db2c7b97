/** What can be done with the sites that are kept. Loaded when their list is first looked at. */
import { dateTime } from '#i18n/locale';
import { t } from '#i18n/message';
import { saying, type Words } from '#i18n/saying';
import { demoSite } from '#plan/demo';
import { updateSite } from '#plan/edits/index';
import { writeSite } from '#plan/read';
import type { Site } from '#plan/schema';
import { readSafely } from '#storage/recovery';
import {
  isSetAside,
  isStateMark,
  keptMarks,
  newestFirst,
  recordOf,
  slotOf,
  type SiteRecord,
  type StateMark
} from '#storage/states';
import type { ListedSite, Sites } from '#ui/sites';
import { copyName, freshSlot, readKept, type Desk } from './enter-slot';

export interface SitesParts extends Desk {
  /** The slot of the site that is open; null if it is in none. */
  readonly here: () => string | null;
  readonly site: () => Site;
  readonly flush: () => Promise<void>;
  readonly open: (slot: string) => Promise<void>;
  readonly openNew: (site: Site) => void;
  /** A step of the open site, which is kept as a state of its own. */
  readonly change: (site: Site, label: Words) => void;
}

/** How long something lies in the bin, milliseconds. */
export const BIN_AGE = 30 * 24 * 3600 * 1000;

export function createSites(parts: SitesParts): Sites {
  const { store, tenancy, writer } = parts;

  async function records(): Promise<ReadonlyMap<string, SiteRecord>> {
    const found = (await store.records()).flatMap((each) => {
      const slot = slotOf(each);
      return slot === null ? [] : [[slot, recordOf(slot, each)] as const];
    });
    return new Map(found);
  }

  async function read(slot: string, begun: number): Promise<Site> {
    const result = readSafely(readKept, await store.text(slot, begun));
    if ('reason' in result) throw new Error(result.reason);
    return result.document;
  }

  async function newestOf(slot: string): Promise<StateMark> {
    const marks = (await store.marks()).filter(isStateMark).filter((mark) => mark.slot === slot);
    const [newest] = marks.sort(newestFirst);
    if (!newest) throw new Error(t('keeping.nothingReadable'));
    return newest;
  }

  /** In the slot of a site that is open nowhere, as its newest state, even if the clock was ahead at the last one. */
  async function keep(slot: string, site: Site, last = 0): Promise<void> {
    const at = Math.max(Date.now(), last + 1);
    await store.put({ slot, begun: at, savedAt: at, name: site.name, text: writeSite(site) }, writer);
  }

  /** Does something as the site's only writer; refused while another tab has it. */
  async function alone(slot: string, work: () => Promise<void>): Promise<void> {
    if (!(await tenancy.hold(slot))) throw new Error(t('banner.elsewhere'));
    try {
      await store.claim(slot, writer);
      await work();
    } finally {
      if (parts.here() !== slot) tenancy.release(slot);
    }
  }

  /** What the bin has held long enough; one that is open somewhere all the same stays. */
  async function emptyOldBin(): Promise<void> {
    const now = Date.now();
    for (const { slot, deletedAt } of (await records()).values())
      if (deletedAt !== null && now - deletedAt > BIN_AGE) await store.removeSite(slot);
  }

  return {
    async list() {
      await parts.flush();
      await emptyOldBin().catch(() => undefined);
      const [found, known, open] = await Promise.all([store.marks(), records(), tenancy.openSlots()]);
      const bySlot = new Map<string, StateMark[]>();
      for (const mark of found.filter(isStateMark).sort(newestFirst))
        bySlot.set(mark.slot, [...(bySlot.get(mark.slot) ?? []), mark]);
      return [...bySlot].map(([slot, states]): ListedSite => {
        const { name, savedAt, size } = states[0]!;
        const { deletedAt, file } = known.get(slot) ?? recordOf(slot, null);
        const place = slot === parts.here() ? 'here' : open.has(slot) ? 'elsewhere' : 'closed';
        return { slot, name, savedAt, size, place, states, deletedAt, fileName: file?.name ?? null };
      });
    },

    asides: async () => (await store.asides()).filter(isSetAside),
    dropAside: (key) => store.dropAside(key),

    async rename(slot, name) {
      if (slot === parts.here()) {
        parts.change(updateSite(parts.site(), { name }), saying('site.name'));
        return parts.flush();
      }
      await alone(slot, async () => {
        const { begun, savedAt } = await newestOf(slot);
        await keep(slot, updateSite(await read(slot, begun), { name }), savedAt);
      });
    },

    async duplicate(slot) {
      await parts.flush();
      const { begun } = await newestOf(slot);
      const site = await read(slot, begun);
      await keep(freshSlot(), updateSite(site, { name: copyName(site.name) }));
    },

    async remove(slot) {
      const isHere = slot === parts.here();
      if (isHere) await parts.flush();
      await alone(slot, () => store.change(slot, writer, (record) => ({ ...record, deletedAt: Date.now() })));
      if (!isHere) return;
      const open = await tenancy.openSlots();
      const next = (await keptMarks(store)).find((mark) => mark.slot !== slot && !open.has(mark.slot));
      if (next) await parts.open(next.slot);
      if (parts.here() === slot) parts.openNew(demoSite());
    },

    async restore(slot, isToOpen) {
      await store.change(slot, null, (record) => ({ ...record, deletedAt: null }));
      if (isToOpen) await parts.open(slot);
    },

    removeForGood: (slot) => alone(slot, () => store.removeSite(slot)),

    async openCopy(slot, begun) {
      const site = await read(slot, begun);
      parts.openNew(updateSite(site, { name: copyName(site.name) }));
    },

    async goBack(slot, begun) {
      const site = await read(slot, begun);
      if (slot !== parts.here()) await parts.open(slot);
      if (slot !== parts.here()) return;
      const mark = (await store.marks())
        .filter(isStateMark)
        .find((each) => each.slot === slot && each.begun === begun);
      parts.change(site, saying('keeping.goBackStep', { time: () => dateTime(mark?.savedAt ?? begun) }));
      await parts.flush();
    }
  };
}

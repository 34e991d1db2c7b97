/** Which site a page opens on: the one that it had, else the newest that no other tab has, else the demo. */
import { demoSite } from '#plan/demo';
import type { Site } from '#plan/schema';
import { keptMarks, recordOf, type SetAside, type SiteRecord, type StateMark } from '#storage/states';
import { enterSlot, freshSlot, type Desk, type Entered } from './enter-slot';

export interface Start {
  readonly slot: string;
  readonly site: Site;
  readonly tenure: 'own' | 'elsewhere';
  readonly record: SiteRecord;
  /** When the site had been kept, if it was found in the store; milliseconds since 1970. */
  readonly recoveredFrom: number | null;
  readonly salvage: readonly SetAside[];
  /** The newest site, which another tab has. */
  readonly elsewhere: { readonly slot: string; readonly name: string } | null;
}

/** In a slot that nobody has; the lock on it is for show, as no other tab knows its name. */
export function freshStart(
  desk: Desk,
  salvage: readonly SetAside[] = [],
  elsewhere: Start['elsewhere'] = null,
  slot = freshSlot()
): Start {
  void desk.tenancy.hold(slot);
  return {
    slot,
    site: demoSite(),
    tenure: 'own',
    record: recordOf(slot, null),
    recoveredFrom: null,
    salvage,
    elsewhere
  };
}

function startFrom(desk: Desk, { slot, tenure, record, recovery }: Entered): Start {
  const { found, aside } = recovery;
  if (tenure === 'newer release') desk.tenancy.release(slot);
  if (!found || tenure === 'newer release')
    // A slot of which nothing was readable is empty now and still this tab's.
    return freshStart(desk, aside, null, tenure === 'own' ? slot : undefined);
  return {
    slot,
    site: found.document,
    tenure,
    record,
    recoveredFrom: tenure === 'own' ? found.state.savedAt : null,
    salvage: aside,
    elsewhere: null
  };
}

/** `remembered`: the slot that this tab had before a reload. Never rejects. */
export async function findStart(desk: Desk, remembered: string | null): Promise<Start> {
  if (remembered !== null) {
    const entered = await enterSlot(desk, remembered, true);
    const { found, aside } = entered.recovery;
    if (found || aside.length > 0) return startFrom(desk, entered);
    // Nothing was ever kept there.
    desk.tenancy.release(remembered);
  }
  const marks: readonly StateMark[] = await keptMarks(desk.store).catch(() => []);
  const newest = marks[0];
  if (!newest) return freshStart(desk);
  if (!(await desk.tenancy.hold(newest.slot)))
    return freshStart(desk, [], { slot: newest.slot, name: newest.name });
  return startFrom(desk, await enterSlot(desk, newest.slot));
}

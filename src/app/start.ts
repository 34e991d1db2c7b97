/** Which site a page opens on: the one that it had, else the newest that no other tab has, else the demo. */
import { demoSite } from '#plan/demo';
import type { Site } from '#plan/schema';
import { refusalOf, type Refusal } from '#storage/refusal';
import { keptMarks, recordOf, type SetAside, type SiteRecord, type StateStore } from '#storage/states';
import { after } from './after';
import { enterSlot, freshSlot, type Desk, type Entered } from './enter-slot';

export interface Start {
  readonly slot: string;
  readonly site: Site;
  readonly tenure: 'own' | 'elsewhere';
  readonly record: SiteRecord;
  /** When the site had been kept, if it was found in the store; milliseconds since 1970. */
  readonly newest: number | null;
  /** The same, if it has been brought back from there to be worked on. */
  readonly recoveredFrom: number | null;
  readonly salvage: readonly SetAside[];
  /** The newest site, which another tab has. */
  readonly elsewhere: KeptSite | null;
  /** The store could not be read, so that this is not what the tab would have opened on. */
  readonly unread: { readonly why: Refusal; readonly remembered: string | null } | null;
}

interface KeptSite {
  readonly slot: string;
  readonly name: string;
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
    newest: null,
    recoveredFrom: null,
    salvage,
    elsewhere,
    unread: null
  };
}

function startFrom(desk: Desk, { slot, tenure, record, recovery }: Entered): Start {
  const { found, aside, refusal } = recovery;
  // A slot of which nothing was readable is empty now and still this tab's; one that could not be read is not empty.
  const isEmpty = !found && tenure === 'own' && refusal === null;
  if (!isEmpty && (!found || tenure === 'newer release')) desk.tenancy.release(slot);
  if (!found || tenure === 'newer release') return freshStart(desk, aside, null, isEmpty ? slot : undefined);
  const { savedAt } = found.state;
  return {
    slot,
    site: found.document,
    tenure,
    record,
    newest: savedAt,
    recoveredFrom: tenure === 'own' ? savedAt : null,
    salvage: aside,
    elsewhere: null,
    unread: null
  };
}

async function findReadable(desk: Desk, remembered: string | null): Promise<Start> {
  let entered = remembered === null ? null : await enterSlot(desk, remembered, true);
  if (entered && !entered.recovery.found && entered.recovery.aside.length === 0) {
    // Nothing was ever kept there.
    desk.tenancy.release(entered.slot);
    entered = null;
  }
  if (!entered) {
    const [newest] = await keptMarks(desk.store);
    if (!newest) return freshStart(desk);
    const { slot, name } = newest;
    if (!(await desk.tenancy.hold(slot))) return freshStart(desk, [], { slot, name });
    entered = await enterSlot(desk, slot);
  }
  const start = startFrom(desk, entered);
  const { found, refusal } = entered.recovery;
  return found || !refusal ? start : { ...start, unread: { why: refusal, remembered } };
}

/** `remembered`: the slot that this tab had before a reload. Never rejects. */
export async function findStart(desk: Desk, remembered: string | null): Promise<Start> {
  try {
    return await findReadable(desk, remembered);
  } catch (problem) {
    return { ...freshStart(desk), unread: { why: refusalOf(problem), remembered } };
  }
}

/** Seconds between two looks at a store that could not be read. */
const LOOK_AGAIN = 2;

/**
 * What `findStart` would have opened on, as soon as the store can be read; null where nothing is kept. `takeIn` brings into
 * the store what it could not take before; `own`: the slot that the page began with instead.
 */
export async function awaitKept(
  store: StateStore,
  remembered: string | null,
  own: string,
  takeIn: () => Promise<void>
): Promise<KeptSite | null> {
  for (;;) {
    await new Promise<void>((resolve) => after(LOOK_AGAIN, resolve));
    try {
      await takeIn();
      const marks = (await keptMarks(store)).filter(({ slot }) => slot !== own);
      const found = marks.find(({ slot }) => slot === remembered) ?? marks[0];
      return found ? { slot: found.slot, name: found.name } : null;
    } catch {
      // not yet
    }
  }
}

/**
 * Which slot this tab writes to. A lock that lives as long as the tab keeps every other tab out of it, a crash included.
 */

/** As much of the browser's lock manager as is needed. */
export interface Locks {
  request(
    name: string,
    options: { readonly ifAvailable?: boolean; readonly signal?: AbortSignal },
    held: (lock: unknown) => Promise<void> | void
  ): Promise<unknown>;
}

export interface SlotClaim {
  readonly slot: string;
  /** The slot whose newest state this tab should open, or null to start with something new. */
  readonly recoverFrom: string | null;
}

export interface SlotOptions {
  /** Null where the browser has none: then no slot is ever written by two tabs, as each takes a fresh one. */
  readonly locks: Locks | null;
  /** The slot this tab had before a reload. */
  readonly remembered: string | null;
  /** Slot of the newest state. */
  readonly newest: string | null;
  readonly fresh: () => string;
}

/** The page before a reload may take a moment to let go, milliseconds. */
const RELOAD_PATIENCE = 600;

function hold(locks: Locks, slot: string, wait: boolean): Promise<boolean> {
  const options = wait ? { signal: AbortSignal.timeout(RELOAD_PATIENCE) } : { ifAvailable: true };
  return new Promise((resolve) => {
    locks
      .request(`kerfline ${slot}`, options, (lock) => {
        resolve(lock !== null);
        // Held until the tab is gone.
        return lock === null ? undefined : new Promise<void>(() => {});
      })
      .catch(() => {
        resolve(false);
      });
  });
}

export async function claimSlot({ locks, remembered, newest, fresh }: SlotOptions): Promise<SlotClaim> {
  const wanted = remembered ?? newest;
  if (locks && wanted !== null && (await hold(locks, wanted, remembered !== null))) {
    return { slot: wanted, recoverFrom: wanted };
  }
  const slot = fresh();
  if (locks) await hold(locks, slot, false);
  // A duplicated tab goes on from what it was duplicated from; a second tab beside a busy one starts anew.
  return { slot, recoverFrom: locks ? remembered : wanted };
}

/**
 * Which tab has a slot. A lock that lives as long as the tab keeps every other tab out of it, a crash included; tabs ask
 * each other to let go by messages. What decides in the end is the owner that the store records: whoever lost a slot
 * without hearing of it, frozen or without any locks, is refused there.
 */

/** As much of the browser's lock manager as is needed. */
export interface Locks {
  request(
    name: string,
    options: { readonly ifAvailable?: boolean; readonly steal?: boolean; readonly signal?: AbortSignal },
    held: (lock: unknown) => Promise<void> | void
  ): Promise<unknown>;
  query(): Promise<{ readonly held?: readonly { readonly name?: string }[] }>;
}

/** As much of a broadcast channel as is needed. */
export interface Channel {
  postMessage(message: unknown): void;
  addEventListener(type: 'message', listener: (event: { readonly data: unknown }) => void): void;
}

/** 'who': is anybody there? 'mine': yes. 'please': another tab would like the slot. 'gone': it was let go. */
interface Message {
  readonly kind: 'who' | 'mine' | 'please' | 'gone';
  readonly slot: string;
}

export interface TenancyOptions {
  /** Null where the browser has none. */
  readonly locks: Locks | null;
  readonly channel: Channel | null;
  /** Another tab asks for a slot that is held here; whoever is asked lets go when its work is written. */
  readonly onAsked: (slot: string) => void;
  /** A slot that was held here is another tab's now. */
  readonly onLost: (slot: string) => void;
}

export interface Tenancy {
  /** `isReturning`: a page before this one may have had it and take a moment to go. False: another tab has it. */
  hold(slot: string, isReturning?: boolean): Promise<boolean>;
  /** Asks whoever has the slot to let go; one that does not answer in time loses it. */
  takeOver(slot: string): Promise<void>;
  release(slot: string): void;
  /** The slots that any tab has open, as far as can be told. */
  openSlots(): Promise<ReadonlySet<string>>;
}

/** Milliseconds. A page that reloads may be slow to go; a tab that lives answers at once, also in the background. */
const RETURN_PATIENCE = 5000;
const ANSWER_PATIENCE = 250;
/** For writing the last change; a tab that is frozen or dead does not answer. */
const TAKE_OVER_PATIENCE = 4000;

const PREFIX = 'kerfline ';

function messageOf(data: unknown): Message | null {
  const { kind, slot } = (data ?? {}) as Partial<Record<keyof Message, unknown>>;
  return typeof kind === 'string' && typeof slot === 'string' ? ({ kind, slot } as Message) : null;
}

export function createTenancy({ locks, channel, onAsked, onLost }: TenancyOptions): Tenancy {
  /** How each slot that is held here is let go. */
  const held = new Map<string, () => void>();
  const ears = new Set<(message: Message) => void>();

  const say = (kind: Message['kind'], slot: string) => {
    channel?.postMessage({ kind, slot });
  };

  channel?.addEventListener('message', ({ data }) => {
    const message = messageOf(data);
    if (!message) return;
    for (const ear of [...ears]) ear(message);
    if (!held.has(message.slot)) return;
    if (message.kind === 'who') say('mine', message.slot);
    if (message.kind === 'please') onAsked(message.slot);
  });

  /** Aborted when `kind` is said of the slot, or after `patience`: the result tells which. */
  function hear(
    slot: string,
    kind: Message['kind'],
    patience: number,
    ended?: AbortSignal
  ): Promise<boolean> {
    if (!channel) return Promise.resolve(false);
    return new Promise((resolve) => {
      const end = (wasHeard: boolean) => {
        clearTimeout(timer);
        ears.delete(ear);
        resolve(wasHeard);
      };
      const ear = (message: Message) => {
        if (message.slot === slot && message.kind === kind) end(true);
      };
      const timer = setTimeout(() => {
        end(false);
      }, patience);
      ended?.addEventListener('abort', () => {
        end(false);
      });
      ears.add(ear);
    });
  }

  function lose(slot: string, letGo: () => void) {
    if (held.get(slot) !== letGo) return;
    held.delete(slot);
    onLost(slot);
  }

  function lock(
    { request }: Pick<Locks, 'request'>,
    slot: string,
    options: Parameters<Locks['request']>[1]
  ): Promise<boolean> {
    return new Promise((resolve) => {
      let letGo = () => {};
      const kept = new Promise<void>((end) => {
        letGo = end;
      });
      request(PREFIX + slot, options, (granted) => {
        if (granted === null) {
          resolve(false);
          return undefined;
        }
        held.set(slot, letGo);
        resolve(true);
        // Held until it is let go or the tab is gone.
        return kept;
      }).catch(() => {
        // Never granted, or stolen since.
        lose(slot, letGo);
        resolve(false);
      });
    });
  }

  const bound = locks && { request: locks.request.bind(locks) };

  async function returning(slot: string, manager: NonNullable<typeof bound>): Promise<boolean> {
    if (await lock(manager, slot, { ifAvailable: true })) return true;
    const giveUp = new AbortController();
    const timer = setTimeout(() => {
      giveUp.abort();
    }, RETURN_PATIENCE);
    const isAnswered = hear(slot, 'mine', RETURN_PATIENCE, giveUp.signal).then((wasHeard) => {
      if (wasHeard) giveUp.abort();
    });
    say('who', slot);
    const isHeld = await lock(manager, slot, { signal: giveUp.signal });
    clearTimeout(timer);
    giveUp.abort();
    await isAnswered;
    return isHeld;
  }

  return {
    async hold(slot, isReturning = false) {
      if (held.has(slot)) return true;
      if (bound) return isReturning ? returning(slot, bound) : lock(bound, slot, { ifAvailable: true });
      const isTaken = hear(slot, 'mine', ANSWER_PATIENCE);
      say('who', slot);
      if (await isTaken) return false;
      held.set(slot, () => {});
      return true;
    },
    async takeOver(slot) {
      if (held.has(slot)) return;
      const isGone = hear(slot, 'gone', TAKE_OVER_PATIENCE);
      say('please', slot);
      if (!bound) {
        await isGone;
        held.set(slot, () => {});
        return;
      }
      const signal = AbortSignal.timeout(TAKE_OVER_PATIENCE);
      if (!(await lock(bound, slot, { signal }))) await lock(bound, slot, { steal: true });
    },
    release(slot) {
      const letGo = held.get(slot);
      if (!letGo) return;
      held.delete(slot);
      letGo();
      say('gone', slot);
    },
    async openSlots() {
      const here = [...held.keys()];
      if (!locks) return new Set(here);
      const all = await locks.query().catch(() => ({ held: [] }));
      const names = (all.held ?? []).flatMap(({ name }) =>
        name?.startsWith(PREFIX) ? [name.slice(PREFIX.length)] : []
      );
      return new Set([...here, ...names]);
    }
  };
}

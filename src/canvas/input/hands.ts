/**
 * What each pointer that is down does. One draws; the middle button and the space bar move the view, two fingers move and
 * zoom it. A finger that rests opens the menu. Once a pen was seen it draws and a finger only moves the view; while it is
 * down, whatever else touches the glass is a palm.
 */
import type { PointerInput } from '#editor/types';
import type { Point } from '#plan/schema';
import { pinchBetween } from './pinch';

/** A pointer where it is now; pixels on the surface. */
export interface Contact {
  readonly id: number;
  readonly kind: PointerInput['pointer'];
  readonly at: Point;
}

export interface HandActs {
  /** To the tool in hand. */
  send(type: 'down' | 'move' | 'up' | 'cancel', contact: Contact): void;
  pan(dx: number, dy: number): void;
  zoom(factor: number, about: Point): void;
  /** The view is being moved by hand, or no longer. */
  panning(active: boolean): void;
  /** A finger has rested there for long enough to ask for the menu. */
  menu(at: Point): void;
  /** Calls back after so many milliseconds unless the returned function is called before. */
  after(delay: number, callback: () => void): () => void;
}

export interface HandHabits {
  readonly isSpaceHeld: () => boolean;
  /** Once a pen was seen, fingers only move the view. */
  readonly penDraws: () => boolean;
}

export interface Hands {
  down(contact: Contact, isMiddle?: boolean): void;
  move(contact: Contact): void;
  up(contact: Contact): void;
  /** The browser took the pointer away: what it was drawing is dropped. */
  cancel(contact: Contact): void;
  /** How many pointers are down. */
  readonly count: number;
}

/** Milliseconds until a resting finger asks for the menu. */
export const LONG_PRESS = 500;
/** Pixels that a finger trembles by without meaning to move. */
export const TREMBLE = 7;

type Role =
  | { readonly kind: 'none' }
  /** A finger that has not yet said what it wants: a tap, a drag, a pinch or the menu. */
  | { readonly kind: 'waiting'; readonly from: Contact; readonly pans: boolean; readonly stop: () => void }
  | { readonly kind: 'drawing' | 'panning'; readonly id: number }
  | { readonly kind: 'pinching' }
  /** What stays on the glass after a pinch or the menu does nothing. */
  | { readonly kind: 'resting' };

export function createHands(acts: HandActs, habits: HandHabits): Hands {
  /** Pointers that are down and where they were last; palms are not among them. */
  const held = new Map<number, Contact>();
  let role: Role = { kind: 'none' };
  let penSeen = false;
  let pen: number | null = null;

  function become(next: Role): void {
    if (role.kind === 'waiting') role.stop();
    const [was, is] = [role.kind === 'panning', next.kind === 'panning'];
    role = next;
    if (was !== is) acts.panning(is);
  }

  function drop(): void {
    const drawing = role.kind === 'drawing' ? held.get(role.id) : undefined;
    if (drawing) acts.send('cancel', drawing);
  }

  function wait(from: Contact): void {
    const pans = (penSeen && habits.penDraws()) || habits.isSpaceHeld();
    const stop = acts.after(LONG_PRESS, () => {
      become({ kind: 'resting' });
      acts.menu(from.at);
    });
    become({ kind: 'waiting', from, pans, stop });
  }

  function fingerDown(contact: Contact): void {
    if (pen !== null || (role.kind === 'drawing' && held.get(role.id)?.kind !== 'touch')) return;
    held.set(contact.id, contact);
    if (held.size === 1) return wait(contact);
    // A second finger turns what the first one began into a movement of the view.
    drop();
    become({ kind: 'pinching' });
  }

  function penDown(contact: Contact): void {
    penSeen = true;
    pen = contact.id;
    // Whatever touched the glass before was the hand that holds the pen.
    drop();
    held.clear();
  }

  function down(contact: Contact, isMiddle = false): void {
    if (contact.kind === 'touch') return fingerDown(contact);
    if (contact.kind === 'pen') penDown(contact);
    held.set(contact.id, contact);
    const pans = isMiddle || habits.isSpaceHeld();
    become({ kind: pans ? 'panning' : 'drawing', id: contact.id });
    if (!pans) acts.send('down', contact);
  }

  function pinch(before: Contact, now: Contact): void {
    const other = [...held.values()].find(({ id }) => id !== now.id);
    if (!other) return;
    const { by, factor, about } = pinchBetween([before.at, other.at], [now.at, other.at]);
    acts.pan(by[0], by[1]);
    acts.zoom(factor, about);
  }

  /** A waiting finger that moves is a drag, from where it came down. */
  function decide(now: Contact): void {
    if (role.kind !== 'waiting') return;
    const { from, pans } = role;
    if (Math.hypot(now.at[0] - from.at[0], now.at[1] - from.at[1]) <= TREMBLE) return;
    become({ kind: pans ? 'panning' : 'drawing', id: now.id });
    if (pans) return acts.pan(now.at[0] - from.at[0], now.at[1] - from.at[1]);
    acts.send('down', from);
    acts.send('move', now);
  }

  function move(now: Contact): void {
    const before = held.get(now.id);
    if (!before) {
      // In the air: it points, but not while something else is down, and a palm never does.
      if (held.size === 0 && now.kind !== 'touch') acts.send('move', now);
      return;
    }
    if (role.kind === 'waiting') decide(now);
    else if (role.kind === 'panning' && role.id === now.id)
      acts.pan(now.at[0] - before.at[0], now.at[1] - before.at[1]);
    else if (role.kind === 'pinching') pinch(before, now);
    else if (role.kind === 'drawing' && role.id === now.id) acts.send('move', now);
    held.set(now.id, now);
  }

  function end(contact: Contact, isCancelled: boolean): void {
    if (pen === contact.id) pen = null;
    if (!held.delete(contact.id)) return;
    if (role.kind === 'waiting' && !role.pans && !isCancelled) {
      // A tap.
      const { from } = role;
      become({ kind: 'none' });
      acts.send('down', from);
      acts.send('up', contact);
    } else if (role.kind === 'drawing' && role.id === contact.id) {
      become({ kind: 'none' });
      acts.send(isCancelled ? 'cancel' : 'up', contact);
    } else if (held.size === 0 || role.kind === 'panning' || role.kind === 'waiting') {
      become({ kind: 'none' });
    } else become({ kind: 'resting' });
  }

  return {
    down,
    move,
    up: (contact) => {
      end(contact, false);
    },
    cancel: (contact) => {
      end(contact, true);
    },
    get count() {
      return held.size;
    }
  };
}

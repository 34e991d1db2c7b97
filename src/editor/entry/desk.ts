/** Keys and fields on their way to the open entry; the gesture hears of every change at once. */
import type { DimensionEntry, EntryValues } from '../dimension-entry';
import type { EditorState, KeyInput } from '../types';
import { hasProblem, keyed, opensEntry, undoneTyping, withText } from './typing';

export interface EntryHost {
  state(): EditorState;
  show(entry: DimensionEntry): void;
  /** Has the gesture look at the pointer again, with what is typed now. */
  repeat(): void;
  /** Offers a key to the gesture; whether it wanted it. */
  offer(key: string): boolean;
}

export interface EntryDesk {
  /** Whether the key was for the entry. */
  key(input: KeyInput): boolean;
  enter(field: keyof EntryValues, text: string | null): void;
  /** Ends the gesture, or its piece; false if there is none or something typed cannot be. */
  commit(): boolean;
}

/** A character, whatever is held to type it: some keyboards have "@" under Control and Alt together. */
const isTyped = ({ key, control, alt }: KeyInput): boolean => [...key].length === 1 && (!control || alt);

export function createEntryDesk(host: EntryHost): EntryDesk {
  const units = () => host.state().site.displayUnits;

  function change(entry: DimensionEntry): true {
    host.show(entry);
    host.repeat();
    return true;
  }

  /** A gesture that has just begun may not have said yet what can be typed. */
  function opened(input: KeyInput): DimensionEntry | null {
    const { entry, busy } = host.state();
    if (entry || !busy || !isTyped(input) || !opensEntry(input.key)) return entry;
    host.offer(input.key);
    return host.state().entry;
  }

  function commit(): boolean {
    const { entry, busy } = host.state();
    if (!busy) return false;
    if (entry && hasProblem(entry)) {
      host.show({ ...entry, isRefused: true });
      return false;
    }
    return host.offer('Enter');
  }

  function key(input: KeyInput): boolean {
    const entry = opened(input);
    if (!entry) return false;
    const isOpen = entry.active !== null;
    if (input.control && !isTyped(input)) {
      // Undo belongs to the typing while there is any.
      return isOpen && input.key.toLowerCase() === 'z' && change(undoneTyping(entry, units()));
    }
    if (input.alt && !isTyped(input)) return false;
    // With nothing typed, Enter is the tool's own: it ends a chain.
    const next = keyed(entry, input, units());
    if (next === 'enter') {
      commit();
      return true;
    }
    return next !== null && change(next);
  }

  return {
    key,
    commit,
    enter(field, text) {
      const { entry } = host.state();
      if (entry) change(withText(entry, field, text, units()));
    }
  };
}

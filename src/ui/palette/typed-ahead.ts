/**
 * What is typed between the key that asks for the palette and the moment when its field is there: on a slow machine a quick
 * hand has written the whole name by then.
 */
export interface TypedAhead {
  readonly text: string;
  /** Enter was pressed after it. */
  readonly isDone: boolean;
}

const NOTHING: TypedAhead = { text: '', isDone: false };

export function createTypedAhead() {
  let typed = NOTHING;
  return {
    /** True for a key that was meant for the field, and is kept for it. */
    hear({ key, ctrlKey, metaKey, altKey }: KeyboardEvent): boolean {
      if (ctrlKey || metaKey || altKey) return false;
      if (key === 'Enter') typed = { ...typed, isDone: true };
      else if (key === 'Backspace') typed = { text: typed.text.slice(0, -1), isDone: false };
      else if ([...key].length === 1) typed = { text: typed.text + key, isDone: false };
      else return false;
      return true;
    },
    /** And nothing is left of it. */
    take(): TypedAhead {
      const taken = typed;
      typed = NOTHING;
      return taken;
    }
  };
}

export const typedAhead = createTypedAhead();

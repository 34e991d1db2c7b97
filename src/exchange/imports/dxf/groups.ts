/**
 * A drawing's text as groups: a code on one line, what it says on the next. Walked by place and not cut into lines, since
 * fifty megabytes are millions of them.
 */
export interface Group {
  readonly code: number;
  readonly value: string;
  /** Where the code begins, and where the next group does, in characters. */
  readonly from: number;
  readonly to: number;
}

/** The text broke off, or where a code should stand there is none. */
export class NoGroups extends Error {
  readonly kind: 'cut' | 'damaged';
  constructor(kind: NoGroups['kind']) {
    super(kind);
    this.kind = kind;
  }
}

/** Characters of the longest line that is looked at; nothing that draws a line needs more. */
const LONGEST = 4_096;

export interface Groups {
  /** Null at the end of the text. Throws `NoGroups`. */
  next(): Group | null;
}

export function groupsOf(text: string): Groups {
  let at = text.charCodeAt(0) === 0xfeff ? 1 : 0;

  function line(): string | null {
    if (at >= text.length) return null;
    const end = text.indexOf('\n', at);
    const stop = end < 0 ? text.length : end;
    const found = text.slice(at, Math.min(stop, at + LONGEST)).trim();
    at = stop + 1;
    return found;
  }

  return {
    next() {
      const from = at;
      const written = line();
      // blank lines behind the end are nothing
      if (written === null || (written === '' && text.slice(from).trim() === '')) return null;
      const code = /^-?\d{1,5}$/.test(written) ? Number(written) : NaN;
      if (Number.isNaN(code)) throw new NoGroups('damaged');
      const value = line();
      if (value === null) throw new NoGroups('cut');
      return { code, value, from, to: Math.min(at, text.length) };
    }
  };
}

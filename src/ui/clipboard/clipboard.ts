/**
 * Things go through the system's clipboard as text, so that they reach other windows and outlive a reload. Keys come as
 * the browser's own events, for which it asks no leave; a menu has to ask, and where it is refused the window's own
 * clipboard must do.
 */
import { createContext } from 'svelte';
import type { Editor } from '#editor/types';
import { t } from '#i18n/message';
import { readThings, writeThings } from '#plan/things-text';
import { describeRefs } from '#editor/selection';

export interface Clipboard {
  /** What was copied or cut, as text; null when there was nothing to take. */
  take(how: 'copy' | 'cut'): string | null;
  /** Text from the clipboard, whatever it is; false when nothing was pasted. */
  put(text: string, inPlace: boolean): boolean;
  /** A command of the clipboard without an event of the browser; nothing is pasted that is not wanted any more by then. */
  run(command: string, isWanted?: () => boolean): Promise<void>;
}

export function createClipboard(editor: Editor): Clipboard {
  /** The text of what the editor holds; null when the system could not be given it. */
  let held: string | null = null;

  function take(how: 'copy' | 'cut'): string | null {
    const { clipboard: before } = editor.scratch;
    if (!editor.run(how) || editor.scratch.clipboard === before) return null;
    const { clipboard } = editor.scratch;
    if (!clipboard) return null;
    held = writeThings({ site: clipboard.site, things: clipboard.refs, standing: clipboard.standing });
    if (how === 'copy') editor.say(t('notice.copied', { things: describeRefs(clipboard.refs) }));
    return held;
  }

  const paste = (inPlace: boolean): boolean => {
    const { revision } = editor.state;
    editor.run(inPlace ? 'paste-in-place' : 'paste');
    return editor.state.revision !== revision;
  };

  function put(text: string, inPlace: boolean): boolean {
    // Line ends may come back as another system writes them.
    const same = text.replaceAll('\r\n', '\n');
    if (same === held) return paste(inPlace);
    if (same.trim() === '' || (held === null && editor.scratch.clipboard)) return paste(inPlace);
    const reading = readThings(same);
    if (reading.kind === 'foreign') {
      editor.say(t('notice.pasteForeign'));
      return false;
    }
    if (reading.kind === 'refused') {
      editor.say(t('notice.pasteRefused', { problem: reading.problems[0]?.message ?? '' }));
      return false;
    }
    const { site, things, standing } = reading;
    Object.assign(editor.scratch, { clipboard: { site, refs: things, standing }, pastes: 0 });
    held = same;
    return paste(inPlace);
  }

  async function run(command: string, isWanted = () => true): Promise<void> {
    if (command === 'copy' || command === 'cut') {
      const text = take(command);
      if (text === null) return;
      try {
        await navigator.clipboard.writeText(text);
      } catch {
        held = null;
        editor.say(t('notice.copiedHere'));
      }
      return;
    }
    const inPlace = command === 'paste-in-place';
    let text = '';
    try {
      text = await navigator.clipboard.readText();
    } catch {
      // Refused: what this window copied is all that there is.
    }
    if (isWanted()) put(text, inPlace);
  }

  return { take, put, run };
}

export const [useClipboard, provideClipboard] = createContext<Clipboard>();

/** A table on its way to the plan: its rows as loops, and those that cannot be. */
import type { LoopsReading, ReadLoops } from '#exchange/imports/loops/read';
import type * as Imports from '#exchange/imports/index';
import { t } from '#i18n/message';
import { saying } from '#i18n/saying';
import { addCircuitFor } from '#plan/edits/index';
import type { Loop, Site } from '#plan/schema';
import type { Bench } from '../bench';

export type Step =
  | { readonly kind: 'reading' }
  | { readonly kind: 'refused'; readonly reason: string }
  | { readonly kind: 'read'; readonly text: string; readonly tools: typeof Imports };

/** What a table was last read as, and in which site: it changes when somebody undoes beneath the dialog. */
interface Known {
  readonly site: Site;
  readonly text: string;
  readonly reading: LoopsReading;
}

export class LoopsWork {
  step = $state.raw<Step>({ kind: 'reading' });
  isWired = $state(true);
  readonly #bench: Bench;
  #known: Known | null = null;

  constructor(bench: Bench, file: File) {
    this.#bench = bench;
    void this.#read(file);
  }

  async #read(file: File): Promise<void> {
    try {
      const tools = await this.#bench.imports();
      // no more is taken into the memory than is read
      if (file.size > tools.MOST_BYTES) this.#refuse('tooLarge');
      else this.#take(decoded(new Uint8Array(await file.arrayBuffer())), tools);
    } catch (problem) {
      const detail = problem instanceof Error ? problem.message : String(problem);
      this.step = { kind: 'refused', reason: t('imports.why.unreadable', { detail }) };
    }
  }

  #take(text: string, tools: typeof Imports): void {
    const reading = this.#readingOf(text, tools);
    if (reading.ok) this.step = { kind: 'read', text, tools };
    else this.#refuse(reading.why, reading.detail);
  }

  #refuse(why: Extract<LoopsReading, { ok: false }>['why'], detail = ''): void {
    const reason = why === 'twice' ? t('imports.why.twice', { detail }) : t(`imports.why.${why}`);
    this.step = { kind: 'refused', reason };
  }

  #readingOf(text: string, tools: typeof Imports): LoopsReading {
    const { site } = this.#bench.state;
    if (this.#known?.site !== site || this.#known.text !== text)
      this.#known = { site, text, reading: tools.readLoops(text, site) };
    return this.#known.reading;
  }

  readonly read = $derived.by((): ReadLoops | null => {
    if (this.step.kind !== 'read') return null;
    const reading = this.#readingOf(this.step.text, this.step.tools);
    return reading.ok ? reading.read : null;
  });
  readonly loops = $derived.by((): readonly Loop[] =>
    this.step.kind === 'read' && this.read ? this.step.tools.loopsOf(this.read) : []
  );

  /** All sound rows as one step; false when there is none. */
  bring(): boolean {
    if (this.step.kind !== 'read' || this.loops.length === 0) return false;
    const { editor } = this.#bench;
    const { site } = editor.state;
    const added = this.step.tools.withLoops(site, this.loops);
    const wired = this.isWired
      ? this.loops.reduce((next, { id, name }) => addCircuitFor(next, id, name || id), added)
      : added;
    if (wired === site) return false;
    const count = wired.loops.length - site.loops.length;
    const selection = this.loops.map(({ id }) => ({ kind: 'loop', id }) as const);
    editor.commit({ label: saying('imports.step.loops', { count }), site: wired, selection });
    editor.fit('selection');
    editor.say(t('imports.brought', { count }));
    return true;
  }
}

/** UTF-8, with or without a mark, or what spreadsheets write where they do not. */
function decoded(bytes: Uint8Array): string {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return new TextDecoder('utf-16le').decode(bytes);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}

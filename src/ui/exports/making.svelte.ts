/** A file while it is made, and what came of it. One at a time. */
import type { ExportKind } from '#exchange/files/exported';
import { t } from '#i18n/message';
import type { Bench, ExportOutcome, ExportWishes } from '../bench';
import { fileName } from './offers';

/** `share`: 0 to 1; null while figures are waited for. */
interface Progress {
  readonly file: string;
  readonly share: number | null;
}

export interface Result {
  readonly text: string;
  readonly isBad: boolean;
}

function resultOf(file: string, outcome: ExportOutcome): Result {
  switch (outcome.kind) {
    case 'made':
      return { text: t('exports.made', { name: outcome.name }), isBad: false };
    case 'ended':
      return { text: t('exports.ended', { file }), isBad: false };
    case 'unfit':
      return { text: t('exports.unfit', { file, message: outcome.message }), isBad: true };
    case 'failed':
      return { text: t('exports.failed', { file, reason: outcome.reason }), isBad: true };
  }
}

export class Making {
  #progress = $state.raw<Progress | null>(null);
  #result = $state.raw<Result | null>(null);
  #ending: AbortController | null = null;

  get progress() {
    return this.#progress;
  }
  get result() {
    return this.#result;
  }

  /** Does nothing while another file is being made. */
  async start(bench: Bench, kind: ExportKind, wishes: ExportWishes = {}): Promise<void> {
    if (this.#ending) return;
    const ending = (this.#ending = new AbortController());
    const file = fileName(kind);
    this.#result = null;
    this.#progress = { file, share: null };
    const onShare = (share: number) => {
      if (!ending.signal.aborted) this.#progress = { file, share };
    };
    // what makes files is loaded when it is first needed, and may not be had without a network
    const outcome = await bench
      .exportFile(kind, { signal: ending.signal, onShare }, wishes)
      .catch((problem: unknown): ExportOutcome =>
        ending.signal.aborted
          ? { kind: 'ended' }
          : { kind: 'failed', reason: problem instanceof Error ? problem.message : String(problem) }
      );
    this.#ending = null;
    this.#progress = null;
    this.#result = resultOf(file, outcome);
  }

  /** What is half made is thrown away. */
  cancel(): void {
    this.#ending?.abort();
  }
}

/** Work that makes a file: it says how far it is, lets the page breathe between its parts, and can be ended. */
export interface Job {
  readonly signal: AbortSignal;
  /** How much is done, 0 to 1. */
  readonly onShare: (share: number) => void;
}

/** A job that nobody watches or ends, for the command line and for tests. */
export const unwatched = (): Job => ({ signal: new AbortController().signal, onShare: () => {} });

/** Says how far the work is and gives way to the page; rejects with the signal's reason when the job was ended. */
export async function breathe({ signal, onShare }: Job, share: number): Promise<void> {
  onShare(share);
  await new Promise((resolve) => setTimeout(resolve));
  signal.throwIfAborted();
}

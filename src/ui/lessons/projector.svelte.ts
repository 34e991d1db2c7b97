/**
 * Large type on the whole screen, for a class. Where the browser has no full screen, or refuses it, the dialog fills the page
 * instead.
 */
export class Projector {
  #isLarge = $state.raw(false);
  #room: HTMLElement | null = null;

  get isLarge(): boolean {
    return this.#isLarge;
  }

  /** For what is shown to the room; leaves with it. */
  readonly room = (element: HTMLElement): (() => void) => {
    this.#room = element;
    const follow = () => {
      if (document.fullscreenElement === null) this.leave();
    };
    document.addEventListener('fullscreenchange', follow);
    return () => {
      document.removeEventListener('fullscreenchange', follow);
      this.leave();
      this.#room = null;
    };
  };

  enter(): void {
    this.#isLarge = true;
    // not every browser has it: a phone's may have none
    const asked = (this.#room as Partial<HTMLElement> | null)?.requestFullscreen?.call(this.#room);
    asked?.catch(() => undefined);
  }

  /** Whether there was something to leave. */
  leave(): boolean {
    if (!this.#isLarge) return false;
    this.#isLarge = false;
    if (document.fullscreenElement === this.#room && this.#room !== null)
      document.exitFullscreen().catch(() => undefined);
    return true;
  }
}

/** Whether the space bar is held down over the plan, which turns a drag into a movement of the view. */
const TAKES_SPACE =
  'input, textarea, select, button, a[href], [contenteditable], [role="menuitem"], [role="option"]';

export interface SpaceBar {
  readonly isHeld: boolean;
  stop(): void;
}

/** `isTaken`: the bar means something else just now. */
export function watchSpace(surface: HTMLElement, changed: () => void, isTaken: () => boolean): SpaceBar {
  let isHeld = false;
  const set = (held: boolean): void => {
    if (held === isHeld) return;
    isHeld = held;
    changed();
  };
  const isOurs = (): boolean => {
    const focused = document.activeElement;
    if (focused !== null && focused !== surface && focused.matches(TAKES_SPACE)) return false;
    return surface.matches(':hover') || surface.contains(focused);
  };
  const onDown = (event: KeyboardEvent): void => {
    if (event.key !== ' ' || isTaken() || !isOurs()) return;
    event.preventDefault();
    set(true);
  };
  const onUp = (event: KeyboardEvent): void => {
    if (event.key === ' ') set(false);
  };
  const onBlur = (): void => {
    set(false);
  };
  window.addEventListener('keydown', onDown);
  window.addEventListener('keyup', onUp);
  window.addEventListener('blur', onBlur);
  return {
    get isHeld() {
      return isHeld;
    },
    stop() {
      window.removeEventListener('keydown', onDown);
      window.removeEventListener('keyup', onUp);
      window.removeEventListener('blur', onBlur);
    }
  };
}

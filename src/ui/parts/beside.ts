/** Where something that floats goes beside what it belongs to. */

/** Pixels between the two, and to the rim of the window. */
const GAP = 4;
const RIM = 8;

/** Below its anchor if there is room, else above; never beyond the window. */
export function placeBeside(floating: HTMLElement, anchor: Element): void {
  const at = anchor.getBoundingClientRect();
  const { offsetWidth: width, offsetHeight: height } = floating;
  const below = at.bottom + GAP;
  const top = below + height > innerHeight - RIM ? Math.max(RIM, at.top - GAP - height) : below;
  const left = Math.min(Math.max(RIM, at.left - RIM), Math.max(RIM, innerWidth - RIM - width));
  floating.style.top = `${top}px`;
  floating.style.left = `${left}px`;
}

/** From the browser's pointers to hands, and from hands to the editor. */
import type { Editor, PointerInput } from '#editor/types';
import { createHands, type Contact, type HandHabits } from './hands';
import { placeOf } from './place';

const MIDDLE = 1;
const SECOND = 2;

const kindOf = ({ pointerType }: PointerEvent): PointerInput['pointer'] =>
  pointerType === 'touch' || pointerType === 'pen' ? pointerType : 'mouse';

export interface PointerOptions extends HandHabits {
  /** The view is being moved by hand, or no longer. */
  readonly panning: (active: boolean) => void;
}

const NO_MODIFIERS = { shift: false, alt: false, control: false };

const modifiersOf = (event: MouseEvent) => ({
  shift: event.shiftKey,
  alt: event.altKey,
  control: event.ctrlKey || event.metaKey
});

export function listenToPointers(surface: HTMLElement, editor: Editor, options: PointerOptions): () => void {
  /** Held at the last event; a timer has none. */
  let modifiers: Omit<PointerInput, 'type' | 'x' | 'y' | 'button' | 'pointer'> = NO_MODIFIERS;
  /** The finger that asked for the menu is still down, or the browser would ask for it too. */
  let hasAsked = false;

  function send(
    type: PointerInput['type'],
    { at: [x, y], kind }: Pick<Contact, 'at' | 'kind'>,
    button: 0 | 2 = 0
  ): void {
    editor.pointer({ type, x, y, button, pointer: kind, ...modifiers });
  }

  const hands = createHands(
    {
      send,
      pan: (dx, dy) => {
        editor.pan(dx, dy);
      },
      zoom: (factor, about) => {
        editor.zoom(factor, about[0], about[1]);
      },
      panning: options.panning,
      menu(at) {
        hasAsked = true;
        send('down', { at, kind: 'touch' }, 2);
        const { left, top } = surface.getBoundingClientRect();
        const [clientX, clientY] = [left + at[0], top + at[1]];
        const about = { bubbles: true, cancelable: true, clientX, clientY, button: 2, pointerType: 'touch' };
        surface.dispatchEvent(new PointerEvent('contextmenu', about));
      },
      after(delay, callback) {
        let frame = 0;
        const timer = setTimeout(() => {
          // Browsers hand over movements with the next frame: on a busy page a drag that began long ago is heard of there.
          frame = requestAnimationFrame(callback);
        }, delay);
        return () => {
          clearTimeout(timer);
          cancelAnimationFrame(frame);
        };
      }
    },
    options
  );

  function contactOf(event: PointerEvent): Contact {
    modifiers = modifiersOf(event);
    return { id: event.pointerId, kind: kindOf(event), at: placeOf(event, surface) };
  }

  function onDown(event: PointerEvent): void {
    surface.focus({ preventScroll: true });
    const contact = contactOf(event);
    if (event.button === SECOND) return send('down', contact, 2);
    surface.setPointerCapture(event.pointerId);
    // Or the browser scrolls by the middle button.
    if (event.button === MIDDLE) event.preventDefault();
    hands.down(contact, event.button === MIDDLE);
  }

  function onLeave(event: PointerEvent): void {
    if (hands.count === 0) send('leave', contactOf(event));
  }

  function onDouble(event: MouseEvent): void {
    modifiers = modifiersOf(event);
    send('double', { at: placeOf(event, surface), kind: 'mouse' });
  }

  /** Some browsers ask for the menu after a long press as well: once is enough. */
  function onMenu(event: Event): void {
    if (!hasAsked || !event.isTrusted) return;
    event.preventDefault();
    event.stopImmediatePropagation();
  }

  /** The click that follows a touch would land on the menu that the touch opened. */
  function onTouchEnd(event: TouchEvent): void {
    if (!hasAsked) return;
    hasAsked = false;
    if (event.cancelable) event.preventDefault();
  }

  /** Where text of the page is marked, a browser would drag that text and take the pointer away. */
  const onDragStart = (event: Event): void => {
    event.preventDefault();
  };

  const stop = new AbortController();
  const { signal } = stop;
  surface.addEventListener('pointerdown', onDown, { signal });
  surface.addEventListener('pointermove', (event) => hands.move(contactOf(event)), { signal });
  surface.addEventListener('pointerup', (event) => hands.up(contactOf(event)), { signal });
  surface.addEventListener('pointercancel', (event) => hands.cancel(contactOf(event)), { signal });
  surface.addEventListener('pointerleave', onLeave, { signal });
  surface.addEventListener('dblclick', onDouble, { signal });
  surface.addEventListener('dragstart', onDragStart, { signal });
  surface.addEventListener('contextmenu', onMenu, { signal, capture: true });
  surface.addEventListener('touchend', onTouchEnd, { signal, passive: false });
  surface.addEventListener('touchcancel', onTouchEnd, { signal, passive: false });
  return () => {
    stop.abort();
  };
}

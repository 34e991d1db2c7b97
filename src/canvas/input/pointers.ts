/**
 * From the browser's pointers to the editor's. One pointer draws; the middle button, the space bar and a second finger
 * move the view; once a pen was seen, a finger only moves the view, so that a resting palm draws nothing.
 */
import type { Point } from '#plan/schema';
import type { Editor, PointerInput } from '#editor/types';
import { pinchBetween } from './pinch';
import { placeOf } from './place';

const MIDDLE = 1;

const pointerOf = ({ pointerType }: PointerEvent): PointerInput['pointer'] =>
  pointerType === 'touch' || pointerType === 'pen' ? pointerType : 'mouse';

export interface PointerOptions {
  readonly isSpaceHeld: () => boolean;
  /** The view is being moved by hand, or no longer. */
  readonly panning: (active: boolean) => void;
}

export function listenToPointers(surface: HTMLElement, editor: Editor, options: PointerOptions): () => void {
  /** Pointers that are down and where they were last. */
  const down = new Map<number, Point>();
  let drawing: number | null = null;
  let panning: number | null = null;
  let penSeen = false;

  function send(
    event: PointerEvent | MouseEvent,
    type: PointerInput['type'],
    pointer: PointerInput['pointer']
  ): void {
    const [x, y] = placeOf(event, surface);
    const button = type === 'down' && event.button === 2 ? 2 : 0;
    const { shiftKey: shift, altKey: alt } = event;
    editor.pointer({ type, x, y, button, pointer, shift, alt, control: event.ctrlKey || event.metaKey });
  }

  function startPanning(id: number): void {
    panning = id;
    options.panning(true);
  }

  function stopPanning(): void {
    if (panning === null) return;
    panning = null;
    options.panning(false);
  }

  /** A second finger turns the gesture of the first one into a movement of the view. */
  function secondFinger(event: PointerEvent): void {
    if (drawing === null) return;
    drawing = null;
    send(event, 'cancel', 'touch');
  }

  function onDown(event: PointerEvent): void {
    surface.focus({ preventScroll: true });
    if (event.pointerType === 'pen') penSeen = true;
    if (event.button === 2) return send(event, 'down', pointerOf(event));
    surface.setPointerCapture(event.pointerId);
    down.set(event.pointerId, placeOf(event, surface));
    if (event.pointerType === 'touch' && down.size > 1) return secondFinger(event);
    const finger = event.pointerType === 'touch' && penSeen;
    if (event.button === MIDDLE || options.isSpaceHeld() || finger) {
      event.preventDefault();
      return startPanning(event.pointerId);
    }
    drawing = event.pointerId;
    send(event, 'down', pointerOf(event));
  }

  function pinch(event: PointerEvent, now: Point): void {
    const other = [...down].find(([id]) => id !== event.pointerId)?.[1];
    const before = down.get(event.pointerId);
    if (!other || !before) return;
    const { by, factor, about } = pinchBetween([before, other], [now, other]);
    editor.pan(by[0], by[1]);
    editor.zoom(factor, about[0], about[1]);
  }

  function onMove(event: PointerEvent): void {
    const now = placeOf(event, surface);
    const before = down.get(event.pointerId);
    if (before && panning === event.pointerId) editor.pan(now[0] - before[0], now[1] - before[1]);
    else if (before && down.size > 1 && drawing === null) pinch(event, now);
    else if (drawing === null || drawing === event.pointerId) {
      // After a pinch the finger that stays on the glass is not drawing.
      const resting = before !== undefined && drawing === null;
      if (!resting) send(event, 'move', pointerOf(event));
    }
    if (before) down.set(event.pointerId, now);
  }

  function onUp(event: PointerEvent): void {
    down.delete(event.pointerId);
    if (panning === event.pointerId) stopPanning();
    if (drawing !== event.pointerId) return;
    drawing = null;
    send(event, 'up', pointerOf(event));
  }

  function onCancel(event: PointerEvent): void {
    down.delete(event.pointerId);
    if (panning === event.pointerId) stopPanning();
    if (drawing !== event.pointerId) return;
    drawing = null;
    send(event, 'cancel', pointerOf(event));
  }

  function onLeave(event: PointerEvent): void {
    if (down.size === 0) send(event, 'leave', pointerOf(event));
  }

  function onDouble(event: MouseEvent): void {
    send(event, 'double', 'mouse');
  }

  const stop = new AbortController();
  const { signal } = stop;
  surface.addEventListener('pointerdown', onDown, { signal });
  surface.addEventListener('pointermove', onMove, { signal });
  surface.addEventListener('pointerup', onUp, { signal });
  surface.addEventListener('pointercancel', onCancel, { signal });
  surface.addEventListener('pointerleave', onLeave, { signal });
  surface.addEventListener('dblclick', onDouble, { signal });
  return () => {
    stop.abort();
  };
}
